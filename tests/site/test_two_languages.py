"""A site in two languages: every page in both, a switch that keeps the page, and what holds no words only once."""

import re
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.mkdocs.build import build
from tests.site.pages import asset, links, pages, parsed, target

WORDS = """\
msgid ""
msgstr "Content-Type: text/plain; charset=utf-8\\n"

msgid "Garden pair"
msgstr "Pareja del jardín"

msgid "Every week or two"
msgstr "Cada una o dos semanas"
"""


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory, demo_answers: Callable[[], Answers]) -> Path:
    folder = tmp_path_factory.mktemp("languages")
    content = folder / "content"
    shutil.copytree(CONTENT, content, ignore=shutil.ignore_patterns("words", "prices", "visits"))
    for kind, kept in (("doors", {"garden-pair", "garden-door"}), ("families", {"roller-shade"}), ("pages", {"care"})):
        for path in (content / kind).iterdir():
            if path.stem not in kept:
                path.unlink()
    showroom = content / "showroom.yaml"
    showroom.write_text(showroom.read_text().replace("units: in ", "languages: [en, es]\nunits: in ", 1))
    (content / "words").mkdir()
    (content / "words" / "es.po").write_text(WORDS)
    build(content, folder / "site", demo_answers())
    return folder / "site"


def test_every_page_stands_in_both_languages(site: Path) -> None:
    every = {page.relative_to(site).as_posix() for page in pages(site)}
    own = {name for name in every if not name.startswith("es/")}
    assert every == own | {f"es/{name}" for name in own}


def test_each_page_tells_its_language_and_the_others(site: Path) -> None:
    for page in pages(site):
        root, _ = parsed(page)
        name = page.relative_to(site).as_posix()
        assert root.get("lang") == ("es" if name.startswith("es/") else "en")
        switch = {str(link.get("hreflang")): str(link.get("href")) for link in root.xpath("//nav[@class='tongues']//a")}
        told = {code: target(page, link)[0] for code, link in switch.items()}
        bare = name.removeprefix("es/")
        assert told == {"en": (site / bare).resolve(), "es": (site / "es" / bare).resolve()}
    root, _ = parsed(site / "es" / "doors" / "index.html")
    found = {link.get("hreflang"): link.get("href") for link in root.xpath("//link[@rel='alternate']")}
    assert found == {
        "en": "../../doors/index.html",
        "es": "../../es/doors/index.html",
        "x-default": "../../doors/index.html",
    }


def test_each_page_tells_social_networks_its_language_and_the_other(site: Path) -> None:
    for name, own, other in (("index.html", "en_US", "es_ES"), ("es/index.html", "es_ES", "en_US")):
        root, _ = parsed(site / name)
        assert root.xpath("//meta[@property='og:locale']/@content") == [own]
        assert root.xpath("//meta[@property='og:locale:alternate']/@content") == [other]


def test_shares_stand_as_the_language_writes_them(site: Path) -> None:
    page = "doors/garden-pair.html"
    assert re.search(r"\d%", (site / page).read_text())
    told = (site / "es" / page).read_text()
    assert re.search(r"\d\u00a0%", told)
    assert re.search(r">[^<>]*\d%", told) is None


def test_a_covering_is_found_among_its_like_in_the_language(site: Path) -> None:
    page = "coverings/roller-shade.html"
    assert '"category":"Window covering"' in (site / page).read_text()
    assert '"category":"Cortinas y persianas"' in (site / "es" / page).read_text()


def test_a_door_s_name_stands_as_it_is_written(site: Path) -> None:
    page = "doors/garden-pair/roller-shade.html"
    assert "on Garden pair" in (site / page).read_text()
    assert "en «Pareja del jardín»" in (site / "es" / page).read_text()


def test_every_link_leads_to_a_file(site: Path) -> None:
    for page in pages(site):
        local = [link for link in links(page) if not link.startswith(("http", "mailto:", "tel:", "data:"))]
        assert [link for link in local if not target(page, link)[0].is_file()] == []


def test_the_content_is_told_in_the_language(site: Path) -> None:
    assert "Pareja del jardín" in (site / "es" / "doors" / "index.html").read_text()
    assert "Cada una o dos semanas" in (site / "es" / "guides" / "care.html").read_text()
    assert "Pareja del jardín" in asset(site / "es", "catalog.js").read_text()
    assert "Pareja" not in (site / "doors" / "index.html").read_text()


def test_what_holds_no_words_stands_once(site: Path) -> None:
    assert {path.suffix for path in (site / "es" / "assets").iterdir()} == {".js"}
    assert (site / "es" / "cards" / "doors" / "garden-pair.jpg").is_file()
