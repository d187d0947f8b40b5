"""The covering's left and right edges on the leaf, and what held each."""

from configurator.kernel.contact import comes_within, even_samples
from configurator.kernel.door.leaf import KNUCKLE, glass_box, leaf_width
from configurator.kernel.door.opening import has_passive
from configurator.kernel.numbers import step_down
from configurator.kernel.shapes import Door, Fit

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


def handle_limit(fit: Fit, right: float) -> float:
    """Return how far towards the latch the covering may reach, at most to ``right``, before a part of the handle is
    in its way.

    Asked of the covering as wide as wanted. A part is in the way where it has not air enough behind it (or in front,
    above or below) for all that passes, at every place of the travel.
    """
    clear = fit["numbers"]["handle_clear"]
    parts = [part for part in fit["handle"] if part["x0"] - clear < right]
    if len(parts) == 0:
        return right
    samples = even_samples(fit)
    for part in sorted(parts, key=lambda part: part["x0"]):
        if comes_within(fit, samples, part, PASSING_AIR):
            return part["x0"] - clear
    return right


def beside_handle(fit: Fit, right: float) -> float:
    """Return the latch-side edge that a covering keeps which wants to reach to ``right``.

    Overlap is given up beside a handle only where giving it up lets the covering pass, and never so far that less
    than the least overlap is left; where that is not enough it stays, and the verdict says what is in the way.
    """
    if fit["numbers"]["cutout_clear"] > 0 or len(fit["handle"]) == 0:
        return right
    limit = handle_limit(fit, right)
    least = glass_box(fit["door"])["x1"] + fit["numbers"]["overlap_least"]
    stop = max(limit, least)
    if stop >= right or stop >= limit + fit["numbers"]["handle_clear"]:
        return right
    return stop


def set_sideways(fit: Fit) -> None:
    """Set the size's left and right edges, its exact width and what limited each side."""
    door = fit["door"]
    numbers = fit["numbers"]
    size = fit["size"]
    glass = glass_box(door)
    wanted = numbers["overlap_side"]
    left = max(glass["x0"] - wanted, min(hinge_limit(door, numbers), glass["x0"]))
    edge = latch_limit(door, numbers)
    right = min(glass["x1"] + wanted, edge)
    by = "wanted" if right < edge else held_by(door, "stile")
    if has_passive(door) and by != "wanted":
        by = "other leaf"
    stop = beside_handle(fit, right)
    if stop < right:
        right = stop
        by = "handle"
    exact = right - left
    width = step_down(exact, numbers["order_step"])
    # What the step takes off comes from the side with more to spare.
    if glass["x0"] - left > right - glass["x1"]:
        left = right - width
    else:
        right = left + width
    if numbers["width_wanted"] > 0 and numbers["width_wanted"] < width:
        exact = numbers["width_wanted"]
        right = left + step_down(exact, numbers["order_step"])
        by = "width set by hand"
    size["exact_width"] = exact
    size["x0"] = left
    size["x1"] = right
    hinge_by = "wanted" if glass["x0"] - left >= wanted - numbers["order_step"] else held_by(door, "hinge")
    size["limits"].append({"side": "hinge", "by": hinge_by, "overlap": glass["x0"] - left})
    size["limits"].append({"side": "latch", "by": by, "overlap": right - glass["x1"]})
