"""The drawing sheet: elevation, section and plan on shared axes, with a title block, to a usual scale."""

from configurator.kernel.say import INCH, TAPE, in_fractions
from configurator.kernel.shapes import Answer, Door, Drawing, Family, Household, Mark, Position, Scene
from configurator.kernel.views.elevation import (
    blank_drawing,
    covering_front,
    door_front,
    elevation_notes,
    elevation_window,
    top_edge,
)
from configurator.kernel.views.layout import Layout, layout
from configurator.kernel.views.marks import letters, make_mark, shifted, stroke
from configurator.kernel.views.plan import covering_top, door_top, plan_notes, plan_window
from configurator.kernel.views.section import covering_side, section_notes, section_still, section_window
from configurator.kernel.views.subject import subject

# Letters on paper, and what both A4 and Letter have room for within their margins, mm.
PAPER_LETTERS = 2.8
PAPER_WIDTH = 180.0
PAPER_HEIGHT = 245.0
METRIC_SCALES = [5.0, 10.0, 20.0, 25.0, 50.0, 100.0]
INCH_SCALES = [8.0, 12.0, 16.0, 24.0, 32.0, 48.0, 96.0]
# In letters: between two views, round the sheet, and the title block's rows.
VIEW_GAP = 1.0
SHEET_EDGE = 0.8
BLOCK_ROW = 2.7
SECTION_ROOM = 1.3


def blank_view() -> Drawing:
    """Return a drawing of which only the window is wanted."""
    return {"id": "", "title": "", "desc": "", "x": 0.0, "y": 0.0, "width": 0.0, "height": 0.0, "marks": []}


def lettered(frame: Layout, scale: float) -> None:
    """Set letters and room in the layout for a sheet at a scale."""
    frame["size"] = PAPER_LETTERS * scale
    frame["room"] = frame["size"] * SECTION_ROOM


def sheet_windows(door: Door, frame: Layout) -> list[Drawing]:
    """Return the windows of elevation, section and plan, and around them that of the sheet."""
    size = frame["size"]
    front = elevation_window(frame, blank_view())
    side = section_window(door, frame, blank_view())
    top = plan_window(door, frame, blank_view())
    whole = blank_view()
    gap = size * VIEW_GAP
    edge = size * SHEET_EDGE
    whole["x"] = front["x"] - edge
    whole["y"] = front["y"] - edge
    whole["width"] = front["width"] + side["width"] + gap + edge * 2
    whole["height"] = front["height"] + top["height"] + gap * 2 + size * BLOCK_ROW * 2 + edge
    return [front, side, top, whole]


def section_shift(front: Drawing, side: Drawing, gap: float) -> float:
    """Return how far right the section goes to stand beside the elevation, with a gap between their windows."""
    return front["x"] + front["width"] + gap - side["x"]


def plan_shift(front: Drawing, top: Drawing, gap: float) -> float:
    """Return how far down the plan goes to lie below the elevation, with a gap between their windows."""
    return front["y"] + front["height"] + gap - top["y"]


def usual_scales(units: str) -> list[float]:
    """Return the usual scales 1:n, largest first; in inches those of whole or broken inches to the foot."""
    return INCH_SCALES if units == "in" else METRIC_SCALES


def fitting_scale(door: Door, frame: Layout, units: str) -> float:
    """Return the largest usual scale at which the sheet fits the paper, and letter the layout for it."""
    scales = usual_scales(units)
    for scale in scales:
        lettered(frame, scale)
        whole = sheet_windows(door, frame)[3]
        if whole["width"] <= PAPER_WIDTH * scale and whole["height"] <= PAPER_HEIGHT * scale:
            return scale
    return scales[len(scales) - 1]


def scale_words(scale: float, units: str) -> str:
    """Return a scale as a title block writes it."""
    ratio = str(int(scale))
    if units == "in":
        return in_fractions(INCH * 12 / scale, TAPE) + " in = 1 ft (1:" + ratio + ")"
    return "1:" + ratio


def section_line(frame: Layout) -> list[Mark]:
    """Return the marks of where the section is cut, above and below the elevation."""
    size = frame["size"]
    x = frame["cut"]
    top = -frame["top"] - size * 0.4
    marks: list[Mark] = []
    for y in [top, size * 1.25]:
        marks.append(stroke("cut", x, y - size * 0.9, x, y))
        arrow = y - size * 0.9 if y < 0 else y
        marks.append(make_mark("polyline", "seen", [x, arrow, x + size * 0.8, arrow]))
        marks.append(letters("title", x - size * 0.3, y - size * 0.1, size, "A", "end", 0.0))
    return marks


