"""The drawing sheet: elevation, section and plan on shared axes, with a title block, to a usual scale."""

from typing import TypedDict

from configurator.kernel.looks import no_look
from configurator.kernel.message import message, say_phrase
from configurator.kernel.say import INCH
from configurator.kernel.shapes import Drawing, Mark
from configurator.kernel.tongue import Words, in_words
from configurator.kernel.views.covering_front import covering_front
from configurator.kernel.views.draft import Draft, blank_drawing, lettered
from configurator.kernel.views.elevation import door_front, elevation_window, top_edge
from configurator.kernel.views.elevation_notes import elevation_notes
from configurator.kernel.views.marks import letters, make_mark, shifted, stroke
from configurator.kernel.views.plan import covering_top, door_top, plan_notes, plan_window
from configurator.kernel.views.section import covering_side, section_notes, section_still, section_window

# Letters on paper, and what both A4 and Letter have room for within their margins, mm.
PAPER_LETTERS = 2.8
PAPER_WIDTH = 180.0
PAPER_HEIGHT = 245.0
METRIC_SCALES = [5.0, 10.0, 20.0, 25.0, 30.0, 40.0, 50.0, 100.0]
INCH_SCALES = [8.0, 12.0, 16.0, 24.0, 32.0, 48.0, 96.0]
# In letters: between two views, round the sheet, and the title block's rows.
VIEW_GAP = 1.0
SHEET_EDGE = 0.8
BLOCK_ROW = 2.7
SECTION_ROOM = 1.3


class Windows(TypedDict):
    """The windows of the three views, and around them that of the sheet; nothing is drawn on them."""

    front: Drawing
    side: Drawing
    top: Drawing
    whole: Drawing


def blank_view() -> Drawing:
    """Return a drawing of which only the window is wanted."""
    return {
        "id": "",
        "title": "",
        "desc": "",
        "x": 0.0,
        "y": 0.0,
        "width": 0.0,
        "height": 0.0,
        "marks": [],
        "look": no_look(),
    }


def lettered_at(draft: Draft, scale: float) -> Draft:
    """Return the draft with letters and room for a sheet at a scale."""
    size = PAPER_LETTERS * scale
    return lettered(draft, size, size * SECTION_ROOM)


def sheet_windows(draft: Draft) -> Windows:
    """Return the windows of elevation, section, plan and sheet."""
    size = draft["size"]
    front = elevation_window(draft, blank_view())
    side = section_window(draft, blank_view())
    top = plan_window(draft, blank_view())
    whole = blank_view()
    gap = size * VIEW_GAP
    edge = size * SHEET_EDGE
    whole["x"] = front["x"] - edge
    whole["y"] = front["y"] - edge
    whole["width"] = front["width"] + side["width"] + gap + edge * 2
    whole["height"] = front["height"] + top["height"] + gap * 2 + size * BLOCK_ROW * 2 + edge
    return {"front": front, "side": side, "top": top, "whole": whole}


def section_shift(front: Drawing, side: Drawing, gap: float) -> float:
    """Return how far right the section goes to stand beside the elevation, with a gap between their windows."""
    return front["x"] + front["width"] + gap - side["x"]


def plan_shift(front: Drawing, top: Drawing, gap: float) -> float:
    """Return how far down the plan goes to lie below the elevation, with a gap between their windows."""
    return front["y"] + front["height"] + gap - top["y"]


def usual_scales(units: str) -> list[float]:
    """Return the usual scales 1:n, largest first; in inches those of whole or broken inches to the foot."""
    return INCH_SCALES if units == "in" else METRIC_SCALES


def fitting_scale(draft: Draft) -> float:
    """Return the largest usual scale at which the sheet fits the paper, or the smallest if none does."""
    scales = usual_scales(draft["units"])
    for scale in scales:
        whole = sheet_windows(lettered_at(draft, scale))["whole"]
        if whole["width"] <= PAPER_WIDTH * scale and whole["height"] <= PAPER_HEIGHT * scale:
            return scale
    return scales[len(scales) - 1]


def scale_words(scale: float, words: Words, units: str) -> str:
    """Return a scale as a title block writes it."""
    ratio = str(int(scale))
    if units == "in":
        terms: dict[str, list[float | str]] = {"drawn": [INCH * 12 / scale, "mm"], "ratio": [ratio, "name"]}
        return say_phrase(message("{drawn} = 1 ft (1:{ratio})", terms), words, units)
    return "1:" + ratio


