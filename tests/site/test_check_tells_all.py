"""Whatever would stop a build, or be lost in it, is told by the check, in the same words and at the same place."""

import json
import os
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from PIL import Image

from configurator.cache.by_content import ByContent
from configurator.catalog import Catalog, ContentProblems, load
from configurator.catalog.loading import shelf_of
from configurator.catalog.site_addresses import FOR_ENGINES, OWN_FOLDERS, WORKER, guide_url, own_urls
from configurator.places import MANIFEST
from configurator.remembered import checked
from configurator.site.answers import Answers
from configurator.site.mkdocs.build import build
from tests.conftest import small_content
from tests.site.test_build import files

SVG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9"><path d="M0 0h9v9"/></svg>\n'
LATIN = f'<?xml version="1.0" encoding="ISO-8859-1"?>\n<!-- é -->\n{SVG}'
BLOCK = "```drawing\ndoor: garden-door\nfamily: roller-shade\nview: plan\nat: {at}\n```\n"
Spoil = Callable[[Path], object]


def put(name: str, text: str | bytes) -> Spoil:
    """Return what writes a file into a content folder."""

    def spoil(content: Path) -> None:
        (content / name).parent.mkdir(parents=True, exist_ok=True)
        (content / name).write_bytes(text if isinstance(text, bytes) else text.encode())

    return spoil


def added(name: str, text: str) -> Spoil:
    """Return what writes a line at a file's top."""
    return lambda content: (content / name).write_text(text + (content / name).read_text(encoding="utf-8"))


def picture(name: str, size: tuple[int, int] = (40, 30)) -> Spoil:
    """Return what saves a picture into a content folder."""

    def spoil(content: Path) -> None:
        (content / name).parent.mkdir(parents=True, exist_ok=True)
        Image.new("RGB", size, "tan").save(content / name)

    return spoil


def all_of(*spoils: Spoil) -> Spoil:
    """Return what does several things to a content folder."""
    return lambda content: [spoil(content) for spoil in spoils]


def logo(name: str) -> Spoil:
    """Return what names another logo."""

    def spoil(content: Path) -> None:
        room = content / "showroom.yaml"
        room.write_text(room.read_text(encoding="utf-8").replace("logo: pictures/logo.svg", f"logo: {name}"))
        assert f"logo: {name}" in room.read_text(encoding="utf-8")

    return spoil


