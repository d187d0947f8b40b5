"""The vertical section: cut through the middle of the active leaf's glass, the room on the right."""

from configurator.kernel.shapes import Door, Drawing, Leg, Mark, Piece
from configurator.kernel.tongue import in_words
from configurator.kernel.views.covering_front import is_behind
from configurator.kernel.views.dimensions import (
    EDGE_ROOM,
    FIRST_TIER,
    TIER,
    WORDS_ROOM,
    Notes,
    blank_notes,
    dim_across,
    noted,
    said,
    tier,
)
from configurator.kernel.views.draft import Draft, blank_drawing
from configurator.kernel.views.elevation import top_edge
from configurator.kernel.views.elevation_notes import drop_upright, is_on_the_way
from configurator.kernel.views.layout import WALL_DEPTH, Layout, active_covering, front_most
from configurator.kernel.views.marks import hatching, letters, rectangle, stroke
from configurator.kernel.views.parts import LINES_APART, cut_marks, cut_weight, side_bounds
from configurator.kernel.views.roles import held, material
from configurator.kernel.views.walls import wall_back, wall_break, wall_side

# Hatching of cut wood, in parts of the letter size.
WOOD_SPACING = 0.34
# Cloth in so many layers or strips that heavy lines would run together.
LAYERED = ["vane", "sheer", "band"]
# Blades so thin that they are lines, of which there are many.
THIN_BLADES = ["slat", "vane"]
# How far above the wall's break the projection stands, in letters.
PROJECTION_ABOVE = 0.9


def side_rect(piece: Piece, role: str) -> Mark:
    """Return a piece's outline as seen along the wall."""
    return rectangle(role, side_bounds(piece))


def is_cut_at(piece: Piece, x: float) -> bool:
    """Return whether the vertical section passes through a piece."""
    return piece["x0"] < x and piece["x1"] > x


def is_on_leaf(piece: Piece, frame: Layout) -> bool:
    """Return whether a piece of the door belongs to the active leaf."""
    return piece["x0"] < frame["leaf1"] and piece["x1"] > frame["leaf0"]


def from_afar(pieces: list[Piece]) -> list[Piece]:
    """Return the pieces from the farthest to the nearest, looking along x."""
    return sorted(pieces, key=lambda piece: -piece["x0"])


def pieces_cut(pieces: list[Piece], x: float) -> list[Piece]:
    """Return those pieces through which the section passes."""
    return [piece for piece in pieces if is_cut_at(piece, x)]


def pieces_beyond(pieces: list[Piece], x: float) -> list[Piece]:
    """Return those pieces that are seen beyond the section, the farthest first."""
    return from_afar([piece for piece in pieces if piece["x0"] >= x])


def wood_side(piece: Piece, size: float) -> list[Mark]:
    """Return a cut piece of the leaf, hatched as wood."""
    marks = [side_rect(piece, "leaf" + side_weight(piece, size))]
    marks.extend(hatching("hair", side_bounds(piece), size * WOOD_SPACING))
    return marks


def side_weight(piece: Piece, size: float) -> str:
    """Return the line weight of a part that the section cuts."""
    return cut_weight(piece["z1"] - piece["z0"], piece["y1"] - piece["y0"], size)


def floor_side(draft: Draft) -> list[Mark]:
    """Return the cut floor."""
    reach = draft["size"] * 0.6
    back = wall_back(draft["door"]) - reach
    front = room_front(draft) + reach
    return [rectangle("floor", [back, 0.0, front, reach * 0.8]), stroke("floor cut", back, 0.0, front, 0.0)]


def room_front(draft: Draft) -> float:
    """Return how far covering and casing reach into the room."""
    return max(draft["frame"]["front"], draft["door"]["reveal"] + draft["door"]["casing_projection"])


def door_side(draft: Draft) -> list[Mark]:
    """Return the leaf, seen beyond the cut and cut."""
    frame = draft["frame"]
    size = draft["size"]
    leaf = [piece for piece in draft["scene"]["door"] if piece["part"] == "door" and is_on_leaf(piece, frame)]
    marks: list[Mark] = []
    for piece in pieces_beyond(leaf, frame["cut"]):
        if piece["kind"] != "glass" and piece["kind"] != "rail":
            marks.append(side_rect(piece, material(piece) + " hair"))
    for piece in pieces_cut(leaf, frame["cut"]):
        if piece["kind"] == "rail":
            marks.extend(wood_side(piece, size))
        else:
            marks.append(side_rect(piece, cut_door_role(piece, side_weight(piece, size))))
    return marks


def cut_door_role(piece: Piece, weight: str) -> str:
    """Return the classes of a cut part of the door: glass is thin, its two lines must not run together."""
    return "glass hair" if piece["kind"] == "glass" else material(piece) + weight


