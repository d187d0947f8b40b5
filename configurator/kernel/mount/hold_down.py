"""Hold-downs: small fixed catches at the foot that keep the bottom rail to the leaf."""

from configurator.kernel.pieces import solid
from configurator.kernel.shapes import Piece, Size

HOLD_DOWN_KIND = "hold-down"
HOLD_DOWN_WIDTH = 15.0


def hold_down_pieces(numbers: dict[str, float], size: Size) -> list[Piece]:
    """Return a catch behind each end of the bottom rail where it comes when down; none over an opening."""
    pieces: list[Piece] = []
    if numbers["hold_down"] == 0 or size["mount"] == "over-opening":
        return pieces
    y0 = size["y0"]
    y1 = y0 + numbers["hold_down_height"]
    depth = numbers["hold_down_depth"]
    pieces.append(solid(HOLD_DOWN_KIND, size["x0"], size["x0"] + HOLD_DOWN_WIDTH, y0, y1, 0.0, depth))
    pieces.append(solid(HOLD_DOWN_KIND, size["x1"] - HOLD_DOWN_WIDTH, size["x1"], y0, y1, 0.0, depth))
    return pieces
