"""What a visit takes beside the tape's table, where along a thing it is taken, and what is asked of which leaf."""

from configurator.kernel.shapes import Door
from configurator.kernel.tape.field import Field
from configurator.kernel.tape.table import TAPE_GROUPS, asked_groups
from configurator.kernel.tongue import wording

# What only checks the other readings, or hangs over the opening: no number of the kernel's door.
VISIT_FIELDS: list[Field] = [
    {
        "id": "leaf_width",
        "unit": "length",
        "limits": [300.0, 2400.0],
        "usual": [500.0, 1100.0],
        "name": wording("Whole width of the door"),
        "trade": wording("Leaf width"),
        "how": wording("From edge to edge of the leaf, with the door open."),
    },
    {
        "id": "leaf_height",
        "unit": "length",
        "limits": [600.0, 4000.0],
        "usual": [1800.0, 2600.0],
        "name": wording("Whole height of the door"),
        "trade": wording("Leaf height"),
        "how": wording("From the leaf's bottom edge to its top edge, with the door open."),
    },
    {
        "id": "glass_diagonal",
        "unit": "length",
        "limits": [200.0, 3400.0],
        "usual": [700.0, 2400.0],
        "name": wording("Diagonals of the glass"),
        "how": wording("From corner to corner of the clear glass, both ways."),
    },
    {
        "id": "leaf_twist",
        "unit": "length",
        "limits": [0.0, 60.0],
        "usual": [0.0, 60.0],
        "name": wording("Twist of the leaf"),
        "how": wording(
            "Close the door until its corners touch the stop, and measure how far the last one stands off. 0 when all "
            "touch."
        ),
    },
    {
        "id": "latch_wall_gap",
        "unit": "length",
        "limits": [0.0, 5000.0],
        "usual": [30.0, 3000.0],
        "name": wording("Side wall, lock side"),
        "how": wording("From the leaf's latch edge to the wall or furniture beside it."),
    },
]
# Where along a thing a measure is taken, by field; all others are taken once.
SPOTS: dict[str, list[str]] = {
    "glass_width": ["top", "middle", "bottom"],
    "glass_height": ["left", "center", "right"],
    "glass_diagonal": ["falling", "rising"],
}
ONCE = [""]
SPOT_WORDS: dict[str, str] = {
    "top": wording("top"),
    "middle": wording("middle"),
    "bottom": wording("bottom"),
    "left": wording("left"),
    "center": wording("center"),
    "right": wording("right"),
    "falling": wording("from the upper left"),
    "rising": wording("from the lower left"),
}
LEAF_NAMES: dict[str, str] = {
    "active": wording("the leaf with the handle"),
    "other": wording("the other leaf"),
    "left-sidelight": wording("the left sidelight"),
    "right-sidelight": wording("the right sidelight"),
}
# What is asked of a leaf that is not the active one; the rest is asked once for the opening.
OTHER_ASKED = [
    "glass_width",
    "glass_height",
    "glass_diagonal",
    "bead_width",
    "bead_projection",
    "glass_recess",
    "stile_hinge",
    "stile_latch",
    "rail_top",
    "rail_bottom",
    "leaf_thickness",
    "leaf_width",
    "leaf_height",
    "leaf_twist",
    "wall_gap",
]
SIDELIGHT_ASKED = [
    "sidelight_width",
    "sidelight_glass_width",
    "glass_height",
    "bead_width",
    "bead_projection",
    "glass_recess",
]


def spots_of(field: str) -> list[str]:
    """Return the spots at which a field is taken; the one without a name where it is taken once."""
    return SPOTS.get(field, ONCE)


def spot_words() -> dict[str, str]:
    """Return what each spot is called."""
    return SPOT_WORDS


def leaf_names() -> dict[str, str]:
    """Return what each leaf is called, by its id."""
    return LEAF_NAMES


def is_sidelight(leaf: str) -> bool:
    """Return whether a leaf's id is that of a sidelight."""
    return leaf.endswith("-sidelight")


def all_visit_fields() -> list[Field]:
    """Return every field that a reading can be of: the tape's, then those that only a visit takes."""
    found = [field for group in TAPE_GROUPS for field in group["fields"]]
    found.extend(VISIT_FIELDS)
    return found


def visit_field(ident: str) -> list[Field]:
    """Return the field with an id; nothing where nobody knows it."""
    return [field for field in all_visit_fields() if field["id"] == ident]


def leaves_of(layout: str) -> list[str]:
    """Return the ids of the leaves of an opening with a layout, as they are measured one after the other."""
    if layout == "sidelights":
        return ["active", "left-sidelight", "right-sidelight"]
    return ["active", "other"] if layout == "pair" or layout == "fixed-pair" else ["active"]


def asked_of_leaf(door: Door, leaf: str) -> list[Field]:
    """Return what is measured of a leaf of such a door, in the order of the form."""
    return of_leaf([field for group in asked_groups(door) for field in group["fields"]], leaf)


def of_leaf(asked: list[Field], leaf: str) -> list[Field]:
    """Return what of a door's fields, and of those that only a visit takes, is measured of a leaf."""
    every = asked.copy()
    every.extend(VISIT_FIELDS)
    if is_sidelight(leaf):
        return [field for field in every if field["id"] in SIDELIGHT_ASKED]
    if leaf == "other":
        return [field for field in every if field["id"] in OTHER_ASKED]
    beside = ["sidelight_width", "sidelight_glass_width"]
    return [field for field in every if field["id"] not in beside]
