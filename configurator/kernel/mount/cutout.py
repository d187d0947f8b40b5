"""The cut-out that lets a framed panel sit round the handle."""

from configurator.kernel.door.hardware import handle_axis, worked_reach
from configurator.kernel.shapes import Box, Door, Piece, Size


def cutout_box(door: Door, numbers: dict[str, float], size: Size, handle: list[Piece]) -> Box:
    """Return the opening in the panel from its latch edge to clear every part of the handle, and a lever as it turns.

    All zero where the panel needs none: no clearance asked for, or the panel stops short.
    """
    clear = numbers["cutout_clear"]
    none: Box = {"x0": 0.0, "x1": 0.0, "y0": 0.0, "y1": 0.0}
    if clear == 0 or len(handle) == 0:
        return none
    x0 = handle[0]["x0"]
    reach = worked_reach(door["handle"], handle_axis(door) - size["x1"] - clear)
    y0 = door["handle_height"] - reach
    y1 = door["handle_height"] + reach
    for part in handle:
        x0 = min(x0, part["x0"])
        y0 = min(y0, part["y0"])
        y1 = max(y1, part["y1"])
    if x0 - clear >= size["x1"]:
        return none
    return {"x0": max(x0 - clear, size["x0"]), "x1": size["x1"], "y0": y0 - clear, "y1": y1 + clear}


def without_cutout(size: Size) -> Size:
    """Return the same size for a leaf that has nothing to cut out for."""
    return {
        "refusal": size["refusal"],
        "mount": size["mount"],
        "x0": size["x0"],
        "x1": size["x1"],
        "y0": size["y0"],
        "y1": size["y1"],
        "z0": size["z0"],
        "spacer": size["spacer"],
        "exact_spacer": size["exact_spacer"],
        "exact_width": size["exact_width"],
        "exact_height": size["exact_height"],
        "limits": size["limits"],
        "cutout": {"x0": 0.0, "x1": 0.0, "y0": 0.0, "y1": 0.0},
        "cassette": size["cassette"],
    }
