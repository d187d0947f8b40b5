"""The elevation: door and covering as seen from the room."""

from configurator.kernel.shapes import Drawing, Mark, Piece
from configurator.kernel.views.covering_front import covering_front, front_rect
from configurator.kernel.views.dimensions import EDGE_ROOM, FIRST_TIER, TIER, WORDS_ROOM
from configurator.kernel.views.draft import Draft, blank_drawing
from configurator.kernel.views.elevation_notes import elevation_notes, notes_base
from configurator.kernel.views.garden import garden_marks
from configurator.kernel.views.layout import casing_reach
from configurator.kernel.views.marks import rectangle, stroke, wash
from configurator.kernel.views.parts import front_bounds
from configurator.kernel.views.roles import material

# What shows about the opening where it stands alone, mm.
ALONE_MARGIN = 90.0


def casing_front(draft: Draft) -> list[Mark]:
    """Return the casing with its mitres, and the opening within it."""
    frame = draft["frame"]
    marks: list[Mark] = []
    casing = casing_reach(draft["door"])
    if casing > 0:
        x0 = frame["x0"] - casing
        x1 = frame["x1"] + casing
        top = -frame["head"] - casing
        marks.append(rectangle("wall seen", [x0, top, x1, 0.0]))
        marks.append(stroke("hair", x0, top, frame["x0"], -frame["head"]))
        marks.append(stroke("hair", x1, top, frame["x1"], -frame["head"]))
    marks.append(rectangle("wall hair", [frame["x0"], -frame["head"], frame["x1"], 0.0]))
    return marks


def door_front(draft: Draft) -> list[Mark]:
    """Return what does not move: casing, leaves, and the garden through the glass."""
    frame = draft["frame"]
    pieces = draft["scene"]["door"]
    marks = casing_front(draft)
    lites: list[Piece] = []
    for piece in pieces:
        if piece["kind"] == "stile" or piece["kind"] == "rail":
            marks.append(front_rect(piece, "leaf seen"))
        if piece["kind"] == "glass":
            lites.append(piece)
    marks.extend(garden_marks(lites, (frame["glass"]["x0"] + frame["glass"]["x1"]) / 2, frame["leaf1"]))
    for lite in lites:
        marks.append(wash("glass hair", front_bounds(lite), 0.0))
    for kind in ["bead", "muntin", "astragal", "hinge"]:
        for piece in pieces:
            # The hinge of a leaf that opens outwards is behind it.
            if piece["kind"] == kind and piece["z1"] > -draft["door"]["leaf_thickness"]:
                marks.append(front_rect(piece, material(piece) + " hair"))
    marks.extend(stop_front(draft))
    size = draft["size"]
    marks.append(stroke("floor cut", frame["out0"] - size, 0.0, frame["out1"] + size, 0.0))
    return marks


def stop_front(draft: Draft) -> list[Mark]:
    """Return the stops that lap the room face of a leaf which opens outwards."""
    lap = draft["door"]["stop_lap"]
    if lap <= 0:
        return []
    frame = draft["frame"]
    gap = draft["door"]["head_gap"]
    x0 = frame["x0"]
    x1 = frame["x1"]
    top = -frame["head"]
    low = -frame["leaf_top"] + lap
    return [
        rectangle("wall hair", [x0, top, x0 + gap + lap, 0.0]),
        rectangle("wall hair", [x1 - gap - lap, top, x1, 0.0]),
        rectangle("wall hair", [x0, top, x1, low]),
    ]


def top_edge(draft: Draft) -> float:
    """Return the upper edge of elevation and section, y up: above casing, covering and their words."""
    size = draft["size"]
    frame = draft["frame"]
    return max(frame["top"] + size * (EDGE_ROOM + TIER) + draft["room"], frame["order"]["y1"] + size * WORDS_ROOM)


def elevation_window(draft: Draft, view: Drawing) -> Drawing:
    """Set the drawing's window: the opening with room for its annotation, the same at every position."""
    size = draft["size"]
    view["x"] = draft["frame"]["out0"] - size * (FIRST_TIER + TIER + 1.0 + EDGE_ROOM)
    view["width"] = draft["frame"]["out1"] + size * (FIRST_TIER + TIER + EDGE_ROOM) - view["x"]
    view["y"] = -top_edge(draft)
    view["height"] = notes_base(draft) + size * (FIRST_TIER + TIER * 2 + EDGE_ROOM) - view["y"]
    return view


def elevation_of(draft: Draft) -> Drawing:
    """Return the elevation."""
    view = elevation_window(draft, blank_drawing("elevation", draft))
    view["marks"].extend(door_front(draft))
    view["marks"].extend(covering_front(draft))
    view["marks"].extend(elevation_notes(draft))
    return view


def elevation_alone(draft: Draft) -> Drawing:
    """Return door and covering without annotation in a window that stands on the floor, which it leaves out."""
    frame = draft["frame"]
    view = blank_drawing("elevation", draft)
    view["marks"].extend([mark for mark in door_front(draft) if mark["role"] != "floor cut"])
    view["marks"].extend(covering_front(draft))
    view["x"] = frame["out0"] - ALONE_MARGIN
    view["width"] = frame["out1"] + ALONE_MARGIN - view["x"]
    view["height"] = frame["top"] + ALONE_MARGIN
    view["y"] = -view["height"]
    return view
