"""What the tape takes: the same fields under the same names as in the configurator."""

from typing import NamedTuple


class Field(NamedTuple):
    """One number to take: the kernel's name for it, its plain name, where the tape goes,
    and its path in a door's file."""

    id: str
    name: str
    how: str
    path: str = ""


class Group(NamedTuple):
    """The numbers that are taken in one place."""

    id: str
    name: str
    fields: list[Field]


GLASS = Group(
    "glass",
    "The glass",
    [
        Field(
            "glass_width",
            "Glass width",
            "From bead to bead, at top, middle and bottom. Write down the smallest.",
            "glass.width",
        ),
        Field(
            "glass_height",
            "Glass height",
            "From bead to bead, left, centre and right. Write down the smallest.",
            "glass.height",
        ),
        Field(
            "bead_width",
            "Bead width",
            "Across the moulding around the glass, from the glass to the flat of the leaf.",
            "bead.width",
        ),
        Field(
            "bead_projection",
            "Bead projection",
            "Lay a straight edge over the bead and measure from it to the leaf. 0 when flush.",
            "bead.projection",
        ),
        Field(
            "glass_recess",
            "Glass recess",
            "Lay a straight edge across the leaf and measure from it back to the glass.",
            "glass.recess",
        ),
        Field("muntin_width", "Muntin width", "Across one bar, where the glass is divided.", "muntins.width"),
        Field(
            "muntin_projection",
            "Muntin projection",
            "From the leaf’s face to the front of the bar. 0 when flush.",
            "muntins.projection",
        ),
    ],
)
LEAF = Group(
    "leaf",
    "The leaf",
    [
        Field("stile_hinge", "Hinge stile", "From the leaf’s hinge edge to the outside of the bead.", "stiles.hinge"),
        Field("stile_latch", "Latch stile", "From the outside of the bead to the edge with the lock.", "stiles.latch"),
        Field(
            "rail_top",
            "Top rail",
            "From the outside of the bead up to the leaf’s top edge. Open the door to see it.",
            "rails.top",
        ),
        Field(
            "rail_bottom", "Bottom rail", "From the leaf’s bottom edge up to the outside of the bead.", "rails.bottom"
        ),
        Field("leaf_thickness", "Leaf thickness", "At the leaf’s edge, with the door open.", "leaf.thickness"),
    ],
)
HANDLE = Group(
    "handle",
    "The handle",
    [
        Field(
            "handle_height", "Handle height", "From the floor to the middle of the spindle or knob.", "handle.height"
        ),
        Field(
            "backset", "Backset", "From the leaf’s latch edge to the middle of the spindle or knob.", "handle.backset"
        ),
        Field(
            "handle.gap",
            "Gap behind the handle",
            "The free depth between the leaf and the back of the grip, at its tightest.",
        ),
        Field("handle.projection", "Handle projection", "From the leaf to the front of the grip."),
        Field(
            "handle.grip_length",
            "Grip length",
            "A lever: from the spindle to its tip. A knob: half its diameter. A pull: half its width.",
        ),
    ],
)
AROUND = Group(
    "around",
    "Around the door",
    [
        Field("wall_gap", "Side wall", "From the leaf’s hinge edge to the wall or furniture beside it.", "gaps.wall"),
        Field("head_gap", "Gap at the head", "Between the leaf’s top edge and the frame.", "gaps.head"),
        Field("floor_gap", "Gap at the floor", "Between the leaf’s bottom edge and the floor.", "gaps.floor"),
        Field("ceiling_height", "Ceiling height", "From floor to ceiling, beside the door.", "room.ceiling"),
        Field(
            "reveal",
            "Reveal",
            "How far the leaf lies behind the face of the wall. 0 when level with it.",
            "room.reveal",
        ),
        Field(
            "casing_width",
            "Casing width",
            "Across the trim around the opening. 0 when there is none.",
            "room.casing.width",
        ),
        Field(
            "casing_projection",
            "Casing projection",
            "How far that trim stands out of the wall.",
            "room.casing.projection",
        ),
        Field("meeting_gap", "Gap between the leaves", "On a pair: between the two closed leaves.", "pair.meeting_gap"),
        Field(
            "astragal_width",
            "Astragal width",
            "On a pair: across the moulding over the joint. 0 when there is none.",
            "pair.astragal.width",
        ),
        Field(
            "astragal_projection",
            "Astragal projection",
            "On a pair: how far that moulding stands out of the leaf.",
            "pair.astragal.projection",
        ),
        Field(
            "sidelight_width", "Sidelight width", "With sidelights: one side panel, frame included.", "sidelight.width"
        ),
        Field(
            "sidelight_glass_width",
            "Sidelight glass",
            "With sidelights: the clear glass in one side panel.",
            "sidelight.glass",
        ),
        Field(
            "stop_lap", "Stop", "On a leaf that opens outwards: how far the stop laps the leaf’s room face.", "stop.lap"
        ),
    ],
)
HOUSEHOLD = Group(
    "household",
    "The people",
    [
        Field("household.shoulder_height", "Shoulder height", "Of whoever works the covering most."),
        Field("household.person_height", "Height of the person inside", "Whom the covering should hide."),
        Field(
            "household.person_distance", "Their distance from the glass", "How far back in the room they usually stand."
        ),
        Field("household.outside_eye", "Eye height outside", "Of whoever might look in."),
        Field("household.outside_distance", "Their distance from the glass", "On the terrace, or across the street."),
        Field("household.outside_level", "Ground outside", "Against your floor. Write a minus where it lies lower."),
    ],
)
DOOR_GROUPS = (GLASS, LEAF, HANDLE, AROUND)
GROUPS = (*DOOR_GROUPS, HOUSEHOLD)
