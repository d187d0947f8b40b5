"""What must hold for every family, every door, every choice and every measurement, whatever the numbers."""

import math
from copy import deepcopy
from fractions import Fraction
from random import Random
from typing import Any

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from configurator.catalog import load
from configurator.catalog.length_advice import read_length
from configurator.kernel.answer import ask
from configurator.kernel.door.leaf import leaf_width
from configurator.kernel.fit import pieces_at
from configurator.kernel.glass_shares import glass_shares
from configurator.kernel.mechanisms.roll import roll_diameter
from configurator.kernel.message import is_said, say, say_working
from configurator.kernel.mount.hung import hung
from configurator.kernel.pieces import mirrored
from configurator.kernel.position import closed_position
from configurator.kernel.scene import scene_at
from configurator.kernel.shapes import Answer, Door, Fit, Piece
from configurator.kernel.tape.table import DOOR_COUNTS, DOOR_LIMITS, HANDLE_LIMITS
from configurator.kernel.tongue import ENGLISH
from configurator.places import CONTENT
from tests.cases import Case, random_case, seeded_case

RANK = {"clears": 0, "guide by hand": 1, "caution": 1, "blocked": 2}
WANTED = [
    *("order_width", "order_height", "stack_height", "stack_over_glass", "visible_glass_open", "visible_glass_closed"),
    *("view_open", "view_closed", "light_open", "light_closed", "projection_open", "projection_closed"),
    *("projection_most", "handle_gap", "clear_width_bare", "clear_width_covered", "covering_mass"),
    *("sight_low", "sight_high"),
]
EIGHTH = 25.4 / 8
LENGTHS = [name for name in DOOR_LIMITS if not name.startswith("glass_") or name in ("glass_width", "glass_height")]
LENGTHS = [name for name in LENGTHS if name not in DOOR_COUNTS]
# Not the fixture: hypothesis prints every argument of a failing test.
CATALOG = load(CONTENT)
# Each number stands for one random configuration, the same on every machine; families take turns.
NUMBERS = st.integers(0, 999_999)


def answer_to(case: Case, **changes: Any) -> Answer:
    """Return the kernel's answer to a case, its door perhaps changed."""
    door = case["door"] | changes
    return ask(door, case["family"], case["choices"], case["household"])


def fit_of(case: Case) -> Fit:
    """Return the covering of a case, hung."""
    return hung(case["door"], case["family"], case["choices"])


def values(answer: Answer) -> dict[str, float]:
    """Return the figures as plain numbers."""
    return {key: figure["value"] for key, figure in answer["figures"].items()}


def states(answer: Answer) -> dict[str, str]:
    """Return the verdicts as plain words."""
    return {key: verdict["state"] for key, verdict in answer["verdicts"].items()}


def assert_ordered(piece: Piece) -> None:
    """Check that a piece is a box with sound shares."""
    for axis in "xyz":
        assert math.isfinite(piece[axis + "0"]), piece
        assert piece[axis + "0"] <= piece[axis + "1"], piece
    assert all(0 <= share <= 1 for share in piece["optics"].values())


@given(NUMBERS)
def test_every_answer_is_whole_or_says_why_not(number: int) -> None:
    case = seeded_case(CATALOG, 0, number)
    answer = answer_to(case)
    if is_said(answer["refusal"]):
        assert say(answer["refusal"], ENGLISH, "in").endswith(".")
        assert answer["figures"] == {}
        return
    found = values(answer)
    assert [key for key in WANTED if key not in found] == []
    assert [key for key, value in found.items() if not math.isfinite(value)] == []
    assert [key for key, value in found.items() if value < 0 and not key.startswith("overlap_")] == []
    assert set(states(answer).values()) <= set(RANK)
    assert all(0 <= verdict["start"] <= verdict["end"] <= 1 for verdict in answer["verdicts"].values())
    assert all(caution["text"] and caution["source"] for caution in answer["cautions"])
    workings = [say_working(figure, ENGLISH, "in") for figure in answer["figures"].values()]
    assert [words for words in workings if "{" in words] == []
    shares = [key for key in found if answer["figures"][key]["unit"] == "share"]
    assert [key for key in shares if found[key] > 1 + 1e-9] == []


