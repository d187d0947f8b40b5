"""A covering hung on the wall or from the ceiling, across the whole opening."""

from configurator.kernel.contact import even_samples, tightest
from configurator.kernel.door.leaf import leaf_box
from configurator.kernel.door.opening import has_passive, opening_box
from configurator.kernel.fit import head_down, lowest_edge, made_at, moves_aside
from configurator.kernel.message import is_said, plain
from configurator.kernel.mount.makeable import making_refusal
from configurator.kernel.mount.upright import NO_CASSETTE, RAILS_ONLY, is_rails_only, lacks_cassette
from configurator.kernel.numbers import step_down, step_up
from configurator.kernel.position import coarse, open_position
from configurator.kernel.shapes import Fit

# Air between the raised stack and the top of a leaf that swings in under it.
OVER_LEAF = 10.0
ROUNDS_OVER = 3


def set_across(fit: Fit) -> None:
    """Set the left and right edges: past the opening by the wanted overlap, short of the side walls."""
    door = fit["door"]
    numbers = fit["numbers"]
    size = fit["size"]
    opening = opening_box(door)
    left = max(opening["x0"] - numbers["over_side"], -door["wall_gap"] + numbers["edge_clear"])
    right = opening["x1"] + numbers["over_side"]
    if has_passive(door):
        right = min(right, opening["x1"] + door["wall_gap"] - numbers["edge_clear"])
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


def handle_need(fit: Fit) -> float:
    """Return how much further out than now it must hang to pass in front of every part of the handle; 0 for enough."""
    place = tightest(fit, even_samples(fit), fit["handle"])
    if place["air"] >= fit["numbers"]["handle_clear"]:
        return 0.0
    return place["part"]["z1"] + fit["numbers"]["handle_clear"] - place["piece"]["z0"]


def set_bracket(fit: Fit) -> None:
    """Set the mounting plane: the wall or casing, plus what the cloth needs to hang clear of the handle."""
    size = fit["size"]
    wall = fit["door"]["reveal"]
    need = max(fit["numbers"]["stand_off"], fit["door"]["casing_projection"])
    for _ in range(ROUNDS_OVER):
        size["z0"] = wall + need
        need = need + handle_need(fit)
    size["exact_spacer"] = need
    size["spacer"] = step_up(need, fit["numbers"]["spacer_step"])
    size["z0"] = wall + size["spacer"]


def hang_over_opening(fit: Fit) -> None:
    """Set how a covering hangs over the opening of a door whose active leaf hangs on the left."""
    size = fit["size"]
    set_across(fit)
    set_hung(fit)
    if not is_said(size["refusal"]):
        size["refusal"] = making_refusal(fit)
    if not is_said(size["refusal"]):
        set_bracket(fit)
