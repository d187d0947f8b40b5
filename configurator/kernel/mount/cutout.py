"""The cut-out that lets a framed panel sit round the handle."""

from configurator.kernel.door.hardware import handle_axis, worked_reach
from configurator.kernel.mount.blank import no_box
from configurator.kernel.shapes import Box, Fit


def cutout_box(fit: Fit) -> Box:
    """Return the opening in the panel from its latch edge to clear every part of the handle, and a lever as it turns.

    All zero where the panel needs none: no clearance asked for, or the panel stops short.
    """
    door = fit["door"]
    size = fit["size"]
    handle = fit["handle"]
    clear = fit["numbers"]["cutout_clear"]
    if clear == 0 or len(handle) == 0:
        return no_box()
    x0 = handle[0]["x0"]
    reach = worked_reach(door["handle"], handle_axis(door) - size["x1"] - clear)
    y0 = door["handle_height"] - reach
    y1 = door["handle_height"] + reach
    for part in handle:
        x0 = min(x0, part["x0"])
        y0 = min(y0, part["y0"])
        y1 = max(y1, part["y1"])
    if x0 - clear >= size["x1"]:
        return no_box()
    return {"x0": max(x0 - clear, size["x0"]), "x1": size["x1"], "y0": y0 - clear, "y1": y1 + clear}
