"""What is wrong with what was measured is told where it is wrong, with what to measure again."""

import math

import pytest

from configurator.kernel.message import say
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.visit.findings import leaf_findings, opening_findings, stand_ins
from configurator.kernel.visit.visit_shapes import Finding, Reading, Visit, VisitStock
from tests.weir_cottage import house, leaf_of, opening_of, proposal_of, reading

INCH = 25.4
# A leaf by itself, in inches: 4 + 1/2 + 20 + 1/2 + 5 across make 30, 5 + 1/2 + 60 + 1/2 + 14 in height make 80.
SOUND = {
    "glass_width": 20.0,
    "glass_height": 60.0,
    "bead_width": 0.5,
    "stile_hinge": 4.0,
    "stile_latch": 5.0,
    "rail_top": 5.0,
    "rail_bottom": 14.0,
    "leaf_width": 30.0,
    "leaf_height": 80.0,
}
PARTS_AND_WHOLE = "In height, glass, beads and both rails make 79 7/16 in, but the whole leaf was"


def found_with(*more: Reading, **inches: float) -> list[Finding]:
    """Return what is found of the sound leaf with other readings, and with some more."""
    readings = [reading(field, mm * INCH) for field, mm in {**SOUND, **inches}.items()]
    leaf = leaf_of(house(), "kitchen", "active")
    leaf["readings"] = [{**each, "typed": f"{each['mm']} mm"} for each in [*readings, *more]]
    return leaf_findings(leaf, "in")


def told(found: list[Finding]) -> list[tuple[str, str, str]]:
    return [(each["field"], say(each["says"], ENGLISH, "in"), say(each["again"], ENGLISH, "in")) for each in found]


# A neighbor's window a floor up is unusual, and so.
UNUSUAL = ("hall", "active", "household.outside_level")


def house_findings(visit: Visit, stock: VisitStock) -> list[tuple[str, str, str]]:
    found = [
        (opening["id"], each["leaf"], each["field"])
        for opening in visit["openings"]
        for each in opening_findings(opening, stock, "in")
    ]
    return [each for each in found if each != UNUSUAL]


def test_nothing_is_wrong_with_the_house_as_it_was_measured(stock: VisitStock) -> None:
    assert house_findings(house(), stock) == []
    hall = opening_findings(opening_of(house(), "hall"), stock, "in")
    assert [(each["field"], each["grave"]) for each in hall] == [("household.outside_level", False)]
    assert found_with() == []


def test_the_slip_of_three_inches_is_caught_at_the_field(stock: VisitStock) -> None:
    visit = house()
    leaf = leaf_of(visit, "kitchen", "active")
    leaf["readings"] = [each for each in leaf["readings"] if each["typed"] != "79 1/2"]
    found = opening_findings(opening_of(visit, "kitchen"), stock, "in")
    assert told(found) == [
        (
            "leaf_height",
            f"{PARTS_AND_WHOLE} read as 76 1/2 in: 2 15/16 in apart.",
            "Measure the whole height again; if it stays, the glass and the rails above and below it.",
        )
    ]
    assert found[0]["grave"]


def test_parts_are_held_against_the_whole_across_too() -> None:
    found = found_with(leaf_width=31.0)
    assert told(found) == [
        (
            "leaf_width",
            "Across, glass, beads and both sides make 30 in, but the whole leaf was read as 31 in: 1 in apart.",
            "Measure the whole width again; if it stays, the glass and what is beside it on both sides.",
        )
    ]
    # A quarter of an inch over five readings is what a tape gives (common practice, no source).
    assert found_with(leaf_width=30.25) == []
    assert [each["field"] for each in found_with(leaf_width=30.375)] == ["leaf_width"]


def test_glass_that_leaves_no_wood_is_told_before_the_parts_are_measured() -> None:
    leaf = leaf_of(house(), "kitchen", "active")
    leaf["readings"] = [
        {**reading("glass_width", 29 * INCH), "typed": "29"},
        {**reading("leaf_width", 30 * INCH), "typed": "30"},
    ]
    assert told(leaf_findings(leaf, "in"))[-1][1] == (
        "A leaf of 30 in would leave only 1 in beside the glass, beads and both stiles in it."
    )


@pytest.mark.parametrize(
    ("widths", "grave", "again"),
    [
        ((20.0, 20.0625, 20.125), None, ""),
        ((20.0, 20.0, 20.25), False, "Measure it again: bottom."),
        ((20.0, 23.0, 20.0), True, "Measure it again: middle."),
    ],
)
def test_three_readings_may_differ_by_an_eighth(
    widths: tuple[float, float, float], grave: bool | None, again: str
) -> None:
    leaf = leaf_of(house(), "kitchen", "active")
    leaf["readings"] = [
        {**reading("glass_width", inches * INCH, spot), "typed": str(inches)}
        for spot, inches in zip(("top", "middle", "bottom"), widths, strict=True)
    ]
    found = leaf_findings(leaf, "in")
    assert [each["grave"] for each in found] == ([] if grave is None else [grave])
    assert [each[2] for each in told(found)] == ([again] if again else [])


