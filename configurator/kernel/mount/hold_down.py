"""Hold-downs: small catches fixed to the leaf under the ends of the bottom rail, where it comes when down.

Each stands on a spacer of its own, so thick that its front reaches at least to the middle of the rail above it.
"""

from configurator.kernel.fit import made_at, moves_aside
from configurator.kernel.mechanisms.holds import BRACKET_SLIDE
from configurator.kernel.message import message, plain, silence
from configurator.kernel.mount.fixing_spots import fixing_at, spot_for
from configurator.kernel.mount.ground import leaf_ground
from configurator.kernel.numbers import step_up
from configurator.kernel.position import closed_position, coarse
from configurator.kernel.shapes import Fit, Fixing, Foothold, Message, Piece
from configurator.kernel.tongue import wording


def held_rails(fit: Fit) -> list[Piece]:
    """Return the bottom rail where it comes when the covering is down and closed; none where it has none."""
    down = made_at(fit, coarse(closed_position(fit["numbers"])))
    return [piece for piece in down if piece["kind"] == "bottom-rail"]


def catch_spacer(fit: Fit, rail: Piece) -> float:
    """Return the stack of stock spacers that brings a catch's front to the middle of the rail's depth, or just past."""
    numbers = fit["numbers"]
    need = (rail["z0"] + rail["z1"]) / 2 - numbers["hold_down_depth"]
    return step_up(need, numbers["spacer_step"]) if need > 0 else 0.0


def catch_hold(fit: Fit, rail: Piece, latch: bool) -> Foothold:
    """Return a catch under one end of the rail, which may be slid along it by a quarter."""
    numbers = fit["numbers"]
    half = numbers["hold_down_width"] / 2
    slide = max(half, (rail["x1"] - rail["x0"]) * BRACKET_SLIDE)
    across = [rail["x1"] - slide, rail["x1"] - half] if latch else [rail["x0"] + half, rail["x0"] + slide]
    y = rail["y0"] - numbers["hold_down_height"] / 2
    return {
        "kind": "hold-down",
        "held": "bottom-rail",
        "x": across[1] if latch else across[0],
        "y": y,
        "across": across,
        "up": [y, y],
        "screws": 1,
        # Its whole foot stands on wood: the screw's clearances already hold its rim off the bead and the leaf's edge.
        "spread": [
            max(0.0, numbers["hold_down_width"] - numbers["screw_edge"] * 2),
            max(0.0, numbers["hold_down_height"] - numbers["bead_clear"] * 2),
        ],
        "width": numbers["hold_down_width"],
        "height": numbers["hold_down_height"],
    }


def catches(fit: Fit, rail: Piece) -> list[Fixing]:
    """Return the catches under both ends of a rail; fewer where an end finds no wood beneath it."""
    spacer = catch_spacer(fit, rail)
    grounds = leaf_ground(fit)
    found: list[Fixing] = []
    for latch in [False, True]:
        hold = catch_hold(fit, rail, latch)
        for spot in spot_for(hold, grounds):
            hold_down = fixing_at(fit, hold, spot, spacer)
            hold_down["piece"]["z0"] = 0.0
            hold_down["piece"]["z1"] = spacer + fit["numbers"]["hold_down_depth"]
            found.append(hold_down)
    return found


def set_hold_downs(fit: Fit) -> None:
    """Add the hold-downs that are wanted to the fixings of a covering, or set its refusal where they hold nothing."""
    if fit["numbers"]["hold_down"] == 0:
        return
    if fit["size"]["mount"] == "over-opening":
        text = wording(
            "Over the opening there is nothing for hold-downs to be fixed to; it can hang there without them."
        )
        fit["size"]["refusal"] = plain(text)
        return
    rails = held_rails(fit)
    if len(rails) == 0 or moves_aside(fit):
        fit["size"]["refusal"] = plain("Hold-downs need a bottom rail that comes down to them, and it has none.")
        return
    found = catches(fit, rails[0])
    fit["fixings"].extend(found)
    fit["size"]["refusal"] = catch_refusal(fit, rails[0], found)


def catch_refusal(fit: Fit, rail: Piece, found: list[Fixing]) -> Message:
    """Return why hold-downs cannot meet the rail, or silence."""
    most = fit["numbers"]["spacer_most"]
    spacer = catch_spacer(fit, rail)
    if spacer > most:
        text = wording(
            "The bottom rail hangs too far out for hold-downs: they need spacers of {needed}, against {made} at most."
        )
        return message(text, {"needed": [spacer, "mm"], "made": [most, "mm"]})
    if len(found) < 2:
        text = wording("There is no wood for the hold-downs under the bottom rail, {low} above the floor.")
        return message(text, {"low": [rail["y0"], "mm"]})
    return silence()
