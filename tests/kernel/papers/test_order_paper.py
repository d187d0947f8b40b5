"""The order to the workroom: one line a piece, with the figures of the answer and no others."""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import ask_fit
from configurator.kernel.message import is_said, say
from configurator.kernel.papers.blocks import CAUTION, DRAWING
from configurator.kernel.papers.install_facts import before_drilling
from configurator.kernel.papers.making import Making, makings
from configurator.kernel.papers.order_facts import Fact, all_facts
from configurator.kernel.papers.order_paper import order_paper
from configurator.kernel.papers.order_totals import Total, cloth_totals, hardware_totals
from configurator.kernel.shapes import Fit
from configurator.kernel.tongue import ENGLISH
from configurator.places import CONTENT
from tests.kernel.papers.paper_samples import INCH, commission_of, desk, fit_of, kinds

FAMILIES = sorted(path.stem for path in (CONTENT / "families").glob("*.yaml"))


def made(catalog: Catalog, fit: Fit) -> list[Making]:
    """Return the pieces that a covering is made of."""
    return makings([commission_of(catalog, fit)])


def facts(making: Making) -> dict[str, Fact]:
    """Return what is told of a piece, by id."""
    return {told["id"]: told for told in all_facts(making)}


def told(making: Making, key: str) -> str:
    """Return a fact as it reads in inches."""
    return say(facts(making)[key]["value"], ENGLISH, "in")


def number(given: Fact) -> float:
    """Return a fact's number."""
    return float(given["value"]["terms"]["value"][0])


def totals(found: list[Total]) -> list[tuple[str, float, float]]:
    """Return totals as what, size in mm and amount."""
    return [(say(total["what"], ENGLISH, "in"), round(total["span"], 3), round(total["amount"], 3)) for total in found]


@pytest.mark.parametrize("family", FAMILIES)
@pytest.mark.parametrize("door", ["garden-pair", "divided-lite-door", "tall-door"])
def test_each_number_of_an_order_is_that_of_the_answer(catalog: Catalog, door: str, family: str) -> None:
    fit = fit_of(catalog, door, family)
    if is_said(fit["size"]["refusal"]):
        assert made(catalog, fit) == []
        return
    figures = ask_fit(fit, catalog.household)["figures"]
    pieces = made(catalog, fit)
    for key, fact in facts(pieces[0]).items():
        # Beside another leaf, the answer tells this leaf's cloth by another name.
        own = key.replace("_total", "_leaf") if len(pieces) > 1 else key
        if own in figures:
            assert number(fact) == pytest.approx(figures[own]["value"], abs=1e-9), key
    for key in ("cloth_total", "lining_total"):
        if key in figures:
            assert sum(number(facts(piece)[key]) for piece in pieces) == pytest.approx(figures[key]["value"])
    if "pair_width_passive" in figures and len(pieces) > 1:
        assert number(facts(pieces[1])["order_width"]) == pytest.approx(figures["pair_width_passive"]["value"])


def test_each_leaf_of_a_pair_is_a_piece_of_its_own_hand(catalog: Catalog) -> None:
    pieces = made(catalog, fit_of(catalog, "garden-pair", "roller-shade"))
    assert catalog.doors["garden-pair"]["hinge_side"] == "right"
    assert [told(piece, "leaf") for piece in pieces] == [
        "Right leaf, hinges on its right",
        "Left leaf, hinges on its left",
    ]
    assert [told(piece, "position") for piece in pieces] == ["1", "2"]


def test_what_hangs_over_a_pair_is_one_piece(catalog: Catalog) -> None:
    pieces = made(catalog, fit_of(catalog, "garden-pair", "traversing-drapery"))
    assert [told(piece, "leaf") for piece in pieces] == ["Over the opening"]


def test_a_roller_shade_is_told_as_a_workroom_cuts_it(catalog: Catalog) -> None:
    """By hand: 22 in of glass and 2 in on each side; brackets of 5/8 in, end caps of 1/8 in at each end."""
    piece = made(catalog, fit_of(catalog, "garden-pair", "roller-shade", lift="motor-battery", hold_down="clip"))[0]
    assert told(piece, "order_width") == "26 in"
    assert told(piece, "tube_cut") == "24 3/4 in"
    assert told(piece, "cassette_cut") == "25 3/4 in"
    assert told(piece, "cloth_bolt") == "98 in"
    assert told(piece, "hold_down_count") == "2"
    assert told(piece, "pick_lift") == "Motor on a battery"
    assert told(piece, "control_side") == "On the right, seen from the room: away from the handle, as no side is said"
    assert told(piece, "charger") == "To write in"


