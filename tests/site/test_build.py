"""Building: repeatable, all or nothing, and never over somebody's own files."""

import gc
import re
import shutil
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import pytest
from PIL import Image

from configurator.catalog import Catalog, ContentProblems
from configurator.kernel.shapes import Door, Family
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.drawings.cards import door_card, family_card, fitted_card
from configurator.site.drawings.subjects import room_subject
from configurator.site.house import House, open_houses
from configurator.site.mkdocs import assets
from configurator.site.mkdocs.ahead import work_ahead
from configurator.site.mkdocs.build import NotASite, build
from configurator.site.mkdocs.serve import build_unkept
from tests.conftest import few_scripts, small_content
from tests.site.pages import asset, pages, parsed, plain_name

KEPT_DOORS = ("garden-pair.yaml", "garden-door.yaml")


@pytest.fixture(scope="module")
def answers(demo_answers: Callable[[], Answers]) -> Answers:
    """What one build has worked out for the next."""
    return demo_answers()


@pytest.fixture
def content(tmp_path: Path) -> Path:
    """The starter content with two doors."""
    folder = tmp_path / "content"
    shutil.copytree(CONTENT, folder, ignore=shutil.ignore_patterns("visits"))
    for door in (folder / "doors").iterdir():
        if door.name not in KEPT_DOORS:
            door.unlink()
    return folder


def files(folder: Path) -> dict[str, bytes]:
    """Return every file of a folder by its path."""
    return {path.relative_to(folder).as_posix(): path.read_bytes() for path in folder.rglob("*") if path.is_file()}


def edited(content: Path, file: str, before: str, after: str) -> None:
    """Change a content file."""
    path = content / file
    text = path.read_text(encoding="utf-8")
    assert before in text
    path.write_text(text.replace(before, after, 1), encoding="utf-8")


def test_a_picture_that_is_not_whole_is_told_and_the_last_good_site_stays(
    content: Path, tmp_path: Path, answers: Answers
) -> None:
    out = tmp_path / "site"
    build(content, out, answers)
    before = files(out)
    photo = content / "pictures" / "terrace.jpg"
    Image.effect_noise((600, 400), 60).save(photo)
    photo.write_bytes(photo.read_bytes()[:5000])
    with pytest.raises(ContentProblems, match=r"terrace\.jpg: no picture that can be read"):
        build(content, out, answers)
    assert files(out) == before


def test_an_unsound_content_leaves_the_last_good_site(content: Path, tmp_path: Path, answers: Answers) -> None:
    out = tmp_path / "site"
    build(content, out, answers)
    before = files(out)
    edited(content, "doors/garden-pair.yaml", "width: 22 in", "width: 0 mm")
    with pytest.raises(ContentProblems, match=r"garden-pair\.yaml:\d+:\d+: "):
        build(content, out, answers)
    assert files(out) == before
    assert [path.name for path in tmp_path.iterdir() if path.name.startswith(".astragal")] == []


def test_a_block_that_cannot_be_drawn_is_told_with_its_line(content: Path, tmp_path: Path, answers: Answers) -> None:
    edited(content, "pages/handles.md", "door: garden-pair", "door: garden-pear")
    page = content / "pages/handles.md"
    line = page.read_text(encoding="utf-8").splitlines().index("door: garden-pear")
    with pytest.raises(ContentProblems) as told:
        build(content, tmp_path / "site", answers)
    assert str(told.value) == f"{page}:{line}:1: there is no door 'garden-pear'; did you mean 'garden-pair'?"
    assert not (tmp_path / "site").exists()


def test_a_table_of_a_guide_rolls_sideways(content: Path, tmp_path: Path, answers: Answers) -> None:
    page = content / "pages/imprint.md"
    page.write_text(
        page.read_text(encoding="utf-8") + "\n\n| One | Two |\n| --- | --- |\n| 1 | 2 |\n", encoding="utf-8"
    )
    build(content, tmp_path / "site", answers)
    (frame,) = parsed(tmp_path / "site" / "imprint.html")[0].xpath("//main//div[@class='table']")
    assert (frame.get("role"), frame.get("tabindex"), frame.get("aria-label")) == ("group", "0", "Table")
    assert frame.xpath("count(table/tbody/tr/td)") == 2


def test_a_link_that_leads_nowhere_is_told_at_its_place(content: Path, tmp_path: Path, answers: Answers) -> None:
    page = content / "pages/imprint.md"
    lines = page.read_text(encoding="utf-8").splitlines()
    page.write_text("\n".join([*lines, "", "See [the other page](gone.md)."]), encoding="utf-8")
    with pytest.raises(ContentProblems) as told:
        build(content, tmp_path / "site", answers)
    place = f"{page}:{len(lines) + 2}:22"
    assert str(told.value) == f"{place}: the link to 'gone.md' leads nowhere; there is no such page"
    assert not (tmp_path / "site").exists()


def test_a_page_that_the_content_lacks_is_in_no_page_s_menu(content: Path, tmp_path: Path, answers: Answers) -> None:
    site = tmp_path / "site"
    build(content, site, answers)
    (content / "pages/imprint.md").unlink()
    build(content, site, answers)
    assert [page for page in site.rglob("*.html") if "imprint.html" in page.read_text(encoding="utf-8")] == []


