"""The configurator in one file: it holds all that its page asks for, and leads only to the showroom's site."""

import re
import shutil
from collections.abc import Callable
from html.parser import HTMLParser
from pathlib import Path

import pytest
from click.testing import CliRunner

from configurator.cli import main
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.mkdocs.field_file import field_file, within_page
from tests.site.pages import asset

ADDRESS = "https://www.lantern-and-sill.example/"


class Asked(HTMLParser):
    """What a page asks for and leads to, and the texts of its scripts."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.links: list[str] = []
        self.fetched: list[str] = []
        self.scripts: list[str] = []
        self.inside = ""
        self.feed(html)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = dict(attrs)
        self.inside = tag
        if tag == "script":
            self.scripts.append("")
        if tag == "a" and given.get("href"):
            self.links.append(str(given["href"]))
        elif given.get("href") or given.get("src"):
            self.fetched.append(str(given.get("href") or given.get("src")))

    def handle_endtag(self, tag: str) -> None:
        self.inside = ""

    def handle_data(self, data: str) -> None:
        if self.inside == "script":
            self.scripts[-1] += data


@pytest.fixture(scope="module")
def one_file(demo_answers: Callable[[], Answers]) -> str:
    """The starter's configurator in one file."""
    return field_file(CONTENT)


def test_it_asks_for_nothing(one_file: str) -> None:
    asked = Asked(one_file)
    assert all(address.startswith("data:") for address in asked.fetched)
    assert "default-src 'none'" in one_file


def test_without_an_address_it_leads_nowhere_else(one_file: str) -> None:
    assert {link.split(":")[0] for link in Asked(one_file).links} == {"#content", "tel", "mailto"}


def test_every_script_of_the_site_is_in_it_whole(one_file: str, demo: Path) -> None:
    held = Asked(one_file).scripts
    for script in [*demo.glob("assets/astragal*.js"), asset(demo, "catalog.js"), asset(demo, "kept.js")]:
        text = script.read_text(encoding="utf-8")
        assert any(part.replace("\\x3C", "<") == text.replace("\\x3C", "<") for part in held), script.name


def test_with_an_address_its_links_open_on_the_site(tmp_path: Path) -> None:
    content = shutil.copytree(CONTENT, tmp_path / "content")
    room = content / "showroom.yaml"
    written = room.read_text(encoding="utf-8").replace("units: in ", f"public_address: {ADDRESS}\nunits: in ", 1)
    room.write_text(written, encoding="utf-8")
    out = tmp_path / "field.html"
    told = CliRunner().invoke(main, ["field", str(content), "-o", str(out)])
    assert told.stdout == f"Wrote {out}.\n"
    html = out.read_text(encoding="utf-8")
    assert f"{ADDRESS}coverings/index.html" in Asked(html).links
    # The page's own script hands on links as the site has them.
    assert f'<link rel="canonical" href="{ADDRESS}try.html">' in html


@pytest.mark.parametrize("text", ["a='</script>'", "a='<!-- <SCRIPT'", "a=`</Script `"])
def test_no_text_of_a_script_ends_it(text: str) -> None:
    written = within_page(text)
    assert not re.search(r"</?script|<!--", written, re.IGNORECASE)
    assert written.replace("\\x3C", "<") == text
