"""What was agreed stays as it was; what is otherwise today is told beside it. The story of the house, in its order."""

from copy import deepcopy
from typing import Any

import pytest

from configurator.kernel.message import say
from configurator.kernel.papers.visit_papers import ordered_of
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.visit.agreed import agreed_beside_today, agreed_now
from configurator.kernel.visit.agreed_today import agreed_today, as_proposal
from configurator.kernel.visit.beside_today import BesideToday, beside_today
from configurator.kernel.visit.hung_leaves import hung_leaves, proposal_answers
from configurator.kernel.visit.visit_shapes import Agreed, Moved, Visit, VisitStock
from tests.weir_cottage import house, leaf_of, opening_of, proposal_of, reading

INCH = 25.4
AGREED = {"study": "b", "hall": "a", "dining": "a", "kitchen": "a"}


@pytest.fixture
def agreed_house(stock: VisitStock) -> Visit:
    """The house after 20 March: study B, dining A, the hall as proposed, the kitchen in the other white."""
    visit = house()
    proposal_of(visit, "kitchen", "a")["choices"]["fabric"] = "plain-milk"
    for ident, proposal in AGREED.items():
        opening = opening_of(visit, ident)
        stamp: Any = {"on": "2025-03-20", "catalog": "abcde"}
        opening["agreed"].append(agreed_now(visit, opening, proposal_of(visit, ident, proposal), stock, stamp))
    return visit


def agreed_of(visit: Visit, ident: str) -> Agreed:
    return opening_of(visit, ident)["agreed"][-1]


def moved_at(visit: Visit, ident: str, stock: VisitStock) -> list[Moved]:
    return agreed_beside_today(visit, opening_of(visit, ident), agreed_of(visit, ident), stock)


def beside_at(visit: Visit, ident: str, stock: VisitStock) -> list[BesideToday]:
    agreed = agreed_of(visit, ident)
    return beside_today(agreed, agreed_today(visit, opening_of(visit, ident), agreed, stock))


def told(found: list[Moved], kind: str) -> dict[str, tuple[str, str]]:
    """Return what was and what is, by id, of one kind and the leaf with the handle."""
    return {
        one["id"]: (say(one["then"], ENGLISH, "in"), say(one["now"], ENGLISH, "in"))
        for one in found
        if one["kind"] == kind and one["leaf"] in ("", "active")
    }


def changed_stock(stock: VisitStock) -> Any:
    """Return a catalog that may be changed."""
    return {**stock, "families": deepcopy(stock["families"]), "handles": deepcopy(stock["handles"])}


def test_the_side_of_a_control_is_agreed_and_told_when_it_is_another(stock: VisitStock) -> None:
    visit = house()
    opening = opening_of(visit, "study")
    wand = proposal_of(visit, "study", "b")
    wand["choices"]["lift"] = "wand"
    stamp: Any = {"on": "2025-03-20", "catalog": "abcde"}
    opening["agreed"].append(agreed_now(visit, opening, wand, stock, stamp))
    # The leaf with the handle has its hinges on the right, the other on the left.
    assert [part["control"] for part in opening["agreed"][0]["parts"]] == ["right", "left"]
    assert moved_at(visit, "study", stock) == []
    opening["control"] = "left"
    sides = ("On the right, seen from the room", "On the left, seen from the room")
    assert told(moved_at(visit, "study", stock), "covering") == {"control_side": sides}
    beside = [row for row in beside_at(visit, "study", stock) if row["name"] == "control side"]
    assert [row["moved"] for row in beside] == [True, False]
    # Ordered is what was agreed.
    assert ordered_of(visit, stock)["commissions"][0]["controls"] == {"active": "right", "other": "left"}


def test_nothing_has_moved_on_the_day(agreed_house: Visit, stock: VisitStock) -> None:
    for ident in AGREED:
        assert moved_at(agreed_house, ident, stock) == [], ident
    frozen = agreed_of(agreed_house, "kitchen")
    assert (frozen["price"], frozen["on"], frozen["catalog"]) == ("290.00", "2025-03-20", "abcde")
    assert frozen["choices"]["fabric"] == "plain-milk"
    assert [option["id"] for choice in frozen["covering"]["choices"] for option in choice["options"]] == [
        "plain-milk",
        "cassette",
        "cordless",
        "magnetic",
        "on-leaf",
    ]


