"""A door, a household and coverings that the tests of the questions share."""

import re
from typing import Any

from configurator.kernel.contact import clustered, nearest_among
from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.looks import no_look
from configurator.kernel.mechanisms.legs import raised_legs
from configurator.kernel.message import say
from configurator.kernel.mount.blank import blank_size
from configurator.kernel.pieces import solid
from configurator.kernel.questions.outline import covering_outline
from configurator.kernel.questions.turn import bare_turn, turn_of
from configurator.kernel.shapes import (
    Door,
    Family,
    Figure,
    Fit,
    Handle,
    Household,
    Message,
    Piece,
    Reply,
    Sample,
    Size,
    Travel,
    Verdict,
)
from configurator.kernel.tongue import ENGLISH

INCH = 25.4

LEVER: Handle = {
    "id": "lever",
    "name": "Lever",
    "kind": "lever",
    "grip_length": 115.0,
    "grip_height": 20.0,
    "gap": 35.0,
    "projection": 57.0,
    "plate_width": 66.0,
    "plate_height": 66.0,
    "plate_thickness": 9.0,
    "plate_below": 0.0,
    "neck": 22.0,
    "turn_above": 0.0,
    "turn_width": 0.0,
    "turn_height": 0.0,
    "turn_projection": 0.0,
}

# A full-lite leaf of 36 x 80 in, hung on the left, swinging in, 6 in from a side wall.
DOOR: Door = {
    "id": "garden",
    "name": "Garden door",
    "layout": "single",
    "swing": "in",
    "hinge_side": "left",
    "leaf_thickness": 44.45,
    "glass_width": 22 * INCH,
    "glass_height": 64 * INCH,
    "stile_hinge": 6 * INCH,
    "stile_latch": 6 * INCH,
    "rail_top": 6 * INCH,
    "rail_bottom": 8 * INCH,
    "bead_width": INCH,
    "bead_projection": 0.0,
    "glass_recess": 12.0,
    "muntin_columns": 1,
    "muntin_rows": 1,
    "muntin_width": 0.0,
    "muntin_projection": 0.0,
    "hinge_pin_out": 8.0,
    "hinge_heights": [200.0, 1000.0, 1800.0],
    "floor_gap": 12.0,
    "wall_gap": 6 * INCH,
    "head_gap": 3.0,
    "ceiling_height": 2440.0,
    "reveal": 0.0,
    "casing_width": 57.0,
    "casing_projection": 17.0,
    "stop_lap": 0.0,
    "meeting_gap": 3.0,
    "astragal_width": 0.0,
    "astragal_projection": 0.0,
    "sidelight_width": 0.0,
    "sidelight_glass_width": 0.0,
    "backset": 2.75 * INCH,
    "handle_height": 36 * INCH,
    "passive_handle": False,
    "glass_light": 0.8,
    "glass_solar": 0.6,
    "glass_u": 1.4,
    "handle": LEVER,
}

HOUSEHOLD: Household = {
    "shoulder_height": 1400.0,
    "person_height": 1700.0,
    "person_distance": 1000.0,
    "outside_eye": 1600.0,
    "outside_distance": 5000.0,
    "outside_level": -300.0,
}

NUMBERS: dict[str, float] = {
    "lower_moves": 1.0,
    "upper_moves": 0.0,
    "tilt_open": 0.0,
    "tilt_moving": 0.0,
    "tilt_closed": 0.0,
    "tilt_far": 0.0,
    "over_opening": 0.0,
    "order_step": 3.175,
    "spacer_step": 6.35,
    "stand_off": 0.0,
    "hold_down": 0.0,
    "cutout_clear": 0.0,
    "handle_clear": 6.0,
    "cloth_view": 0.4,
    "headrail_height": 40.0,
    "hand_follows": 1.0,
    "hand_drop": 0.0,
    "hand_away": 0.0,
    "cord_length": 0.0,
    "loop_length": 0.0,
    "loop_retained": 0.0,
    "cloth_light": 0.4,
    "cloth_mass": 0.5,
    "motor_mass": 0.0,
    "wired": 0.0,
}


def door_with(**changes: Any) -> Door:
    """Return the door with some of its measurements changed."""
    return DOOR | changes


def numbers_with(**changes: float) -> dict[str, float]:
    """Return the covering's numbers with some of them changed."""
    return NUMBERS | changes