def section_line(draft: Draft) -> list[Mark]:
    """Return the marks of where the section is cut, above and below the elevation."""
    size = draft["size"]
    x = draft["frame"]["cut"]
    top = -draft["frame"]["top"] - size * 0.4
    marks: list[Mark] = []
    for y in [top, size * 1.25]:
        marks.append(stroke("cut", x, y - size * 0.9, x, y))
        arrow = y - size * 0.9 if y < 0 else y
        marks.append(make_mark("polyline", "seen", [x, arrow, x + size * 0.8, arrow]))
        marks.append(letters("title", [x - size * 0.3, y - size * 0.1], size, "A", "end"))
    return marks


def block_field(corner: list[float], size: float, name: str, words: str) -> list[Mark]:
    """Return one field of the title block, by its upper left corner: a small name over the words."""
    x = corner[0] + size * 0.6
    return [
        letters("label", [x, corner[1] + size * 1.0], size, name, "start"),
        letters("title", [x, corner[1] + size * 2.25], size, words, "start"),
    ]


def title_block(draft: Draft, whole: Drawing, scale: str) -> list[Mark]:
    """Return the sheet's border and the block that says what, where it stands, which door and which scale."""
    size = draft["size"]
    names = draft["names"]
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
    marks.extend(block_field([x0, y0], size, in_words("covering", draft["words"]), names["family"]))
    marks.extend(block_field([middle, y0], size, in_words("position", draft["words"]), names["place"]))
    marks.extend(block_field([x0, y0 + row], size, in_words("door", draft["words"]), names["door"]))
    marks.extend(block_field([middle, y0 + row], size, in_words("scale", draft["words"]), scale))
    return marks


def captions(draft: Draft, side_x: float, top: Drawing, top_y: float) -> list[Mark]:
    """Return the names of the three views."""
    size = draft["size"]
    y = -top_edge(draft) + size
    plan_y = top["y"] + top_y + size
    return [
        letters("label", [draft["frame"]["out0"], y], size, in_words("elevation", draft["words"]), "start"),
        letters("label", [side_x, y], size, in_words("section A", draft["words"]), "start"),
        letters("label", [top["x"], plan_y], size, in_words("plan", draft["words"]), "start"),
    ]


def sheet_front(draft: Draft) -> list[Mark]:
    """Return the sheet's elevation."""
    marks = door_front(draft)
    marks.extend(covering_front(draft))
    marks.extend(elevation_notes(draft))
    marks.extend(section_line(draft))
    return marks


def sheet_side(draft: Draft) -> list[Mark]:
    """Return the sheet's section, whose heights the elevation tells."""
    marks = section_still(draft)
    marks.extend(covering_side(draft))
    marks.extend(section_notes(draft, False))
    return marks


def sheet_top(draft: Draft) -> list[Mark]:
    """Return the sheet's plan."""
    marks = door_top(draft)
    marks.extend(covering_top(draft))
    marks.extend(plan_notes(draft))
    return marks


def sheet_of(draft: Draft) -> Drawing:
    """Return the sheet, which fits A4 and Letter at the scale that it names."""
    scale = fitting_scale(draft)
    paper = lettered_at(draft, scale)
    windows = sheet_windows(paper)
    front = windows["front"]
    side = windows["side"]
    top = windows["top"]
    whole = windows["whole"]
    gap = paper["size"] * VIEW_GAP
    side_dx = section_shift(front, side, gap)
    top_dy = plan_shift(front, top, gap)
    view = blank_drawing("sheet", paper)
    edge = paper["size"] * 0.2
    view["x"] = whole["x"] - edge
    view["y"] = whole["y"] - edge
    view["width"] = whole["width"] + edge * 2
    view["height"] = whole["height"] + edge * 2
    view["marks"].extend(sheet_front(paper))
    view["marks"].extend(shifted(sheet_side(paper), side_dx, 0.0))
    view["marks"].extend(shifted(sheet_top(paper), 0.0, top_dy))
    view["marks"].extend(captions(paper, side["x"] + side_dx, top, top_dy))
    view["marks"].extend(title_block(paper, whole, scale_words(scale, paper["words"], paper["units"])))
    return view