def test_figures_are_frozen_as_they_are_told(agreed_house: Visit, stock: VisitStock) -> None:
    study = opening_of(agreed_house, "study")
    answers = proposal_answers(agreed_house, study, proposal_of(agreed_house, "study", "b"), stock)
    parts = agreed_of(agreed_house, "study")["parts"]
    assert [part["leaf"] for part in parts] == ["active", "other"]
    for part, answer in zip(parts, answers, strict=True):
        assert {name: one["value"] for name, one in part["figures"].items()} == {
            name: figure["value"] for name, figure in answer["figures"].items()
        }
        assert part["verdicts"] == {name: verdict["state"] for name, verdict in answer["verdicts"].items()}


def test_the_wall_that_was_measured_anew_is_told_at_its_leaf(agreed_house: Visit, stock: VisitStock) -> None:
    # 30 April: the bookcase has become a wall cupboard 15 in away.
    leaf_of(agreed_house, "study", "other")["readings"].append(reading("wall_gap", 15 * INCH, on="2025-04-30"))
    found = moved_at(agreed_house, "study", stock)
    assert next((one["kind"], one["leaf"], one["id"]) for one in found) == ("measured", "other", "wall_gap")
    assert say(found[0]["then"], ENGLISH, "in") == "21 in"
    assert say(found[0]["now"], ENGLISH, "in") == "15 in"
    assert moved_at(agreed_house, "kitchen", stock) == []


def test_a_new_lever_is_told_with_what_comes_of_it(agreed_house: Visit, stock: VisitStock) -> None:
    # A year later: front at 2 1/8, free behind 1 1/8.
    leaf = leaf_of(agreed_house, "study", "active")
    leaf["readings"].append(reading("handle.projection", 2.125 * INCH, on="2026-03-20"))
    leaf["readings"].append(reading("handle.gap", 1.125 * INCH, on="2026-03-20"))
    found = moved_at(agreed_house, "study", stock)
    assert told(found, "measured") == {
        "handle.gap": ("1 7/16 in", "1 1/8 in"),
        "handle.projection": ("2 5/16 in", "2 1/8 in"),
    }
    was = agreed_of(agreed_house, "study")["parts"][0]
    now = proposal_answers(
        agreed_house, opening_of(agreed_house, "study"), as_proposal(agreed_of(agreed_house, "study")), stock
    )
    outcome = told(found, "outcome")
    assert outcome["pass_through"] == ("Clears", "Guide by hand")
    assert outcome["handle_gap"] == ("≈ 3/8 in", "≈ 1/8 in")
    # It holds for everything that was frozen: what is not told is as it was.
    for name, figure in was["figures"].items():
        if name not in outcome:
            assert now[0]["figures"][name]["value"] == pytest.approx(figure["value"], abs=0.06), name


def test_the_successor_of_a_fabric_is_told_with_its_thickness(agreed_house: Visit, stock: VisitStock) -> None:
    changed = changed_stock(stock)
    family = changed["families"]["roller-shade"]
    fabric = next(choice for choice in family["choices"] if choice["id"] == "fabric")
    option = next(each for each in fabric["options"] if each["id"] == "plain-milk")
    option |= {"id": "plain-cream", "name": "Plain, cream"}
    option["numbers"]["cloth_thickness"] += 0.1
    changed["formerly"] = {"option/roller-shade/fabric/plain-milk": "plain-cream"}
    found = moved_at(agreed_house, "kitchen", changed)
    assert told(found, "covering")["fabric"][1] == "Plain, cream"
    assert told(found, "number") == {"cloth_thickness": ("0.35", "0.45")}
    assert "stack_height" not in told(found, "measured")


