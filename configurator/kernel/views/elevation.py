"""The elevation: door and covering as seen from the room."""

from configurator.kernel.say import say_length, say_value
from configurator.kernel.shapes import Answer, Door, Drawing, Family, Household, Mark, Piece, Position, Scene
from configurator.kernel.views.dimensions import TIER, Notes, blank_notes, dim_across, dim_upright, noted
from configurator.kernel.views.garden import garden_marks
from configurator.kernel.views.layout import Layout, active_covering, extent, is_over_opening, latch_is_right, layout
from configurator.kernel.views.marks import letters, make_mark, rectangle, rounded, stroke, text_width
from configurator.kernel.views.parts import front_lines
from configurator.kernel.views.roles import held, hides, material
from configurator.kernel.views.subject import subject
from configurator.kernel.views.words import desc_words, title_words

# In parts of the letter size: the first dimension line's distance, and room beyond the last.
FIRST_TIER = 1.7
EDGE_ROOM = 0.8
# The longest words that may stand above or below a short dimension.
WORDS_ROOM = 6.2


def front_rect(piece: Piece, role: str, fade: float) -> Mark:
    """Return a piece's face."""
    return rectangle(role, piece["x0"], -piece["y1"], piece["x1"], -piece["y0"], fade)


def handle_front(door: Door, piece: Piece) -> Mark:
    """Return a part of the handle as seen from the room: knobs and roses round, levers rounded."""
    width = piece["x1"] - piece["x0"]
    height = piece["y1"] - piece["y0"]
    square = abs(width - height) < 0.5
    round_grip = piece["kind"] == "grip" and door["handle"]["kind"] == "knob"
    if round_grip or (square and (piece["kind"] == "plate" or piece["kind"] == "thumb-turn")):
        centre_x = (piece["x0"] + piece["x1"]) / 2
        centre_y = -(piece["y0"] + piece["y1"]) / 2
        return make_mark("circle", "handle seen", [centre_x, centre_y, width / 2])
    if piece["kind"] == "grip":
        return make_mark("polygon", "handle seen", rounded(piece["x0"], -piece["y1"], piece["x1"], -piece["y0"]))
    return front_rect(piece, "handle seen", 1.0)


def by_front(pieces: list[Piece]) -> list[Piece]:
    """Return the pieces from the glass towards the room, as a painter lays them down."""
    return sorted(pieces, key=lambda piece: piece["z1"])


def door_front(scene: Scene, door: Door, frame: Layout) -> list[Mark]:
    """Return what does not move: casing, leaves, and the garden through the glass."""
    marks: list[Mark] = []
    casing = door["casing_width"]
    if casing > 0:
        x0 = frame["x0"] - casing
        x1 = frame["x1"] + casing
        top = -frame["head"] - casing
        marks.append(rectangle("wall seen", x0, top, x1, 0.0, 1.0))
        marks.append(stroke("hair", x0, top, frame["x0"], -frame["head"]))
        marks.append(stroke("hair", x1, top, frame["x1"], -frame["head"]))
    marks.append(rectangle("wall hair", frame["x0"], -frame["head"], frame["x1"], 0.0, 1.0))
    lites: list[Piece] = []
    for piece in scene["door"]:
        if piece["kind"] == "stile" or piece["kind"] == "rail":
            marks.append(front_rect(piece, "leaf seen", 1.0))
        if piece["kind"] == "glass":
            lites.append(piece)
    marks.extend(garden_marks(lites, (frame["glass"]["x0"] + frame["glass"]["x1"]) / 2, frame["leaf1"]))
    for lite in lites:
        marks.append(front_rect(lite, "glass hair", 0.0))
    for kind in ["bead", "muntin", "astragal", "hinge"]:
        for piece in scene["door"]:
            # The hinge of a leaf that opens outwards is behind it.
            if piece["kind"] == kind and piece["z1"] > -door["leaf_thickness"]:
                marks.append(front_rect(piece, material(piece) + " hair", 1.0))
    marks.extend(stop_front(door, frame))
    marks.append(stroke("floor cut", frame["out0"] - frame["size"], 0.0, frame["out1"] + frame["size"], 0.0))
    return marks


def stop_front(door: Door, frame: Layout) -> list[Mark]:
    """Return the stops that lap the room face of a leaf which opens outwards."""
    lap = door["stop_lap"]
    if lap <= 0:
        return []
    x0 = frame["x0"]
    x1 = frame["x1"]
    top = -frame["head"]
    low = -frame["leaf_top"] + lap
    return [
        rectangle("wall hair", x0, top, x0 + lap, 0.0, 1.0),
        rectangle("wall hair", x1 - lap, top, x1, 0.0, 1.0),
        rectangle("wall hair", x0, top, x1, low, 1.0),
    ]


