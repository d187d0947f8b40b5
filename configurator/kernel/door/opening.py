"""The opening: which leaves stand in it, in the active leaf's space with its hinges on the left."""

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import (
    PANE,
    door_piece,
    glass_box,
    leaf_box,
    leaf_pieces,
    leaf_width,
    lites_across,
    lites_up,
)
from configurator.kernel.pieces import mirrored, moved
from configurator.kernel.shapes import Box, Door, Piece


def has_passive(door: Door) -> bool:
    """Return whether a second leaf, passive or fixed, meets the active one."""
    return door["layout"] == "pair" or door["layout"] == "fixed-pair"


def across_pair(door: Door, piece: Piece) -> Piece:
    """Return a piece of the active leaf as it stands on the second leaf."""
    return moved(mirrored(piece, leaf_width(door)), leaf_width(door) + door["meeting_gap"], 0.0, 0.0)


# How far the casing's edge stands back from the frame's, where nobody measures: 3/16 in, common practice, no source.
CASING_BACK = 4.7625


def frame_edge(door: Door) -> float:
    """Return how far the frame stands beside the hinge edge, a sidelight between them included.

    The gap beside the hinges is taken to be that at the head: common practice, no source.
    """
    beside = door["sidelight_width"] if door["layout"] == "sidelights" else 0.0
    return beside + door["head_gap"]


def opening_box(door: Door) -> Box:
    """Return the opening in the wall: the leaves, their sidelights and the gap at the head."""
    leaf = leaf_box(door)
    x0 = leaf["x0"]
    x1 = leaf["x1"]
    if has_passive(door):
        x1 = x1 * 2 + door["meeting_gap"]
    if door["layout"] == "sidelights":
        x0 = x0 - door["sidelight_width"]
        x1 = x1 + door["sidelight_width"]
    return {"x0": x0, "x1": x1, "y0": 0.0, "y1": leaf["y1"] + door["head_gap"]}


def sidelight_spans(door: Door) -> list[list[float]]:
    """Return the clear glass spans along x of both sidelights."""
    if door["layout"] != "sidelights":
        return []
    frame = (door["sidelight_width"] - door["sidelight_glass_width"]) / 2
    width = leaf_width(door)
    left = -door["sidelight_width"] + frame
    right = width + frame
    return [[left, left + door["sidelight_glass_width"]], [right, right + door["sidelight_glass_width"]]]


def sidelight_panes(door: Door, x0: float, x1: float) -> list[Piece]:
    """Return the glass of one sidelight, divided into the same rows as the leaf's so that the bars run through."""
    pane = -door["glass_recess"]
    rows = lites_up(door)
    pieces: list[Piece] = []
    for i in range(len(rows)):
        pieces.append(door_piece("glass", [x0, x1], [rows[i][0], rows[i][1]], [pane - PANE, pane]))
        if i > 0:
            front = door["muntin_projection"]
            pieces.append(door_piece("muntin", [x0, x1], [rows[i - 1][1], rows[i][0]], [pane, front]))
    return pieces


def sidelight_pieces(door: Door) -> list[Piece]:
    """Return both sidelights as glass in a frame."""
    leaf = leaf_box(door)
    glass = glass_box(door)
    back = -door["leaf_thickness"]
    pieces: list[Piece] = []
    spans = sidelight_spans(door)
    for i in range(len(spans)):
        x0 = -door["sidelight_width"] if i == 0 else leaf["x1"]
        x1 = x0 + door["sidelight_width"]
        g0 = spans[i][0]
        g1 = spans[i][1]
        pieces.append(door_piece("stile", [x0, g0], [leaf["y0"], leaf["y1"]], [back, 0.0]))
        pieces.append(door_piece("stile", [g1, x1], [leaf["y0"], leaf["y1"]], [back, 0.0]))
        pieces.append(door_piece("rail", [g0, g1], [leaf["y0"], glass["y0"]], [back, 0.0]))
        pieces.append(door_piece("rail", [g0, g1], [glass["y1"], leaf["y1"]], [back, 0.0]))
        pieces.extend(sidelight_panes(door, g0, g1))
    return pieces


def astragal_piece(door: Door) -> Piece:
    """Return the molding that closes the joint of a pair."""
    leaf = leaf_box(door)
    middle = leaf["x1"] + door["meeting_gap"] / 2
    half = door["astragal_width"] / 2
    front = door["astragal_projection"]
    return door_piece("astragal", [middle - half, middle + half], [leaf["y0"], leaf["y1"]], [0.0, front])


def opening_pieces(door: Door) -> list[Piece]:
    """Return every leaf of the opening, without handles."""
    leaf = leaf_pieces(door)
    pieces: list[Piece] = []
    pieces.extend(leaf)
    if has_passive(door):
        for piece in leaf:
            if piece["kind"] != "hinge" or door["layout"] == "pair":
                pieces.append(across_pair(door, piece))
        if door["astragal_width"] > 0:
            pieces.append(astragal_piece(door))
    pieces.extend(sidelight_pieces(door))
    return pieces


def opening_hardware(door: Door) -> list[Piece]:
    """Return the handles of every leaf of the opening."""
    handle = handle_pieces(door)
    pieces: list[Piece] = []
    pieces.extend(handle)
    if has_passive(door) and door["passive_handle"]:
        pieces.extend([across_pair(door, piece) for piece in handle])
    return pieces


def covered_spans(door: Door, whole: bool) -> list[list[float]]:
    """Return the clear glass spans along x: the active leaf's, or those of the ``whole`` opening."""
    spans = lites_across(door)
    if not whole:
        return spans
    every: list[list[float]] = []
    every.extend(spans)
    if has_passive(door):
        far = leaf_width(door) * 2 + door["meeting_gap"]
        for span in spans:
            every.append([far - span[1], far - span[0]])
    every.extend(sidelight_spans(door))
    return every


def length_within(spans: list[list[float]], start: float, end: float) -> float:
    """Return how much of ``start`` to ``end`` lies within the spans."""
    total = 0.0
    for span in spans:
        # Written out rather than called: this runs for every edge of every louver.
        low = span[0] if span[0] > start else start
        high = span[1] if span[1] < end else end
        if high > low:
            total += high - low
    return total


def covered_rows(door: Door) -> list[list[float]]:
    """Return the clear glass spans along y."""
    return lites_up(door)
