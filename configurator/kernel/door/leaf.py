"""The leaf and its glass, with the hinges on the left.

Everything is worked out for a leaf hung on the left; :func:`configurator.kernel.pieces.mirrored`
turns the result over for the other hand, so a mirrored door cannot give other figures.
"""

from configurator.kernel.pieces import box
from configurator.kernel.shapes import Box, Door, Piece


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


def leaf_pieces(door: Door) -> list[Piece]:
    """Return the leaf as pieces: stiles, rails, beads, glass, muntins and hinges."""
    leaf = leaf_box(door)
    bead = bead_box(door)
    glass = glass_box(door)
    back = -door["leaf_thickness"]
    proud = door["bead_projection"]
    pieces: list[Piece] = []

    def add(kind: str, x0: float, x1: float, y0: float, y1: float, z0: float, z1: float) -> None:
        clear = 1.0 if kind == "glass" else 0.0
        pieces.append(box("door", kind, x0, x1, y0, y1, z0, z1, clear, clear))

    add("stile", leaf["x0"], bead["x0"], leaf["y0"], leaf["y1"], back, 0.0)
    add("stile", bead["x1"], leaf["x1"], leaf["y0"], leaf["y1"], back, 0.0)
    add("rail", bead["x0"], bead["x1"], leaf["y0"], bead["y0"], back, 0.0)
    add("rail", bead["x0"], bead["x1"], bead["y1"], leaf["y1"], back, 0.0)
    pane = -door["glass_recess"]
    for across in lites_across(door):
        for up in lites_up(door):
            add("glass", across[0], across[1], up[0], up[1], pane - 4.0, pane)
    add("bead", bead["x0"], glass["x0"], bead["y0"], bead["y1"], pane, proud)
    add("bead", glass["x1"], bead["x1"], bead["y0"], bead["y1"], pane, proud)
    add("bead", glass["x0"], glass["x1"], bead["y0"], glass["y0"], pane, proud)
    add("bead", glass["x0"], glass["x1"], glass["y1"], bead["y1"], pane, proud)
    front = door["muntin_projection"]
    columns = lites_across(door)
    for i in range(1, len(columns)):
        add("muntin", columns[i - 1][1], columns[i][0], glass["y0"], glass["y1"], pane, front)
    rows = lites_up(door)
    for i in range(1, len(rows)):
        add("muntin", glass["x0"], glass["x1"], rows[i - 1][1], rows[i][0], pane, front)
    for height in door["hinge_heights"]:
        if door["swing"] == "in":
            add("hinge", -6.0, 6.0, height - 50.0, height + 50.0, 0.0, door["hinge_pin_out"] + 6.0)
        else:
            add("hinge", -6.0, 6.0, height - 50.0, height + 50.0, back - door["hinge_pin_out"] - 6.0, back)
    return pieces
