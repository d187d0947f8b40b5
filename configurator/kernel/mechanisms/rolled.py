"""One cloth on a tube, in a cassette or open; it leaves the roll at its back."""

from configurator.kernel.mechanisms.common import lower_edge
from configurator.kernel.mechanisms.roll import ROLL_TAKES, bottom_bar, cloth_span, roll_hang, roll_head, roll_pieces
from configurator.kernel.mechanisms.roll_cuts import roll_cuts, single_length
from configurator.kernel.pieces import cloth_optics, veil
from configurator.kernel.shapes import Cuts, Fit, Piece, Position

ROLLED_TAKES = ROLL_TAKES


def rolled(fit: Fit, place: Position) -> list[Piece]:
    """Return roll, cassette or brackets, the hanging cloth and its bottom bar."""
    numbers = fit["numbers"]
    rail = numbers["rail_height"]
    bottom = lower_edge(fit, roll_head(fit) + rail, place)
    hang = roll_hang(fit, bottom - fit["size"]["y0"])
    thickness = numbers["cloth_thickness"]
    out = [hang["back"], hang["back"] + thickness]
    pieces = roll_pieces(fit, place, hang)
    pieces.append(veil("fabric", cloth_span(fit), [bottom + rail, hang["y"]], out, cloth_optics(numbers)))
    pieces.append(bottom_bar(fit, bottom, hang["back"] + thickness / 2, numbers["rail_depth"]))
    return pieces


def rolled_cuts(fit: Fit) -> Cuts:
    """Return the cloth, the tube, the cassette and the bottom bar."""
    return roll_cuts(fit, single_length(fit))
