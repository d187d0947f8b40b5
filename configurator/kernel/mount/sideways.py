"""The covering's left and right edges on the leaf, and what held each."""

from configurator.kernel.door.leaf import KNUCKLE, glass_box, leaf_width
from configurator.kernel.door.opening import has_passive
from configurator.kernel.numbers import step_down
from configurator.kernel.sampling import Sample
from configurator.kernel.shapes import Door, Piece, Size

# Common practice: with less air than this a rail does not pass by itself but is guided by hand.
PASSING_AIR = 6.0


def hinge_limit(door: Door, numbers: dict[str, float]) -> float:
    """Return how near the hinge edge a covering may come: to the knuckles, or to the stop that laps the leaf."""
    if door["swing"] == "in":
        return KNUCKLE + numbers["edge_clear"]
    return door["stop_lap"] + numbers["edge_clear"]


def latch_limit(door: Door, numbers: dict[str, float]) -> float:
    """Return how near the latch edge a covering may come: to the astragal, the stop, or the edge itself."""
    edge = leaf_width(door)
    if has_passive(door):
        return edge + door["meeting_gap"] / 2 - door["astragal_width"] / 2 - numbers["edge_clear"]
    return edge - door["stop_lap"] - numbers["edge_clear"]


def held_by(door: Door, by: str) -> str:
    """Return what holds a covering back at the leaf's edge: the stop that laps an out-swing leaf, or what is given."""
    return "stop" if door["swing"] == "out" else by


def passing_depth(samples: list[Sample], part: Piece) -> float:
    """Return how far out the covering reaches, over its travel, at the height of one part of the handle."""
    depth = 0.0
    for sample in samples:
        for piece in sample["pieces"]:
            if piece["z1"] > depth and piece["y0"] < part["y1"] and piece["y1"] > part["y0"]:
                depth = piece["z1"]
    return depth


def handle_limit(
    door: Door, numbers: dict[str, float], samples: list[Sample], handle: list[Piece], spacer: float
) -> float:
    """Return how far towards the latch the covering may reach before a part of the handle is in its way.

    A part with room and air behind it for all that passes is not in the way.
    """
    limit = leaf_width(door)
    for part in handle:
        depth = passing_depth(samples, part)
        if depth > 0 and depth + spacer + PASSING_AIR > part["z0"]:
            limit = min(limit, part["x0"] - numbers["handle_clear"])
    return limit


def set_sideways(door: Door, numbers: dict[str, float], samples: list[Sample], handle: list[Piece], size: Size) -> None:
    """Set the size's left and right edges, its exact width and what limited each side.

    The wanted overlap is cut back by hinges, stiles, stops and handle, but never so far
    that the glass is no longer covered by the least overlap: then the handle is in the way
    and the verdict on passing it says so.
    """
    glass = glass_box(door)
    wanted = numbers["overlap_side"]
    left = max(glass["x0"] - wanted, min(hinge_limit(door, numbers), glass["x0"]))
    edge = latch_limit(door, numbers)
    right = min(glass["x1"] + wanted, edge)
    by = "wanted" if right < edge else held_by(door, "stile")
    if has_passive(door) and by != "wanted":
        by = "other leaf"
    if numbers["cutout_clear"] == 0 and len(handle) > 0:
        stop = max(handle_limit(door, numbers, samples, handle, size["spacer"]), glass["x1"] + numbers["overlap_least"])
        if stop < right:
            right = stop
            by = "handle"
    exact = right - left
    width = step_down(exact, numbers["order_step"])
    size["exact_width"] = exact
    # What the step takes off comes from the side with more to spare.
    if glass["x0"] - left > right - glass["x1"]:
        left = right - width
    else:
        right = left + width
    size["x0"] = left
    size["x1"] = right
    hinge_by = "wanted" if glass["x0"] - left >= wanted - numbers["order_step"] else held_by(door, "hinge")
    size["limits"].append({"side": "hinge", "by": hinge_by, "overlap": glass["x0"] - left})
    size["limits"].append({"side": "latch", "by": by, "overlap": right - glass["x1"]})
