"""Hold-downs: small fixed catches at the foot that keep the bottom rail to the leaf."""

from configurator.kernel.pieces import OPAQUE, box
from configurator.kernel.shapes import Fit, Piece

HOLD_DOWN_WIDTH = 15.0


def hold_down_pieces(fit: Fit) -> list[Piece]:
    """Return a catch behind each end of the bottom rail where it comes when down; none over an opening."""
    numbers = fit["numbers"]
    size = fit["size"]
    if numbers["hold_down"] == 0 or size["mount"] == "over-opening":
        return []
    up = [size["y0"], size["y0"] + numbers["hold_down_height"]]
    out = [0.0, numbers["hold_down_depth"]]
    ends = [[size["x0"], size["x0"] + HOLD_DOWN_WIDTH], [size["x1"] - HOLD_DOWN_WIDTH, size["x1"]]]
    return [box("fixing", "hold-down", [across, up, out], OPAQUE) for across in ends]
