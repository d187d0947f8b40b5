"""What a visit comes to on its own page: agreed and told beside today, its papers and a table as the command's."""

import json
import re
from contextlib import suppress
from pathlib import Path
from typing import Any

import pypdfium2
import pytest
from click.testing import CliRunner
from playwright.sync_api import Error, Locator, Page, expect

from configurator import quoted
from configurator.browser.catalog_json import page_catalog
from configurator.browser.link.made_links import linked_order
from configurator.browser.link.visit_link import opening_link
from configurator.catalog import Catalog
from configurator.cli import main
from configurator.commissioned import desk
from configurator.kernel.papers.blocks import CODE, DRAWING, PAGE, TABLE, Paper
from configurator.kernel.papers.install_paper import install_paper
from configurator.kernel.papers.making import Desk
from configurator.kernel.papers.measuring_paper import measuring_paper
from configurator.kernel.papers.order_paper import order_paper
from configurator.kernel.papers.quote_paper import quote_paper
from configurator.kernel.papers.visit_papers import blank_sheets, visit_sheets
from configurator.papers.reader import Reader
from tests.browser.accessibility import violations
from tests.browser.conftest import OpenContext
from tests.browser.test_visits import begin, house, is_kept, measure, open_leaf, opened_house
from tests.browser.trying import viewport

INCH = 25.4
HOME = "https://doors.example/show/"
# Has the page say, before its scripts run, where it stands in public.
PUBLIC = f"""
document.addEventListener("readystatechange", () =>
  document.head.insertAdjacentHTML("beforeend", "<link rel=canonical href={HOME}visits.html>"), {{ once: true }});
"""


def decided_house() -> dict[str, Any]:
    """Return the house with something liked for each door, and the study's shades worked by a wand on the left."""
    visit = house()
    visit["openings"][0]["proposals"][1]["liked"] = True
    visit["openings"][2]["proposals"][0]["liked"] = True
    visit["openings"][0]["proposals"][1]["choices"]["lift"] = "wand"
    visit["openings"][0]["control"] = "left"
    return visit


def papers_fold(page: Page) -> Locator:
    """Return what opens the agreement and the papers of a visit."""
    return page.locator(".desk > summary").filter(has_text="Agreement and papers")


def open_desk(page: Page, folder: Path, visit: dict[str, Any]) -> None:
    """Open a visit from its file, with what it comes to."""
    opened_house(page, folder, **visit)
    papers_fold(page).click()
    expect(page.locator(".agreement")).to_have_count(len(visit["openings"]))


def squeezed(text: str) -> str:
    """Return a text without the spaces that differ from one way of setting it to another."""
    return re.sub(r"\s+", "", text)


def told(paper: Paper, reader: Reader) -> list[str]:
    """Return what a paper says block by block, without spaces; its drawings' captions among it."""
    said: list[str] = []
    for block in paper["blocks"]:
        if block["kind"] not in (PAGE, CODE):
            said.append(reader.told(block["text"]))
        said.extend(reader.told(item) for item in block["items"])
        if block["kind"] == TABLE:
            said.extend(reader.told(column["name"]) for column in block["columns"])
            said.extend("".join(reader.cells(row, block["columns"])) for row in block["rows"])
        said.extend(reader.told(one["caption"]) for one in block["drawings"])
    return [squeezed(text) for text in said if text]


def command_papers(visit: Any, catalog: Catalog, at: Desk) -> dict[str, Paper]:
    """Return the papers that the command line writes of a visit."""
    stock = page_catalog(catalog)
    commissions = linked_order(visit, stock, opening_link)["commissions"]
    nobody: Desk = {**at, "client": ""}
    return {
        "quote": quote_paper(quoted.of_visit(catalog, visit, at["day"])),
        "order": order_paper(commissions, at),
        "install": install_paper(commissions, at),
        "measure": measuring_paper(visit_sheets(visit, stock), nobody),
        "blank": measuring_paper(blank_sheets(stock), nobody),
    }


def test_papers_and_table_say_what_the_command_writes(page: Page, catalog: Catalog, tmp_path: Path) -> None:
    visit = decided_house()
    page.add_init_script(PUBLIC)
    open_desk(page, tmp_path, visit)
    reader = Reader(catalog.words, "in", "letter")
    papers = command_papers(visit, catalog, {**desk(catalog, "in", visit["client"], ""), "home": HOME})
    # A paper is white, whatever the page around it.
    page.emulate_media(color_scheme="dark")
    for kind, paper in papers.items():
        page.locator(f"[data-paper={kind}]").click()
        expect(page.locator(f"[data-paper={kind}]")).to_have_attribute("aria-pressed", "true")
        shown = squeezed(page.locator(".paper").text_content() or "")
        lines = told(paper, reader)
        assert len(lines) > 30
        assert [line for line in lines if line not in shown] == [], kind
        codes = [block["code"] for block in paper["blocks"] if block["kind"] == CODE]
        assert page.locator(".paper .sheet-link > p").all_text_contents() == codes
        assert len(codes) == (4 if kind in ("order", "install") else 0)
        scales = page.evaluate(
            "[...document.querySelectorAll('.paper figure svg')]"
            ".map((svg) => svg.viewBox.baseVal.width / parseFloat(svg.getAttribute('width')))"
        )
        drawn = [one["scale"] for block in paper["blocks"] if block["kind"] == DRAWING for one in block["drawings"]]
        assert scales == pytest.approx(drawn, rel=0.01), kind
        if kind in ("order", "measure"):
            assert violations(page) == [], kind
    page.locator("[data-paper=order]").click()
    with page.expect_download() as download:
        page.get_by_role("button", name="Save the order as a table").click()
    file = tmp_path / "decided.visit.json"
    file.write_text(json.dumps(visit), encoding="utf-8")
    written = CliRunner().invoke(main, ["order", str(file), "--csv"]).stdout
    assert len(written.splitlines()) == 6
    assert "On the left, seen from the room" in written
    assert download.value.path().read_text(encoding="utf-8") == written