def test_a_fabric_that_is_dropped_is_hung_as_it_was(agreed_house: Visit, stock: VisitStock) -> None:
    changed = changed_stock(stock)
    family = changed["families"]["traversing-drapery"]
    fabric = next(choice for choice in family["choices"] if choice["id"] == "fabric")
    fabric["options"] = [each for each in fabric["options"] if each["id"] != "linen-flax"]
    found = moved_at(agreed_house, "dining", changed)
    assert told(found, "covering")["fabric"][1] == "No longer offered"
    # Not another fabric's figures in its place.
    assert [one["kind"] for one in found] == ["covering"]
    # Nor where the whole covering is gone.
    del changed["families"]["traversing-drapery"]
    assert [(one["kind"], one["id"]) for one in moved_at(agreed_house, "dining", changed)] == [("covering", "family")]


def test_a_retired_fabric_and_another_handle_are_told(agreed_house: Visit, stock: VisitStock) -> None:
    changed = changed_stock(stock)
    fabric = next(one for one in changed["families"]["roller-shade"]["choices"] if one["id"] == "fabric")
    next(each for each in fabric["options"] if each["id"] == "plain-milk")["retired"] = True
    leaf = leaf_of(agreed_house, "kitchen", "active")
    leaf["handle"] = "round-knob"
    leaf["readings"] = [each for each in leaf["readings"] if not each["field"].startswith("handle.")]
    found = moved_at(agreed_house, "kitchen", changed)
    assert told(found, "covering")["fabric"][1] == "No longer offered"
    assert told(found, "measured")["handle"] == ("Lever on a rose", "Round knob")


def test_what_cannot_be_hung_any_more_is_told_with_the_reason(agreed_house: Visit, stock: VisitStock) -> None:
    leaf_of(agreed_house, "dining", "active")["readings"].append(
        reading("ceiling_height", 97.0 * INCH, on="2026-03-20")
    )
    found = moved_at(agreed_house, "dining", stock)
    refusals = [one for one in found if one["id"] == "refusal"]
    verdicts = [one for one in found if one["kind"] == "outcome"]
    assert refusals or verdicts


def test_another_layout_is_told_in_words(agreed_house: Visit, stock: VisitStock) -> None:
    leaf_of(agreed_house, "kitchen", "active")["words"]["swing"] = "out"
    assert told(moved_at(agreed_house, "kitchen", stock), "measured")["swing"] == ("Into the room", "Outwards")


def test_what_was_agreed_hangs_as_it_was(agreed_house: Visit, stock: VisitStock) -> None:
    agreed = agreed_of(agreed_house, "kitchen")
    opening = opening_of(agreed_house, "kitchen")
    frozen: VisitStock = {**stock, "families": {"roller-shade": agreed["covering"]}}
    as_was = hung_leaves(opening, as_proposal(agreed), frozen)[0]["fit"]
    today = hung_leaves(opening, as_proposal(agreed), stock)[0]["fit"]
    assert as_was["size"] == today["size"]
    assert as_was["numbers"] == today["numbers"]


def test_each_figure_stands_beside_today_s_and_neither_takes_the_other_s_place(
    agreed_house: Visit, stock: VisitStock
) -> None:
    rows = beside_at(agreed_house, "kitchen", stock)
    assert [one["name"] for one in rows][:2] == ["order width", "order height"]
    assert not any(one["moved"] for one in rows)
    for spot in ("top", "middle", "bottom"):
        again = reading("glass_width", 19 * INCH, spot, on="2026-03-20")
        leaf_of(agreed_house, "kitchen", "active")["readings"].append(again)
    later = beside_at(agreed_house, "kitchen", stock)
    assert [one["then"] for one in later] == [one["then"] for one in rows]
    assert later[0]["moved"]
    assert later[0]["now"] != later[0]["then"]
    without: Any = {**stock, "families": {}}
    gone = beside_at(agreed_house, "kitchen", without)
    assert [say(one["now"], ENGLISH, "in") for one in gone] == ["Cannot be hung"] * len(rows)


def test_another_price_is_told_beside_the_one_that_was_agreed(agreed_house: Visit, stock: VisitStock) -> None:
    proposal_of(agreed_house, "kitchen", "a")["price"] = "315.00"
    assert told(moved_at(agreed_house, "kitchen", stock), "price") == {"price": ("290.00", "315.00")}
    assert agreed_of(agreed_house, "kitchen")["price"] == "290.00"
