"""A covering hung on the wall or from the ceiling, across the whole opening."""

from configurator.kernel.contact import FAR, even_samples, tightest
from configurator.kernel.door.leaf import leaf_box
from configurator.kernel.door.obstacles import behind_opening, room_obstacles, side_wall_pieces, stands_out_most
from configurator.kernel.door.opening import has_passive, opening_box
from configurator.kernel.fit import head_down, lowest_edge, made_at, moves_aside
from configurator.kernel.message import is_said, plain
from configurator.kernel.mount.makeable import making_refusal
from configurator.kernel.mount.solid import solid_refusal
from configurator.kernel.mount.spacer import MOVING_AIR, moving_back, push_needed
from configurator.kernel.mount.upright import NO_CASSETTE, RAILS_ONLY, is_rails_only, lacks_cassette
from configurator.kernel.numbers import step_down, step_up
from configurator.kernel.position import coarse, open_position
from configurator.kernel.shapes import Fit, Sample

# Air between the raised stack and the top of a leaf that swings in under it.
OVER_LEAF = 10.0
ROUNDS_OVER = 3
# Nothing of a covering, the widest vane turned, reaches further than this past its own edges.
BEYOND_MOST = 100.0


def set_across(fit: Fit, beyond: float) -> None:
    """Set the left and right edges: past the opening by the wanted overlap, short of the side walls.

    ``beyond`` is how far past its own edges something of the covering reaches, as the outer vanes do when they turn.
    """
    door = fit["door"]
    numbers = fit["numbers"]
    size = fit["size"]
    opening = opening_box(door)
    left = max(opening["x0"] - numbers["over_side"], beyond - door["wall_gap"] + numbers["edge_clear"])
    right = opening["x1"] + numbers["over_side"]
    if has_passive(door):
        right = min(right, opening["x1"] + door["wall_gap"] - numbers["edge_clear"] - beyond)
    size["exact_width"] = right - left
    size["x0"] = left
    size["x1"] = left + step_down(right - left, numbers["order_step"])
    hinge_by = "wall" if left > opening["x0"] - numbers["over_side"] else "wanted"
    size["limits"].append({"side": "hinge", "by": hinge_by, "overlap": opening["x0"] - size["x0"]})
    size["limits"].append({"side": "latch", "by": "wanted", "overlap": size["x1"] - opening["x1"]})


def head_height(fit: Fit) -> float:
    """Return how high what stays above the opening is: the raised stack, or the headrail of what draws aside."""
    if moves_aside(fit):
        return fit["numbers"]["headrail_height"]
    return fit["size"]["y1"] - lowest_edge(made_at(fit, coarse(open_position(fit["numbers"]))))


def set_hung(fit: Fit) -> None:
    """Set top and bottom so that the raised stack clears the leaf's top, as far as the ceiling allows."""
    door = fit["door"]
    numbers = fit["numbers"]
    size = fit["size"]
    ceiling = door["ceiling_height"]
    wanted = leaf_box(door)["y1"] + OVER_LEAF
    size["y0"] = numbers["floor_clear"]
    size["y1"] = min(wanted + numbers["headrail_height"], ceiling)
    if is_rails_only(fit):
        size["refusal"] = plain(RAILS_ONLY)
        return
    for _ in range(ROUNDS_OVER):
        head_down(fit)
        head = head_height(fit)
        size["y1"] = ceiling if numbers["ceiling_fixed"] > 0 else min(wanted + head, ceiling - numbers["edge_clear"])
    size["exact_height"] = size["y1"] - size["y0"]
    size["y0"] = size["y1"] - step_down(size["exact_height"], numbers["order_step"])
    by = "ceiling" if size["y1"] >= ceiling - numbers["edge_clear"] else "wanted"
    size["limits"].append({"side": "top", "by": by, "overlap": size["y1"] - opening_box(door)["y1"]})
    if lacks_cassette(fit):
        size["refusal"] = plain(NO_CASSETTE)
    elif is_rails_only(fit):
        size["refusal"] = plain(RAILS_ONLY)


def reach_beyond(fit: Fit) -> float:
    """Return how far past its left and right edges something of the covering reaches over its travel."""
    size = fit["size"]
    most = 0.0
    for sample in even_samples(fit):
        for piece in sample["pieces"]:
            most = max(most, size["x0"] - piece["x0"], piece["x1"] - size["x1"])
    return most


def set_off_walls(fit: Fit) -> None:
    """Set the edges anew where something of the covering would reach past one of them into a side wall."""
    if not has_side_walls(fit, BEYOND_MOST):
        return
    limits = fit["size"]["limits"]
    beyond = reach_beyond(fit)
    if beyond > fit["numbers"]["edge_clear"] and has_side_walls(fit, beyond):
        fit["size"]["limits"] = [limit for limit in limits if limit["side"] == "top"]
        set_across(fit, beyond)


def has_side_walls(fit: Fit, beyond: float) -> bool:
    """Return whether the covering with what reaches beyond its edges meets a side wall."""
    size = fit["size"]
    for wall in side_wall_pieces(fit["door"]):
        if wall["x1"] > size["x0"] - beyond and wall["x0"] < size["x1"] + beyond:
            return True
    return False


def handle_need(fit: Fit, samples: list[Sample]) -> float:
    """Return how much further out than now it must hang to pass in front of every part of the handle; 0 for enough."""
    place = tightest(fit, samples, fit["handle"])
    if place["air"] >= fit["numbers"]["handle_clear"]:
        return 0.0
    return place["part"]["z1"] + fit["numbers"]["handle_clear"] - place["piece"]["z0"]


def depth_need(fit: Fit, samples: list[Sample]) -> float:
    """Return how much further out than now it must hang for all its depth, at every place, to clear what is behind."""
    back = moving_back(samples) - MOVING_AIR
    if back >= stands_out_most(fit["door"]):
        return 0.0
    behind = [part for part in behind_opening(fit["door"]) if part["z1"] > back]
    return push_needed(fit, samples, behind)


def set_bracket(fit: Fit) -> None:
    """Set the mounting plane: the wall or casing, plus what the covering needs to hang clear of them and the handle."""
    size = fit["size"]
    wall = fit["door"]["reveal"]
    need = max(fit["numbers"]["stand_off"], fit["door"]["casing_projection"])
    more = FAR
    for _ in range(ROUNDS_OVER):
        if more > 0:
            size["spacer"] = need
            size["z0"] = wall + need
            samples = even_samples(fit)
            more = max(depth_need(fit, samples), handle_need(fit, samples))
            need = need + more
    size["exact_spacer"] = need
    size["spacer"] = step_up(need, fit["numbers"]["spacer_step"])
    size["z0"] = wall + size["spacer"]


def set_clear_over(fit: Fit) -> None:
    """Refuse what would stand within the walls, the ceiling or the casing all the same."""
    fit["size"]["refusal"] = solid_refusal(fit, room_obstacles(fit["door"]))


def hang_over_opening(fit: Fit) -> None:
    """Set how a covering hangs over the opening of a door whose active leaf hangs on the left."""
    size = fit["size"]
    set_across(fit, 0.0)
    set_hung(fit)
    if not is_said(size["refusal"]):
        set_off_walls(fit)
        size["refusal"] = making_refusal(fit)
    if not is_said(size["refusal"]):
        set_bracket(fit)
        set_clear_over(fit)
