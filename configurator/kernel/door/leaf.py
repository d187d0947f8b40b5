"""The leaf and its glass, with the hinges on the left.

Everything is worked out for a leaf hung on the left; :func:`configurator.kernel.pieces.mirrored`
turns the result over for the other hand, so a mirrored door cannot give other figures.
"""

from configurator.kernel.pieces import CLEAR, OPAQUE, box
from configurator.kernel.shapes import Box, Door, Piece

# What nobody measures: a pane's thickness, a hinge's height and the radius of its knuckle, which reaches so far over
# the leaf's edge (common practice, no source).
PANE = 4.0
HINGE_HEIGHT = 100.0
KNUCKLE = 6.0


def leaf_width(door: Door) -> float:
    """Return the leaf's width: stiles, beads and glass."""
    return door["stile_hinge"] + door["bead_width"] * 2 + door["glass_width"] + door["stile_latch"]


def leaf_height(door: Door) -> float:
    """Return the leaf's height: rails, beads and glass."""
    return door["rail_top"] + door["bead_width"] * 2 + door["glass_height"] + door["rail_bottom"]


def leaf_box(door: Door) -> Box:
    """Return the leaf's outline."""
    y0 = door["floor_gap"]
    return {"x0": 0.0, "x1": leaf_width(door), "y0": y0, "y1": y0 + leaf_height(door)}


def glass_box(door: Door) -> Box:
    """Return the outline of the glass that shows between the beads."""
    x0 = door["stile_hinge"] + door["bead_width"]
    y0 = door["floor_gap"] + door["rail_bottom"] + door["bead_width"]
    return {"x0": x0, "x1": x0 + door["glass_width"], "y0": y0, "y1": y0 + door["glass_height"]}


def bead_box(door: Door) -> Box:
    """Return the outer outline of the glazing beads."""
    glass = glass_box(door)
    bead = door["bead_width"]
    return {
        "x0": glass["x0"] - bead,
        "x1": glass["x1"] + bead,
        "y0": glass["y0"] - bead,
        "y1": glass["y1"] + bead,
    }


def lite_spans(start: float, end: float, count: int, muntin: float) -> list[list[float]]:
    """Return the ``[start, end]`` spans of clear glass between evenly set muntins; empty where those leave none."""
    lite = max(0.0, (end - start - (count - 1) * muntin) / count)
    return [[start + i * (lite + muntin), start + i * (lite + muntin) + lite] for i in range(count)]


def lites_across(door: Door) -> list[list[float]]:
    """Return the clear spans of the glass along x."""
    glass = glass_box(door)
    return lite_spans(glass["x0"], glass["x1"], door["muntin_columns"], door["muntin_width"])


def lites_up(door: Door) -> list[list[float]]:
    """Return the clear spans of the glass along y."""
    glass = glass_box(door)
    return lite_spans(glass["y0"], glass["y1"], door["muntin_rows"], door["muntin_width"])


def shows_glass(door: Door) -> bool:
    """Return whether the muntins leave any glass between them."""
    lite = lites_across(door)[0]
    row = lites_up(door)[0]
    return lite[1] > lite[0] and row[1] > row[0]


def door_piece(kind: str, across: list[float], up: list[float], out: list[float]) -> Piece:
    """Return a piece of the door; view and light come through glass alone."""
    return box("door", kind, [across, up, out], CLEAR if kind == "glass" else OPAQUE)


def frame_pieces(door: Door) -> list[Piece]:
    """Return stiles and rails."""
    leaf = leaf_box(door)
    bead = bead_box(door)
    back = -door["leaf_thickness"]
    return [
        door_piece("stile", [leaf["x0"], bead["x0"]], [leaf["y0"], leaf["y1"]], [back, 0.0]),
        door_piece("stile", [bead["x1"], leaf["x1"]], [leaf["y0"], leaf["y1"]], [back, 0.0]),
        door_piece("rail", [bead["x0"], bead["x1"]], [leaf["y0"], bead["y0"]], [back, 0.0]),
        door_piece("rail", [bead["x0"], bead["x1"]], [bead["y1"], leaf["y1"]], [back, 0.0]),
    ]


def glass_pieces(door: Door) -> list[Piece]:
    """Return each lite."""
    pane = -door["glass_recess"]
    pieces: list[Piece] = []
    for across in lites_across(door):
        for up in lites_up(door):
            pieces.append(door_piece("glass", [across[0], across[1]], [up[0], up[1]], [pane - PANE, pane]))
    return pieces


def bead_pieces(door: Door) -> list[Piece]:
    """Return the glazing beads, upright ones first."""
    bead = bead_box(door)
    glass = glass_box(door)
    pane = -door["glass_recess"]
    proud = door["bead_projection"]
    return [
        door_piece("bead", [bead["x0"], glass["x0"]], [bead["y0"], bead["y1"]], [pane, proud]),
        door_piece("bead", [glass["x1"], bead["x1"]], [bead["y0"], bead["y1"]], [pane, proud]),
        door_piece("bead", [glass["x0"], glass["x1"]], [bead["y0"], glass["y0"]], [pane, proud]),
        door_piece("bead", [glass["x0"], glass["x1"]], [glass["y1"], bead["y1"]], [pane, proud]),
    ]


def muntin_pieces(door: Door) -> list[Piece]:
    """Return the bars that divide the glass, upright ones first."""
    glass = glass_box(door)
    pane = -door["glass_recess"]
    front = door["muntin_projection"]
    columns = lites_across(door)
    rows = lites_up(door)
    pieces: list[Piece] = []
    for i in range(1, len(columns)):
        x0 = columns[i - 1][1]
        pieces.append(door_piece("muntin", [x0, columns[i][0]], [glass["y0"], glass["y1"]], [pane, front]))
    for i in range(1, len(rows)):
        y0 = rows[i - 1][1]
        pieces.append(door_piece("muntin", [glass["x0"], glass["x1"]], [y0, rows[i][0]], [pane, front]))
    return pieces


def hinge_pieces(door: Door) -> list[Piece]:
    """Return the knuckles, on the face to which the leaf opens."""
    z0 = 0.0
    z1 = door["hinge_pin_out"] + KNUCKLE
    if door["swing"] == "out":
        z1 = -door["leaf_thickness"]
        z0 = z1 - door["hinge_pin_out"] - KNUCKLE
    half = HINGE_HEIGHT / 2
    return [
        door_piece("hinge", [-KNUCKLE, KNUCKLE], [height - half, height + half], [z0, z1])
        for height in door["hinge_heights"]
    ]


def leaf_pieces(door: Door) -> list[Piece]:
    """Return the leaf as pieces: stiles, rails, glass, beads, muntins and hinges."""
    pieces: list[Piece] = []
    pieces.extend(frame_pieces(door))
    pieces.extend(glass_pieces(door))
    pieces.extend(bead_pieces(door))
    pieces.extend(muntin_pieces(door))
    pieces.extend(hinge_pieces(door))
    return pieces
