"""A showroom within somebody's own MkDocs site: their pages, menu, theme and plugins stay what they are."""

import json
import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from mkdocs.config import load_config
from mkdocs.structure.nav import Navigation

from configurator.places import CONTENT
from configurator.site.kinds.all_pages import site_pages
from configurator.site.mkdocs.plugin import AstragalPlugin
from configurator.site.mkdocs.written_page import ShowroomPage
from tests.site.pages import ids, links, pages, parsed, target

ROOT = Path(__file__).resolve().parents[2]
KEPT = {"doors": ("garden-pair", "garden-door"), "families": ("roller-shade", "cellular-shade")}
# Another plugin of theirs, as a hook: it adds a page of its own.
HOOK = """
from mkdocs.structure.files import File

def on_files(files, config):
    files.append(File.generated(config, "from-the-hook.md", content="# From the hook\\n\\n[home](index.md)\\n"))
    return files
"""
# Run with our plugin registered, as an installed package registers it.
RUN = """
from importlib.metadata import EntryPoint
from mkdocs import plugins
ours = EntryPoint("astragal", "configurator.site.mkdocs.plugin:AstragalPlugin", "mkdocs.plugins")
known = plugins.get_plugins()
plugins.get_plugins = lambda: {**known, "astragal": ours}
from mkdocs.__main__ import cli
cli()
"""


OwnSite = Callable[[Path, str, str], Path]


@pytest.fixture(scope="module")
def own_site(remember_demo: Callable[[Path], None]) -> OwnSite:
    """A function that writes such a site, of whose showroom all is known that was worked out for the demo."""

    def written(folder: Path, under: str, nav: str) -> Path:
        remember_demo(folder / "showroom")
        return write_site(folder, under, nav)

    return written


def write_site(folder: Path, under: str, nav: str) -> Path:
    """Write a site of two pages with a small showroom, a hook and a search."""
    content = folder / "showroom"
    shutil.copytree(CONTENT, content, ignore=shutil.ignore_patterns("prices", "visits"))
    for kind, kept in KEPT.items():
        for file in (content / kind).iterdir():
            if file.stem not in kept:
                file.unlink()
    docs = folder / "docs"
    docs.mkdir(parents=True)
    first = f"{under}/index.md" if under else "coverings/index.md"
    (docs / "index.md").write_text(f"# Our house\n\nGo to [the showroom]({first}).\n", encoding="utf-8")
    (docs / "visit.md").write_text("# Visit\n\nRing the bell.\n", encoding="utf-8")
    (folder / "hook.py").write_text(HOOK, encoding="utf-8")
    (folder / "mkdocs.yml").write_text(
        "site_name: Our house\nsite_url: https://house.example/\ntheme: readthedocs\nstrict: true\nhooks: [hook.py]\n"
        f"{nav}plugins:\n  - search\n  - astragal: {{content: showroom, under: '{under}'}}\n",
        encoding="utf-8",
    )
    return folder


def mkdocs(folder: Path) -> subprocess.CompletedProcess[str]:
    """Run ``mkdocs build`` in a folder."""
    env = {**os.environ, "PYTHONPATH": str(ROOT)}
    command = [sys.executable, "-c", RUN, "build", "-d", "site"]
    return subprocess.run(command, cwd=folder, env=env, capture_output=True, text=True)


def built(folder: Path) -> Path:
    """Return the folder with the site that MkDocs builds."""
    told = mkdocs(folder)
    assert told.returncode == 0, told.stderr
    return folder / "site"


NAV = "nav: [{Start: index.md}, {Visit us: visit.md}, {Our coverings: %s}]\n"


@pytest.fixture(scope="module")
def mounted(tmp_path_factory: pytest.TempPathFactory, own_site: OwnSite) -> Path:
    """The site with the showroom under a path, in a menu of their own."""
    return built(own_site(tmp_path_factory.mktemp("mounted"), "doors", NAV % "doors/coverings/index.md"))


