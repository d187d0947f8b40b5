"""Two layers of alternating clear and solid bands; a small travel lines them up or overlaps them.

The cloth is one loop: its front end is fixed in the headrail, it turns round the bottom bar and
its back end winds on the roll. So when the bar rises by r, the front bands stay where they are
and the back bands rise by 2r. The workroom sets the loop so that the bands overlap when the
bar is fully down; a quarter of the band pitch higher they line up. ``tilt`` stands for that
small travel: 90 fully down and overlapped, 0 raised by the quarter pitch and lined up.
"""

import math

from configurator.kernel.mechanisms.common import lower_edge
from configurator.kernel.mechanisms.roll import (
    ROLL_TAKES,
    cloth_span,
    head_height,
    roll_centre,
    roll_diameter,
    roll_pieces,
)
from configurator.kernel.numbers import clamp
from configurator.kernel.pieces import box, solid
from configurator.kernel.shapes import Piece, Position, Size

BANDED_ROLL_TAKES: dict[str, list[str | float | None]] = {
    "tube": ROLL_TAKES["tube"],
    "cloth_thickness": ROLL_TAKES["cloth_thickness"],
    "wraps_spare": ROLL_TAKES["wraps_spare"],
    "cassette": ROLL_TAKES["cassette"],
    "roll_clear": ROLL_TAKES["roll_clear"],
    "bracket_gap": ROLL_TAKES["bracket_gap"],
    "band_clear": ["size", None, "height of a clear band"],
    "band_solid": ["size", None, "height of a solid band; at least that of a clear one, or the bands never close"],
    "band_view": ["share", None, "how much of the view comes through one layer of a solid band"],
    "band_light": ["share", None, "how much of the light comes through one layer of a solid band"],
    "layer_gap": ["length", None, "from the front of the back layer to the back of the front layer"],
}


def band_pitch(numbers: dict[str, float]) -> float:
    """Return the height of one clear and one solid band together."""
    return numbers["band_clear"] + numbers["band_solid"]


def band_shift(numbers: dict[str, float], place: Position) -> float:
    """Return how far the bar stands above its lowest place because the bands are being lined up."""
    overlapped = clamp(abs(place["tilt"]) / 90.0, 0.0, 1.0)
    return place["lower"] * (1 - overlapped) * band_pitch(numbers) / 4


def band_bottom(numbers: dict[str, float], size: Size, place: Position) -> float:
    """Return the y of the bottom bar's lower edge."""
    stack = head_height(numbers, size) + numbers["rail_height"]
    return lower_edge(size, stack, place) + band_shift(numbers, place)


def band_piece(numbers: dict[str, float], size: Size, kind: str, y0: float, y1: float, z: float) -> Piece:
    """Return one band of one layer with its back at ``z``."""
    cloth = cloth_span(numbers, size)
    view = numbers["band_view"] if kind == "band" else numbers["cloth_view"]
    light = numbers["band_light"] if kind == "band" else numbers["cloth_light"]
    return box("covering", kind, cloth[0], cloth[1], y0, y1, z, z + numbers["cloth_thickness"] / 2, view, light)


def band_layer(numbers: dict[str, float], size: Size, bottom: float, top: float, phase: float, z: float) -> list[Piece]:
    """Return one layer's bands from the top down; a solid band starts ``phase`` below the top."""
    pitch = band_pitch(numbers)
    solid_height = numbers["band_solid"]
    pieces: list[Piece] = []
    start = top - phase + math.ceil(phase / pitch) * pitch
    while start > bottom:
        edge = start - solid_height
        if min(start, top) > max(edge, bottom):
            pieces.append(band_piece(numbers, size, "band", max(edge, bottom), min(start, top), z))
        start = start - pitch
        if min(edge, top) > max(start, bottom):
            pieces.append(band_piece(numbers, size, "sheer", max(start, bottom), min(edge, top), z))
    return pieces


def banded_roll(numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return roll and cassette, both layers with their bands, and the bottom bar between them."""
    rail = numbers["rail_height"]
    bottom = band_bottom(numbers, size, place)
    wound = bottom - size["y0"]
    centre = roll_centre(numbers, size)
    thickness = numbers["cloth_thickness"]
    back = centre[1] - roll_diameter(numbers["tube"], thickness, wound + numbers["wraps_spare"]) / 2
    front = back + thickness / 2 + numbers["layer_gap"]
    pieces = roll_pieces(numbers, size, place, wound)
    if place["coarse"]:
        pieces.append(band_piece(numbers, size, "sheer", bottom + rail, centre[0], back))
        pieces.append(band_piece(numbers, size, "sheer", bottom + rail, centre[0], front))
    else:
        phase = band_pitch(numbers) / 2 - 2 * wound
        pieces.extend(band_layer(numbers, size, bottom + rail, centre[0], phase, back))
        pieces.extend(band_layer(numbers, size, bottom + rail, centre[0], 0.0, front))
    cloth = cloth_span(numbers, size)
    middle = (back + front + thickness / 2) / 2
    half = numbers["rail_depth"] / 2
    pieces.append(solid("bottom-rail", cloth[0], cloth[1], bottom, bottom + rail, middle - half, middle + half))
    return pieces
