"""Facts of the trade that every demo family must bear out; common practice, no source.

On the starter content's own doors, with the presets of each family unless a choice is named.
"""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.door.leaf import leaf_height, leaf_width
from configurator.kernel.fit import pieces_at
from configurator.kernel.message import is_said
from configurator.kernel.mount.hung import hung
from configurator.kernel.say import INCH
from configurator.kernel.shapes import Answer

SHADES = (
    "banded-shade",
    "flat-fold-shade",
    "nested-fold-shade",
    "pleated-shade",
    "roller-shade",
    "soft-fold-shade",
    "vane-sheer-shade",
)
ROLLED = ("banded-shade", "roller-shade", "vane-sheer-shade")


def fit(catalog: Catalog, family: str, door: str = "garden-door", glass_height: float = 0.0, **picks: str) -> Answer:
    """Return the answer for a family on a door, its glass made taller or shorter where a height is given."""
    leaf = catalog.doors[door]
    if glass_height > 0:
        leaf = leaf | {"glass_height": glass_height}
    return ask(leaf, catalog.families[family], picks, catalog.household)


def value(answer: Answer, figure: str) -> float:
    """Return a figure's value."""
    assert not is_said(answer["refusal"])
    return answer["figures"][figure]["value"]


def test_there_are_fifteen_families_and_each_offers_two_cloths_or_finishes(catalog: Catalog) -> None:
    assert len(catalog.families) >= 15
    for family in catalog.families.values():
        cloths = [choice for choice in family["choices"] if choice["id"] in ("fabric", "finish")]
        assert len(cloths) == 1, family["id"]
        assert len(cloths[0]["options"]) >= 2, family["id"]


@pytest.mark.parametrize("shade", SHADES)
def test_a_cellular_shade_is_the_lowest_of_the_shades(catalog: Catalog, shade: str) -> None:
    for door in catalog.doors:
        cellular = value(fit(catalog, "cellular-shade", door), "projection_most")
        assert cellular < value(fit(catalog, shade, door), "projection_most")


def test_a_cellular_shade_passes_behind_most_handles(catalog: Catalog) -> None:
    states = [fit(catalog, "cellular-shade", door)["verdicts"]["pass_through"]["state"] for door in catalog.doors]
    assert states.count("clears") > len(states) / 2
    assert "blocked" not in states


def test_a_vane_roll_headrail_stands_about_three_inches_off_the_door(catalog: Catalog) -> None:
    for door in catalog.doors:
        answer = fit(catalog, "vane-sheer-shade", door)
        depth = value(answer, "projection_open") - answer["size"]["spacer"]
        assert depth == pytest.approx(3 * 25.4, abs=7)


def test_an_open_roll_projects_a_little_less_than_a_cassette(catalog: Catalog) -> None:
    for family in ("roller-shade", "banded-shade"):
        for door in catalog.doors:
            cassette = value(fit(catalog, family, door), "projection_most")
            open_roll = value(fit(catalog, family, door, head="open"), "projection_most")
            assert cassette - 38 < open_roll < cassette


@pytest.mark.parametrize("family", ROLLED)
def test_what_rolls_up_leaves_the_glass_clear_but_for_the_headrail(catalog: Catalog, family: str) -> None:
    for door in catalog.doors:
        assert value(fit(catalog, family, door), "visible_glass_open") > 0.97


def test_smaller_louvers_need_less_depth(catalog: Catalog) -> None:
    for door in catalog.doors:
        depths = [
            value(fit(catalog, "louvered-shutter", door, louver=louver), "projection_most")
            for louver in ("1-1-4", "1-7-8", "2-1-2", "3-1-2")
        ]
        assert depths == sorted(depths)
        assert depths[0] < depths[3]


def test_a_nested_fold_stack_keeps_its_height_however_long_the_glass(catalog: Catalog) -> None:
    heights = [
        value(fit(catalog, "nested-fold-shade", "tall-door", glass), "stack_height") for glass in (900, 1400, 2000)
    ]
    assert heights == pytest.approx([heights[0]] * 3)