@pytest.fixture(scope="module")
def at_root(tmp_path_factory: pytest.TempPathFactory, own_site: OwnSite) -> Path:
    """The site with the showroom at its root, in a menu that MkDocs makes."""
    return built(own_site(tmp_path_factory.mktemp("root"), "", ""))


@pytest.fixture(scope="module")
def in_two(tmp_path_factory: pytest.TempPathFactory, own_site: OwnSite) -> Path:
    """The site with the showroom in two languages under a path, in a menu that MkDocs makes."""
    folder = own_site(tmp_path_factory.mktemp("two"), "doors", "")
    showroom = folder / "showroom" / "showroom.yaml"
    showroom.write_text(f"languages: [en, es]\n{showroom.read_text(encoding='utf-8')}", encoding="utf-8")
    return built(folder)


@pytest.fixture(params=["mounted", "at_root", "in_two"])
def site(request: pytest.FixtureRequest) -> Path:
    """Either site."""
    return request.getfixturevalue(request.param)


def menu(page: Path) -> dict[str, Path]:
    """Return the entries of their theme's menu with the file that each leads to."""
    entries = parsed(page)[0].xpath("//div[contains(@class, 'wy-menu')]//a[not(starts-with(@href, '#'))]")
    found = {" ".join(entry.itertext()).strip(): target(page, entry.get("href"))[0] for entry in entries}
    return {name: file / "index.html" if file.is_dir() else file for name, file in found.items()}


def test_their_pages_stay_in_their_theme(site: Path) -> None:
    for name, words in (("", "Our house"), ("visit", "Ring the bell"), ("from-the-hook", "From the hook")):
        page = (site / name / "index.html").read_text(encoding="utf-8")
        assert words in page
        assert "wy-nav-side" in page
        assert "title-block" not in page


def test_every_page_of_the_showroom_is_there_in_its_own_face(mounted: Path, at_root: Path, in_two: Path) -> None:
    names = ("coverings/roller-shade", "doors/garden-pair/cellular-shade", "guides/handles", "try")
    for site in (mounted / "doors", at_root, in_two / "doors", in_two / "doors" / "es"):
        for name in names:
            page = (site / f"{name}.html").read_text(encoding="utf-8")
            assert "title-block" in page
            assert "wy-nav-side" not in page
    assert "title-block" in (mounted / "doors" / "index.html").read_text(encoding="utf-8")


def test_a_menu_of_their_own_holds_their_pages_and_ours_by_their_words(mounted: Path) -> None:
    assert menu(mounted / "from-the-hook" / "index.html") == {
        "Start": mounted / "index.html",
        "Visit us": mounted / "visit" / "index.html",
        "Our coverings": mounted / "doors" / "coverings" / "index.html",
    }


def test_a_menu_that_mkdocs_makes_holds_the_showroom_s_main_pages(at_root: Path) -> None:
    held = set(menu(at_root / "from-the-hook" / "index.html").values())
    assert held >= {at_root / name for name in ("index.html", "visit/index.html", "coverings/index.html")}
    assert held >= {at_root / name for name in ("doors/index.html", "measure.html", "guides/index.html", "try.html")}
    assert at_root / "doors" / "garden-pair.html" not in held


def test_the_switch_of_languages_leads_from_each_page_to_the_same_one(in_two: Path) -> None:
    showroom = in_two / "doors"
    own = {page.relative_to(showroom) for page in pages(showroom) if page.relative_to(showroom).parts[0] != "es"}
    assert {page.relative_to(showroom / "es") for page in pages(showroom / "es")} == own
    for name in own:
        expected = {"en": (showroom / name).resolve(), "es": (showroom / "es" / name).resolve()}
        for page in expected.values():
            switch = parsed(page)[0].xpath("//nav[@class='tongues']//a")
            assert {link.get("hreflang"): target(page, link.get("href"))[0] for link in switch} == expected


