"""The measuring sheet: asks by hand for exactly what the form asks, for one door or, blank, for any."""

from typing import Any, TypedDict

from configurator.kernel.message import message, plain, silence
from configurator.kernel.papers.blocks import (
    Block,
    Column,
    Paper,
    Row,
    Scaled,
    new_page,
    paper_drawings,
    paper_table,
    paper_text,
    paper_title,
    room_to_write,
    row_to_write,
    word_column,
)
from configurator.kernel.papers.making import Desk
from configurator.kernel.papers.order_paper import paper_foot
from configurator.kernel.shapes import Door, Household, Message
from configurator.kernel.tape.field import Field
from configurator.kernel.tape.handle_fields import HANDLE_GROUP
from configurator.kernel.tape.household_fields import HOUSEHOLD_GROUP
from configurator.kernel.tape.table import TAPE_GROUPS, door_words, field_key, is_asked
from configurator.kernel.tongue import wording
from configurator.kernel.views.tape_place import tape_draft, tape_place
from configurator.kernel.visit.visit_fields import (
    LEAF_NAMES,
    SPOT_WORDS,
    asked_of_leaf,
    is_sidelight,
    leaves_of,
    of_leaf,
    spots_of,
)

# How wide each small drawing of where the tape goes stands on the paper, and room to write notes, mm.
PLACE_WIDE = 33.0
NOTES_ROOM = 42.0
# What stands where a measure is taken once for the whole opening.
ONLY_ONCE = plain("—")
HANDLE_KINDS = [wording("lever"), wording("knob"), wording("pull")]


class Sheet(TypedDict):
    """A door to measure: its room (or nothing), and the door that is drawn, whose parts are asked for.

    ``blank`` asks for all that any door may have: both leaves, sidelights, bars, a stop.
    """

    room: str
    door: Door
    blank: bool
    household: Household


def all_asked(leaf: str) -> list[Field]:
    """Return what is measured of a leaf of any door."""
    return of_leaf([field for group in TAPE_GROUPS for field in group["fields"] if is_asked(field)], leaf)


def sheet_leaves(sheet: Sheet) -> list[str]:
    """Return the leaves for which a sheet has room."""
    if sheet["blank"]:
        return ["active", "other", "left-sidelight", "right-sidelight"]
    return leaves_of(sheet["door"]["layout"])


def sheet_fields(sheet: Sheet, leaf: str) -> list[Field]:
    """Return what a sheet asks of a leaf, but for who lives there."""
    asked = all_asked(leaf) if sheet["blank"] else asked_of_leaf(sheet["door"], leaf)
    people = [field["id"] for field in HOUSEHOLD_GROUP["fields"]]
    return [field for field in asked if field["id"] not in people]


def field_words(field: Field) -> Message:
    """Return a field's plain name, with the trade's where it has another."""
    if "trade" not in field:
        return plain(field["name"])
    return message("{name} ({trade})", {"name": [field["name"], "text"], "trade": [field["trade"], "text"]})


def several_spots(sheet: Sheet) -> list[Row]:
    """Return a row for each measure that is taken at several spots, leaf by leaf, a box for each spot."""
    rows: list[Row] = []
    for leaf in sheet_leaves(sheet):
        for field in sheet_fields(sheet, leaf):
            spots = spots_of(field["id"])
            if len(spots) < 2:
                continue
            cells = [field_words(field), plain(LEAF_NAMES[leaf])]
            cells.extend([plain(SPOT_WORDS[spot]) for spot in spots])
            while len(cells) < 5:
                cells.append(silence())
            rows.append(row_to_write(cells))
    return rows


def spot_columns() -> list[Column]:
    """Return the columns of what is taken at several spots."""
    return [
        word_column(plain("what"), 1.5),
        word_column(plain("leaf"), 1.3),
        word_column(plain("first reading"), 1.3),
        word_column(plain("second reading"), 1.3),
        word_column(plain("third reading"), 1.3),
    ]


def once_leaves(sheet: Sheet) -> list[str]:
    """Return the leaves that have a column of their own in the list of what is taken once."""
    return [leaf for leaf in sheet_leaves(sheet) if not is_sidelight(leaf)]


def once_rows(sheet: Sheet) -> list[Row]:
    """Return a row for each measure that is taken once: how, and a box for each leaf of which it is asked."""
    rows: list[Row] = []
    others = [field["id"] for field in sheet_fields(sheet, "other")] if len(once_leaves(sheet)) > 1 else []
    for field in sheet_fields(sheet, "active"):
        if len(spots_of(field["id"])) > 1:
            continue
        cells = [field_words(field), plain(field["how"]), silence()]
        if len(once_leaves(sheet)) > 1:
            cells.append(silence() if field["id"] in others else ONLY_ONCE)
        rows.append(row_to_write(cells))
    return rows


def once_columns(sheet: Sheet) -> list[Column]:
    """Return the columns of what is taken once."""
    columns = [word_column(plain("what"), 1.9), word_column(plain("how"), 2.3)]
    columns.extend([word_column(plain(LEAF_NAMES[leaf]), 1.0) for leaf in once_leaves(sheet)])
    return columns