@pytest.mark.parametrize(
    "family", ["cellular-shade", "flat-fold-shade", "metal-blind", "pleated-shade", "soft-fold-shade", "wood-blind"]
)
def test_other_stacks_grow_with_the_drop(catalog: Catalog, family: str) -> None:
    heights = [value(fit(catalog, family, "tall-door", glass), "stack_height") for glass in (900, 1400, 2000)]
    assert heights[0] < heights[1] < heights[2]


def test_a_soft_fold_shade_hides_some_glass_unless_it_is_set_higher(catalog: Catalog) -> None:
    near = value(fit(catalog, "soft-fold-shade"), "stack_over_glass")
    high = value(fit(catalog, "soft-fold-shade", height="high"), "stack_over_glass")
    assert near > 150
    assert high < near


def test_bands_close_the_view_when_they_overlap_and_open_it_when_they_line_up(catalog: Catalog) -> None:
    answer = fit(catalog, "banded-shade")
    assert answer["closed"]["tilt"] == 90
    # What is left of the view is the bare glass beside the cloth.
    assert value(answer, "view_closed") == pytest.approx(value(answer, "visible_glass_closed"))
    assert value(answer, "sight_view") == 0
    assert answer["verdicts"]["sight"]["state"] == "clears"


def test_what_hangs_over_the_opening_can_clear_the_glass_altogether(catalog: Catalog) -> None:
    for door in ("garden-door", "garden-pair", "veranda-pair"):
        assert value(fit(catalog, "traversing-drapery", door), "visible_glass_open") == 1


def test_cordless_is_offered_first_wherever_something_is_lifted_or_drawn(catalog: Catalog) -> None:
    for family in catalog.families.values():
        for choice in family["choices"]:
            if choice["id"] == "lift":
                first = choice["options"][0]["numbers"]
                assert first.get("loop_length", 0) == 0
                assert first.get("cord_length", 0) == 0


def test_sizes_are_ordered_to_the_eighth_of_an_inch(catalog: Catalog) -> None:
    for door in catalog.doors:
        for family in catalog.families:
            answer = fit(catalog, family, door)
            for size in ("order_width", "order_height"):
                eighths = value(answer, size) / 3.175
                assert eighths == pytest.approx(round(eighths), abs=1e-6), (door, family, size)


def test_gathered_panels_take_one_and_a_half_to_three_times_their_width(catalog: Catalog) -> None:
    for family in ("stretched-panel", "traversing-drapery"):
        given = [option["numbers"] for choice in catalog.families[family]["choices"] for option in choice["options"]]
        fullnesses = [numbers["fullness"] for numbers in given if "fullness" in numbers]
        assert fullnesses
        assert all(1.5 <= fullness <= 3 for fullness in fullnesses)
        assert value(fit(catalog, family), "cloth_widths") >= 1


def test_with_the_lower_rail_held_down_the_upper_one_is_worked_at_shoulder_height(catalog: Catalog) -> None:
    family = catalog.families["cellular-shade"]
    answer = fit(catalog, "cellular-shade", rails="top-down")
    leg = next(leg for leg in answer["legs"] if leg["moves"] == "upper")
    covering = hung(catalog.doors[answer["door"]], family, answer["choices"])
    heights = []
    for place in (leg["start"], leg["end"]):
        assert place["lower"] == 1
        pieces = pieces_at(covering, place)
        heights.append(next(piece["y0"] for piece in pieces if piece["kind"] == "upper-rail"))
    assert heights[0] > catalog.household["shoulder_height"] > heights[1]


def test_north_american_leaves_have_the_usual_sizes_backsets_and_handle_heights(catalog: Catalog) -> None:
    for name in ("garden-door", "garden-pair", "divided-lite-door", "veranda-pair", "tall-door"):
        door = catalog.doors[name]
        assert 24 <= round(leaf_width(door) / INCH, 6) <= 36
        assert round(leaf_height(door) / INCH, 6) in (80, 96)
        assert round(door["backset"] / INCH, 6) in (2.375, 2.75)
        assert round(door["handle_height"] / INCH, 6) == 36
    for name in ("garden-door", "garden-pair", "veranda-pair"):
        assert round(catalog.doors[name]["glass_width"] / INCH, 6) in (20, 22)
        assert round(catalog.doors[name]["glass_height"] / INCH, 6) == 64
