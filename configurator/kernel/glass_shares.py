"""What of the glass stays visible behind pieces, and what of the view and the light comes through them.

Rays go level and square to the glass. What a ray meets takes its share one after the other, so the optics of pieces
behind each other multiply. A piece's box bounds its cut at every tilt, so a ray meets the piece where it meets the
box; this wants pieces in full detail, for a coarse box bounds a whole run with the gaps in it.
"""

from configurator.kernel.door.opening import covered_rows, covered_spans, length_within, sidelight_spans
from configurator.kernel.fit import over_opening
from configurator.kernel.numbers import distinct_between
from configurator.kernel.shapes import Fit, Piece, Shares


def side_edges(pieces: list[Piece], left: float, right: float) -> list[float]:
    """Return where along x, between ``left`` and ``right``, a piece begins or ends."""
    edges: list[float] = []
    for piece in pieces:
        edges.append(piece["x0"])
        edges.append(piece["x1"])
    return distinct_between(edges, left, right)


def strip_shares(pieces: list[Piece], rows: list[list[float]]) -> list[float]:
    """Return the heights of uncovered glass, view and light in a strip that all the pieces span, lowest piece first."""
    low = rows[0][0]
    top = rows[len(rows) - 1][1]
    count = len(pieces)
    whole = len(rows) == 1
    following = 0
    present: list[Piece] = []
    bare = 0.0
    seen = 0.0
    lit = 0.0
    # Written out rather than called, to each edge in turn: this runs for every edge of every louver.
    while low < top:
        while following < count and pieces[following]["y0"] <= low:
            present.append(pieces[following])
            following += 1
        high = top
        if following < count and pieces[following]["y0"] < top:
            high = pieces[following]["y0"]
        if len(present) == 0:
            clear = high - low if whole else length_within(rows, low, high)
            bare += clear
            seen += clear
            lit += clear
            low = high
            continue
        view = 1.0
        light = 1.0
        for piece in present:
            if piece["y1"] < high:
                high = piece["y1"]
            through = piece["optics"]
            view = view * through["view"]
            light = light * through["light"]
        if high > low:
            clear = high - low if whole else length_within(rows, low, high)
            seen += clear * view
            lit += clear * light
            low = high
        present = [piece for piece in present if piece["y1"] > low]
    return [bare, seen, lit]


def shares_within(spans: list[list[float]], rows: list[list[float]], pieces: list[Piece]) -> Shares:
    """Return the three shares over the windows that the ``spans`` along x and the ``rows`` along y leave open."""
    left = spans[0][0]
    right = spans[0][1]
    for span in spans:
        left = min(left, span[0])
        right = max(right, span[1])
    bottom = rows[0][0]
    top = rows[len(rows) - 1][1]
    area = length_within(spans, left, right) * length_within(rows, bottom, top)
    before = [piece for piece in pieces if piece["y0"] < top and piece["y1"] > bottom]
    before = sorted(before, key=lambda piece: piece["y0"])
    edges = side_edges(before, left, right)
    sums = [0.0, 0.0, 0.0]
    for i in range(len(edges) - 1):
        middle = (edges[i] + edges[i + 1]) / 2
        width = length_within(spans, edges[i], edges[i + 1])
        if width > 0:
            within = [piece for piece in before if piece["x0"] < middle and piece["x1"] > middle]
            strip = strip_shares(within, rows)
            for k in range(3):
                sums[k] += strip[k] * width
    return {"visible": sums[0] / area, "view": sums[1] / area, "light": sums[2] / area, "area": area}


def glass_shares(fit: Fit, pieces: list[Piece]) -> Shares:
    """Return the three shares for a covering's pieces over the active leaf's glass, or the whole opening's.

    Muntins and beads are the door's own and count neither for nor against the covering.
    """
    door = fit["door"]
    return shares_within(covered_spans(door, over_opening(fit)), covered_rows(door), pieces)


def bare_sidelights(fit: Fit) -> float:
    """Return the area, mm2, of the sidelights' glass that stays bare: all of it beside a covering on the leaf."""
    if over_opening(fit):
        return 0.0
    width = 0.0
    for span in sidelight_spans(fit["door"]):
        width += span[1] - span[0]
    height = 0.0
    for row in covered_rows(fit["door"]):
        height += row[1] - row[0]
    return width * height
