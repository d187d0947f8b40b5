"""The order as PDF, page, table and data: the same words and numbers, drawings in true millimeters."""

import csv
import io
import json
import re

import pypdfium2
import pytest
from click.testing import CliRunner, Result

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import encode
from configurator.browser.link.state import fresh_configuration, fresh_state
from configurator.catalog import Catalog
from configurator.cli import main
from configurator.kernel.papers.making import makings
from configurator.kernel.papers.order_facts import all_facts
from configurator.kernel.papers.order_paper import order_paper
from configurator.kernel.papers.order_table import safe_text
from configurator.kernel.tongue import ENGLISH
from configurator.papers.order_rows import order_csv
from configurator.papers.paper_html import paper_html
from configurator.papers.paper_pdf import paper_pdf
from configurator.papers.reader import Reader
from tests.kernel.papers.paper_samples import commission_of, desk, fit_of

POINT = 25.4 / 72


def squeezed(text: str) -> str:
    """Return a text without the spaces and line ends that differ from one way of setting it to another."""
    return re.sub(r"[\s\u00ad\ufffe]+", "", text)


def pages(pdf: bytes) -> pypdfium2.PdfDocument:
    """Return a PDF to look at."""
    return pypdfium2.PdfDocument(pdf)


def words_of(pdf: bytes) -> str:
    """Return all that a PDF says."""
    return squeezed("".join(page.get_textpage().get_text_range() for page in pages(pdf)))


def link(catalog: Catalog, door: str, family: str) -> str:
    """Return a link to a family on a door."""
    stock = page_catalog(catalog)
    state = fresh_state(stock)
    state["configurations"] = [fresh_configuration(stock, door, family)]
    return encode(state, stock)


def order(*arguments: str) -> Result:
    """Run ``astragal order``."""
    return CliRunner().invoke(main, ["order", *arguments])


@pytest.mark.parametrize("family", ["roller-shade", "louvered-shutter", "traversing-drapery"])
def test_pdf_and_page_tell_every_fact_of_every_piece(catalog: Catalog, family: str) -> None:
    commission = commission_of(catalog, fit_of(catalog, "garden-pair", family))
    paper = order_paper([commission], desk())
    reader = Reader(ENGLISH, "in", "letter")
    printed = words_of(paper_pdf(paper, reader))
    shown = squeezed(re.sub(r"<[^>]+>", "", paper_html(paper, reader)).replace("&#39;", "'").replace("&amp;", "&"))
    for making in makings([commission]):
        for fact in all_facts(making):
            line = squeezed(reader.told(fact["name"])), squeezed(reader.told(fact["value"]))
            assert all(part in printed for part in line), fact["id"]
            assert "".join(line) in shown, fact["id"]


@pytest.mark.parametrize(("units", "sheet", "wide"), [("in", "letter", 215.9), ("mm", "a4", 210.0)])
def test_drawings_are_true_to_scale_on_letter_and_a4(catalog: Catalog, units: str, sheet: str, wide: float) -> None:
    fit = fit_of(catalog, "garden-door", "roller-shade")
    paper = order_paper([commission_of(catalog, fit)], desk(units))
    drawn = next(block["drawings"] for block in paper["blocks"] if block["drawings"])
    page = pages(paper_pdf(paper, Reader(ENGLISH, units, sheet)))[2]
    assert page.get_width() * POINT == pytest.approx(wide, abs=0.1)
    boxes = [shape.get_bounds() for shape in page.get_objects()]
    sizes = [((right - left) * POINT, (top - bottom) * POINT) for left, bottom, right, top in boxes]
    # The elevation shows the leaf's upright stile, the level cut at the handle is a quarter of its thickness high.
    door = fit["door"]
    high = door["rail_top"] + 2 * door["bead_width"] + door["glass_height"] + door["rail_bottom"]
    stile = door["stile_hinge"] / drawn[0]["scale"], high / drawn[0]["scale"]
    # What is drawn is as wide as its line is heavier.
    assert any(abs(x - stile[0]) < 0.6 and abs(y - stile[1]) < 0.6 for x, y in sizes)
    assert any(abs(y - door["leaf_thickness"] / drawn[2]["scale"]) < 0.6 and x > y for x, y in sizes)