def size_with(mount: str = "on-leaf", **changes: Any) -> Size:
    """Return a size of 24 x 68 in over the glass, or with some of it changed."""
    size = blank_size(mount) | {"x0": 150.0, "x1": 150.0 + 24 * INCH, "y0": 190.0, "y1": 190.0 + 68 * INCH}
    return size | changes


FAMILY: Family = {
    "id": "plain-shade",
    "name": "Plain shade",
    "mechanism": "accordion",
    "retired": False,
    "price_level": 0.0,
    "cleaning": "",
    "animals": "",
    "numbers": {},
    "look": no_look(),
    "cassettes": [],
    "choices": [],
}


def fit_with(door: Door = DOOR, size: Size | None = None, **numbers: float) -> Fit:
    """Return a plain shade hung on a door as the size says."""
    given = numbers_with(**numbers)
    return {
        "door": door,
        "family": FAMILY,
        "choices": {},
        "numbers": given,
        "handle": handle_pieces(door),
        "size": size or size_with(),
        "standing": size or size_with(),
        "legs": raised_legs(given),
        "fixings": [],
    }


def travel_of(fit: Fit, samples: list[Sample]) -> Travel:
    """Return a travel through the given places, the first of them open and the last closed."""
    place = nearest_among(samples, clustered(fit["handle"]))
    raised, down = samples[0]["pieces"], samples[-1]["pieces"]
    outline = covering_outline(samples)
    return {
        "fit": fit,
        "samples": samples,
        "handle": place,
        "outline": outline,
        "turn": turn_of(fit, bare_turn(fit["door"]), samples, outline),
        "raised": raised,
        "half": samples[len(samples) // 2]["pieces"],
        "down": down,
        "leaves": [fit],
        "cuts": [{"cloths": [], "bars": []}],
        "tried": False,
    }


def shade_travel(door: Door = DOOR, size: Size | None = None, depth: float = 50.0, **numbers: float) -> Travel:
    """Return the plain shade of :func:`shade` over its travel on a door."""
    fit = fit_with(door, size, **numbers)
    return travel_of(fit, shade_samples(fit["size"], depth))


def said(told: Message, units: str = "in") -> str:
    """Return what a message says in English."""
    return say(told, ENGLISH, units)


def shade(size: Size, lower: float, depth: float = 50.0) -> list[Piece]:
    """Return a plain shade: a headrail, and a cloth down to a bottom rail of 20 mm."""
    head = size["y1"] - 40.0
    edge = head - 100.0 + (size["y0"] - head + 100.0) * lower
    x0, x1, z = size["x0"], size["x1"], size["z0"]
    return [
        solid("headrail", [x0, x1], [head, size["y1"]], [z, z + depth]),
        solid("fabric", [x0, x1], [edge + 20.0, head], [z, z + depth / 2]),
        solid("bottom-rail", [x0, x1], [edge, edge + 20.0], [z, z + depth / 2]),
    ]


def shade_samples(size: Size, depth: float = 50.0) -> list[Sample]:
    """Return the shade over its travel in eleven steps."""
    return [{"leg": 0, "at": i / 10, "pieces": shade(size, i / 10, depth)} for i in range(11)]


def figure_of(reply: Reply, key: str) -> Figure:
    """Return the reply's figure with this id."""
    return {figure["id"]: figure for figure in reply["figures"]}[key]


def value_of(reply: Reply, key: str) -> float:
    """Return the value of the reply's figure with this id."""
    return figure_of(reply, key)["value"]


def verdict_of(reply: Reply, key: str) -> Verdict:
    """Return the reply's verdict with this id."""
    return {verdict["id"]: verdict for verdict in reply["verdicts"]}[key]


def cautions_of(reply: Reply) -> dict[str, str]:
    """Return the reply's cautions, their ids mapped to their texts."""
    return {caution["id"]: said(caution["text"]) for caution in reply["cautions"]}


def assert_workings(reply: Reply) -> None:
    """Check that each figure's template and terms name each other, and that it is no negative number."""
    for figure in reply["figures"]:
        working = figure["working"]
        assert working["rule"] != ""
        named = set(re.findall(r"{(\w+)}", working["rule"] + working["template"]))
        assert named <= set(working["terms"]), figure["id"]
        assert figure["value"] >= 0, figure["id"]