# What is done to a sound content, and the problem that comes of it, after the folder's name.
FAULTS: dict[str, tuple[Spoil, str]] = {
    "a link to no page": (
        put("pages/more.md", "Text.\n\nSee [this](lost.md).\n"),
        "pages/more.md:3:12: the link to 'lost.md' leads nowhere; there is no such page",
    ),
    "a link to a page by its address": (
        put("pages/more.md", "See [this](guides/more.html) and [that](privacy.html).\n"),
        "pages/more.md:1:12: the link to 'guides/more.html' leads nowhere; did you mean 'more.md'?",
    ),
    "a link without an ending": (
        put("pages/more.md", "See [this](privacy).\n"),
        "pages/more.md:1:12: the link to 'privacy' leads nowhere; did you mean 'privacy.md'?",
    ),
    "a link given at the foot": (
        put("pages/deep/more.md", "See [this][1], `[no](no.md)`.\n\n[1]: privcy.md\n"),
        "pages/deep/more.md:3:6: the link to 'privcy.md' leads nowhere; did you mean '../privacy.md'?",
    ),
    "a picture that is not there": (
        put("pages/more.md", "![A room](room.jpg)\n"),
        "pages/more.md:1:11: the link to 'room.jpg' leads nowhere; there is no such page",
    ),
    "a script between two marks of code": (
        put("pages/more.md", "A ` b.\n\n<script>x()</script>\n\nC ` d.\n"),
        "pages/more.md:3:1: <script> has no place in a guide; take it out",
    ),
    "a script that only the finished page has": (
        put("pages/more.md", "<div>`<script>x()</script>`</div>\n"),
        "pages/more.md:1:1: <script> has no place in a guide; take it out",
    ),
    "words within words without end": (
        put("pages/more.md", "*a " * 1500 + "b*" * 1500 + "\n"),
        "pages/more.md:1:1: this is nested more than 12 deep; nothing in the content is",
    ),
    "two pages of one name": (
        all_of(put("pages/more.md", "One.\n"), put("pages/deep/more.md", "Two.\n")),
        (
            "pages/more.md:1:1: the file would stand at guides/more.html, where {0}/pages/deep/more.md stands already; "
            "rename it"
        ),
    ),
    "two endings of one page": (
        all_of(put("pages/more.md", "One.\n"), put("pages/more.markdown", "Two.\n")),
        (
            "pages/more.md:1:1: the file would stand at guides/more.html, "
            "where {0}/pages/more.markdown stands already; rename it"
        ),
    ),
    "a page of all guides": (
        put("pages/README.md", "Hello.\n"),
        "pages/README.md:1:1: the file would stand at guides/index.html, where the site has its own; rename it",
    ),
    "a page among templates": (
        put("pages/templates/more.md", "Hello.\n"),
        "pages/templates/more.md:1:1: the file is not read; put it into {0}/pages",
    ),
    "a file beside the pages in the place of the site's own": (
        put("pages/try.html", "mine"),
        "pages/try.html:1:1: the file would stand at try.html, where the site has its own; rename it",
    ),
    "a file carried in the place of a page": (
        put("static/Index.html", "mine"),
        "static/Index.html:1:1: the file would stand at Index.html, where the site has its own; rename it",
    ),
    "a file carried in the place of one beside the pages": (
        all_of(put("pages/leaflet.pdf", "one"), put("static/leaflet.pdf", "two")),
        (
            "static/leaflet.pdf:1:1: the file would stand at leaflet.pdf, where {0}/pages/leaflet.pdf stands already; "
            "rename it"
        ),
    ),
    "a file carried where a folder is": (
        put("static/doors", "mine"),
        "static/doors:1:1: the file would stand at doors, where the site has its own; rename it",
    ),
    "a folder carried where a file is": (
        put("static/try.html/m.txt", "mine"),
        "static/try.html/m.txt:1:1: the file would stand at try.html/m.txt, where the site has its own; rename it",
    ),
    "a file carried among the site's own": (
        put("static/assets/mine.css", "mine"),
        "static/assets/mine.css:1:1: the file would stand at assets/mine.css, where the site has its own; rename it",
    ),
    "a file carried in the place of an old address": (
        all_of(added("doors/garden-door.yaml", "formerly: [old-door]\n"), put("static/doors/old-door.html", "mine")),
        (
            "static/doors/old-door.html:1:1: the file would stand at doors/old-door.html, where the site has its own; "
            "rename it"
        ),
    ),
    "a file carried in the place of a page in another language": (
        all_of(added("showroom.yaml", "languages: [en, es]\n"), put("static/es/guides/index.html", "mine")),
        (
            "static/es/guides/index.html:1:1: the file would stand at es/guides/index.html, "
            "where the site has its own; rename it"
        ),
    ),
    "an engines' file beside the pages": (
        all_of(added("showroom.yaml", "public_address: https://d.example\n"), put("pages/robots.txt", "mine")),
        "pages/robots.txt:1:1: the file would stand at robots.txt, where the site has its own; rename it",
    ),
    "two photographs of one name": (
        all_of(picture("pictures/shop.jpg"), picture("pictures/shop.png")),
        "pictures/shop.png:1:1: {0}/pictures/shop.jpg has the same name but for its ending; rename it",
    ),
    "a photograph out of all size": (
        picture("pictures/strip.png", (3000, 20)),
        (
            "pictures/strip.png: the picture is 3000 x 20 pixels; "
            "at most 12000 a side, and at most 20 times as long as wide, are expected"
        ),
    ),
    "a photograph beside a guide that cannot be read": (
        put("pages/shop.jpg", b"no picture"),
        "pages/shop.jpg: no picture that can be read; a whole JPEG, PNG or WebP file is expected",
    ),
    "a logo in another encoding": (
        put(
            "pictures/logo.svg",
            '<?xml version="1.0" encoding="ISO-8859-1"?>\n<!-- é -->\n'.encode("latin-1") + SVG.encode(),
        ),
        "pictures/logo.svg:2:6: the file is not in UTF-8; save it as UTF-8",
    ),
    "a logo that is hidden": (
        all_of(put(".logos/logo.png", b"no picture"), logo(".logos/logo.png")),
        (
            "showroom.yaml:{1}: theme.logo is '.logos/logo.png', but what is hidden is not read; "
            "put the file itself into the content folder"
        ),
    ),
    "a drawing of nothing": (
        put("pages/more.md", "Text.\n\n" + BLOCK.format(at="half")),
        "pages/more.md:3:1: at is 'half'; open, closed or a share from 0 to 1 is expected",
    ),
    "a script in a translation": (
        put("words/es.po", 'msgid ""\nmsgstr ""\n\nmsgid "Care"\nmsgstr "<script>x()</script>"\n'),
        "words/es.po:4:1: <script> has no place in a guide; take it out",
    ),
    "a pipe to be carried": (
        lambda content: ((content / "static").mkdir(), os.mkfifo(content / "static" / "pipe")),
        "static/pipe:1:1: this is no file that can be carried over; put the file itself here",
    ),
}


