"""The upright cut about the handle, enlarged: the covering as it passes behind the grip."""

from configurator.kernel.shapes import Box, Drawing, Mark
from configurator.kernel.views.detail import DETAIL_LETTERS
from configurator.kernel.views.dimensions import (
    EDGE_ROOM,
    FIRST_TIER,
    TIER,
    blank_notes,
    dim_across,
    named,
    noted,
    tier,
)
from configurator.kernel.views.draft import Draft, blank_drawing, cropped_draft, lettered
from configurator.kernel.views.layout import active_covering, front_most
from configurator.kernel.views.marks import make_mark
from configurator.kernel.views.section import covering_side, door_side
from configurator.kernel.views.walls import break_line

# How much is shown above and below the handle's axis, mm.
UPRIGHT_HALF = 170.0
# Beside the cut, in letters: behind the leaf, and before it the longest words.
BEHIND = 2.0
WORDS_WIDE = 11.0


def upright_region(draft: Draft) -> Box:
    """Return the part of the elevation about the handle's height, as wide as the active leaf."""
    frame = draft["frame"]
    height = draft["door"]["handle_height"]
    return {"x0": frame["leaf0"], "x1": frame["leaf1"], "y0": height - UPRIGHT_HALF, "y1": height + UPRIGHT_HALF}


def upright_notes(draft: Draft, region: Box) -> list[Mark]:
    """Return the depths: behind the grip and to the handle's front below, the covering's above, if it is there."""
    notes = blank_notes(draft["size"], draft["words"], draft["units"])
    handle = draft["door"]["handle"]
    low = -region["y0"]
    first = low + notes["size"] * FIRST_TIER
    reach = named(notes, "handle {length}", handle["projection"], "after", "handle_projection")
    dim_across(notes, [0.0, handle["projection"]], tier(first, low), reach)
    gap = named(notes, "gap {length}", handle["gap"], "after", "handle_gap")
    dim_across(notes, [0.0, handle["gap"]], tier(first + notes["size"] * TIER, low), gap)
    front = front_most(active_covering(draft["scene"], draft["answer"]))
    if front > 0:
        high = -region["y1"]
        label = named(notes, "covering {length}", front, "after", "")
        dim_across(notes, [0.0, front], tier(high - notes["size"] * FIRST_TIER, high), label)
    return noted(notes)


def detail_upright_of(draft: Draft) -> Drawing:
    """Return the section about the handle, enlarged."""
    return upright_detail(lettered(draft, UPRIGHT_HALF * 2 * DETAIL_LETTERS, 0.0))


def upright_detail(about: Draft) -> Drawing:
    """Return the section about the handle, in the draft's own letters."""
    region = upright_region(about)
    part = cropped_draft(about, region)
    size = about["size"]
    back = -about["door"]["leaf_thickness"]
    front = max(front_most(part["scene"]["door"]), about["frame"]["front"])
    view = blank_drawing("detail-upright", about)
    view["marks"].extend(door_side(part))
    view["marks"].extend(covering_side(part))
    for level in [-region["y0"], -region["y1"]]:
        view["marks"].append(make_mark("polyline", "hair", break_line(back, front, level, size)))
    view["marks"].extend(upright_notes(part, region))
    view["x"] = back - size * BEHIND
    view["width"] = front + size * WORDS_WIDE - view["x"]
    view["y"] = -region["y1"] - size * (FIRST_TIER + TIER)
    view["height"] = -region["y0"] + size * (FIRST_TIER + TIER * 2 + EDGE_ROOM) - view["y"]
    return view
