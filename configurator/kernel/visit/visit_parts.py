"""What each entry of a visit's file holds: of which kind, what must be there, and within what its numbers lie.

A kind is ``text``, ``number``, ``whole`` (a number), ``flag``, ``texts`` or ``numbers`` (by name), or ``entry``,
``entries`` (by name) or ``list`` of what follows its colon.
"""

from configurator.kernel.mount.wishes import WISH_LIMITS
from configurator.kernel.tape.table import DOOR_COUNTS, DOOR_LIMITS, HANDLE_LIMITS, HOUSEHOLD_LIMITS

# Letters of a text, entries of a list: more than anyone writes, less than what stops a phone.
TEXT_MOST = 20000
LIST_MOST = 500
# Every number, to either side.
NUMBER_MOST = 1000000000.0

VISIT_PARTS: dict[str, dict[str, str]] = {
    "Visit": {
        "version": "whole",
        "id": "text",
        "client": "text",
        "place": "text",
        "on": "text",
        "units": "text",
        "note": "text",
        "household": "entry:Household",
        "openings": "list:Opening",
        "revisions": "list:Revision",
    },
    "Opening": {
        "id": "text",
        "room": "text",
        "note": "text",
        "socket": "text",
        "preset": "text",
        "leaves": "list:Leaf",
        "proposals": "list:Proposal",
        "agreed": "list:Agreed",
        "control": "text",
    },
    "Leaf": {"id": "text", "words": "texts", "handle": "text", "note": "text", "readings": "list:Reading"},
    "Reading": {
        "field": "text",
        "spot": "text",
        "typed": "text",
        "mm": "number",
        "how": "text",
        "who": "text",
        "on": "text",
    },
    "Proposal": {
        "id": "text",
        "family": "text",
        "choices": "texts",
        "wishes": "numbers",
        "leaves": "list:text",
        "place": "entry:Position",
        "note": "text",
        "price": "text",
        "liked": "flag",
        "remarks": "text",
    },
    "Agreed": {
        "proposal": "text",
        "on": "text",
        "price": "text",
        "covering": "entry:Family",
        "choices": "texts",
        "wishes": "numbers",
        "place": "entry:Position",
        "household": "entry:Household",
        "parts": "list:AgreedPart",
        "catalog": "text",
    },
    "AgreedPart": {
        "leaf": "text",
        "door": "entry:Door",
        "figures": "entries:FrozenFigure",
        "verdicts": "texts",
        "control": "text",
    },
    "FrozenFigure": {"name": "text", "value": "number", "unit": "text"},
    "Revision": {"on": "text", "who": "text", "what": "text"},
    "Position": {"lower": "number", "upper": "number", "tilt": "number", "coarse": "flag"},
    "Family": {
        "id": "text",
        "name": "text",
        "mechanism": "text",
        "retired": "flag",
        "price_level": "number",
        "cleaning": "text",
        "animals": "text",
        "numbers": "numbers",
        "look": "entry:Look",
        "cassettes": "list:Cassette",
        "choices": "list:Choice",
    },
    "Look": {"color": "text", "line": "text", "rim": "text", "weave": "text", "luster": "text"},
    "Cassette": {"name": "text", "roll": "number", "height": "number", "depth": "number"},
    "Choice": {"id": "text", "name": "text", "options": "list:Option"},
    "Option": {"id": "text", "name": "text", "retired": "flag", "numbers": "numbers", "look": "texts"},
}
DOOR_TEXTS = ["id", "name", "layout", "swing", "hinge_side"]
HANDLE_TEXTS = ["id", "name", "kind"]
# What must be there; of an entry without a line, nothing.
NEEDED: dict[str, list[str]] = {
    "Visit": ["version", "id", "units", "household"],
    "Opening": ["id", "preset"],
    "Leaf": ["id"],
    "Reading": ["field", "mm"],
    "Proposal": ["id", "family"],
    "Agreed": ["covering", "parts"],
    "AgreedPart": ["leaf", "door"],
    "FrozenFigure": ["value", "unit"],
    "Family": ["id", "name", "mechanism", "numbers"],
    "Door": ["id", "layout", "swing", "hinge_side", "handle"],
    "Handle": ["id", "name"],
}
# What is not put into an entry where nobody has said it.
ONLY_WHERE_SAID = ["control"]
# Entries of a list that go by their ids, which are unique in it.
BY_ID = ["Opening", "Leaf", "Proposal"]
PLACE_LIMITS: dict[str, list[float]] = {"lower": [0.0, 1.0], "upper": [0.0, 1.0], "tilt": [-180.0, 180.0]}


def door_part_kinds() -> dict[str, str]:
    """Return what a frozen door holds."""
    kinds: dict[str, str] = {}
    for name in DOOR_TEXTS:
        kinds[name] = "text"
    for name in DOOR_LIMITS:
        kinds[name] = "whole" if name in DOOR_COUNTS else "number"
    kinds["hinge_heights"] = "list:number"
    kinds["passive_handle"] = "flag"
    kinds["handle"] = "entry:Handle"
    return kinds


def handle_part_kinds() -> dict[str, str]:
    """Return what a frozen handle holds."""
    kinds: dict[str, str] = {}
    for name in HANDLE_TEXTS:
        kinds[name] = "text"
    for name in HANDLE_LIMITS:
        kinds[name] = "number"
    return kinds


def household_part_kinds() -> dict[str, str]:
    """Return what a household holds."""
    kinds: dict[str, str] = {}
    for name in HOUSEHOLD_LIMITS:
        kinds[name] = "number"
    return kinds


def part_kinds(part: str) -> dict[str, str]:
    """Return of which kind each thing is that an entry holds."""
    if part == "Door":
        return door_part_kinds()
    if part == "Handle":
        return handle_part_kinds()
    return household_part_kinds() if part == "Household" else VISIT_PARTS[part]


def is_needed(part: str, name: str) -> bool:
    """Return whether something must be there in an entry."""
    return part == "Household" or (part in NEEDED and name in NEEDED[part])


def is_filled(part: str, name: str) -> bool:
    """Return whether what is missing in an entry is put there, empty.

    In a frozen door it is not: the tape may take a number today that nobody took then.
    """
    return part != "Door" and part != "Handle" and name not in ONLY_WHERE_SAID


def limits_within(part: str) -> dict[str, list[float]]:
    """Return the limits of an entry's numbers; those of what was frozen are not asked about again."""
    if part == "Household":
        return HOUSEHOLD_LIMITS
    if part == "Position":
        return PLACE_LIMITS
    return WISH_LIMITS if part == "wishes" else {}
