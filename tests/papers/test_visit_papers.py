"""Papers of a visit's file: what is decided is ordered and hung, every opening is measured."""

import csv
import io
import json
from copy import deepcopy
from pathlib import Path

import pypdfium2
import pytest
from click.testing import CliRunner, Result

from configurator.browser.catalog_json import page_catalog
from configurator.catalog import Catalog
from configurator.cli import main
from configurator.kernel.papers.decided import decided, ordered_stock
from configurator.kernel.visit.agreed import agreed_now
from configurator.kernel.visit.hung_leaves import hung_leaves
from configurator.kernel.visit.visit_shapes import Stamp
from configurator.visit_text import visit_text
from tests.papers.test_order_files import squeezed, words_of

FILE = Path(__file__).parents[1] / "visits" / "weir-cottage.visit.json"


def run(*arguments: str) -> Result:
    """Run ``astragal``."""
    return CliRunner().invoke(main, [str(argument) for argument in arguments])


def decided_file(folder: Path) -> Path:
    """Write the visit with a mark at the second proposal for the study and the first for the dining room."""
    visit = json.loads(FILE.read_text(encoding="utf-8"))
    visit["openings"][0]["proposals"][1]["liked"] = True
    visit["openings"][2]["proposals"][0]["liked"] = True
    path = folder / "decided.visit.json"
    path.write_text(visit_text(visit), encoding="utf-8")
    return path


def test_what_is_not_decided_is_left_out_and_told() -> None:
    done = run("order", FILE, "--csv")
    assert [line["room"] for line in csv.DictReader(io.StringIO(done.stdout))] == ["Hall", "Kitchen"]
    assert "Study: nothing is decided, so it is left out." in done.stderr


def test_four_doors_are_ordered_at_once(tmp_path: Path) -> None:
    table = list(csv.DictReader(io.StringIO(run("order", decided_file(tmp_path), "--csv").stdout)))
    assert [line["room"] for line in table] == ["Study", "Study", "Hall", "Dining room", "Kitchen"]
    # The other leaf's glass was read narrower than the active one's.
    assert [line["leaf"] for line in table][:2] == ["Right leaf, hinges on its right", "Left leaf, hinges on its left"]


def test_the_installer_s_sheet_names_the_client_and_every_piece(tmp_path: Path) -> None:
    out = tmp_path / "install.pdf"
    assert run("install", decided_file(tmp_path), "-o", out).exit_code == 0
    said = words_of(out.read_bytes())
    for words in ("Mrs Averil Tansy", "1 · ", "5 · ", "Kitchen", "Before the first hole"):
        assert squeezed(words) in said


def test_each_opening_has_its_measuring_sheet(tmp_path: Path) -> None:
    out = tmp_path / "measure.pdf"
    assert run("measure", FILE, "-o", out).exit_code == 0
    assert words_of(out.read_bytes()).count("Wheretheta" + "pegoes") == 4
    blank = tmp_path / "blank.pdf"
    assert run("measure", "-o", blank).exit_code == 0
    assert len(pypdfium2.PdfDocument(blank.read_bytes())) <= 4


def test_what_was_agreed_last_is_ordered_before_what_is_liked(catalog: Catalog) -> None:
    visit = json.loads(FILE.read_text(encoding="utf-8"))
    opening = visit["openings"][0]
    first, second = opening["proposals"][:2]
    stock = page_catalog(catalog)
    assert decided(opening) == []
    second["liked"] = True
    assert [one["id"] for one in decided(opening)] == [second["id"]]
    stamp: Stamp = {"on": "2025-03-20", "catalog": "1"}
    opening["agreed"] = [agreed_now(visit, opening, first, stock, stamp)]
    ordered = decided(opening)[0]
    assert (ordered["id"], ordered["family"], ordered["note"]) == (first["id"], first["family"], first["note"])


def test_what_was_agreed_is_made_still_when_it_is_no_longer_offered(catalog: Catalog) -> None:
    visit = json.loads(FILE.read_text(encoding="utf-8"))
    opening = visit["openings"][0]
    first = opening["proposals"][0]
    stock = page_catalog(catalog)
    stamp: Stamp = {"on": "2025-03-20", "catalog": "1"}
    opening["agreed"] = [agreed_now(visit, opening, first, stock, stamp)]
    dropped = deepcopy(stock["families"][first["family"]])
    others = {**stock["families"], "another": {**dropped, "id": "another"}}
    del others[first["family"]]
    without = {**stock, "families": others}
    hung = hung_leaves(opening, decided(opening)[0], ordered_stock(opening, without))
    before = hung_leaves(opening, first, stock)
    assert [one["fit"]["size"] for one in hung] == [one["fit"]["size"] for one in before]


@pytest.mark.parametrize("text", ["", "[]", "{}", "a" * 1000, '{"version": 99}'])
def test_a_spoilt_file_is_refused(tmp_path: Path, text: str) -> None:
    path = tmp_path / "spoilt.visit.json"
    path.write_text(text, encoding="utf-8")
    for command in ("order", "install", "measure"):
        done = run(command, path, "-o", tmp_path / "out.pdf")
        assert done.exit_code == 1, (command, text)
        assert not (tmp_path / "out.pdf").exists()