def test_only_the_paper_is_printed_true_to_scale(page: Page, tmp_path: Path) -> None:
    open_desk(page, tmp_path, decided_house())
    page.locator("[data-paper=install]").click()
    expect(page.locator(".paper")).to_have_count(1)
    for sheet, high in (("Letter", 11 * INCH), ("A4", 297.0)):
        document = pypdfium2.PdfDocument(page.pdf(format=sheet))
        assert document[0].get_height() / 72 * INCH == pytest.approx(high, abs=0.5)
        said = [document[i].get_textpage().get_text_range() for i in range(len(document))]
        assert said[0].lstrip().startswith("Installer")
        assert not any("Agree on it" in text or "Kept on this device" in text for text in said)
    page.emulate_media(media="print")
    wide = page.locator(".paper .ruler span").evaluate("(line) => line.getBoundingClientRect().width / 96 * 25.4")
    assert wide == pytest.approx(4 * INCH, abs=0.2)
    drawings = page.locator(".paper svg.drawing-sheet")
    drawn = drawings.evaluate_all("(all) => all.map((one) => one.getBoundingClientRect().width / 96 * 25.4)")
    wanted = drawings.evaluate_all("(all) => all.map((one) => parseFloat(one.getAttribute('width')))")
    assert len(drawn) >= 5
    assert drawn == pytest.approx(wanted, abs=0.2)


def test_what_was_agreed_stays_beside_what_it_is_today(page: Page, tmp_path: Path) -> None:
    visit = house()
    file = tmp_path / "kitchen.visit.json"
    visit["openings"] = visit["openings"][3:]
    file.write_text(json.dumps(visit), encoding="utf-8")
    page.goto("visits.html")
    page.get_by_label("Open a file").set_input_files(file)
    papers_fold(page).click()
    page.get_by_role("button", name="Agree on it today").click()
    agreed = page.locator(".agreed")
    expect(agreed).to_contain_text("Everything is as it was agreed.")
    expect(papers_fold(page)).to_contain_text("1 door agreed")
    width = agreed.locator("tr").filter(has_text="Order width").locator("td")
    then = width.first.text_content() or ""
    expect(width.last).to_have_text(then)

    door = page.locator(".one-door")
    measure(open_leaf(door, "active", "The glass"), "Glass width", "19", "19", "19")
    expect(width.last).to_contain_text("moved")
    expect(width.first).to_have_text(then)
    expect(agreed).to_contain_text("Glass width agreed: 20 3/16 in; today: 19 in")
    is_kept(page)
    page.reload()
    papers_fold(page).click()
    expect(width.first).to_have_text(then)
    assert violations(page) == []


def test_two_copies_show_what_differs_and_whose_word_stands(page: Page, tmp_path: Path) -> None:
    opened_house(page, tmp_path)
    is_kept(page)
    opened_house(page, tmp_path, place="Weir House", client="Mrs A. Tansy")
    differs = page.locator(".differences")
    expect(differs.get_by_role("group", name="Place")).to_be_visible()
    differs.get_by_role("group", name="Place").get_by_label("This device:").check()
    differs.get_by_role("button", name="Put both together").click()
    expect(page.get_by_label("Place", exact=True)).to_have_value("Weir Cottage, Nether Wendel")
    expect(page.get_by_label("Client", exact=True)).to_have_value("Mrs A. Tansy")
    noted = page.locator(".one-visit details").last
    expect(noted).to_contain_text("Weir House", use_inner_text=False)
    expect(noted).to_contain_text("Mrs Averil Tansy", use_inner_text=False)


def test_a_killed_tab_loses_nothing_that_the_page_said_was_kept(open_context: OpenContext) -> None:
    context = open_context(viewport=viewport("desk"))
    page = context.new_page()
    begin(page)
    place = page.get_by_label("Place", exact=True)
    place.press_sequentially("Weir")
    is_kept(page)
    address = page.url
    # In the middle of a word the tab dies, and has no time for a farewell.
    place.press_sequentially(" Cott")
    with page.expect_event("crash"), suppress(Error):
        page.goto("chrome://crash")
    again = context.new_page()
    again.goto(address)
    place = again.get_by_label("Place", exact=True)
    expect(place).to_have_value(re.compile("^Weir( | C| Co| Cot| Cott)?$"))
    expect(again.get_by_label("Client", exact=True)).to_have_value("Mrs Tansy")
    expect(again.locator(".keep-line")).to_have_attribute("data-state", "kept")
