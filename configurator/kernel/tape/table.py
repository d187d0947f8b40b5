"""The whole table of what a tape takes, and what is read from it."""

from configurator.kernel.shapes import Door
from configurator.kernel.tape.around_fields import AROUND_GROUP
from configurator.kernel.tape.field import Field, Group, Word
from configurator.kernel.tape.glass_fields import GLASS_GROUP
from configurator.kernel.tape.handle_fields import HANDLE_GROUP
from configurator.kernel.tape.household_fields import HOUSEHOLD_GROUP
from configurator.kernel.tape.leaf_fields import LEAF_GROUP
from configurator.kernel.tongue import wording

TAPE_GROUPS: list[Group] = [GLASS_GROUP, LEAF_GROUP, HANDLE_GROUP, AROUND_GROUP, HOUSEHOLD_GROUP]
DOOR_WORDS: dict[str, Word] = {
    "layout": {
        "name": wording("Leaves"),
        "options": {
            "single": wording("Single leaf"),
            "pair": wording("Pair"),
            "fixed-pair": wording("Pair, one fixed"),
            "sidelights": wording("With sidelights"),
        },
    },
    "swing": {"name": wording("It opens"), "options": {"in": wording("Into the room"), "out": wording("Outwards")}},
    "hinge_side": {
        "name": wording("Hinges, seen from the room"),
        "options": {"left": wording("Left"), "right": wording("Right")},
    },
}


def door_words() -> dict[str, Word]:
    """Return what a door is in words, by their ids."""
    return DOOR_WORDS


def field_key(ident: str) -> str:
    """Return the name of a field within its own shape: ``gap`` of ``handle.gap``."""
    parts = ident.split(".")
    return parts[len(parts) - 1]


def fields_of(shape: str) -> list[Field]:
    """Return the fields of a ``door``, a ``handle`` or a ``household``."""
    found: list[Field] = []
    for group in TAPE_GROUPS:
        for field in group["fields"]:
            own = field["id"].split(".")[0] if "." in field["id"] else "door"
            if own == shape:
                found.append(field)
    return found


def field_called(ident: str) -> Field:
    """Return a field of the table by its id."""
    called = [field for group in TAPE_GROUPS for field in group["fields"] if field["id"] == ident]
    return called[0]


def is_asked(field: Field) -> bool:
    """Return whether a form asks for a field."""
    return "usual" in field


def door_parts(layout: str, swing: str, lites: int) -> list[str]:
    """Return what of a door's parts not all doors have: ``pair``, ``sidelights``, ``out`` (swing) and ``divided``."""
    parts = [layout]
    if layout == "fixed-pair":
        parts.append("pair")
    if swing == "out":
        parts.append("out")
    if lites > 1:
        parts.append("divided")
    return parts


def parts_of_door(door: Door) -> list[str]:
    """Return the same of a door of the kernel's."""
    return door_parts(door["layout"], door["swing"], door["muntin_columns"] * door["muntin_rows"])


def is_there(field: Field, parts: list[str]) -> bool:
    """Return whether a door with such parts has a field."""
    return "when" not in field or field["when"] in parts


def asked_groups(door: Door) -> list[Group]:
    """Return the groups with what a form asks of such a door."""
    parts = parts_of_door(door)
    groups: list[Group] = []
    for group in TAPE_GROUPS:
        fields = [field for field in group["fields"] if is_asked(field) and is_there(field, parts)]
        groups.append({**group, "fields": fields})
    return groups


def deciding_fields(door: Door) -> list[Field]:
    """Return the few that decide most of what goes on such a door, in the order in which they are asked first.

    They are the size of the glass, and what of leaf, bead and handle moves the most verdicts over the starter's doors
    and coverings when it is a quarter of its usual range more or less; and how high the handle sits.
    """
    return [field for group in asked_groups(door) for field in group["fields"] if "decides" in field]


def limits_of(shape: str) -> dict[str, list[float]]:
    """Return ``[least, most]`` for every number of a shape, by its key; what may be missing may be 0 too."""
    limits: dict[str, list[float]] = {}
    for field in fields_of(shape):
        low = 0.0 if "when" in field else field["limits"][0]
        limits[field_key(field["id"])] = [low, field["limits"][1]]
    return limits


def counts_of(shape: str) -> list[str]:
    """Return the keys of a shape's numbers that are whole."""
    return [field_key(field["id"]) for field in fields_of(shape) if field["unit"] == "count"]


DOOR_LIMITS: dict[str, list[float]] = limits_of("door")
DOOR_COUNTS: list[str] = counts_of("door")
HANDLE_LIMITS: dict[str, list[float]] = limits_of("handle")
HOUSEHOLD_LIMITS: dict[str, list[float]] = limits_of("household")
