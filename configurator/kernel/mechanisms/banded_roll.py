"""Two layers of alternating clear and solid bands; a small travel lines them up or overlaps them.

The cloth is one loop: its front end is fixed in the headrail, it turns round the bottom bar and
its back end winds on the roll. So when the bar rises by r, the front bands stay where they are
and the back bands rise by 2r. The workroom sets the loop so that the bands overlap when the
bar is fully down; a quarter of the band pitch higher they line up. ``tilt`` stands for that
small travel: 90 fully down and overlapped, 0 raised by the quarter pitch and lined up.
"""

import math

from configurator.kernel.mechanisms.common import lower_edge
from configurator.kernel.mechanisms.legs import RAISED_WORDS, lower_leg, turning_leg
from configurator.kernel.mechanisms.roll import ROLL_TAKES, bottom_bar, cloth_span, roll_hang, roll_head, roll_pieces
from configurator.kernel.mechanisms.roll_cuts import loop_length, roll_cuts
from configurator.kernel.numbers import clamp
from configurator.kernel.pieces import cloth_optics, optics, veil
from configurator.kernel.shapes import Cuts, Fit, Leg, Piece, Position
from configurator.kernel.tongue import wording

BANDED_ROLL_TAKES: dict[str, list[str | float | None]] = {
    **ROLL_TAKES,
    "band_clear": ["size", None, wording("height of a clear band")],
    "band_solid": [
        "size",
        None,
        wording("height of a solid band; at least that of a clear one, or the bands never close"),
    ],
    "band_view": ["share", None, wording("how much of the view comes through one layer of a solid band")],
    "band_light": ["share", None, wording("how much of the light comes through one layer of a solid band")],
    "layer_gap": ["length", None, wording("from the front of the back layer to the back of the front layer")],
}


def band_pitch(numbers: dict[str, float]) -> float:
    """Return the height of one clear and one solid band together."""
    return numbers["band_clear"] + numbers["band_solid"]


def banded_legs(numbers: dict[str, float]) -> list[Leg]:
    """Return the legs: let down, and the small travel that lines the bands up, which is had only all the way down."""
    legs = [lower_leg(numbers, RAISED_WORDS, ["bottom-rail"])]
    for leg in turning_leg(numbers, "bands", ["band", "sheer"], []):
        leg["alone"] = True
        legs.append(leg)
    return legs


def band_shift(numbers: dict[str, float], place: Position) -> float:
    """Return how far the bar stands above its lowest place because the bands are being lined up."""
    overlapped = clamp(abs(place["tilt"]) / 90.0, 0.0, 1.0)
    return place["lower"] * (1 - overlapped) * band_pitch(numbers) / 4


def band_bottom(fit: Fit, place: Position) -> float:
    """Return the y of the bottom bar's lower edge."""
    stack = roll_head(fit) + fit["numbers"]["rail_height"]
    return lower_edge(fit, stack, place) + band_shift(fit["numbers"], place)


def band_piece(fit: Fit, kind: str, y0: float, y1: float, z: float) -> Piece:
    """Return one band of one layer with its back at ``z``."""
    numbers = fit["numbers"]
    through = optics(numbers["band_view"], numbers["band_light"]) if kind == "band" else cloth_optics(numbers)
    return veil(kind, cloth_span(fit), [y0, y1], [z, z + numbers["cloth_thickness"] / 2], through)


def band_layer(fit: Fit, span: list[float], phase: float, z: float) -> list[Piece]:
    """Return one layer's bands, first those like its uppermost and then the others, each from the top of its span down.

    A solid band starts ``phase`` below the top. Sorted so, a drawing has them as two shapes instead of one a band.
    """
    bottom = span[0]
    top = span[1]
    pitch = band_pitch(fit["numbers"])
    pieces: list[Piece] = []
    start = top - phase + math.ceil(phase / pitch) * pitch
    while start > bottom:
        edge = start - fit["numbers"]["band_solid"]
        if min(start, top) > max(edge, bottom):
            pieces.append(band_piece(fit, "band", max(edge, bottom), min(start, top), z))
        start = start - pitch
        if min(edge, top) > max(start, bottom):
            pieces.append(band_piece(fit, "sheer", max(start, bottom), min(edge, top), z))
    layer = [piece for piece in pieces if piece["kind"] == pieces[0]["kind"]]
    layer.extend([piece for piece in pieces if piece["kind"] != pieces[0]["kind"]])
    return layer


def banded_roll(fit: Fit, place: Position) -> list[Piece]:
    """Return roll and cassette, both layers with their bands, and the bottom bar between them."""
    numbers = fit["numbers"]
    bottom = band_bottom(fit, place)
    wound = bottom - fit["size"]["y0"]
    hang = roll_hang(fit, wound)
    thickness = numbers["cloth_thickness"]
    back = hang["back"]
    front = back + thickness / 2 + numbers["layer_gap"]
    span = [bottom + numbers["rail_height"], hang["y"]]
    pieces = roll_pieces(fit, place, hang)
    if place["coarse"]:
        pieces.append(band_piece(fit, "sheer", span[0], span[1], back))
        pieces.append(band_piece(fit, "sheer", span[0], span[1], front))
    else:
        pieces.extend(band_layer(fit, span, band_pitch(numbers) / 2 - 2 * wound, back))
        pieces.extend(band_layer(fit, span, 0.0, front))
    pieces.append(bottom_bar(fit, bottom, (back + front + thickness / 2) / 2, numbers["rail_depth"]))
    return pieces


def banded_roll_cuts(fit: Fit) -> Cuts:
    """Return the one cloth of both layers, the tube, the cassette and the bottom bar."""
    return roll_cuts(fit, loop_length(fit))
