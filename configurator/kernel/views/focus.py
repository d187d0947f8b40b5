"""Where a measurement lies on the drawing, for those that no drawing dimensions by itself.

A field's ``drawn`` names the view, the side to which the dimension runs (``right``, ``left``, ``up`` or ``down``),
the landmark from which it runs, the landmark at which its line stands and that of the thing which it measures.
"""

from configurator.kernel.door.leaf import leaf_height, leaf_width
from configurator.kernel.shapes import Door, Mark
from configurator.kernel.tape.field import Field
from configurator.kernel.views.dimensions import Notes, dim_across, dim_upright, noted, said, tier

# How far above the leaf a dimension still shows, and the line above a handle, beyond the latch and in the jamb, mm.
SHOWN_ABOVE = 150.0
OVER_HANDLE = 160.0
PAST_LATCH = 60.0
IN_JAMB = -40.0


def heights_marked(door: Door) -> dict[str, float]:
    """Return the levels on the paper of an elevation, y down from the floor."""
    bottom = -door["floor_gap"]
    top = bottom - leaf_height(door)
    glass_top = top + door["rail_top"] + door["bead_width"]
    rows = door["muntin_rows"]
    handle = -door["handle_height"]
    return {
        "floor": 0.0,
        "bottom": bottom,
        "top": top,
        "glass_top": glass_top,
        "glass_low": glass_top + door["glass_height"] * 0.62,
        "low": bottom - door["rail_bottom"] / 2,
        "muntin_top": glass_top + (door["glass_height"] - (rows - 1) * door["muntin_width"]) / rows,
        "handle": handle,
        "above_handle": handle - OVER_HANDLE,
    }


def widths_marked(door: Door) -> dict[str, float]:
    """Return the places across the paper of a leaf hung on the left, x from its hinge edge."""
    latch = leaf_width(door)
    glass = door["stile_hinge"] + door["bead_width"]
    axis = latch - door["backset"]
    return {
        "hinge_edge": 0.0,
        "stile_middle": door["stile_hinge"] / 2,
        "bead_hinge": door["stile_hinge"],
        "glass_hinge": glass,
        "middle": glass + door["glass_width"] / 2,
        "axis": axis,
        "grip_middle": axis - door["handle"]["grip_length"] / 2,
        "latch_edge": latch,
        "beyond_latch": latch + PAST_LATCH,
        "astragal": latch + (door["meeting_gap"] - door["astragal_width"]) / 2,
        "sidelight_glass": latch + (door["sidelight_width"] - door["sidelight_glass_width"]) / 2,
        "jamb": IN_JAMB,
        "beyond_casing": IN_JAMB - door["casing_width"],
    }


def depths_marked(door: Door) -> dict[str, float]:
    """Return the depths on the paper of a plan, y from the leaf's face into the room."""
    return {"face": 0.0, "before_face": door["leaf_thickness"], "wall_face": door["reveal"]}


def landmarks(door: Door) -> dict[str, float]:
    """Return every named place of a door on the paper."""
    return {**heights_marked(door), **widths_marked(door), **depths_marked(door)}


def own_dimension(notes: Notes, door: Door, field: Field, length: float) -> list[Mark]:
    """Return the marks of a field's own dimension line, which tells its length; none where it is drawn nowhere."""
    if "drawn" not in field:
        return []
    return lay_dimension(notes, door, field, length, said(notes, length, "", "")["text"])


def lay_dimension(notes: Notes, door: Door, field: Field, length: float, text: str) -> list[Mark]:
    """Return the marks of the dimension line of a field that is drawn, with a text on it."""
    place = landmarks(door)
    side = field["drawn"][1]
    start = place[field["drawn"][2]]
    at = place[field["drawn"][3]]
    origin = place[field["drawn"][4]]
    ends = [start, start + length] if side == "right" or side == "down" else [start - length, start]
    if side == "right" or side == "left":
        ends = [on_hand(door, end) for end in ends]
        dim_across(notes, ends, tier(at, origin), {"text": text, "side": "after", "focus": ""})
    else:
        ends[0] = max(ends[0], place["top"] - SHOWN_ABOVE)
        on = tier(on_hand(door, at), on_hand(door, origin))
        dim_upright(notes, ends, on, {"text": text, "side": "above", "focus": ""})
    return noted(notes)


def on_hand(door: Door, x: float) -> float:
    """Return a place across the paper, mirrored for a leaf hung on the right."""
    return x if door["hinge_side"] == "left" else leaf_width(door) - x
