"""Can it be fixed: every bracket, holder and frame finds wood or wall for its screws, or a plain reason is given."""

from typing import TypedDict

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.message import message
from configurator.kernel.mount.ground import Ground, ground_for, leaf_thread, screw_clear
from configurator.kernel.numbers import about, clamp
from configurator.kernel.pieces import OPAQUE, box
from configurator.kernel.shapes import Box, Fit, Fixing, Foothold, Message
from configurator.kernel.tongue import wording

# How far a screw keeps off the leaf's far face, and the least thread that holds at all (common practice, no source).
FAR_FACE = 6.0
THREAD_LEAST = 12.0
# Ground that is wanting by less than this, mm, is there on any tape.
GROUND_SLACK = 0.01


class Spot(TypedDict):
    """Where the middle of a foothold's screws comes, and on what; ``far`` is how far it was slid."""

    x: float
    y: float
    far: float
    ground: Ground


def room_in(span: list[float], low: float, high: float, spread: float) -> list[float]:
    """Return where in a span the middle of screws so far apart may stand between two edges; empty where it may not."""
    least = max(span[0], low + spread / 2)
    most = min(span[1], high - spread / 2)
    if least > most + GROUND_SLACK:
        return []
    return [least, max(least, most)]


def spot_for(hold: Foothold, grounds: list[Ground]) -> list[Spot]:
    """Return the nearest place to the wanted one at which all screws of a foothold have ground; none perhaps."""
    best: list[Spot] = []
    for piece in grounds:
        area = piece["box"]
        across = room_in(hold["across"], area["x0"], area["x1"], hold["spread"][0])
        if len(across) == 0:
            continue
        up = room_in(hold["up"], area["y0"], area["y1"], hold["spread"][1])
        if len(up) == 0:
            continue
        x = clamp(hold["x"], across[0], across[1])
        y = clamp(hold["y"], up[0], up[1])
        far = abs(x - hold["x"]) + abs(y - hold["y"])
        if len(best) == 0 or far < best[0]["far"]:
            best = [{"x": x, "y": y, "far": far, "ground": piece}]
            if far == 0:
                return best
    return best


def screw_spots(hold: Foothold, x: float, y: float) -> list[list[float]]:
    """Return the places of a foothold's screws about their middle."""
    count = hold["screws"]
    if count == 1:
        return [[x, y]]
    wide = hold["spread"][0]
    high = hold["spread"][1]
    return [[x + wide * (i / (count - 1) - 0.5), y + high * (i / (count - 1) - 0.5)] for i in range(count)]


def thread_of(fit: Fit, plane: str) -> float:
    """Return how much of each screw is in what it is fixed to."""
    wanted = fit["numbers"]["screw_thread"]
    return leaf_thread(fit["door"], wanted, FAR_FACE) if plane == "leaf" else wanted


def fixing_at(fit: Fit, hold: Foothold, spot: Spot, spacer: float) -> Fixing:
    """Return a foothold fixed at a spot of the leaf, casing or wall, with so much behind it."""
    plate = fit["numbers"]["fixing_plate"]
    plane = spot["ground"]["plane"]
    thread = thread_of(fit, plane)
    back = spot["ground"]["z"]
    out = [back + spacer, back + spacer + plate]
    if hold["kind"] == "screw":
        out = [back - thread, back + spacer + plate]
    elif plane != "leaf":
        out = [back, fit["size"]["z0"]]
    spans = [about(spot["x"], hold["width"]), about(spot["y"], hold["height"]), out]
    return {
        "piece": box("fixing", hold["kind"], spans, OPAQUE),
        "plane": plane,
        "spots": screw_spots(hold, spot["x"], spot["y"]),
        "spacer": spacer,
        "thread": thread,
        "screw": plate + spacer + thread,
    }


def in_ceiling(fit: Fit, hold: Foothold) -> Fixing:
    """Return a headrail's bracket screwed up into the ceiling, on the middle of the headrail's depth."""
    numbers = fit["numbers"]
    top = fit["size"]["y1"]
    plate = numbers["fixing_plate"]
    deep = numbers["headrail_depth"]
    z = fit["size"]["z0"] + deep / 2
    spans = [about(hold["x"], hold["width"]), [top - plate, top], about(z, min(deep, hold["width"]))]
    return {
        "piece": box("fixing", hold["kind"], spans, OPAQUE),
        "plane": "ceiling",
        "spots": screw_spots({**hold, "spread": [hold["spread"][0], 0.0]}, hold["x"], z),
        "spacer": 0.0,
        "thread": numbers["screw_thread"],
        "screw": plate + numbers["screw_thread"],
    }


def reach_past(hold: Foothold, glass: Box) -> float:
    """Return how far past the glass the screws of a foothold can be set at the most; 0 where only before it."""
    wide = hold["spread"][0] / 2
    high = hold["spread"][1] / 2
    sideways = max(glass["x0"] - hold["across"][0] - wide, hold["across"][1] - wide - glass["x1"])
    upright = max(glass["y0"] - hold["up"][0] - high, hold["up"][1] - high - glass["y1"])
    return max(0.0, sideways, upright)


def no_ground(fit: Fit, hold: Foothold) -> Message:
    """Return the reason why a foothold cannot be fixed."""
    held: list[float | str] = [hold["held"], "kind"]
    if fit["size"]["mount"] == "over-opening":
        text = wording("There is neither casing nor wall behind {held} for its screws: the opening lies there.")
        return message(text, {"held": held})
    needed = screw_clear(fit)
    reach = reach_past(hold, glass_box(fit["door"]))
    if reach < needed - GROUND_SLACK:
        text = wording(
            "There is no wood behind {held} for its screws: they must stand {needed} past the glass to be clear of it "
            "and of its bead, and can be set {reach} past it."
        )
        return message(text, {"held": held, "needed": [needed, "mm"], "reach": [reach, "mm"]})
    text = wording("There is no wood for the screws of {held} between the bead, the lock and the leaf's own edge.")
    return message(text, {"held": held})


def set_fixings(fit: Fit) -> None:
    """Find where a covering that is sized is fixed, or set its refusal."""
    holds = MECHANISMS[fit["family"]["mechanism"]]["holds"](fit)
    size = fit["size"]
    over = size["mount"] == "over-opening"
    if over and fit["numbers"]["ceiling_fixed"] > 0:
        fit["fixings"].extend([in_ceiling(fit, hold) for hold in holds])
        return
    if not over and thread_of(fit, "leaf") < min(THREAD_LEAST, fit["numbers"]["screw_thread"]):
        text = wording(
            "The leaf is too thin for its screws: {found} is left for their thread, and {needed} is the least."
        )
        terms: dict[str, list[float | str]] = {
            "found": [thread_of(fit, "leaf"), "mm"],
            "needed": [THREAD_LEAST, "mm"],
        }
        size["refusal"] = message(text, terms)
        return
    grounds = ground_for(fit)
    for hold in holds:
        found = spot_for(hold, grounds)
        if len(found) == 0:
            size["refusal"] = no_ground(fit, hold)
            return
        fit["fixings"].append(fixing_at(fit, hold, found[0], 0.0 if over else size["spacer"]))
