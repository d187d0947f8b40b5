"""The installer's sheet: places from glass and floor, screws against leaf and pane, what is checked and handed over."""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import ask_fit
from configurator.kernel.message import is_said, say
from configurator.kernel.papers.blocks import DRAWING, SIGNATURES, TABLE, TICKS, Paper
from configurator.kernel.papers.install_facts import level_facts
from configurator.kernel.papers.install_paper import install_paper
from configurator.kernel.papers.making import makings
from configurator.kernel.tongue import ENGLISH
from configurator.places import CONTENT
from tests.kernel.papers.paper_samples import INCH, commission_of, desk, fit_of, kinds

FAMILIES = sorted(path.stem for path in (CONTENT / "families").glob("*.yaml"))


def paper_of(catalog: Catalog, door: str, family: str, **choices: str) -> Paper:
    """Return the installer's sheet of a covering."""
    return install_paper([commission_of(catalog, fit_of(catalog, door, family, **choices))], desk())


def drilled(paper: Paper) -> list[list[str]]:
    """Return the list of fixings as it reads in inches."""
    table = next(block for block in kinds(paper, TABLE) if block["text"]["text"] == "Where to drill")
    return [[say(cell, ENGLISH, "in") for cell in row["cells"]] for row in table["rows"]]


def ticked(paper: Paper) -> list[str]:
    """Return all that is to be ticked."""
    return [say(item, ENGLISH, "in") for block in kinds(paper, TICKS) for item in block["items"]]


def test_brackets_are_told_from_the_glass_and_the_floor(catalog: Catalog) -> None:
    """By hand: the shade overlaps the glass by 2 in, its brackets stand 2 in in from its ends: in line with the glass.

    Its top is 3 5/8 in above the glass, and the screws 1 5/16 in below that.
    """
    assert drilled(paper_of(catalog, "garden-door", "roller-shade")) == [
        ["1", "Bracket", "0 in inwards", "2 5/16 in above", "76 5/16 in", "2", "1/4 in", "≈ 1 3/8 in"],
        ["2", "Bracket", "22 in inwards", "2 5/16 in above", "76 5/16 in", "2", "1/4 in", "≈ 1 3/8 in"],
    ]


@pytest.mark.parametrize("family", FAMILIES)
def test_every_fixing_is_on_the_list_and_on_the_drawing(catalog: Catalog, family: str) -> None:
    fit = fit_of(catalog, "garden-door", family)
    assert not is_said(fit["size"]["refusal"])
    paper = install_paper([commission_of(catalog, fit)], desk())
    listed = drilled(paper)
    assert len(listed) == len(fit["fixings"])
    marks = kinds(paper, DRAWING)[0]["drawings"][0]["drawing"]["marks"]
    numbers = {mark["text"] for mark in marks if mark["shape"] == "text" and mark["role"] == "title"}
    assert numbers == {row[0] for row in listed}


@pytest.mark.parametrize("family", FAMILIES)
def test_each_number_of_the_sheet_is_that_of_the_answer(catalog: Catalog, family: str) -> None:
    fit = fit_of(catalog, "divided-lite-door", family)
    figures = ask_fit(fit, catalog.household)["figures"]
    told = {
        fact["id"]: fact["value"]["terms"]["value"][0]
        for fact in level_facts(makings([commission_of(catalog, fit)])[0])
    }
    assert {"spacer", "screw_length", "fixing_first"} <= set(told)
    assert {key: value for key, value in told.items() if key in figures} == pytest.approx(
        {key: figures[key]["value"] for key in told if key in figures}
    )


def test_screws_are_told_against_leaf_and_pane(catalog: Catalog) -> None:
    """By hand: 1 in of thread in a leaf of 1 3/4 in leaves 3/4 in; the screws are 2 5/16 in past the glass."""
    told = {
        fact["id"]: fact["value"]["terms"]["value"][0]
        for fact in level_facts(makings([commission_of(catalog, fit_of(catalog, "garden-door", "roller-shade"))])[0])
    }
    assert told["screw_thread"] == pytest.approx(INCH)
    assert told["screw_behind"] == pytest.approx(0.75 * INCH)
    assert told["screw_glass"] == pytest.approx(2.3125 * INCH)


def test_hold_downs_and_the_cord_s_device_are_seen_to(catalog: Catalog) -> None:
    calm = ticked(paper_of(catalog, "garden-door", "roller-shade"))
    held = paper_of(catalog, "garden-door", "roller-shade", hold_down="clip", lift="retained-loop")
    assert "No cord and no loop hangs free." in calm
    assert [row[1] for row in drilled(held)] == ["Bracket", "Bracket", "Hold-down", "Hold-down"]
    assert any(line.startswith("Every cord and loop is held by its device") for line in ticked(held))
    assert any("hold-downs" in line for line in ticked(held))


def test_cautions_are_ticked_and_both_sign(catalog: Catalog) -> None:
    fit = fit_of(catalog, "garden-pair", "traversing-drapery")
    cautions = [one for one in ask_fit(fit, catalog.household)["cautions"] if not one["general"]]
    paper = install_paper([commission_of(catalog, fit)], desk())
    assert cautions
    assert {say(one["text"], ENGLISH, "in") for one in cautions} <= set(ticked(paper))
    assert [[item["text"] for item in block["items"]] for block in kinds(paper, SIGNATURES)] == [
        ["installer", "client"]
    ]


@pytest.mark.parametrize(("units", "scale"), [("mm", 10.0), ("in", 12.0)])
def test_the_drawing_is_at_a_tenth_or_an_inch_to_the_foot(catalog: Catalog, units: str, scale: float) -> None:
    paper = install_paper([commission_of(catalog, fit_of(catalog, "garden-door", "roller-shade"))], desk(units))
    assert kinds(paper, DRAWING)[0]["drawings"][0]["scale"] == scale


def test_a_door_of_the_other_hand_is_drawn_the_other_way_round(catalog: Catalog) -> None:
    fit = fit_of(catalog, "garden-door", "roller-shade", lift="wand")
    turned = {**fit, "door": {**fit["door"], "hinge_side": "right"}}
    xs = []
    for one in (fit, turned):
        paper = install_paper([commission_of(catalog, one)], desk())
        marks = kinds(paper, DRAWING)[0]["drawings"][0]["drawing"]["marks"]
        grips = [mark["points"][0::2] for mark in marks if mark["role"] == "handle seen" and mark["shape"] == "polygon"]
        xs.append(sum(sum(points) / len(points) for points in grips) / len(grips))
    door = fit["door"]
    wide = door["stile_hinge"] + door["stile_latch"] + 2 * door["bead_width"] + door["glass_width"]
    assert xs[0] + xs[1] == pytest.approx(wide)