@given(NUMBERS)
def test_every_piece_is_ordered(number: int) -> None:
    case = seeded_case(CATALOG, 0, number)
    found = scene_at(fit_of(case), case["place"])
    for piece in [*found["door"], *found["covering"]]:
        assert_ordered(piece)


@given(NUMBERS)
def test_a_mirrored_door_gives_mirrored_pieces_and_the_same_answer(number: int) -> None:
    case = seeded_case(CATALOG, 0, number)
    here, there = (case["door"] | {"hinge_side": side} for side in ("left", "right"))
    rest = (case["family"], case["choices"], case["household"])
    assert ask(here, *rest) == ask(there, *rest)
    width = leaf_width(here)
    left, right = (scene_at(fit_of(case | {"door": door}), case["place"]) for door in (here, there))
    for part in ("door", "covering"):
        turned = [mirrored(piece, width) for piece in left[part]]
        for one, other in zip(turned, right[part], strict=True):
            for edge in ("x0", "x1", "y0", "y1", "z0", "z1"):
                assert one[edge] == pytest.approx(other[edge], abs=1e-9)


@given(NUMBERS)
def test_visible_glass_never_grows_as_it_is_let_down(number: int) -> None:
    case = seeded_case(CATALOG, 0, number)
    fit = fit_of(case)
    assume(not is_said(fit["size"]["refusal"]))
    # What draws to the side spreads its vanes edge-on; that is no lowering.
    assume(len(fit["legs"]) > 0 and fit["legs"][0]["way"] == "down")
    # A slat that lies down on the pile leaves the next one hanging above it: a strip of no more than one slat opens.
    turns = any(leg["way"] == "turn" for leg in fit["legs"])
    parts_apart = fit["numbers"].get("slat_pitch", 0.0) / case["door"]["glass_height"] if turns else 0.0
    last = 1.0
    for step in range(21):
        # Tilted closed: open slats let the glass be seen again once their pile has passed below it.
        pieces = pieces_at(fit, closed_position(fit["numbers"]) | {"lower": step / 20})
        # An open roll grows thinner as it unwinds, and bares a hair of glass above and below itself.
        hanging = [piece for piece in pieces if piece["kind"] != "roll"]
        visible = glass_shares(fit, hanging)["visible"]
        assert visible <= last + parts_apart + 1e-9
        last = visible


@given(NUMBERS)
def test_cloth_is_conserved_as_it_rolls(number: int) -> None:
    rolls = [family for family in CATALOG.families.values() if family["mechanism"] == "rolled"]
    case = random_case(Random(number), CATALOG, rolls[number % len(rolls)])
    fit = fit_of(case)
    assume(not is_said(fit["size"]["refusal"]))
    numbers = fit["numbers"]
    pieces = pieces_at(fit, case["place"])
    roll, cloth = (next(piece for piece in pieces if piece["kind"] == kind) for kind in ("roll", "fabric"))
    wound = cloth["y0"] - numbers["rail_height"] - fit["size"]["y0"]
    expected = roll_diameter(numbers["tube"], numbers["cloth_thickness"], wound + numbers["wraps_spare"])
    assert roll["y1"] - roll["y0"] == pytest.approx(expected)
    assert roll["z1"] - roll["z0"] == pytest.approx(expected)


def rank_of(answer: Answer) -> int:
    """Return how badly a covering passes the handle; one that cannot go on the door "
    "passes it no more than a blocked one."""
    return RANK["blocked"] if is_said(answer["refusal"]) else RANK[answer["verdicts"]["pass_through"]["state"]]


@given(NUMBERS, st.floats(0.0, 60.0))
def test_a_wider_stile_never_makes_a_fit_worse(number: int, more: float) -> None:
    case = seeded_case(CATALOG, 0, number)
    # Over the opening a wider leaf is a wider opening: that is another question.
    assume(answer_to(case)["size"]["mount"] == "on-leaf")
    for stile in ("stile_latch", "stile_hinge"):
        wider = answer_to(case, **{stile: case["door"][stile] + more})
        assert rank_of(wider) <= rank_of(answer_to(case)), stile


