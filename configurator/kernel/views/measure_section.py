"""The head of the door's section, enlarged, with every depth that a site visit takes, each marked with its field."""

from configurator.kernel.shapes import Door, Drawing
from configurator.kernel.tongue import Words, wording
from configurator.kernel.views.bare import bare_draft, measured_drawing
from configurator.kernel.views.detail import head_region, lettered_head
from configurator.kernel.views.dimensions import (
    EDGE_ROOM,
    FIRST_TIER,
    TIER,
    Notes,
    blank_notes,
    dim_across,
    dim_upright,
    named,
    noted,
    tier,
)
from configurator.kernel.views.draft import Draft, cropped_draft
from configurator.kernel.views.marks import make_mark
from configurator.kernel.views.section import covering_side, door_side
from configurator.kernel.views.walls import WALL_ABOVE, break_line, wall_back, wall_break, wall_side

# How much of the glass a measured section shows below its upper edge, mm.
GLASS_BELOW = 60.0


def measured_depths(notes: Notes, door: Door, low: float) -> None:
    """Add the depths of bead, muntin, glass and leaf under what is drawn, which ends at the height ``low``."""
    size = notes["size"]
    y = -low + size * FIRST_TIER
    out = door["bead_projection"]
    dim_across(notes, [0.0, out], tier(y, -low), named(notes, "bead out {length}", out, "after", "bead_projection"))
    if door["muntin_columns"] > 1 or door["muntin_rows"] > 1:
        y = y + size * TIER
        out = door["muntin_projection"]
        dim_across(
            notes, [0.0, out], tier(y, -low), named(notes, "muntin out {length}", out, "after", "muntin_projection")
        )
    y = y + size * TIER
    back = door["glass_recess"]
    dim_across(notes, [-back, 0.0], tier(y, -low), named(notes, "glass back {length}", back, "after", "glass_recess"))
    y = y + size * TIER
    leaf = door["leaf_thickness"]
    dim_across(notes, [-leaf, 0.0], tier(y, -low), named(notes, "leaf {length}", leaf, "after", "leaf_thickness"))


def measured_faces(notes: Notes, draft: Draft) -> None:
    """Add how far the casing stands out of the wall and how far the leaf lies behind it, above the wall's break."""
    door = draft["door"]
    size = notes["size"]
    top = -wall_break(draft)
    y = top - size * 0.9
    face = door["reveal"]
    casing = door["casing_projection"]
    label = named(notes, "casing out {length}", casing, "after", "casing_projection")
    dim_across(notes, [face, face + casing], tier(y, top), label)
    label = named(notes, "leaf behind the wall {length}", face, "after", "reveal")
    dim_across(notes, [0.0, face], tier(y - size * TIER, top), label)


def measured_gaps(notes: Notes, draft: Draft, front: float) -> None:
    """Add the gap at the head and, where the leaf opens outwards, how far the stop laps it."""
    door = draft["door"]
    frame = draft["frame"]
    leaf = -frame["leaf_top"]
    x = front + notes["size"] * FIRST_TIER
    label = named(notes, "gap {length}", door["head_gap"], "below", "head_gap")
    dim_upright(notes, [-frame["head"], leaf], tier(x, front), label)
    if door["stop_lap"] > 0:
        label = named(notes, "lap {length}", door["stop_lap"], "below", "stop_lap")
        dim_upright(notes, [leaf, door["stop_lap"] + leaf], tier(x + notes["size"] * TIER, x), label)


def measure_section(door: Door, words: Words, units: str) -> Drawing:
    """Return the head of the door's section, enlarged, with every depth to measure."""
    draft = bare_draft(door, words, units)
    low = draft["frame"]["glass"]["y1"] - GLASS_BELOW
    head = lettered_head(draft, low)
    size = head["size"]
    front = max(door["bead_projection"], door["reveal"] + door["casing_projection"])
    part = cropped_draft(head, head_region(head, low))
    notes = blank_notes(size, words, units)
    measured_depths(notes, door, low)
    measured_faces(notes, head)
    measured_gaps(notes, head, front)
    view = measured_drawing("measure-section", draft, wording("depths at the head, in section"))
    view["marks"].extend(wall_side(head))
    view["marks"].extend(door_side(part))
    view["marks"].extend(covering_side(part))
    view["marks"].append(make_mark("polyline", "hair", break_line(-door["leaf_thickness"], 0.0, -low, size)))
    view["marks"].extend(noted(notes))
    view["x"] = wall_back(door) - size * EDGE_ROOM
    view["width"] = front + size * 15.0 - view["x"]
    view["y"] = -head["frame"]["top"] - size * (WALL_ABOVE + TIER * 2 + EDGE_ROOM)
    view["height"] = -low + size * (FIRST_TIER + TIER * 3 + EDGE_ROOM) - view["y"]
    return view
