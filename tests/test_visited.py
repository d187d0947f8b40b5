"""A visit at a terminal: measured, found, proposed, agreed beside today."""

import json
import random
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner, Result

from configurator import visited
from configurator.browser.catalog_json import page_catalog
from configurator.browser.link.visit_link import opening_link
from configurator.catalog import Catalog
from configurator.cli import main
from configurator.kernel.visit.agreed import agreed_now
from configurator.kernel.visit.hung_leaves import proposal_answers
from configurator.visit_file import read_text
from configurator.visit_text import visit_text
from tests.weir_cottage import FILE, house, leaf_of, opening_of, proposal_of, reading


def run(*arguments: str) -> Result:
    """Run ``astragal visit``."""
    return CliRunner().invoke(main, ["visit", *arguments])


@pytest.fixture(scope="module")
def text() -> str:
    """What is told of the house."""
    told = run(str(FILE))
    assert told.exit_code == 0, told.output
    return told.stdout


def test_the_house_is_told_opening_by_opening(text: str) -> None:
    assert text.splitlines()[0] == "Mrs Averil Tansy, Weir Cottage, Nether Wendel, 2025-03-12"
    heads = [line for line in text.splitlines() if line and not line.startswith(" ")]
    assert heads[1:] == ["Study", "Hall", "Dining room", "Kitchen"]
    assert "  Socket: Left of the pair, 12 in up" in text


def test_readings_are_told_with_the_number_that_is_used(text: str) -> None:
    lines = [" ".join(line.split()) for line in text.splitlines()]
    assert "Glass width 19 7/8 in the smallest of 19 15/16 in, 19 7/8 in and 19 7/8 in" in lines
    assert "Diagonals of the glass 66 1/8 in, 66 1/16 in" in lines
    # The correction, not the slip.
    assert "Whole height of the door 79 1/2 in" in lines
    assert "Panes across 3" in lines


def test_proposals_are_told_with_their_picks_and_first_figures(text: str) -> None:
    assert "Proposal b: Roller shade, Night, clay, in a cassette, cordless, magnetic, on the leaf, $980.00" in text
    assert "Over the whole opening" in text
    # The other leaf's glass is an eighth narrower, and the pair is told so.
    told = " ".join(text.split())
    assert "their widths differ by 1/8 in. Ordered to the narrower, 22 3/4 in" in told


def test_a_door_s_link_is_told_as_fit_tells_it(catalog: Catalog) -> None:
    link = opening_link(house(), house()["openings"][1], house()["openings"][1]["proposals"], page_catalog(catalog))
    fit = CliRunner().invoke(main, ["fit", link])
    assert fit.exit_code == 0
    for written in (link, f"https://doors.example/try.html#{link}"):
        assert run(written).stdout == fit.stdout
    assert json.loads(run(link, "--json").stdout)["configurations"]
    cut = run(link[:-9])
    assert cut.exit_code == 2
    assert "cut short" in cut.stderr


def test_units_and_language_are_those_asked_for() -> None:
    told = CliRunner().invoke(main, ["--language", "es", "visit", str(FILE), "--units", "mm"])
    assert "Enchufe: Left of the pair, 12 in up" in told.stdout
    assert "el menor de ≈ 506,4 mm, 504,825 mm y 504,825 mm" in told.stdout


def test_json_has_every_figure_as_the_kernel_has_it(catalog: Catalog) -> None:
    told: Any = json.loads(run(str(FILE), "--json").stdout)
    visit = house()
    for opening, shown in zip(visit["openings"], told["openings"], strict=True):
        for proposal, there in zip(opening["proposals"], shown["proposals"], strict=True):
            answers = proposal_answers(visit, opening, proposal, page_catalog(catalog))
            assert [{key: one["value"] for key, one in part["figures"].items()} for part in there["parts"]] == [
                {key: one["value"] for key, one in answer["figures"].items()} for answer in answers
            ]
    assert told["openings"][0]["leaves"][0]["used"]["glass_width"]["typed"] == ["19 15/16", "19 7/8", "19 7/8"]


def test_what_was_agreed_stands_beside_today(catalog: Catalog, tmp_path: Path) -> None:
    visit = house()
    study = opening_of(visit, "study")
    stamp: Any = {"on": "2025-03-20", "catalog": "abcde"}
    study["agreed"].append(agreed_now(visit, study, proposal_of(visit, "study", "b"), page_catalog(catalog), stamp))
    file = tmp_path / "agreed.visit.json"
    file.write_text(visit_text(visit), encoding="utf-8")
    assert "Everything is as it was agreed." in run(str(file)).stdout
    leaf_of(visit, "study", "active")["readings"].append(reading("handle.gap", 1.125 * 25.4, on="2026-03-20"))
    file.write_text(visit_text(visit), encoding="utf-8")
    told = " ".join(run(str(file)).stdout.split())
    assert "Agreed on 2025-03-20: Roller shade, Night, clay" in told
    assert "The leaf with the handle, Gap behind the handle: agreed: 1 7/16 in; today: 1 1/8 in" in told
    assert "passing the handle: agreed: Clears; today: Guide by hand" in told
    moved = json.loads(run(str(file), "--json").stdout)["openings"][0]["agreed"][0]["moved"]
    assert ("handle.gap", "1 7/16 in", "1 1/8 in") in [(one["id"], one["then"], one["now"]) for one in moved]