@pytest.mark.parametrize(("lean", "found"), [(0.1, []), (0.25, [False]), (1.5, [True])])
def test_two_diagonals_show_how_far_the_glass_leans(lean: float, found: list[bool]) -> None:
    # A parallelogram, by hand: its diagonals run over width + lean and over width - lean.
    falling, rising = (math.hypot(20.0 + way * lean, 60.0) * INCH for way in (1, -1))
    diagonals = reading("glass_diagonal", falling, "falling"), reading("glass_diagonal", rising, "rising")
    known = found_with(*diagonals)
    assert [(each["field"], each["grave"]) for each in known] == [("glass_diagonal", grave) for grave in found]
    if found:
        assert known[0]["says"]["terms"]["lean"][0] == pytest.approx(lean * INCH)


def test_diagonals_are_held_against_width_and_height() -> None:
    # 20 by 60 has diagonals of 63.25.
    found = found_with(reading("glass_diagonal", 65 * INCH, "falling"), reading("glass_diagonal", 65 * INCH, "rising"))
    assert [(each["field"], each["grave"]) for each in found] == [("glass_diagonal", True)]
    assert found[0]["says"]["terms"]["off"][0] == pytest.approx((65 - math.hypot(20, 60)) * INCH)


def test_a_twisted_leaf_is_told() -> None:
    assert [each["field"] for each in found_with(leaf_twist=0.25)] == ["leaf_twist"]
    assert found_with(leaf_twist=0.0625) == []


def test_the_leaves_of_a_pair_are_held_against_one_another(stock: VisitStock) -> None:
    visit = house()
    other = leaf_of(visit, "study", "other")
    for each in other["readings"]:
        if each["field"] == "rail_top":
            each.update({"typed": "4 3/4", "mm": 4.75 * INCH})
        if each["field"] == "rail_bottom":
            each.update({"typed": "10 7/16", "mm": 10.4375 * INCH})
    assert house_findings(visit, stock) == [("study", "other", "rail_top"), ("study", "other", "rail_bottom")]
    found = opening_findings(opening_of(visit, "study"), stock, "in")
    assert told(found)[0] == (
        "rail_top",
        "Here it is 4 3/4 in, on its counterpart 4 7/16 in: 5/16 in apart.",
        "Measure it again on both.",
    )


def test_sidelights_are_held_against_one_another(stock: VisitStock) -> None:
    visit = house()
    side = leaf_of(visit, "dining", "right-sidelight")
    side["readings"] = [{**reading("sidelight_width", 330.0), "typed": "330 mm"}]
    assert house_findings(visit, stock) == [("dining", "right-sidelight", "sidelight_width")]


def test_what_a_form_would_refuse_is_told_with_its_limits() -> None:
    found = found_with(glass_recess=40.0)
    assert [(each["field"], each["grave"]) for each in found] == [("glass_recess", True)]
    assert told(found_with(backset=5.0)) == [
        (
            "backset",
            "Unusual: most are between 1 in and 2 7/8 in. Measure again, or leave it if it is so.",
            "",
        )
    ]


def test_a_number_of_panes_has_limits_too() -> None:
    found = found_with(reading("muntin_columns", 99.0))
    assert told(found)[0][:2] == ("muntin_columns", "Panes across must lie between 1 and 12.")


def test_a_text_that_says_another_length_is_told() -> None:
    leaf = leaf_of(house(), "kitchen", "active")
    leaf["readings"] = [{**reading("rail_top", 127.0), "typed": "6"}]
    assert told(leaf_findings(leaf, "in")) == [
        ("rail_top", "6 is written, but 5 in is worked with.", "Write it once more.")
    ]


def test_what_numbers_deny_each_other_is_told_as_in_the_form(stock: VisitStock) -> None:
    visit = house()
    leaf = leaf_of(visit, "kitchen", "active")
    leaf["readings"].append({**reading("handle.gap", 60.0, on="2025-03-13"), "typed": "60 mm"})
    assert house_findings(visit, stock) == [("kitchen", "active", "handle.gap")]


def test_what_the_catalog_does_not_know_is_named(stock: VisitStock) -> None:
    visit = house()
    opening = opening_of(visit, "kitchen")
    assert stand_ins(opening, stock) == []
    opening["preset"] = "no-such-door"
    leaf_of(visit, "kitchen", "active")["handle"] = "no-such-handle"
    proposal_of(visit, "kitchen", "a")["family"] = "no-such-family"
    named = [say(each, ENGLISH, "in") for each in stand_ins(opening, stock)]
    assert [word in text for word, text in zip(("door", "handle", "family"), named, strict=True)] == [True] * 3
