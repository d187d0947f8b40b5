"""The covering's top and bottom on the leaf."""

from configurator.kernel.door.leaf import glass_box, leaf_box
from configurator.kernel.mechanisms.roll import full_roll
from configurator.kernel.mount.cassette import cassette_for, has_roll, no_cassette
from configurator.kernel.numbers import step_down
from configurator.kernel.shapes import Cassette, Door, Size

# The head's height and the drop depend on each other; three rounds settle both far below a step.
ROUNDS = 3

RAILS_ONLY = "Its rails alone are higher than the room that this door leaves for it."


def limit_top(door: Door, numbers: dict[str, float]) -> float:
    """Return the highest a covering may reach: short of the leaf's top, and of the stop that laps it."""
    return leaf_box(door)["y1"] - numbers["edge_clear"] - door["stop_lap"]


def limit_bottom(door: Door, numbers: dict[str, float]) -> float:
    """Return the lowest a covering may reach."""
    return leaf_box(door)["y0"] + numbers["edge_clear"]


def wanted_bottom(door: Door, numbers: dict[str, float]) -> float:
    """Return where the lower edge should come: below the glass by the wanted overlap."""
    return max(glass_box(door)["y0"] - numbers["overlap_bottom"], limit_bottom(door, numbers))


def head_of(numbers: dict[str, float], cassette: Cassette, drop: float) -> float:
    """Return the height of the head: headrail, cassette or open roll."""
    if cassette["roll"] > 0:
        return cassette["height"]
    if has_roll(numbers):
        return full_roll(numbers, drop)
    return numbers["headrail_height"]


def top_for(door: Door, numbers: dict[str, float], head: float) -> float:
    """Return the top edge: high enough to keep the head off the glass, if the top rail has the height."""
    return min(limit_top(door, numbers), glass_box(door)["y1"] + max(numbers["rise"], head))


def is_rails_only(numbers: dict[str, float], size: Size) -> bool:
    """Return whether a covering is no higher than its own rails, so that nothing can hang between them."""
    return size["y1"] - size["y0"] <= numbers["headrail_height"] + numbers["rail_height"]


def set_upright(door: Door, numbers: dict[str, float], cassettes: list[Cassette], size: Size) -> None:
    """Set the size's top, bottom, exact height and cassette, or its refusal."""
    bottom = wanted_bottom(door, numbers)
    wants_cassette = has_roll(numbers) and numbers["cassette"] > 0
    cassette = no_cassette()
    top = top_for(door, numbers, numbers["headrail_height"])
    for _ in range(ROUNDS):
        if wants_cassette:
            cassette = cassette_for(cassettes, numbers, top - bottom)
        top = top_for(door, numbers, head_of(numbers, cassette, top - bottom))
    size["cassette"] = cassette
    size["exact_height"] = top - bottom
    size["y1"] = top
    size["y0"] = top - step_down(top - bottom, numbers["order_step"])
    top_by = "wanted" if top < limit_top(door, numbers) else "top edge"
    foot_by = "wanted" if bottom > limit_bottom(door, numbers) else "bottom edge"
    size["limits"].append({"side": "top", "by": top_by, "overlap": top - glass_box(door)["y1"]})
    size["limits"].append({"side": "bottom", "by": foot_by, "overlap": glass_box(door)["y0"] - size["y0"]})
    if wants_cassette and cassette["roll"] == 0:
        size["refusal"] = "The rolled-up cloth is thicker than the largest cassette takes; an open roll may serve."
    if is_rails_only(numbers, size):
        size["refusal"] = RAILS_ONLY
