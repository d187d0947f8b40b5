"""Where the tape goes for one measurement: a small drawing without words of as much as tells its place."""

import math

from configurator.kernel.looks import no_look
from configurator.kernel.shapes import Box, Door, Drawing, Household, Mark
from configurator.kernel.tape.field import Field
from configurator.kernel.tongue import Words, in_words
from configurator.kernel.views.bare import bare_draft
from configurator.kernel.views.covering_front import by_front, front_rect, handle_front
from configurator.kernel.views.crop import cropped
from configurator.kernel.views.dimensions import blank_notes
from configurator.kernel.views.draft import Draft, cropped_draft, lettered
from configurator.kernel.views.elevation import casing_front
from configurator.kernel.views.focus import lay_dimension
from configurator.kernel.views.marks import stroke
from configurator.kernel.views.people import measure_people
from configurator.kernel.views.plan import handle_top, leaf_top
from configurator.kernel.views.roles import material
from configurator.kernel.views.walls import wall_top

# The least that is shown about a dimension, mm: of a door seen from the room, and of a plan, where all is small.
LEAST_SEEN = {"elevation": 460.0, "plan": 190.0}
# How much of the window a longer dimension takes.
TAPE_SHARE = 0.66
# Letters that are not drawn still set how far apart hatching and ticks are: this share of the window.
TAPE_LETTERS = 0.13
# Parts are cut off a little outside of the window, so that no cut edge stands in it.
CUT_BEYOND = 0.1


def marks_extent(marks: list[Mark]) -> Box:
    """Return the rectangle that lines fill, y down the paper."""
    box: Box = {"x0": math.inf, "x1": -math.inf, "y0": math.inf, "y1": -math.inf}
    for mark in marks:
        for i in range(0, len(mark["points"]), 2):
            box["x0"] = min(box["x0"], mark["points"][i])
            box["x1"] = max(box["x1"], mark["points"][i])
            box["y0"] = min(box["y0"], mark["points"][i + 1])
            box["y1"] = max(box["y1"], mark["points"][i + 1])
    return box


def tape_window(view: str, line: Box) -> Box:
    """Return the square about a dimension that is shown."""
    longest = max(line["x1"] - line["x0"], line["y1"] - line["y0"])
    half = max(LEAST_SEEN[view], longest / TAPE_SHARE) / 2
    x = (line["x0"] + line["x1"]) / 2
    y = (line["y0"] + line["y1"]) / 2
    return {"x0": x - half, "x1": x + half, "y0": y - half, "y1": y + half}


def seen_from_room(draft: Draft, about: Box) -> list[Mark]:
    """Return the door's parts within a window of the elevation, without what is behind the glass."""
    beyond = (about["x1"] - about["x0"]) * CUT_BEYOND
    region: Box = {
        "x0": about["x0"] - beyond,
        "x1": about["x1"] + beyond,
        "y0": -about["y1"] - beyond,
        "y1": -about["y0"] + beyond,
    }
    marks = casing_front(draft)
    for piece in by_front(cropped(draft["scene"]["door"], region)):
        if piece["part"] == "handle":
            if piece["kind"] != "neck":
                marks.append(handle_front(draft["door"], piece))
        elif piece["kind"] == "stile" or piece["kind"] == "rail":
            marks.append(front_rect(piece, "leaf seen"))
        elif piece["z1"] > -draft["door"]["leaf_thickness"]:
            marks.append(front_rect(piece, material(piece) + " hair"))
    for level in [0.0, -draft["door"]["ceiling_height"]]:
        marks.append(stroke("floor cut", region["x0"], level, region["x1"], level))
    return marks


def cut_at_handle(draft: Draft, about: Box) -> list[Mark]:
    """Return the leaf, the walls and the handle within a window of the plan."""
    beyond = (about["x1"] - about["x0"]) * CUT_BEYOND
    region: Box = {
        "x0": about["x0"] - beyond,
        "x1": about["x1"] + beyond,
        "y0": 0.0,
        "y1": draft["frame"]["top"],
    }
    part = cropped_draft(draft, region)
    marks = wall_top(draft, True)
    marks.extend(wall_top(draft, False))
    marks.extend(leaf_top(part))
    marks.extend(handle_top(part))
    return marks


def without_words(marks: list[Mark]) -> list[Mark]:
    """Return the marks that are no letters."""
    return [mark for mark in marks if mark["shape"] != "text"]


def taped(given: Draft, field: Field, length: float, size: float) -> list[Mark]:
    """Return the lines of a field's dimension, their ticks as for letters of a ``size``."""
    notes = blank_notes(size, given["words"], given["units"])
    return without_words(lay_dimension(notes, given["door"], field, length, ""))


def people_place(people: Drawing, field: Field) -> list[Mark]:
    """Return both people with the dimension of one field, of all that are drawn."""
    own = "focus-" + field["id"].replace(".", "_")
    return [mark for mark in without_words(people["marks"]) if "focus-" not in mark["role"] or own in mark["role"]]


def tape_place(given: Draft, household: Household, field: Field, length: float) -> Drawing:
    """Return the small drawing of where the tape goes for a field that measures ``length`` (mm) on a bare door.

    The same landmarks as in :mod:`configurator.kernel.views.focus`; a measurement of people stands between both.
    """
    door = given["door"]
    words = given["words"]
    view: Drawing = {
        "id": "place-" + field["id"].replace(".", "-"),
        "title": in_words(field["name"], words),
        "desc": in_words(field["how"], words),
        "x": 0.0,
        "y": 0.0,
        "width": 0.0,
        "height": 0.0,
        "marks": [],
        "look": no_look(),
    }
    if "drawn" not in field:
        people = measure_people(household, door, words, given["units"])
        view["marks"] = people_place(people, field)
        return {**view, "x": people["x"], "y": people["y"], "width": people["width"], "height": people["height"]}
    name = field["drawn"][0]
    about = tape_window(name, marks_extent(taped(given, field, length, 1.0)))
    side = about["x1"] - about["x0"]
    draft = lettered(given, side * TAPE_LETTERS, 0.0)
    marks = seen_from_room(draft, about) if name == "elevation" else cut_at_handle(draft, about)
    marks.extend(taped(given, field, length, side * TAPE_LETTERS))
    return {**view, "x": about["x0"], "y": about["y0"], "width": side, "height": side, "marks": marks}


def tape_draft(door: Door, words: Words, units: str) -> Draft:
    """Return what all the small drawings of a door are drawn from."""
    return bare_draft(door, words, units)