@given(NUMBERS, st.floats(0.0, 1.0))
def test_a_deeper_gap_never_makes_passing_the_handle_worse(number: int, share: float) -> None:
    case = seeded_case(CATALOG, 0, number)
    assume(answer_to(case)["size"]["mount"] == "on-leaf")
    handle = case["door"]["handle"]
    # The front stays where it is: a handle that stands out further is in the way of what hangs in front of it.
    deeper = handle | {"gap": handle["gap"] + (handle["projection"] - handle["gap"]) * share}
    assert rank_of(answer_to(case, handle=deeper)) <= rank_of(answer_to(case))


def in_eighths(value: float) -> Fraction:
    """Return a length as whole eighths of an inch."""
    return Fraction(round(value / EIGHTH), 8)


def retaped(door: Door, imperial: bool) -> Door:
    """Return the door as read from a tape in inches, or from the same lengths written in millimeters."""
    copy: Any = deepcopy(door)
    for shape, limits in ((copy, LENGTHS), (copy["handle"], list(HANDLE_LIMITS))):
        for name in limits:
            inches = in_eighths(shape[name])
            whole, rest = divmod(abs(inches), 1)
            sign = -1 if inches < 0 else 1
            written = f"{whole} {rest} in" if rest else f"{whole} in"
            millimeters = f"{float(inches * Fraction('25.4')) * sign:.6f} mm"
            shape[name] = sign * read_length(written if imperial else millimeters)
    return copy


@given(NUMBERS)
def test_inches_and_millimetres_of_the_same_door_agree(number: int) -> None:
    case = seeded_case(CATALOG, 0, number)
    here, there = (case | {"door": retaped(case["door"], imperial)} for imperial in (True, False))
    one, other = answer_to(here), answer_to(there)
    assert one["refusal"]["text"] == other["refusal"]["text"]
    assert values(one) == pytest.approx(values(other), abs=1e-9)
    assert states(one) == states(other)


def steps_of(answer: Answer) -> list[object]:
    """Return all that changes by stated steps: the order's eighths, spacers, cassettes, whole counts, a refusal."""
    size = answer["size"]
    sizes = (size["x1"] - size["x0"], size["y1"] - size["y0"], size["spacer"])
    counts = [figure["value"] for figure in answer["figures"].values() if figure["unit"] == "count"]
    second = values(answer).get("pair_width_passive", 0.0)
    return [
        *(round(length, 3) for length in (*sizes, second)),
        *counts,
        size["cassette"]["name"],
        answer["refusal"]["text"],
    ]


@given(NUMBERS, st.sampled_from(LENGTHS), st.sampled_from([1e-6, -1e-6]))
def test_figures_are_continuous_in_every_measurement_of_the_door(number: int, name: str, change: float) -> None:
    case = seeded_case(CATALOG, 0, number)
    assert_continuous(answer_to(case), answer_to(case, **{name: case["door"][name] + change}))


@given(NUMBERS, st.sampled_from(list(HANDLE_LIMITS)), st.sampled_from([1e-6, -1e-6]))
def test_figures_are_continuous_in_every_measurement_of_the_handle(number: int, name: str, change: float) -> None:
    case = seeded_case(CATALOG, 0, number)
    handle = case["door"]["handle"]
    # No thumb-turn is not the same as one at the spindle.
    assume(name != "turn_above" or handle["turn_above"] > 0)
    assert_continuous(answer_to(case), answer_to(case, handle=handle | {name: handle[name] + change}))


def assert_continuous(here: Answer, there: Answer) -> None:
    """Check that two answers a hair apart differ by a hair, unless a stated step lies between them."""
    assume(steps_of(here) == steps_of(there))
    assert values(there) == pytest.approx(values(here), rel=0, abs=1e-3)