def test_what_is_wrong_is_told_with_what_to_measure_again(tmp_path: Path) -> None:
    visit = house()
    leaf = leaf_of(visit, "kitchen", "active")
    leaf["readings"] = [one for one in leaf["readings"] if one["typed"] != "79 1/2"]
    file = tmp_path / "slip.visit.json"
    file.write_text(visit_text(visit), encoding="utf-8")
    told = " ".join(run(str(file)).stdout.split())
    assert "the whole leaf was read as 76 1/2 in: 2 15/16 in apart. Measure the whole height again" in told


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"\xff\xfe", "the file is no JSON text"),
        (b"{}", "the file holds no visit"),
        (b'{"version": 9}', "the file was written by a newer version of Astragal"),
        (b'{"version": 1, "id": "a", "units": "in", "household": 3}', "household must be an entry in braces"),
    ],
)
def test_a_file_that_is_no_visit_is_refused_plainly(content: bytes, said: str, tmp_path: Path) -> None:
    file = tmp_path / "hurt.visit.json"
    file.write_bytes(content)
    told = run(str(file))
    assert told.exit_code == 1
    assert said in told.stderr
    assert "Traceback" not in told.output


def hostile(chance: random.Random) -> Any:
    """Return a visit that is sound as a file, and nonsense as a house."""
    visit: Any = house()
    words = ["", "x", "\x1b[2J<script>", "other", "right-sidelight", "__proto__", "constructor", "pair", "sidelights"]
    visit["openings"] = chance.sample(visit["openings"], 1)
    for opening in visit["openings"]:
        opening["preset"] = chance.choice([opening["preset"], "nobody"])
        for leaf in opening["leaves"]:
            leaf["words"] = {chance.choice(["layout", "swing", "x"]): chance.choice(words)}
            for each in leaf["readings"]:
                each["mm"] = chance.choice([each["mm"], each["mm"], -5.0, 0.0, 1e9, 3.3, 1499.0])
                each["field"] = chance.choice([each["field"], each["field"], "__proto__", "household.x", "handle.x"])
                each["on"] = chance.choice([each["on"], "", "zzz"])
        for proposal in opening["proposals"]:
            proposal["leaves"] = chance.sample(words, 2)
            proposal["choices"] = {chance.choice(["lift", "mount", "x"]): chance.choice(words) for _ in range(3)}
            proposal["family"] = chance.choice([proposal["family"], "roller-shade", "constructor"])
    return visit


def test_nonsense_is_told_without_a_traceback(catalog: Catalog) -> None:
    for seed in range(12):
        told = read_text(json.dumps(hostile(random.Random(seed))))
        assert told["slips"] == [], seed
        text = visited.as_text(catalog, told["visit"], "in")
        assert "\x1b" not in text, seed
        json.loads(visited.as_json(catalog, told["visit"], "mm"))


def test_what_was_agreed_before_the_tape_took_a_number_is_read_still(catalog: Catalog) -> None:
    visit: Any = house()
    kitchen = opening_of(visit, "kitchen")
    stamp: Any = {"on": "2025-03-20", "catalog": "abcde"}
    agreed: Any = agreed_now(visit, kitchen, proposal_of(visit, "kitchen", "a"), page_catalog(catalog), stamp)
    del agreed["parts"][0]["door"]["stop_lap"], agreed["parts"][0]["door"]["handle"]["neck"]
    kitchen["agreed"].append(agreed)
    told = read_text(visit_text(visit))
    assert told["slips"] == []
    assert visit_text(told["visit"]) == visit_text(visit)
    assert "Everything is as it was agreed." in visited.as_text(catalog, told["visit"], "in")


def test_a_frozen_covering_that_nobody_could_hang_is_only_named(catalog: Catalog) -> None:
    visit: Any = house()
    study = opening_of(visit, "study")
    stamp: Any = {"on": "2025-03-20", "catalog": "abcde"}
    agreed: Any = agreed_now(visit, study, proposal_of(visit, "study", "b"), page_catalog(catalog), stamp)
    agreed["covering"] |= {"id": "gone", "mechanism": "no-such-thing", "numbers": {}}
    study["agreed"].append(agreed)
    told = read_text(visit_text(visit))
    assert told["slips"] == []
    assert "Covering: agreed: Roller shade; today: No longer offered" in visited.as_text(catalog, told["visit"], "in")
