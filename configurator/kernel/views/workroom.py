"""The workroom's sheet: three views to a usual scale, and beside them the place that decides at a quarter."""

from typing import TypedDict

from configurator.kernel.shapes import Drawing
from configurator.kernel.views.detail import handle_detail
from configurator.kernel.views.detail_upright import upright_detail
from configurator.kernel.views.draft import Draft, blank_drawing, lettered
from configurator.kernel.views.elevation import elevation_window
from configurator.kernel.views.marks import shifted
from configurator.kernel.views.plan import covering_top, plan_notes, shut_top, shut_window
from configurator.kernel.views.section import section_window
from configurator.kernel.views.sheet import (
    SECTION_ROOM,
    VIEW_GAP,
    blank_view,
    captions,
    plan_shift,
    section_shift,
    sheet_front,
    sheet_side,
    usual_scales,
)
from configurator.kernel.views.snug_window import trimmed_view

# Millimeters of the door to one of the paper where the covering passes the handle.
CLOSE_UP_SCALE = 4.0
# Letters of a little more than 8 point, mm of paper.
WORKROOM_LETTERS = 2.85
# What A4 and Letter both have within their margins and above the ruler; the title block beside the level cut; what lies
# between two drawings, and the words under each enlarged one, mm of paper.
SHEET_WIDE = 190.0
SHEET_HIGH = 250.0
BLOCK_WIDE = 52.0
SHEET_APART = 4.0
SHEET_CAPTION = 6.0
# No font is at hand: words may run a little wider than is reckoned.
TRIM_EDGE = 1.6
# What the plan's name takes above it, in letters.
CAPTION_ROW = 1.0


class WorkroomSheet(TypedDict):
    """The drawings of one sheet, each with the window that it fills.

    ``views`` is drawn at 1:``scale``, ``level`` and ``upright`` at 1:``close_scale``.
    """

    scale: float
    close_scale: float
    views: Drawing
    level: Drawing
    upright: Drawing


def views_at(draft: Draft, scale: float) -> Drawing:
    """Return elevation, section and plan on shared axes, lettered for paper; how far leaves open is told elsewhere."""
    size = WORKROOM_LETTERS * scale
    paper = lettered(draft, size, size * SECTION_ROOM)
    front = elevation_window(paper, blank_view())
    side = section_window(paper, blank_view())
    top = shut_window(paper, blank_view())
    # Its name stands above the walls.
    top["y"] = top["y"] - paper["size"] * CAPTION_ROW
    gap = paper["size"] * VIEW_GAP
    side_dx = section_shift(front, side, gap)
    top_dy = plan_shift(front, top, gap)
    plan = shut_top(paper)
    plan.extend(covering_top(paper))
    plan.extend(plan_notes(paper))
    view = blank_drawing("sheet", paper)
    view["marks"].extend(sheet_front(paper))
    view["marks"].extend(shifted(sheet_side(paper), side_dx, 0.0))
    view["marks"].extend(shifted(plan, 0.0, top_dy))
    view["marks"].extend(captions(paper, side["x"] + side_dx, top, top_dy))
    return trimmed_view(view, scale * TRIM_EDGE)


def is_room(views: Drawing, scale: float, level: Drawing, upright: Drawing) -> bool:
    """Return whether the upright cut fits beside the views, and below them the level one beside the title block."""
    first = views["width"] / scale + SHEET_APART + upright["width"] / CLOSE_UP_SCALE
    second = level["width"] / CLOSE_UP_SCALE + SHEET_APART + BLOCK_WIDE
    above = max(views["height"] / scale, upright["height"] / CLOSE_UP_SCALE + SHEET_CAPTION)
    high = above + SHEET_APART + level["height"] / CLOSE_UP_SCALE + SHEET_CAPTION
    return max(first, second) <= SHEET_WIDE and high <= SHEET_HIGH


def bare_door(draft: Draft) -> Drawing:
    """Return no more than the size of the door's elevation, which its views exceed at any scale."""
    view = blank_drawing("sheet", draft)
    view["width"] = draft["frame"]["out1"] - draft["frame"]["out0"]
    view["height"] = draft["frame"]["top"]
    return view


def workroom_sheet(draft: Draft) -> WorkroomSheet:
    """Return the sheet at the largest usual scale that A4 and Letter have room for, or the smallest if none fits."""
    close = lettered(draft, WORKROOM_LETTERS * CLOSE_UP_SCALE, 0.0)
    edge = CLOSE_UP_SCALE * TRIM_EDGE
    level = trimmed_view(handle_detail(close), edge)
    upright = trimmed_view(upright_detail(close), edge)
    scales = usual_scales(draft["units"])
    at = 0
    # Nothing is drawn at a scale that has no room for the door alone.
    bare = bare_door(draft)
    while at < len(scales) - 1 and not is_room(bare, scales[at], level, upright):
        at = at + 1
    views = views_at(draft, scales[at])
    while at < len(scales) - 1 and not is_room(views, scales[at], level, upright):
        at = at + 1
        views = views_at(draft, scales[at])
    return {"scale": scales[at], "close_scale": CLOSE_UP_SCALE, "views": views, "level": level, "upright": upright}
