"""One cloth on a tube, in a cassette or open; it leaves the roll at its back."""

from configurator.kernel.mechanisms.common import lower_edge
from configurator.kernel.mechanisms.roll import (
    ROLL_TAKES,
    cloth_span,
    head_height,
    roll_centre,
    roll_diameter,
    roll_pieces,
)
from configurator.kernel.pieces import box, solid
from configurator.kernel.shapes import Piece, Position, Size

ROLLED_TAKES = ROLL_TAKES


def rolled(numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return roll, cassette or brackets, the hanging cloth and its bottom bar."""
    rail = numbers["rail_height"]
    bottom = lower_edge(size, head_height(numbers, size) + rail, place)
    centre = roll_centre(numbers, size)
    wound = bottom - size["y0"]
    thickness = numbers["cloth_thickness"]
    radius = roll_diameter(numbers["tube"], thickness, wound + numbers["wraps_spare"]) / 2
    back = centre[1] - radius
    cloth = cloth_span(numbers, size)
    pieces = roll_pieces(numbers, size, place, wound)
    hanging = box(
        "covering",
        "fabric",
        cloth[0],
        cloth[1],
        bottom + rail,
        centre[0],
        back,
        back + thickness,
        numbers["cloth_view"],
        numbers["cloth_light"],
    )
    middle = back + thickness / 2
    half = numbers["rail_depth"] / 2
    pieces.append(hanging)
    pieces.append(solid("bottom-rail", cloth[0], cloth[1], bottom, bottom + rail, middle - half, middle + half))
    return pieces