def is_blade(piece: Piece) -> bool:
    """Return whether a piece is one of many narrow ones, which heavier outlines would turn black."""
    return piece["kind"] == "louver" or piece["kind"] == "slat" or piece["kind"] == "vane"


def covering_front(scene: Scene, door: Door, frame: Layout) -> list[Mark]:
    """Return the covering and the handles, those nearer the room in front of the others."""
    pieces: list[Piece] = []
    pieces.extend(scene["covering"])
    for piece in scene["door"]:
        if piece["part"] == "handle" and piece["kind"] != "neck":
            pieces.append(piece)
    marks: list[Mark] = []
    for piece in by_front(pieces):
        if piece["part"] == "handle":
            marks.append(handle_front(door, piece))
        else:
            weight = " hair" if is_blade(piece) else " seen"
            marks.append(front_rect(piece, material(piece) + weight + held(piece, scene["legs"]), hides(piece)))
            marks.extend(front_lines(piece, frame["size"]))
    return marks


def widths_below(notes: Notes, frame: Layout, answer: Answer, units: str, base: float) -> None:
    """Add the glass with both overlaps, and the ordered width below it."""
    glass = frame["glass"]
    order = frame["order"]
    first = base + notes["size"] * FIRST_TIER
    dim_across(
        notes,
        glass["x0"],
        glass["x1"],
        first,
        base,
        say_length(glass["x1"] - glass["x0"], units),
        "after",
        "glass_width",
    )
    if order["x1"] <= order["x0"]:
        return
    left = glass["x0"] - order["x0"]
    right = order["x1"] - glass["x1"]
    if not is_over_opening(answer):
        if left > 0.5:
            dim_across(notes, order["x0"], glass["x0"], first, first, say_length(left, units), "before", "")
        if right > 0.5:
            dim_across(notes, glass["x1"], order["x1"], first, first, say_length(right, units), "after", "")
    width = say_length(order["x1"] - order["x0"], units)
    second = first + notes["size"] * TIER
    # Where the letters are large for the leaf, the bare number still fits between the ticks.
    room = order["x1"] - order["x0"] - notes["size"]
    words = "order " + width if text_width("order " + width, notes["size"]) < room else width
    dim_across(notes, order["x0"], order["x1"], second, base, words, "after", "")


def heights_left(notes: Notes, frame: Layout, answer: Answer, units: str) -> None:
    """Add the glass with both overlaps, and the ordered height beside it."""
    glass = frame["glass"]
    order = frame["order"]
    first = frame["out0"] - notes["size"] * FIRST_TIER
    start = frame["out0"]
    height = say_length(glass["y1"] - glass["y0"], units)
    dim_upright(notes, -glass["y1"], -glass["y0"], first, start, height, "below", "glass_height")
    if order["y1"] <= order["y0"]:
        return
    above = order["y1"] - glass["y1"]
    below = glass["y0"] - order["y0"]
    if not is_over_opening(answer):
        if above > 0.5:
            dim_upright(notes, -order["y1"], -glass["y1"], first, first, say_length(above, units), "above", "")
        if below > 0.5:
            dim_upright(notes, -glass["y0"], -order["y0"], first, first, say_length(below, units), "below", "")
    second = first - notes["size"] * TIER
    height = "order " + say_length(order["y1"] - order["y0"], units)
    dim_upright(notes, -order["y1"], -order["y0"], second, start, height, "below", "")


def is_on_the_way(answer: Answer, frame: Layout, drop: float) -> bool:
    """Return whether the covering travels and is not all the way down, so that its height is worth a dimension."""
    for leg in answer["legs"]:
        if leg["moves"] == "lower":
            return drop > 0 and drop < frame["order"]["y1"] - frame["order"]["y0"] - 0.5
    return False


def drop_words(answer: Answer, drop: float, units: str) -> str:
    """Return what the height of the covering is called at a position."""
    stack = answer["figures"]["stack_height"]["value"] if "stack_height" in answer["figures"] else -1.0
    if abs(drop - stack) < 0.05:
        return "stack " + say_length(drop, units)
    return "down " + say_length(drop, units)


def heights_right(notes: Notes, frame: Layout, scene: Scene, door: Door, answer: Answer, units: str) -> None:
    """Add the handle's height and how far down the covering stands."""
    first = frame["out1"] + notes["size"] * FIRST_TIER
    height = door["handle_height"]
    dim_upright(notes, -height, 0.0, first, frame["out1"], say_length(height, units), "below", "handle_height")
    covering = extent(active_covering(scene, answer))
    drop = covering["y1"] - covering["y0"]
    if is_on_the_way(answer, frame, drop):
        second = first + notes["size"] * TIER
        words = drop_words(answer, drop, units)
        dim_upright(notes, -covering["y1"], -covering["y0"], second, first, words, "below", "")