def block_field(marks: list[Mark], x: float, y: float, size: float, name: str, words: str) -> None:
    """Add one field of the title block: a small name over the words."""
    marks.append(letters("label", x + size * 0.6, y + size * 1.0, size * 0.75, name, "start", 0.0))
    marks.append(letters("title", x + size * 0.6, y + size * 2.25, size, words, "start", 0.0))


def title_block(whole: Drawing, size: float, names: dict[str, str], scale: str) -> list[Mark]:
    """Return the sheet's border and the block that says what, where it stands, which door and which scale."""
    row = size * BLOCK_ROW
    x0 = whole["x"]
    x1 = x0 + whole["width"]
    y1 = whole["y"] + whole["height"]
    y0 = y1 - row * 2
    middle = x0 + whole["width"] * 0.6
    marks: list[Mark] = []
    marks.append(stroke("hair", x0, y0 + row, x1, y0 + row))
    marks.append(stroke("hair", middle, y0, middle, y1))
    marks.append(stroke("seen", x0, y0, x1, y0))
    marks.append(make_mark("polyline", "cut", [x0, whole["y"], x1, whole["y"], x1, y1, x0, y1, x0, whole["y"]]))
    block_field(marks, x0, y0, size, "covering", names["family"])
    block_field(marks, middle, y0, size, "position", names["place"])
    block_field(marks, x0, y0 + row, size, "door", names["door"])
    block_field(marks, middle, y0 + row, size, "scale", scale)
    return marks


def captions(frame: Layout, side_x: float, top: Drawing, top_y: float) -> list[Mark]:
    """Return the names of the three views."""
    size = frame["size"]
    y = -top_edge(frame) + size
    plan_y = top["y"] + top_y + size
    return [
        letters("label", frame["out0"], y, size, "elevation", "start", 0.0),
        letters("label", side_x, y, size, "section A", "start", 0.0),
        letters("label", top["x"], plan_y, size, "plan", "start", 0.0),
    ]


def sheet_of(scene: Scene, door: Door, answer: Answer, units: str, names: dict[str, str]) -> Drawing:
    """Return the sheet, which fits A4 and Letter; ``names`` gives words for ``family``, ``door`` and ``place``."""
    frame = layout(scene, door, answer)
    scale = fitting_scale(door, frame, units)
    windows = sheet_windows(door, frame)
    front = windows[0]
    side = windows[1]
    top = windows[2]
    whole = windows[3]
    gap = frame["size"] * VIEW_GAP
    side_dx = section_shift(front, side, gap)
    top_dy = plan_shift(front, top, gap)
    view = blank_drawing("sheet", names, answer, units)
    edge = frame["size"] * 0.2
    view["x"] = whole["x"] - edge
    view["y"] = whole["y"] - edge
    view["width"] = whole["width"] + edge * 2
    view["height"] = whole["height"] + edge * 2
    marks = view["marks"]
    marks.extend(door_front(scene, door, frame))
    marks.extend(covering_front(scene, door, frame))
    marks.extend(elevation_notes(scene, door, answer, frame, units))
    marks.extend(section_line(frame))
    across: list[Mark] = []
    across.extend(section_still(scene, door, frame))
    across.extend(covering_side(scene, door, answer, frame))
    across.extend(section_notes(scene, door, answer, frame, units, False))
    marks.extend(shifted(across, side_dx, 0.0))
    below: list[Mark] = []
    below.extend(door_top(scene, door, frame))
    below.extend(covering_top(scene, door, frame))
    below.extend(plan_notes(door, answer, frame, units))
    marks.extend(shifted(below, 0.0, top_dy))
    marks.extend(captions(frame, side["x"] + side_dx, top, top_dy))
    marks.extend(title_block(whole, frame["size"], names, scale_words(scale, units)))
    return view


def sheet(
    door: Door, family: Family, choices: dict[str, str], place: Position, household: Household, units: str
) -> Drawing:
    """Return the drawing sheet of a family with its choices on a door at a position."""
    given = subject(door, family, choices, place, household)
    return sheet_of(given["scene"], door, given["answer"], units, given["names"])