def handle_side(draft: Draft, role: str) -> list[Mark]:
    """Return the active leaf's handle as seen along the wall."""
    marks: list[Mark] = []
    for piece in draft["scene"]["door"]:
        if piece["part"] == "handle" and is_on_leaf(piece, draft["frame"]):
            marks.append(side_rect(piece, role))
    return marks


def handle_is_beyond(door: Door) -> bool:
    """Return whether the handle lies on the side of the cut that the section looks at."""
    return door["hinge_side"] == "left"


def cut_role(piece: Piece, weight: str, legs: list[Leg]) -> str:
    """Return the classes of a covering's cut part: runs of cloth in a finer line than the rest, layers finest."""
    line = weight
    if piece["kind"] == "fold" and len(piece["outline"]) == 0:
        line = " crease"
    elif piece["kind"] in THIN_BLADES and piece["count"] == 1:
        line = " rim"
    elif piece["count"] > 1 or piece["kind"] in LAYERED:
        line = " seen"
    return material(piece) + line + held(piece, legs)


def layers_apart(pieces: list[Piece], size: float) -> list[Piece]:
    """Return cut pieces with layers of cloth as one where they are too thin to be told apart."""
    result = pieces[:1]
    for piece in pieces[1:]:
        last = result[len(result) - 1]
        thin = last["z1"] - last["z0"] < size * LINES_APART
        if thin and abs(last["z1"] - piece["z0"]) < 1e-6 and is_behind(last, piece):
            result[len(result) - 1] = {**last, "z1": piece["z1"]}
        else:
            result.append(piece)
    return result


def covering_side(draft: Draft) -> list[Mark]:
    """Return the covering cut and seen beyond the cut, and the handle."""
    size = draft["size"]
    x = draft["frame"]["cut"]
    covering = active_covering(draft["scene"], draft["answer"])
    marks: list[Mark] = []
    for piece in pieces_beyond(covering, x):
        marks.append(side_rect(piece, material(piece) + " hair"))
    if handle_is_beyond(draft["door"]):
        marks.extend(handle_side(draft, "handle seen"))
    for piece in layers_apart(pieces_cut(covering, x), size):
        marks.extend(cut_marks(piece, "x", cut_role(piece, side_weight(piece, size), draft["scene"]["legs"]), size))
    if not handle_is_beyond(draft["door"]):
        marks.extend(handle_side(draft, "handle hidden"))
    return marks


def side_projection(notes: Notes, draft: Draft, level: float) -> None:
    """Add how far the covering stands off the leaf's face, at its greatest here, above the height ``level``."""
    front = front_most(active_covering(draft["scene"], draft["answer"]))
    if front <= 0:
        return
    top = -level
    above = tier(top - notes["size"] * PROJECTION_ABOVE, top)
    dim_across(notes, [0.0, front], above, said(notes, front, "after", ""))


def section_notes(draft: Draft, alone: bool) -> list[Mark]:
    """Return the section's annotation; heights are left to the elevation unless it stands ``alone``."""
    size = draft["size"]
    notes = blank_notes(size, draft["words"], draft["units"])
    side_projection(notes, draft, wall_break(draft))
    front = room_front(draft)
    if alone and is_on_the_way(draft):
        drop_upright(notes, draft, tier(front + size * TIER, front))
    y = size * FIRST_TIER
    notes["texts"].append(
        letters("label", [-draft["door"]["leaf_thickness"], y], size, in_words("outside", draft["words"]), "end")
    )
    notes["texts"].append(letters("label", [size * 0.4, y], size, in_words("room", draft["words"]), "start"))
    return noted(notes)


def section_window(draft: Draft, view: Drawing) -> Drawing:
    """Set the section's window; its heights are those of the elevation."""
    size = draft["size"]
    door = draft["door"]
    left = min(door["reveal"] - WALL_DEPTH, -door["leaf_thickness"] - size * 3.6)
    view["x"] = left - size * EDGE_ROOM
    view["width"] = room_front(draft) + size * WORDS_ROOM - view["x"]
    view["y"] = -top_edge(draft)
    view["height"] = size * (FIRST_TIER + EDGE_ROOM) - view["y"]
    return view


def section_still(draft: Draft) -> list[Mark]:
    """Return what does not move: wall, floor and leaf."""
    marks = wall_side(draft)
    marks.extend(floor_side(draft))
    marks.extend(door_side(draft))
    return marks


def section_of(draft: Draft) -> Drawing:
    """Return the vertical section."""
    view = section_window(draft, blank_drawing("section", draft))
    view["marks"].extend(section_still(draft))
    view["marks"].extend(covering_side(draft))
    view["marks"].extend(section_notes(draft, True))
    return view