def test_all_of_a_page_lies_within_its_margins(catalog: Catalog) -> None:
    for door, family in (("sidelight-door", "sliding-panels"), ("tall-door", "louvered-shutter")):
        paper = order_paper([commission_of(catalog, fit_of(catalog, door, family))], desk())
        for page in pages(paper_pdf(paper, Reader(ENGLISH, "in", "letter"))):
            left, bottom, right, top = page.get_bbox()
            for shape in page.get_objects():
                if shape.type == pypdfium2.raw.FPDF_PAGEOBJ_TEXT:
                    x0, y0, x1, y1 = shape.get_bounds()
                    assert left + 15 < x0 < x1 < right - 15
                    assert bottom + 10 < y0 < y1 < top - 15


def test_a_table_has_a_line_a_piece_with_the_numbers_of_the_paper(catalog: Catalog) -> None:
    commission = commission_of(catalog, fit_of(catalog, "garden-pair", "roller-shade"), room="=HYPERLINK(1)")
    table = list(csv.DictReader(io.StringIO(order_csv(makings([commission]), Reader(ENGLISH, "in", "letter")))))
    assert [line["position"] for line in table] == ["1", "2"]
    assert {line["order_width"] for line in table} == {"660.4"}
    assert {line["room"] for line in table} == {"'=HYPERLINK(1)"}


@pytest.mark.parametrize("text", ["=1+1", "+1", "-1", "@a", "\t=1"])
def test_no_text_is_taken_for_a_formula(text: str) -> None:
    assert safe_text(text) == f"'{text}"
    assert safe_text("voile - mist") == "voile - mist"


def test_hostile_words_are_shown_as_text(catalog: Catalog) -> None:
    commission = commission_of(
        catalog, fit_of(catalog, "garden-door", "roller-shade"), room="<script>alert(1)</script>"
    )
    page = paper_html(order_paper([commission], desk()), Reader(ENGLISH, "in", "letter"))
    assert "<script" not in page
    assert "&lt;script&gt;" in page


def test_the_command_writes_each_kind_of_file(catalog: Catalog, tmp_path) -> None:
    wanted = link(catalog, "garden-door", "roller-shade")
    for name, start in (("order.pdf", b"%PDF"), ("order.html", b"<!doctype html>")):
        done = order(wanted, "-o", str(tmp_path / name))
        assert done.exit_code == 0, done.output
        assert (tmp_path / name).read_bytes().startswith(start)
    table = order(wanted, "--csv").stdout.splitlines()
    assert len(table) == 2
    pieces = json.loads(order(wanted, "--json").stdout)["pieces"]
    told = json.loads(CliRunner().invoke(main, ["fit", wanted, "--json"]).stdout)["configurations"][0]["figures"]
    shared = [key for key in pieces[0] if key in told]
    assert len(shared) > 10
    assert {key: pieces[0][key]["value"] for key in shared} == pytest.approx(
        {key: round(told[key]["value"], 3) for key in shared}
    )
    assert [key for key in shared if not told[key]["working"].startswith(pieces[0][key]["working"])] == []


def test_what_cannot_be_made_is_refused_with_its_reason(catalog: Catalog) -> None:
    stock = page_catalog(catalog)
    state = fresh_state(stock)
    one = fresh_configuration(stock, "garden-door", "stretched-panel")
    # It is made 4 ft wide at most.
    one["door"] = {**one["door"], "glass_width": 1400.0}
    state["configurations"] = [one]
    refused = order(encode(state, stock), "--csv")
    assert refused.exit_code == 1
    assert "It is not made as wide as this opening needs" in refused.output


@pytest.mark.parametrize("arguments", [[], ["--csv", "--json"], ["-o", "order.txt"], ["-o", "nowhere/order.pdf"]])
def test_a_slip_in_the_options_is_told(catalog: Catalog, arguments: list[str]) -> None:
    assert order(link(catalog, "garden-door", "roller-shade"), *arguments).exit_code == 2