@pytest.fixture(scope="module")
def sound(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A small sound content."""
    return small_content(tmp_path_factory.mktemp("sound") / "content", "roller-shade")


@pytest.fixture
def content(sound: Path, tmp_path: Path) -> Path:
    """A copy of it, to be spoiled."""
    return Path(shutil.copytree(sound, tmp_path / "content"))


def told_by(command: Callable[[], object]) -> list[str]:
    """Return the problems of the content that a command tells of."""
    try:
        command()
    except ContentProblems as found:
        return [str(problem) for problem in found.problems]
    return []


@pytest.mark.parametrize("name", FAULTS)
def test_the_check_tells_what_the_build_would(name: str, content: Path, tmp_path: Path) -> None:
    spoil, report = FAULTS[name]
    spoil(content)
    room = (content / "showroom.yaml").read_text(encoding="utf-8").splitlines()
    (at,) = [f"{line}:9" for line, text in enumerate(room, 1) if text.startswith("  logo: ")]
    told = told_by(lambda: checked(ByContent(content), None))
    assert f"{content}/{report.format(content, at)}" in told
    assert told == told_by(lambda: build(content, tmp_path / "site"))
    assert not (tmp_path / "site").exists()


LINKS = """\
[a](privacy.md) [b](deep/more.md#top) [c](try.md) [d](doors/garden-door.md) [e](doors/garden-door/roller-shade.md)
[f](coverings/roller-shade.md) [g](leaflet.pdf) [h](guides/index.md) [i](404.md) [j](#top) [k](?a=b)
[l](https://far.example/lost.md) [m](mailto:a@b.example) <a@b.example> [n](/lost.md) [o](folder/) [p](a%20b.md)
![q](shop.jpg "Shop") [r](../pages/more.md) `[s](code.md)` [t](index.md) [u][u] [v](<a b.md>) [w](x&amp;y.md)

    [x](code.md)

[u]: lost-1.md "U"

[lost](lost-2.md) [lost](doors/lost-3.md) ![lost](lost-4.jpg) [lost](../lost-5.md) [lost](privacy.html#top)
[lost](doors/index.html) [lost](guides/privacy.md) [lost](templates/more.md) [lost](.hidden/more.md)
"""


def test_the_check_follows_links_as_the_build_does(
    content: Path, tmp_path: Path, demo_answers: Callable[[], Answers], monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("pages/a b.md", "pages/deep/more.md", "pages/leaflet.pdf", "pages/x&y.md"):
        put(name, "Text.\n")(content)
    picture("pages/shop.jpg")(content)
    put("pages/links.md", LINKS)(content)
    told = {report.split("'")[1] for report in told_by(lambda: load(content))}
    monkeypatch.setattr("configurator.catalog.guide_links.note_guides", lambda *given: None)
    warned = {report.split("'")[3] for report in told_by(lambda: build(content, tmp_path / "site", demo_answers()))}
    assert told == warned
    assert len(told) == 12


def test_every_address_of_a_site_is_known_to_the_check(demo: Path, catalog: Catalog) -> None:
    shelf = shelf_of(catalog.doors, catalog.families, catalog.formerly, catalog.showroom)
    known = {root + url for root in ("", *(f"{code}/" for code in shelf.languages[1:])) for url in own_urls(shelf)}
    known |= {guide_url(page.stem) for page in catalog.pages}
    built = {name for name in files(demo) if name.removeprefix("es/").split("/")[0] not in OWN_FOLDERS}
    assert built - set(FOR_ENGINES) == known | {WORKER}


def test_what_other_programs_leave_among_pictures_is_no_photograph(
    content: Path, tmp_path: Path, demo_answers: Callable[[], Answers]
) -> None:
    put("pictures/._shop.jpg", b"no picture")(content)
    put("pages/.drafts/more.md", "Not yet: [this](lost.md).\n")(content)
    (content / "pictures" / "album.jpg").mkdir()
    build(content, tmp_path / "site", demo_answers())
    listed = json.loads((tmp_path / "site" / MANIFEST).read_text(encoding="utf-8"))
    assert [name for name in listed if "shop" in name or "album" in name or "more" in name] == []