def sidelight_rows(sheet: Sheet) -> list[Row]:
    """Return a row for each measure of a sidelight that is taken once, a box for each of both."""
    rows: list[Row] = []
    sides = [leaf for leaf in sheet_leaves(sheet) if is_sidelight(leaf)]
    if len(sides) > 0:
        for field in sheet_fields(sheet, sides[0]):
            if len(spots_of(field["id"])) == 1:
                rows.append(row_to_write([field_words(field), plain(field["how"]), silence(), silence()]))
    return rows


def sidelight_columns() -> list[Column]:
    """Return the columns of what is measured of the sidelights."""
    return [
        word_column(plain("what"), 1.9),
        word_column(plain("how"), 2.3),
        word_column(plain(LEAF_NAMES["left-sidelight"]), 1.0),
        word_column(plain(LEAF_NAMES["right-sidelight"]), 1.0),
    ]


def people_rows() -> list[Row]:
    """Return a row for each measure of who lives there and who looks in."""
    return [
        row_to_write([field_words(field), plain(field["how"]), silence()])
        for field in HOUSEHOLD_GROUP["fields"]
        if is_asked(field)
    ]


def word_rows() -> list[Row]:
    """Return what a door is in words, each with its options to mark, and the kind of handle."""
    rows: list[Row] = []
    for word in door_words().values():
        cells = [plain(word["name"])]
        cells.extend([plain(option) for option in word["options"].values()])
        while len(cells) < 5:
            cells.append(silence())
        rows.append(row_to_write(cells))
    cells = [plain("Handle")]
    cells.extend([plain(kind) for kind in HANDLE_KINDS])
    cells.append(silence())
    rows.append(row_to_write(cells))
    return rows


def name_rows(sheet: Sheet) -> list[Row]:
    """Return what says whose door it is."""
    room = message("{name}", {"name": [sheet["room"], "name"]})
    return [
        row_to_write([plain("client"), silence(), plain("place"), silence()]),
        row_to_write([plain("room"), room, plain("measured by, on"), silence()]),
    ]


def number_of_door(door: Door, field: Field) -> float:
    """Return what a door or its handle measures at a field."""
    given: Any = door["handle"] if field["id"].startswith("handle.") else door
    number: float = given[field_key(field["id"])]
    return number


def place_drawings(sheet: Sheet, desk: Desk) -> list[Scaled]:
    """Return the small drawings of where the tape goes: for what decides, and for the handle."""
    draft = tape_draft(sheet["door"], desk["words"], desk["units"])
    handle = [field["id"] for field in HANDLE_GROUP["fields"]]
    drawn: list[Scaled] = []
    for field in sheet_fields(sheet, "active"):
        wanted = "decides" in field or field["id"] in handle
        if wanted and "drawn" in field:
            view = tape_place(draft, sheet["household"], field, number_of_door(sheet["door"], field))
            drawn.append({"drawing": view, "scale": view["width"] / PLACE_WIDE, "caption": plain(field["name"])})
    return drawn


def sheet_blocks(sheet: Sheet, desk: Desk) -> list[Block]:
    """Return the pages of one door."""
    blank = silence()
    names = [word_column(blank, 0.7), word_column(blank, 1.6), word_column(blank, 0.9), word_column(blank, 1.4)]
    option = word_column(blank, 1.0)
    options = [word_column(blank, 1.4), option, option, option, option]
    blocks = [
        paper_title(plain("Measuring sheet"), 1.0),
        paper_table(blank, names, name_rows(sheet)),
        paper_table(plain("What it is: mark what holds, seen from the room"), options, word_rows()),
        paper_table(plain("Taken at several places: write down each"), spot_columns(), several_spots(sheet)),
        paper_table(plain("Taken once"), once_columns(sheet), once_rows(sheet)),
    ]
    beside = sidelight_rows(sheet)
    if len(beside) > 0:
        blocks.append(paper_table(plain("Side panels"), sidelight_columns(), beside))
    people = [word_column(plain("what"), 1.9), word_column(plain("how"), 2.3), word_column(plain("measured"), 1.0)]
    blocks.append(paper_table(plain("Who lives there, who looks in"), people, people_rows()))
    blocks.append(room_to_write(plain("Socket for a charger: where"), 7.0))
    blocks.append(room_to_write(plain("Notes: what is wanted, what stands in the way"), NOTES_ROOM))
    blocks.append(paper_title(plain("Where the tape goes"), 2.0))
    blocks.append(paper_text(plain("These small drawings are not to scale.")))
    blocks.append(paper_drawings(place_drawings(sheet, desk)))
    return blocks


def measuring_paper(sheets: list[Sheet], desk: Desk) -> Paper:
    """Return the measuring sheets of one or more doors."""
    blocks: list[Block] = []
    for at in range(len(sheets)):
        if at > 0:
            blocks.append(new_page())
        blocks.extend(sheet_blocks(sheets[at], desk))
    return {"id": "measure", "title": plain("Measuring sheet"), "foot": paper_foot(desk), "blocks": blocks}