def test_a_wand_is_at_the_hinges_unless_said_and_a_rail_that_is_lifted_has_no_side(catalog: Catalog) -> None:
    fit = fit_of(catalog, "garden-door", "roller-shade", lift="wand")
    hinges = fit["door"]["hinge_side"]
    wand = facts(made(catalog, fit)[0])
    bare = facts(made(catalog, fit_of(catalog, "garden-door", "roller-shade", lift="cordless"))[0])
    assert f"on the {hinges}, seen from the room: away from the handle" in wand["control_side"]["value"]["text"]
    other = "right" if hinges == "left" else "left"
    given = makings([{**commission_of(catalog, fit), "controls": {"active": other}}])[0]
    assert told(given, "control_side") == f"On the {other}, seen from the room"
    assert f"worked on the {other}, seen from the room" in before_drilling(given)[0]["text"]
    assert "charger" not in wand
    assert "control_side" not in bare


def test_a_cut_out_is_dimensioned_from_the_panel_s_edges(catalog: Catalog) -> None:
    """By hand: below, the cut-out and above it make up the height; beside it and the cut-out, the width."""
    piece = facts(made(catalog, fit_of(catalog, "garden-door", "louvered-shutter"))[0])
    high = number(piece["cutout_low"]) + number(piece["cutout_height"]) + number(piece["cutout_top"])
    assert high == pytest.approx(number(piece["order_height"]))
    assert number(piece["cutout_hinge"]) + number(piece["cutout_latch"]) == pytest.approx(number(piece["order_width"]))
    assert number(piece["cutout_latch"]) == pytest.approx(number(piece["cutout_width"]))
    # The lever's axis stands 36 in above the floor and the panel's foot 6 in: the cut-out is about it.
    axis = 30 * INCH
    assert number(piece["cutout_low"]) < axis < number(piece["cutout_low"]) + number(piece["cutout_height"])


def test_totals_count_what_is_alike_once(catalog: Catalog) -> None:
    """By hand: two leaves with a tube, a cassette, a bar and two brackets each, two screws and a spacer a bracket."""
    found = totals(hardware_totals(made(catalog, fit_of(catalog, "garden-pair", "roller-shade"))))
    assert found == [
        ("Roller shade, tubes", 24.75 * INCH, 2),
        ("Roller shade, cassettes", 25.75 * INCH, 2),
        ("Roller shade, bottom rails", 24.75 * INCH, 2),
        ("Roller shade, brackets", 0, 4),
        ("Spacers, this thick", 0.25 * INCH, 4),
        ("Screws, this long at least", 33.75, 8),
    ]


def test_cloth_is_totalled_by_its_name_over_rooms(catalog: Catalog) -> None:
    """By hand: three leaves of 76 13/16 in each from one bolt; the lining goes under its own name."""
    study = commission_of(catalog, fit_of(catalog, "garden-pair", "roller-shade"))
    hall = commission_of(catalog, fit_of(catalog, "garden-door", "roller-shade"))
    assert totals(cloth_totals(makings([study, hall]))) == [
        ("Roller shade · Screen, pearl, cloth", 98 * INCH, round(3 * 76.8125 * INCH, 3))
    ]
    lined = totals(cloth_totals(made(catalog, fit_of(catalog, "garden-door", "stretched-panel", lining="lined"))))
    assert [name for name, _, _ in lined][1].endswith(", lining")


def test_many_alike_are_counted_as_many(catalog: Catalog) -> None:
    several = {**commission_of(catalog, fit_of(catalog, "garden-door", "roller-shade")), "count": 3.0}
    found = {name: amount for name, _, amount in totals(hardware_totals(makings([several])))}
    assert found["Roller shade, tubes"] == 3
    assert found["Roller shade, brackets"] == 6


def test_drawings_come_once_an_opening_and_show_no_garden(catalog: Catalog) -> None:
    paper = order_paper([commission_of(catalog, fit_of(catalog, "garden-pair", "roller-shade"))], desk())
    drawings = [one for block in kinds(paper, DRAWING) for one in block["drawings"]]
    assert [one["drawing"]["id"] for one in drawings] == ["sheet", "detail-upright", "detail-handle"]
    assert {"sky", "tree"} & {mark["role"] for one in drawings for mark in one["drawing"]["marks"]} == set()


def test_an_order_says_what_is_not_settled(catalog: Catalog) -> None:
    drapery = commission_of(catalog, fit_of(catalog, "garden-pair", "traversing-drapery"))
    calm = commission_of(catalog, fit_of(catalog, "garden-pair", "stretched-panel"))
    blocked = [
        state["name"]
        for state in ask_fit(drapery["leaves"][0]["fit"], catalog.household)["verdicts"].values()
        if state["state"] == "blocked"
    ]
    said = [say(block["text"], ENGLISH, "in") for block in kinds(order_paper([drapery], desk()), CAUTION)]
    assert blocked
    assert all(any(name in line for line in said) for name in blocked)
    assert kinds(order_paper([calm], desk()), CAUTION) == []