def handle_cross(notes: Notes, frame: Layout, door: Door) -> None:
    """Add the centre lines of the handle's axis."""
    axis = frame["leaf1"] - door["backset"] if latch_is_right(door) else frame["leaf0"] + door["backset"]
    y = -door["handle_height"]
    reach = notes["size"] * 0.9
    notes["lines"].append(stroke("axis-line", axis - reach, y, axis + reach, y))
    notes["lines"].append(stroke("axis-line", axis, y - reach, axis, y + reach))


def visible_words(answer: Answer, units: str) -> str:
    """Return how much glass stays visible, open and closed; of a veil that stays, how much of the view."""
    figures = answer["figures"]
    if "visible_glass_open" not in figures:
        return ""
    if figures["visible_glass_open"]["value"] <= 0:
        return "view through " + say_value(figures["view_open"]["value"], "share", units)
    opened = say_value(figures["visible_glass_open"]["value"], "share", units)
    shut = say_value(figures["visible_glass_closed"]["value"], "share", units)
    return "visible glass: open " + opened + ", closed " + shut


def notes_base(frame: Layout) -> float:
    """Return the y on the paper under which the level dimensions start: below the words of the upright ones."""
    if frame["order"]["y1"] <= frame["order"]["y0"]:
        return frame["room"]
    return max(frame["room"], -frame["order"]["y0"] + frame["size"] * (WORDS_ROOM - FIRST_TIER + 0.6))


def elevation_notes(scene: Scene, door: Door, answer: Answer, frame: Layout, units: str) -> list[Mark]:
    """Return the elevation's annotation."""
    notes = blank_notes(frame["size"])
    base = notes_base(frame)
    handle_cross(notes, frame, door)
    heights_left(notes, frame, answer, units)
    heights_right(notes, frame, scene, door, answer, units)
    widths_below(notes, frame, answer, units, base)
    words = visible_words(answer, units)
    if words != "":
        middle = (frame["x0"] + frame["x1"]) / 2
        y = base + notes["size"] * (FIRST_TIER + TIER * 2 + 0.1)
        notes["texts"].append(letters("label", middle, y, notes["size"], words, "middle", 0.0))
    return noted(notes)


def top_edge(frame: Layout) -> float:
    """Return the upper edge of elevation and section, y up: above casing, covering and their words."""
    size = frame["size"]
    return max(frame["top"] + size * (EDGE_ROOM + TIER) + frame["room"], frame["order"]["y1"] + size * WORDS_ROOM)


def elevation_window(frame: Layout, view: Drawing) -> Drawing:
    """Set the drawing's window: the opening with room for its annotation, the same at every position."""
    size = frame["size"]
    view["x"] = frame["out0"] - size * (FIRST_TIER + TIER + 1.0 + EDGE_ROOM)
    view["width"] = frame["out1"] + size * (FIRST_TIER + TIER + EDGE_ROOM) - view["x"]
    view["y"] = -top_edge(frame)
    view["height"] = notes_base(frame) + size * (FIRST_TIER + TIER * 2 + EDGE_ROOM) - view["y"]
    return view


def blank_drawing(view: str, names: dict[str, str], answer: Answer, units: str) -> Drawing:
    """Return a drawing with its words and nothing on it."""
    return {
        "id": view,
        "title": title_words(view, names),
        "desc": desc_words(view, names, answer, units),
        "x": 0.0,
        "y": 0.0,
        "width": 0.0,
        "height": 0.0,
        "marks": [],
    }


def elevation_of(scene: Scene, door: Door, answer: Answer, units: str, names: dict[str, str]) -> Drawing:
    """Return the elevation; ``names`` gives the words for ``family``, ``door`` and ``place``."""
    frame = layout(scene, door, answer)
    view = elevation_window(frame, blank_drawing("elevation", names, answer, units))
    view["marks"].extend(door_front(scene, door, frame))
    view["marks"].extend(covering_front(scene, door, frame))
    view["marks"].extend(elevation_notes(scene, door, answer, frame, units))
    return view


def elevation(
    door: Door, family: Family, choices: dict[str, str], place: Position, household: Household, units: str
) -> Drawing:
    """Return the elevation of a family with its choices on a door at a position."""
    given = subject(door, family, choices, place, household)
    return elevation_of(given["scene"], door, given["answer"], units, given["names"])
