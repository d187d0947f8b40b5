"""Light and shade on blades that lap one another: louvers, slats and vanes."""

from configurator.kernel.shapes import Mark, Piece
from configurator.kernel.views.form import cut_tones, joined_bands, tone_mark

# Blades that show less than this of themselves, in parts of the letter size, are lines.
BLADE_FROM = 0.06
# The tone of a vane between sheers that lets no light through, as deep as it is high.
VEILED = -1.5


def edge_low(piece: Piece) -> float:
    """Return a piece's low or left end along its run."""
    return piece["y0"] if piece["axis"] == "x" else piece["x0"]


def edge_high(piece: Piece) -> float:
    """Return a piece's high or right end along its run."""
    return piece["y1"] if piece["axis"] == "x" else piece["x1"]


def is_low_in_front(piece: Piece) -> bool:
    """Return whether a blade is turned so that its low or left edge is the one nearer the room."""
    along = 1 if piece["axis"] == "x" else 0
    low = piece["outline"][0]
    high = piece["outline"][0]
    for point in piece["outline"]:
        if point[along] < low[along]:
            low = point
        if point[along] > high[along]:
            high = point
    return low[1 - along] >= high[1 - along]


def as_lapped(row: list[Piece]) -> list[Piece]:
    """Return a row's pieces from the hindmost to the foremost where turned blades lap one another."""
    if len(row) < 2 or len(row[0]["outline"]) == 0:
        return row
    sign = 1.0 if is_low_in_front(row[0]) else -1.0
    return sorted(row, key=lambda piece: sign * edge_low(piece))


def is_edge_on(piece: Piece, size: float) -> bool:
    """Return whether a blade shows so little of itself that it is a line."""
    return edge_high(piece) - edge_low(piece) < size * BLADE_FROM


def blade_bands(piece: Piece, seen: float) -> list[list[float]]:
    """Return the bands of a blade as :func:`cut_tones` does; so much of it is ``seen`` from its low or left end.

    Light comes to a level vane through its sheers alone: the deeper it reaches from one to the other, the more of it
    is lacking, most at its lower edge towards the room.
    """
    if piece["kind"] != "vane" or piece["axis"] != "x":
        return cut_tones(piece)
    lacking = (1 - piece["optics"]["light"]) * (piece["z1"] - piece["z0"]) / seen
    return [[0.0, seen / 2, max(-1.0, VEILED * lacking)]]


def blade_tones(row: list[Piece], size: float, luster: float) -> list[Mark]:
    """Return the tones of blades that lap, hindmost first: of each what the next one in front leaves to be seen."""
    marks: list[Mark] = []
    if is_edge_on(row[0], size):
        return marks
    for i in range(len(row)):
        piece = row[i]
        start = edge_low(piece)
        low = start
        high = edge_high(piece)
        if i + 1 < len(row):
            other = row[i + 1]
            if edge_low(other) > start:
                high = min(high, edge_low(other))
            else:
                low = max(low, edge_high(other))
        for band in joined_bands(blade_bands(piece, high - start)):
            span = [max(band[0], low - start), min(band[1], high - start)]
            if span[1] > span[0]:
                marks.append(tone_mark(piece, span, band[2], luster))
    return marks
