"""The cut-out that lets a framed panel sit round the handle, and whether the panel can take it."""

from configurator.kernel.door.hardware import handle_axis, worked_reach
from configurator.kernel.fit import made_at
from configurator.kernel.message import message, silence
from configurator.kernel.mount.blank import no_box
from configurator.kernel.position import closed_position, coarse
from configurator.kernel.shapes import Box, Fit, Message, Piece
from configurator.kernel.tongue import wording

# Room for the hand round a grip, wherever it is worked to (common practice, no source).
HAND_ROOM = 40.0


def worked_box(fit: Fit, grip_room: float) -> Box:
    """Return the outline of the whole handle, a lever as it turns too, with so much room round its grip."""
    door = fit["door"]
    handle = fit["handle"]
    clear = fit["numbers"]["cutout_clear"]
    reach = worked_reach(door["handle"], handle_axis(door) - fit["size"]["x1"] - grip_room) + grip_room
    area: Box = {
        "x0": handle[0]["x0"] - clear,
        "x1": handle[0]["x1"] + clear,
        "y0": door["handle_height"] - reach,
        "y1": door["handle_height"] + reach,
    }
    for part in handle:
        room = grip_room if part["kind"] == "grip" else clear
        area["x0"] = min(area["x0"], part["x0"] - room)
        area["x1"] = max(area["x1"], part["x1"] + room)
        area["y0"] = min(area["y0"], part["y0"] - clear)
        area["y1"] = max(area["y1"], part["y1"] + clear)
    return area


def cutout_box(fit: Fit) -> Box:
    """Return the opening in the panel from its latch edge to clear the handle, a lever as it turns, and the hand.

    All zero where the panel needs none: no clearance asked for, or the panel stops short of the handle.
    """
    size = fit["size"]
    clear = fit["numbers"]["cutout_clear"]
    if clear == 0 or len(fit["handle"]) == 0:
        return no_box()
    bare = worked_box(fit, clear)
    if bare["x0"] >= size["x1"] or bare["y0"] >= size["y1"] or bare["y1"] <= size["y0"]:
        return no_box()
    area = worked_box(fit, max(clear, HAND_ROOM))
    return {"x0": max(area["x0"], size["x0"]), "x1": size["x1"], "y0": area["y0"], "y1": area["y1"]}


def whole_panel(fit: Fit) -> list[Piece]:
    """Return the covering's fixed parts as they are before anything is cut out."""
    return made_at({**fit, "size": {**fit["size"], "cutout": no_box()}}, coarse(closed_position(fit["numbers"])))


def cut_rails(fit: Fit) -> list[Piece]:
    """Return the panel's rails that its cut-out runs into, as they are before it is made."""
    hole = fit["size"]["cutout"]
    if hole["x1"] <= hole["x0"]:
        return []
    return [
        piece
        for piece in whole_panel(fit)
        if piece["kind"] == "panel-rail" and piece["y0"] < hole["y1"] and piece["y1"] > hole["y0"]
    ]


def panel_room(pieces: list[Piece]) -> Box:
    """Return what a panel's outermost stiles and rails leave of it for a cut-out: to half the height of either rail.

    Its x runs from the inside of the stile on the hinge side.
    """
    rails = sorted([piece for piece in pieces if piece["kind"] == "panel-rail"], key=lambda piece: piece["y0"])
    stiles = sorted([piece for piece in pieces if piece["kind"] == "panel-stile"], key=lambda piece: piece["x0"])
    if len(rails) == 0 or len(stiles) == 0:
        return no_box()
    low = rails[0]
    high = rails[len(rails) - 1]
    return {
        "x0": stiles[0]["x1"],
        "x1": stiles[len(stiles) - 1]["x1"],
        "y0": (low["y0"] + low["y1"]) / 2,
        "y1": (high["y0"] + high["y1"]) / 2,
    }


def cutout_refusal(fit: Fit) -> Message:
    """Return why the panel cannot take its cut-out, or silence: it must keep its corners and a stile."""
    hole = fit["size"]["cutout"]
    if hole["x1"] <= hole["x0"]:
        return silence()
    room = panel_room(whole_panel(fit))
    if room["x1"] <= room["x0"]:
        return silence()
    if hole["y0"] < room["y0"] or hole["y1"] > room["y1"]:
        text = wording(
            "The cut-out round the handle would run through a corner of the panel: it takes {low} to {high} above the "
            "floor, and the panel can give {start} to {end}, half of either rail kept."
        )
        return message(
            text,
            {
                "low": [hole["y0"], "mm"],
                "high": [hole["y1"], "mm"],
                "start": [room["y0"], "mm"],
                "end": [room["y1"], "mm"],
            },
        )
    if hole["x0"] <= room["x0"]:
        text = wording(
            "The cut-out round the handle would leave no stile on the hinge side: it takes {wide} of the panel, and "
            "there are {least} to that stile."
        )
        terms: dict[str, list[float | str]] = {
            "wide": [hole["x1"] - hole["x0"], "mm"],
            "least": [hole["x1"] - room["x0"], "mm"],
        }
        return message(text, terms)
    return silence()
