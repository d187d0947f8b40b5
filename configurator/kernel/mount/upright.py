"""The covering's top and bottom on the leaf."""

from configurator.kernel.door.leaf import glass_box, leaf_box
from configurator.kernel.fit import head_down
from configurator.kernel.message import plain
from configurator.kernel.numbers import step_down
from configurator.kernel.shapes import Door, Fit
from configurator.kernel.tongue import wording

# The head's height and the drop depend on each other; three rounds settle both far below a step.
ROUNDS = 3

RAILS_ONLY = wording("Its rails alone are higher than the room that this door leaves for it.")
NO_CASSETTE = wording("The rolled-up cloth is thicker than the largest cassette takes; an open roll may serve.")


def limit_top(door: Door, numbers: dict[str, float]) -> float:
    """Return the highest a covering may reach: short of the leaf's top, and of the stop that laps it."""
    return leaf_box(door)["y1"] - numbers["edge_clear"] - door["stop_lap"]


def limit_bottom(door: Door, numbers: dict[str, float]) -> float:
    """Return the lowest a covering may reach."""
    return leaf_box(door)["y0"] + numbers["edge_clear"]


def wanted_bottom(door: Door, numbers: dict[str, float]) -> float:
    """Return where the lower edge should come: below the glass by the wanted overlap."""
    return max(glass_box(door)["y0"] - numbers["overlap_bottom"], limit_bottom(door, numbers))


def top_for(door: Door, numbers: dict[str, float], head: float) -> float:
    """Return the top edge: high enough to keep the head off the glass, if the top rail has the height."""
    return min(limit_top(door, numbers), glass_box(door)["y1"] + max(numbers["rise"], head))


def is_rails_only(fit: Fit) -> bool:
    """Return whether a covering is no higher than its own rails, so that nothing can hang between them."""
    rails = fit["numbers"]["headrail_height"] + fit["numbers"]["rail_height"]
    return fit["size"]["y1"] - fit["size"]["y0"] <= rails


def lacks_cassette(fit: Fit) -> bool:
    """Return whether a cassette is wanted and none takes the roll."""
    return fit["numbers"]["cassette"] > 0 and fit["size"]["cassette"]["roll"] == 0


def set_upright(fit: Fit) -> None:
    """Set the size's top, bottom, exact height and cassette, or its refusal."""
    door = fit["door"]
    numbers = fit["numbers"]
    size = fit["size"]
    bottom = wanted_bottom(door, numbers)
    size["y0"] = bottom
    size["y1"] = top_for(door, numbers, numbers["headrail_height"])
    for _ in range(ROUNDS):
        size["y1"] = top_for(door, numbers, head_down(fit))
    top = size["y1"]
    size["exact_height"] = top - bottom
    size["y0"] = top - step_down(top - bottom, numbers["order_step"])
    top_by = "wanted" if top < limit_top(door, numbers) else "top edge"
    foot_by = "wanted" if bottom > limit_bottom(door, numbers) else "bottom edge"
    size["limits"].append({"side": "top", "by": top_by, "overlap": top - glass_box(door)["y1"]})
    size["limits"].append({"side": "bottom", "by": foot_by, "overlap": glass_box(door)["y0"] - size["y0"]})
    if lacks_cassette(fit):
        size["refusal"] = plain(NO_CASSETTE)
    if is_rails_only(fit):
        size["refusal"] = plain(RAILS_ONLY)