def test_a_menu_that_mkdocs_makes_holds_the_first_language_alone(in_two: Path) -> None:
    held = set(menu(in_two / "visit" / "index.html").values())
    assert in_two / "doors" / "try.html" in held
    assert [file for file in held if "es" in file.parts] == []


def test_every_link_leads_somewhere(site: Path) -> None:
    lost = []
    for page in pages(site):
        if page.name == "404.html":
            continue
        for link in links(page):
            if link.startswith(("http", "mailto:", "tel:", "data:", "//", "javascript:")):
                continue
            file, anchor = target(page, link)
            file = file / "index.html" if file.is_dir() else file
            told = anchor and file.suffix == ".html" and "try.html" not in file.name and anchor not in ids(file)
            if not file.exists() or told:
                lost.append((page.relative_to(site).as_posix(), link))
    assert lost == []


def test_their_search_finds_both(mounted: Path) -> None:
    index = json.loads((mounted / "search" / "search_index.json").read_text(encoding="utf-8"))
    found = {entry["location"] for entry in index["docs"]}
    assert {"visit/", "from-the-hook/", "doors/doors/garden-pair.html", "doors/guides/handles.html"} <= found


def test_their_site_map_has_the_showroom_s_pages(mounted: Path) -> None:
    told = (mounted / "sitemap.xml").read_text(encoding="utf-8")
    assert "https://house.example/visit/" in told
    assert "https://house.example/doors/doors/garden-pair.html" in told


def test_their_first_page_stays_where_the_showroom_has_one_too(at_root: Path) -> None:
    assert "Our house" in (at_root / "index.html").read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("file", "before", "after", "told"),
    [
        ("doors/garden-pair.yaml", "width: 22 in", "width: 0 mm", "glass.width is 0 mm"),
        ("pages/handles.md", "door: garden-pair", "door: garden-pear", "did you mean 'garden-pair'?"),
    ],
)
def test_a_slip_is_told_at_its_place(
    tmp_path: Path, own_site: OwnSite, file: str, before: str, after: str, told: str
) -> None:
    folder = own_site(tmp_path, "doors", "")
    slip = folder / "showroom" / file
    text = slip.read_text(encoding="utf-8")
    slip.write_text(text.replace(before, after, 1), encoding="utf-8")
    result = mkdocs(folder)
    assert result.returncode == 1
    assert "Traceback" not in result.stderr
    line = next(line for line in result.stderr.splitlines() if told in line)
    place = text[: text.index(before)].count("\n") + 1
    start, column = (place - 1, 1) if file.endswith(".md") else (place, text.splitlines()[place - 1].index("22 in") + 1)
    assert f"{slip}:{start}:{column}: " in line


def test_serving_watches_the_content(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    folder = write_site(tmp_path, "doors", "")
    config = load_config(str(folder / "mkdocs.yml"), plugins=[])
    plugin = AstragalPlugin()
    plugin.load_config({"content": str(folder / "showroom")})
    monkeypatch.setattr("configurator.site.mkdocs.plugin.work_ahead", lambda house: None)
    assert str(folder / "showroom") in plugin.on_config(config).watch


def test_served_pages_let_the_server_add_its_script(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    folder = write_site(tmp_path, "doors", "")
    config = load_config(str(folder / "mkdocs.yml"), plugins=[])
    monkeypatch.setattr("configurator.site.mkdocs.plugin.work_ahead", lambda house: None)
    policies = []
    for command in ("build", "serve"):
        plugin = AstragalPlugin()
        plugin.load_config({"content": str(folder / "showroom")})
        plugin.on_startup(command=command, dirty=False)
        plugin.on_config(config)
        # No asset is made here, which would take long.
        plugin.full_names[""] = {}
        page = object.__new__(ShowroomPage)
        page.house = plugin.house
        page.site_page = next(one for one in site_pages(plugin.house) if one.url == "guides/index.html")
        written = plugin.on_page_context({}, page=page, config=config, nav=Navigation([], []))
        policies.append("content-security-policy" in written["astragal"])
    assert policies == [True, False]
