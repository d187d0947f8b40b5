"""The measuring sheet asks for exactly what the form asks, with a box for each reading."""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.message import say
from configurator.kernel.papers.blocks import DRAWING, ROOM, TABLE, Paper
from configurator.kernel.papers.measuring_paper import field_words, measuring_paper
from configurator.kernel.tape.table import TAPE_GROUPS, is_asked
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.visit.visit_fields import VISIT_FIELDS, asked_of_leaf
from tests.kernel.papers.paper_samples import desk, kinds


def sheet(catalog: Catalog, door: str, blank: bool = False) -> Paper:
    """Return the measuring sheet of a door."""
    wanted = {"room": "Hall", "door": catalog.doors[door], "blank": blank, "household": catalog.household}
    return measuring_paper([wanted], desk())


def rows(paper: Paper, caption: str) -> list[list[str]]:
    """Return a table as it reads."""
    table = next(block for block in kinds(paper, TABLE) if block["text"]["text"].startswith(caption))
    return [[say(cell, ENGLISH, "in") for cell in row["cells"]] for row in table["rows"]]


def asked(paper: Paper) -> set[str]:
    """Return the names of all that a sheet asks for."""
    return {say(row["cells"][0], ENGLISH, "in") for block in kinds(paper, TABLE) for row in block["rows"]}


@pytest.mark.parametrize("door", ["garden-door", "garden-pair", "sidelight-door", "veranda-pair", "divided-lite-door"])
def test_it_asks_for_what_the_form_asks(catalog: Catalog, door: str) -> None:
    wanted = {say(field_words(field), ENGLISH, "in") for field in asked_of_leaf(catalog.doors[door], "active")}
    assert wanted <= asked(sheet(catalog, door))


def test_a_blank_one_asks_for_all_that_any_door_may_have(catalog: Catalog) -> None:
    every = [field for group in TAPE_GROUPS for field in group["fields"] if is_asked(field)]
    wanted = {say(field_words(field), ENGLISH, "in") for field in [*every, *VISIT_FIELDS]}
    assert wanted <= asked(sheet(catalog, "garden-pair", blank=True))


def test_three_readings_have_three_boxes_for_either_leaf(catalog: Catalog) -> None:
    assert rows(sheet(catalog, "garden-pair"), "Taken at several places") == [
        ["Glass width", "The leaf with the handle", "Top", "Middle", "Bottom"],
        ["Glass height", "The leaf with the handle", "Left", "Center", "Right"],
        ["Diagonals of the glass", "The leaf with the handle", "From the upper left", "From the lower left", ""],
        ["Glass width", "The other leaf", "Top", "Middle", "Bottom"],
        ["Glass height", "The other leaf", "Left", "Center", "Right"],
        ["Diagonals of the glass", "The other leaf", "From the upper left", "From the lower left", ""],
    ]


def test_what_is_there_once_is_asked_once(catalog: Catalog) -> None:
    once = {row[0]: row[2:] for row in rows(sheet(catalog, "garden-pair"), "Taken once")}
    assert once["Ceiling height"] == ["", "—"]
    assert once["Whole width of the door (Leaf width)"] == ["", ""]
    assert all(len(row) == 3 for row in rows(sheet(catalog, "garden-door"), "Taken once"))


def test_hand_swing_leaves_and_handle_are_marked(catalog: Catalog) -> None:
    assert [row[:3] for row in rows(sheet(catalog, "garden-door"), "What it is")] == [
        ["Leaves", "Single leaf", "Pair"],
        ["It opens", "Into the room", "Outwards"],
        ["Hinges, seen from the room", "Left", "Right"],
        ["Handle", "Lever", "Knob"],
    ]


def test_the_handle_is_drawn_and_there_is_room_for_socket_and_notes(catalog: Catalog) -> None:
    paper = sheet(catalog, "garden-door")
    drawn = {one["drawing"]["id"] for one in kinds(paper, DRAWING)[0]["drawings"]}
    assert {"place-handle_height", "place-handle-gap", "place-backset", "place-glass_width"} <= drawn
    assert len(kinds(paper, ROOM)) == 2