def test_pages_written_ahead_are_not_written_again(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(assets, "configurator_scripts", few_scripts)
    content, answers = small_content(tmp_path / "content", "roller-shade"), Answers()
    work_ahead(open_houses(content, answers))
    again: list[str] = []
    monkeypatch.setattr(answers, "keep_page", lambda url, key, html: again.append(url))
    build(content, tmp_path / "site", answers)
    assert [url for url in again if url.startswith("doors/")] == []


def test_the_folder_in_which_one_stands_is_not_built_over(
    content: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    out = tmp_path / "site"
    out.mkdir()
    monkeypatch.chdir(out)
    with pytest.raises(NotASite, match="name another folder"):
        build(content, Path())


def test_a_folder_with_other_files_is_not_built_over(content: Path, tmp_path: Path) -> None:
    out = tmp_path / "letters"
    out.mkdir()
    (out / "to-my-aunt.txt").write_text("Dear aunt")
    with pytest.raises(NotASite, match="letters"):
        build(content, out)
    assert (out / "to-my-aunt.txt").read_text() == "Dear aunt"


def test_a_process_that_goes_on_still_frees_cycles(content: Path) -> None:
    with pytest.raises(NotASite):
        build(content, content)
    assert gc.isenabled()


def test_a_page_that_is_gone_from_the_content_is_gone_from_the_site(
    content: Path, tmp_path: Path, answers: Answers
) -> None:
    out = tmp_path / "site"
    build(content, out, answers)
    (content / "doors" / "garden-door.yaml").unlink()
    edited(content, "showroom.yaml", "first_door: garden-door", "first_door: garden-pair")
    build(content, out, answers)
    assert not (out / "doors" / "garden-door.html").exists()
    assert not (out / "doors" / "garden-door").exists()


def test_both_themes_build_every_page(demo: Path, other_theme: Path) -> None:
    assert [error for site in (demo, other_theme) for page in pages(site) for error in parsed(page)[1]] == []


def test_colors_typefaces_and_corners_come_from_the_showroom(content: Path, tmp_path: Path, answers: Answers) -> None:
    edited(content, "showroom.yaml", "warm: '#9c4a21'", "warm: '#123456'")
    edited(content, "showroom.yaml", "corner_radius: 2 px", "corner_radius: 9 px")
    build(content, tmp_path / "site", answers)
    style = asset(tmp_path / "site", "site.css").read_text(encoding="utf-8")
    assert "--warm:#123456" in style
    assert "--radius:9px" in style


def test_a_public_address_makes_a_site_map_and_canonical_addresses(
    content: Path, tmp_path: Path, answers: Answers
) -> None:
    edited(content, "showroom.yaml", "units: in", "public_address: https://doors.example/show\nunits: in")
    out = tmp_path / "site"
    build(content, out, answers)
    urls = [line for line in (out / "sitemap.xml").read_text(encoding="utf-8").splitlines() if "<loc>" in line]
    assert urls == sorted(urls)
    assert any("https://doors.example/show/doors/garden-pair.html" in line for line in urls)
    assert not any("404" in line for line in urls)
    page = parsed(out / "doors" / "garden-pair.html")[0]
    assert page.xpath("string(//link[@rel='canonical']/@href)") == "https://doors.example/show/doors/garden-pair.html"
    assert page.xpath("string(//meta[@property='og:image']/@content)").startswith("https://doors.example/show/cards/")


def test_at_a_public_address_the_page_for_lost_addresses_is_whole_at_any_depth(
    tmp_path: Path, answers: Answers
) -> None:
    content, out = small_content(tmp_path / "content", "roller-shade"), tmp_path / "site"
    address = "public_address: https://doors.example/show\nlanguages: [en, es]\nunits: in"
    edited(content, "showroom.yaml", "units: in", address)
    build(content, out, answers)
    for lost, root in (("404.html", "/show/"), ("es/404.html", "/show/es/")):
        page = parsed(out / lost)[0]
        ways = [str(way) for way in page.xpath("//@href | //script/@src")]
        inside = [way for way in ways if not way.startswith(("#", "tel:", "mailto:"))]
        assert [way for way in inside if not way.startswith("/show/")] == []
        assert all((out / way.removeprefix("/show/")).is_file() for way in inside)
        assert {f"{root}index.html", "/show/assets/site.css"} <= {plain_name(way) for way in inside}
        assert not page.xpath("//link[@rel='canonical']")
    assert "Sitemap: https://doors.example/show/sitemap.xml\n" in (out / "robots.txt").read_text()


def test_a_robots_file_of_one_s_own_stands(content: Path, tmp_path: Path, answers: Answers) -> None:
    edited(content, "showroom.yaml", "units: in", "public_address: https://doors.example/show\nunits: in")
    (content / "static").mkdir()
    (content / "static" / "robots.txt").write_text("mine")
    build(content, tmp_path / "site", answers)
    assert (tmp_path / "site" / "robots.txt").read_text() == "mine"


def test_what_a_showroom_gives_brings_no_style_of_its_own(content: Path, tmp_path: Path, answers: Answers) -> None:
    logo = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path style="{}" fill="red" d="M0 0h9v9"/></svg>'
    (content / "pictures" / "logo.svg").write_text(logo.format("fill:#0000ff;stroke-width:2"))
    (content / "pages" / "care.md").write_text("# Care\n\n| Cloth | Weight |\n| --- | ---: |\n| Voile | 60 g |\n")
    build(content, tmp_path / "site", answers)
    page = parsed(tmp_path / "site" / "guides" / "care.html")[0]
    assert page.xpath("//@style") == []
    (path,) = page.xpath("//*[@class='masthead']//*[local-name()='path']")
    assert (path.get("fill"), path.get("stroke-width")) == ("#0000ff", "2")
    assert [cell.text for cell in page.xpath("//*[@data-to='right']")] == ["Weight", "60 g"]


def test_while_it_is_written_a_site_lets_the_server_add_to_its_pages(
    content: Path, tmp_path: Path, answers: Answers
) -> None:
    out = tmp_path / "site"
    build_unkept(content, out, answers)
    assert [page for page in pages(out) if "content-security-policy" in page.read_text(encoding="utf-8")] == []
    assert not (out / "robots.txt").exists()
    (style,) = parsed(out / "404.html")[0].xpath("//link[@rel='stylesheet']/@href")
    assert out / style == asset(out, "site.css")


def test_old_addresses_lead_on(content: Path, tmp_path: Path, answers: Answers) -> None:
    edited(content, "doors/garden-pair.yaml", "name: ", "formerly: [french-pair]\nname: ")
    edited(content, "families/cellular-shade.yaml", "name: ", "formerly: [honeycomb-shade]\nname: ")
    out = tmp_path / "site"
    build(content, out, answers)
    leads = {
        "doors/french-pair.html": "doors/garden-pair.html",
        "coverings/honeycomb-shade.html": "coverings/cellular-shade.html",
        "doors/french-pair/cellular-shade.html": "doors/garden-pair/cellular-shade.html",
        "doors/garden-pair/honeycomb-shade.html": "doors/garden-pair/cellular-shade.html",
        "doors/french-pair/honeycomb-shade.html": "doors/garden-pair/cellular-shade.html",
        "doors/garden-door/honeycomb-shade.html": "doors/garden-door/cellular-shade.html",
    }
    for old, new in leads.items():
        page = out / old
        text = page.read_text(encoding="utf-8")
        (where,) = re.findall(r'http-equiv="refresh" content="0; url=([^"]+)"', text)
        (canonical,) = re.findall(r'rel="canonical" href="([^"]+)"', text)
        assert {(page.parent / where).resolve(), (page.parent / canonical).resolve()} == {(out / new).resolve()}, old
        assert f'<a class="press" href="{where}"' in text
        assert (out / new).is_file()


def test_two_pages_never_share_an_address(content: Path, tmp_path: Path, answers: Answers) -> None:
    (content / "pages" / "more").mkdir()
    (content / "pages" / "more" / "handles.md").write_text("Handles of our own.\n", encoding="utf-8")
    with pytest.raises(ContentProblems) as found:
        build(content, tmp_path / "site", answers)
    (told,) = [str(problem) for problem in found.value.problems]
    assert told.startswith(f"{content}/pages/more/handles.md:1:1: the file would stand at guides/handles.html")


def test_the_first_page_opens_with_what_clears(catalog: Catalog) -> None:
    house = House(catalog, CONTENT, Answers())
    door, family = room_subject(house)
    verdicts = house.answer(door, family)["verdicts"]
    assert {verdict["state"] for verdict in verdicts.values()} == {"clears"}


def test_previews_of_things_that_share_an_id_stand_apart(catalog: Catalog) -> None:
    door, family = catalog.doors["garden-door"], catalog.families["roller-shade"]
    ids = ("oak", "oak-roller", "roller")
    doors: list[Door] = [{**door, "id": ident} for ident in ids]
    families: list[Family] = [{**family, "id": ident} for ident in ids]
    notes = replace(
        catalog,
        door_notes=dict.fromkeys(ids, catalog.door_notes[door["id"]]),
        family_notes=dict.fromkeys(ids, catalog.family_notes[family["id"]]),
    )
    house = House(notes, CONTENT, Answers())
    cards = [door_card(house, one) for one in doors] + [family_card(house, one) for one in families]
    cards += [fitted_card(one, other) for one in doors for other in families]
    assert len(set(cards)) == len(cards)


def test_link_previews_are_of_the_size_that_is_asked_for(demo: Path) -> None:
    drawn = ("showroom.png", "doors/garden-door.png", "doors/garden-pair/cellular-shade.png")
    for name in (*drawn, "doors/garden-pair.jpg", "coverings/cellular-shade.jpg", "coverings/soft-fold-shade.jpg"):
        with Image.open(demo / "cards" / name) as card:
            assert card.size == (1200, 630)
