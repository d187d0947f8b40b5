"""What a showroom is told when its content is wrong: the place, the fault, and what to write."""

import re
from pathlib import Path
from typing import NamedTuple

import pytest
from hypothesis import given
from hypothesis import strategies as st

from configurator.catalog import ContentProblems, Problem, load
from configurator.catalog.located import read_content
from configurator.catalog.schema.door import DoorFile
from configurator.catalog.schema_check import check
from configurator.tongues.speech import speech

GARDEN = "doors/garden-pair.yaml"
LEVER = "handles/lever.yaml"
CELLS = "families/cells.yaml"
ROOM = "showroom.yaml"

SPANISH = speech("es")
# Among them are none that content may hold.
ENGLISH_WORDS = re.compile(r"\b(?:is|are|the|an|and|or|must|which|but|expected|missing|unknown|take|write)\b")

HANDLE_LINES = """\
handle:
  preset: lever
  backset: {value: 2 3/8 in, source: common practice}
"""

LIFT_LINES = """\
options:
      cordless: {name: Cordless}
      motor: {name: Motor, numbers: {hand_away: yes}}
"""


class Fault(NamedTuple):
    """In which file what stands instead of a sound passage, and what is reported after the file's name."""

    file: str
    sound: str
    put: str
    report: str


def spoil(content: Path, name: str, sound: str, put: str) -> None:
    """Replace a passage of a sound file."""
    path = content / name
    text = path.read_text(encoding="utf-8")
    assert sound in text, f"{sound!r} is not in {name}"
    path.write_text(text.replace(sound, put, 1), encoding="utf-8")


def problems_of(content: Path) -> list[Problem]:
    """Return what is wrong with a folder, which may be nothing."""
    try:
        load(content)
    except ContentProblems as found:
        return found.problems
    return []


def told(content: Path) -> list[str]:
    """Return what loading the folder reports."""
    return [str(problem) for problem in problems_of(content)]


def english_in(problem: Problem) -> list[str]:
    """Return what of a problem is English where it is told in Spanish: texts without translation, and stray words."""
    texts = [clause["text"] for clause in problem.clauses]
    texts += [str(term[0]) for clause in problem.clauses for term in clause["terms"].values() if term[1] == "text"]
    told = problem.told(SPANISH)
    assert told.startswith(str(problem).split(": ")[0])
    assert told != str(problem)
    return [text for text in texts if text not in SPANISH["said"]] + ENGLISH_WORDS.findall(told)


FAULTS = {
    "a number too large beside another": Fault(
        CELLS,
        "closed_thickness: 3 mm",
        "closed_thickness: 30 mm",
        "17:21: numbers.closed_thickness is 30 mm, and numbers.pitch is 3/4 in; "
        "numbers.closed_thickness is at most numbers.pitch",
    ),
    "a number too large beside one that an option sets": Fault(
        CELLS,
        "motor: {name: Motor, numbers: {hand_away: yes}}",
        "motor: {name: Motor, numbers: {closed_thickness: 30 mm}}",
        "29:56: choices.lift.options.motor.numbers.closed_thickness is 30 mm, and numbers.pitch is 3/4 in; "
        "choices.lift.options.motor.numbers.closed_thickness is at most numbers.pitch",
    ),
    "more parts in a row than can be drawn": Fault(
        CELLS,
        "  pitch: 3/4 in\n  closed_thickness: 3 mm",
        "  pitch: 1 mm\n  closed_thickness: 1 mm",
        "16:10: numbers.height_most is 3000 mm, and numbers.pitch is 1 mm; "
        "numbers.height_most is at most 400 times numbers.pitch",
    ),
    "a length below its limits": Fault(
        GARDEN,
        "width: 22 in",
        "width: 0 mm",
        "11:10: glass.width is 0 mm; a glass width between 100 mm and 1500 mm is expected",
    ),
    "limits in the units that were written": Fault(
        GARDEN,
        "width: 22 in",
        "width: 0 in",
        "11:10: glass.width is 0 in; a glass width between 4 in and 59 in is expected",
    ),
    "a length without a unit": Fault(
        GARDEN,
        "width: 22 in",
        "width: 22",
        "11:10: glass.width is 22; a length needs its unit: write 22 in or 22 mm",
    ),
    "a negative level without a unit": Fault(
        ROOM,
        "outside_level: -6 in",
        "outside_level: -6",
        "17:18: household.outside_level is -6; a length needs its unit: write -6 in or -6 mm",
    ),
    "a fraction that no tape shows": Fault(
        GARDEN,
        "width: 22 in",
        "width: 22 5/4 in",
        "11:10: glass.width is 22 5/4 in; 5/4 is no fraction that a tape shows; "
        "a length such as 22 1/2 in, 6'8\" or 571 mm is expected",
    ),
    "an order step of nothing": Fault(
        ROOM,
        "order_step: 1/8 in",
        "order_step: 0 mm",
        "10:13: order_step is 0 mm; an order step between 0.5 mm and 50 mm is expected",
    ),
    "units that are unknown, and an order step that hangs on them": Fault(
        ROOM,
        "units: in\norder_step: 1/8 in",
        "units: yd",
        "9:8: units is 'yd'; in or mm is expected",
    ),
    "a word for a length": Fault(
        GARDEN,
        "width: 22 in",
        "width: wide",
        "11:10: glass.width is 'wide'; a length such as 22 1/2 in, 6'8\" or 571 mm is expected",
    ),
    "a fraction over one": Fault(
        GARDEN,
        "width: 22 in",
        "width: 22 3/2 in",
        "11:10: glass.width is 22 3/2 in; 3/2 is no fraction that a tape shows; a length such as 22 1/2 in, 6'8\" "
        "or 571 mm is expected",
    ),
    "too many inches after feet": Fault(
        GARDEN,
        "height: 6'8\"",
        "height: 6'80\"",
        "9:11: leaf.height is 6'80\"; inches after feet stay below 12; "
        "a length such as 22 1/2 in, 6'8\" or 571 mm is expected",
    ),
    "a list for a length": Fault(
        GARDEN,
        "width: 22 in",
        "width: [22 in]",
        "11:10: glass.width is a list; a length such as 22 1/2 in, 6'8\" or 571 mm is expected",
    ),
    "a mapping for a length": Fault(
        GARDEN,
        "width: 22 in",
        "width: {a: 22 in}",
        "11:10: glass.width is a mapping; a length such as 22 1/2 in, 6'8\" or 571 mm is expected",
    ),
    "an empty value": Fault(
        GARDEN,
        "width: 22 in",
        "width:",
        "11:9: glass.width is empty; write a value or take the line out",
    ),
    "YAML's own word for nothing": Fault(
        GARDEN,
        "width: 22 in",
        "width: ~",
        "11:10: glass.width is empty; write a value or take the line out",
    ),
    "a color without quotes": Fault(
        ROOM,
        "ink: '#000000'",
        "ink: #000000",
        "20:11: a '#' begins a remark; put colors in quotes",
    ),
    "a misspelt section": Fault(
        GARDEN,
        "glass:\n",
        "glas:\n",
        "10:1: unknown key 'glas'; did you mean 'glass'?",
    ),
    "a misspelt key": Fault(
        GARDEN,
        "width: 22 in",
        "widht: 22 in",
        "11:3: unknown key 'widht'; did you mean 'width'?",
    ),
    "a missing key": Fault(
        GARDEN,
        "  width: 22 in\n",
        "",
        "10:1: glass.width is missing; a length such as 22 1/2 in, 6'8\" or 571 mm is expected",
    ),
    "a missing section": Fault(
        GARDEN,
        HANDLE_LINES,
        "",
        "1:1: handle is missing; a mapping with preset, passive, height, backset is expected",
    ),
    "a text for a section": Fault(
        GARDEN,
        HANDLE_LINES,
        "handle: lever\n",
        "18:9: handle is 'lever'; a mapping with preset, passive, height, backset is expected",
    ),
    "parts wider than the leaf": Fault(
        GARDEN,
        "width: 36 in",
        "width: 34 in",
        "8:10: leaf.width is 34 in, but hinge stile 6 1/2 in + bead 1/2 in + glass 22 in + bead 1/2 in + latch "
        "stile 6 1/2 in = 36 in; they must agree within 1/8 in (3 mm)",
    ),
    "parts higher than the leaf": Fault(
        GARDEN,
        "height: 6'8\"",
        "height: 6'7\"",
        "9:11: leaf.height is 79 in, but top rail 6 in + bead 1/2 in + glass 64 in + bead 1/2 in + bottom rail 9 "
        "in = 80 in; they must agree within 1/8 in (3 mm)",
    ),
    "a word that is nearly right": Fault(
        GARDEN,
        "swing: in",
        "swing: inn",
        "6:8: swing is 'inn'; in or out is expected; did you mean 'in'?",
    ),
    "a word that is not known": Fault(
        GARDEN,
        "swing: in",
        "swing: sideways",
        "6:8: swing is 'sideways'; in or out is expected",
    ),
    "a stop on an in-swing leaf": Fault(
        GARDEN,
        "swing: in",
        "swing: in\nstop: {lap: 1 in}",
        "7:1: stop has no meaning for an in-swing leaf, whose stop is on the other face; take it out",
    ),
    "a first door that is nearly one": Fault(
        ROOM,
        "units: in",
        "units: in\nfirst_door: garden-dor",
        "10:13: first_door is 'garden-dor', but there is no such door; did you mean 'garden-pair'?",
    ),
    "a handle that is nearly one": Fault(
        GARDEN,
        "preset: lever",
        "preset: levre",
        "19:11: handle.preset is 'levre', but there is no such handle; did you mean 'lever'?",
    ),
    "a handle that does not exist": Fault(
        GARDEN,
        "preset: lever",
        "preset: gong",
        "19:11: handle.preset is 'gong', but there is no such handle; known here: lever",
    ),
    "a joint on a single leaf": Fault(
        GARDEN,
        "layout: pair",
        "layout: single",
        "17:1: pair has no meaning for the layout single; take it out",
    ),
    "no source": Fault(
        GARDEN,
        "source: invented\n",
        "",
        "1:1: source is missing; invented, common practice or 'published — <where>' is expected",
    ),
    "a source without its publication": Fault(
        GARDEN,
        "source: invented",
        "source: published",
        "3:9: source is 'published'; invented, common practice or 'published — <where>' is expected",
    ),
    "a number's unknown source": Fault(
        GARDEN,
        "source: common practice",
        "source: hearsay",
        "20:38: handle.backset.source is 'hearsay'; invented, common practice or 'published — <where>' is expected",
    ),
    "one hinge height without a list": Fault(
        GARDEN,
        "hinges: {side: left}",
        "hinges: {side: left, heights: 10 in}",
        "16:31: hinges.heights is 10 in; a list in [ ] is expected",
    ),
    "a hinge above the leaf": Fault(
        GARDEN,
        "hinges: {side: left}",
        "hinges: {side: left, heights: [10 in, 90 in]}",
        "16:39: hinges.heights.2 is not on the leaf",
    ),
    "half a muntin column": Fault(
        GARDEN,
        "swing: in",
        "swing: in\nmuntins: {columns: 2.5, rows: 5}",
        "7:20: muntins.columns is 2.5; lites across, a whole number between 1 and 12, is expected",
    ),
    "muntins without a width": Fault(
        GARDEN,
        "swing: in",
        "swing: in\nmuntins: {columns: 3, rows: 5}",
        "7:1: muntins.width is not given; bars that divide the glass have a width",
    ),
    "a ceiling below the door": Fault(
        GARDEN,
        "swing: in",
        "swing: in\nroom: {ceiling: 6 ft}",
        "7:17: room.ceiling is 6 ft; the leaf with the gap above it would reach ≈ 80 1/2 in, higher than the ceiling",
    ),
    "a key twice": Fault(
        GARDEN,
        "swing: in",
        "swing: in\nroom: {ceiling: 7 ft, ceiling: 8 ft}",
        "7:23: key 'ceiling' is here twice, first in line 7; keep one",
    ),
    "a colon in a text": Fault(
        GARDEN,
        "summary: Two leaves.",
        "summary: Two leaves: one works.",
        "2:20: a ':' stands where none is expected; check the indentation, or put text that holds ': ' in quotes",
    ),
    "a tab": Fault(
        GARDEN,
        "  width: 22 in",
        "\twidth: 22 in",
        "11:1: the line is indented with a tab; use spaces",
    ),
    "a crooked indentation": Fault(
        GARDEN,
        "  height: 64 in",
        " height: 64 in",
        "12:2: this line does not fit the lines above it; check its indentation and quotes",
    ),
    "an alias": Fault(
        GARDEN,
        "width: 22 in",
        "width: *w",
        "11:10: anchors and aliases (& and *) are not used here; write the value out",
    ),
    "a bracket left open": Fault(
        GARDEN,
        "hinges: {side: left}",
        "hinges: {side: left",
        "16:9: a mapping in { } is not closed, or lacks a comma",
    ),
    "an unprintable sign": Fault(
        GARDEN,
        "Two leaves.",
        "Two \x01 leaves.",
        "2:14: an unprintable sign stands here; take it out",
    ),
    "a second document": Fault(
        GARDEN,
        "pair: {meeting_gap: 1/8 in}",
        "pair: {meeting_gap: 1/8 in}\n---\na: b",
        "18:1: the file holds a second document; take the line '---' out",
    ),
    "a list as a key": Fault(
        GARDEN,
        "width: 22 in",
        "width: 22 in\n  ? [a, b]\n  : 3",
        "12:5: a key must be a plain word",
    ),
    "another handle's grip": Fault(
        LEVER,
        "grip: {length: 4 1/2 in, height: 3/4 in}",
        "grip: {length: 4 1/2 in, diameter: 2 in, height: 1 in}",
        "5:26: grip.diameter has no meaning for a lever, which has length or height",
    ),
    "a gap deeper than the handle": Fault(
        LEVER,
        "gap: 1 3/8 in",
        "gap: 2 1/2 in",
        "6:6: gap is 2 1/2 in; the gap behind the grip must be less than the handle's whole projection, 2 1/4 in",
    ),
    "a plate thicker than the gap": Fault(
        LEVER,
        "gap: 1 3/8 in",
        "gap: 1/4 in",
        "8:47: plate.thickness is 3/8 in; the handle's plate must not reach the grip, 1/4 in in front of the leaf",
    ),
    "a mechanism that is nearly one": Fault(
        CELLS,
        "mechanism: accordion",
        "mechanism: accordian",
        "4:12: mechanism is 'accordian', which does not exist; did you mean 'accordion'?",
    ),
    "a number that the mechanism needs": Fault(
        CELLS,
        "  pitch: 3/4 in\n",
        "",
        "11:1: numbers.pitch is missing: height of one cell or pleat when fully drawn out; a length is expected "
        "here or in each option of one choice",
    ),
    "a number that only one option gives": Fault(
        CELLS,
        "cloth_view: 0, cloth_light: 0.01",
        "cloth_view: 0",
        "11:1: numbers.cloth_light is missing: share of the light through the cloth as it hangs, gathers and cells "
        "included; a share is expected here or in each option of one choice",
    ),
    "a pitch of nothing": Fault(
        CELLS,
        "  pitch: 3/4 in\n",
        "  pitch: 0 mm\n",
        "16:10: numbers.pitch is 0 mm; a length between 0.5 mm and 10000 mm is expected",
    ),
    "a number that is nearly one": Fault(
        CELLS,
        "  pitch: 3/4 in\n",
        "  pich: 3/4 in\n",
        "16:3: unknown number 'pich'; did you mean 'pitch'?",
    ),
    "an option's number that is nearly one": Fault(
        CELLS,
        "cloth_light: 45 %",
        "cloth_lihgt: 45 %",
        "23:77: unknown number 'cloth_lihgt'; did you mean 'cloth_light'?",
    ),
    "a share over one": Fault(
        CELLS,
        "cloth_light: 45 %",
        "cloth_light: 45",
        "23:90: choices.fabric.options.snow.numbers.cloth_light is 45; a share between 0 and 1 is expected",
    ),
    "a number for yes or no": Fault(
        CELLS,
        "hand_away: yes",
        "hand_away: 1",
        "29:49: choices.lift.options.motor.numbers.hand_away is 1; yes or no is expected",
    ),
    "a retired preset": Fault(
        CELLS,
        "snow: {name: Snow,",
        "snow: {name: Snow, retired: yes,",
        "23:7: choices.fabric.options.snow is the preset, being the first, and is retired; move another one up",
    ),
    "an id that no link can hold": Fault(
        CELLS,
        "snow: {",
        "Snow White: {",
        "23:7: 'Snow White' cannot be an id; small letters, digits and single hyphens are expected, because links "
        "are made of it",
    ),
    "a color's name": Fault(
        CELLS,
        "look: {color: '#f4f4f0'}",
        "look: {color: white}",
        "23:40: choices.fabric.options.snow.look.color is 'white'; a color such as '#1f2a33' (in quotes) is expected",
    ),
    "a weave that is nearly one": Fault(
        CELLS,
        "look: {color: '#f4f4f0'}",
        "look: {weave: herringbon}",
        "23:40: choices.fabric.options.snow.look.weave is 'herringbon'; plain, slub, twill, basket, herringbone, "
        "stripe, leaf, lace, mesh, fleece, grain, paint or brushed is expected; did you mean 'herringbone'?",
    ),
    "a luster that nothing has": Fault(
        CELLS,
        "look: {color: '#f4f4f0'}",
        "look: {luster: dull}",
        "23:41: choices.fabric.options.snow.look.luster is 'dull'; matte, satin or glossy is expected",
    ),
    "a choice of nothing": Fault(
        CELLS,
        LIFT_LINES,
        "options: {}\n",
        "27:14: choices.lift.options is empty; at least one option is expected",
    ),
    "a cassette without a unit": Fault(
        CELLS,
        "numbers:\n  head",
        "cassettes: [{name: Small, roll: 60, height: 3 in, depth: 3 in}]\nnumbers:\n  head",
        "11:33: cassettes.1.roll is 60; a length needs its unit: write 60 in or 60 mm",
    ),
    "a color too pale to read": Fault(
        ROOM,
        "warm: '#803010'",
        "warm: '#ffc0a0'",
        "20:52: theme.colors.warm is #ffc0a0, with a contrast of 1.42 : 1 on the well #f3f3f3, which is mixed from "
        "the paper; at least 4.5 : 1 is needed; the nearest color that passes is '#8a6857'",
    ),
    "a color that can be read on the paper but not on what is set off": Fault(
        ROOM,
        "cool: '#105060'",
        "cool: '#767676'",
        "20:69: theme.colors.cool is #767676, with a contrast of 4.09 : 1 on the well #f3f3f3, which is mixed from "
        "the paper; at least 4.5 : 1 is needed; the nearest color that passes is '#6f6f6f'",
    ),
    "a paper on which nothing can be read": Fault(
        ROOM,
        "dark: {paper: '#000000'",
        "dark: {paper: '#777777'",
        "21:17: theme.dark.paper is #777777, too near to mid gray for any color to be read on it and on the grounds "
        "mixed from it; write a lighter or a darker one",
    ),
    "a theme that is nearly one": Fault(
        ROOM,
        "name: sheet",
        "name: shet",
        "19:9: theme.name is 'shet'; linen or sheet is expected; did you mean 'sheet'?",
    ),
    "a photograph that is not there": Fault(
        ROOM,
        "units: in",
        "units: in\nphoto: {file: lost.jpg, alt: Our shop}",
        "10:15: photo.file is 'lost.jpg', but there is no such photograph in pictures; none is known here",
    ),
    "a photograph without words": Fault(
        ROOM,
        "units: in",
        "units: in\nphoto: {file: lost.jpg}",
        "10:1: photo.alt is missing; a line of text is expected",
    ),
    "a door's photograph that is not there": Fault(
        GARDEN,
        "layout: pair\n",
        "layout: pair\nphoto: {file: lost.jpg, alt: Our shop}\n",
        "6:15: photo.file is 'lost.jpg', but there is no such photograph in pictures; none is known here",
    ),
    "an option's photograph that is not there": Fault(
        CELLS,
        "look: {color: '#f4f4f0'}",
        "photo: {file: lost.jpg, alt: Our cloth}",
        "23:40: choices.fabric.options.snow.photo.file is 'lost.jpg', but there is no such photograph in pictures; "
        "none is known here",
    ),
    "a photograph whose subject lies beside it": Fault(
        CELLS,
        "mechanism: accordion\n",
        "mechanism: accordion\nphoto: {file: lost.jpg, alt: Cells, focus: 120% 40%}\n",
        "5:44: photo.focus is 120% 40%; a place in the picture such as 40% 60% is expected",
    ),
    "a logo that is not there": Fault(
        ROOM,
        "  name: sheet",
        "  name: sheet\n  logo: lost.svg",
        "20:9: theme.logo is 'lost.svg', but there is no such file in the content folder",
    ),
    "a logo that no browser shows": Fault(
        ROOM,
        "  name: sheet",
        "  name: sheet\n  logo: showroom.yaml",
        "20:9: theme.logo is 'showroom.yaml'; a file that ends in .svg, .png, .jpg, .jpeg or .webp is expected",
    ),
    "a mail address without its sign": Fault(
        ROOM,
        "hello@test.example",
        "hello at test.example",
        "6:9: contact.mail is 'hello at test.example'; a mail address such as hello@showroom.example is expected",
    ),
    "a telephone number with words in it": Fault(
        ROOM,
        "telephone: (555) 555-0100",
        "telephone: call us",
        "5:14: contact.telephone is 'call us'; a telephone number such as (555) 555-0142 is expected",
    ),
    "hours without a list": Fault(
        ROOM,
        "hours: [{days: Monday, time: 9 to 5}]",
        "hours: Monday",
        "8:10: contact.hours is 'Monday'; a list of mappings with days, time is expected",
    ),
    "hours without a time": Fault(
        ROOM,
        "hours: [{days: Monday, time: 9 to 5}]",
        "hours: [{days: Monday}]",
        "8:3: contact.hours.1.time is missing; a line of text is expected",
    ),
    "a price level beyond the highest": Fault(
        CELLS,
        "mechanism: accordion\n",
        "mechanism: accordion\nprice_level: 5\n",
        "5:14: price_level is 5; a price level, a whole number between 1 and 4, is expected",
    ),
    "a way of cleaning that has no words": Fault(
        CELLS,
        "mechanism: accordion\n",
        "mechanism: accordion\ncleaning: {value: wipe, source: invented}\n",
        "5:19: cleaning is 'wipe'; wiped, dusted, washed or specialist is expected; did you mean 'wiped'?",
    ),
    "animals without a word for what they do": Fault(
        CELLS,
        "mechanism: accordion\n",
        "mechanism: accordion\nanimals: yes\n",
        "5:10: animals is 'yes'; stands up, gives way or tears is expected",
    ),
    "other names without a list": Fault(
        CELLS,
        "mechanism: accordion\n",
        "mechanism: accordion\nalso_called: honeycomb shade\n",
        "5:14: also_called is 'honeycomb shade'; a list in [ ] is expected",
    ),
    "another name that is a mapping": Fault(
        GARDEN,
        "layout: pair\n",
        "layout: pair\nalso_called: [French doors, {name: Patio doors}]\n",
        "6:29: also_called.2 is a mapping; a name is expected",
    ),
    "a slip in the key of a value with its source": Fault(
        CELLS,
        "mechanism: accordion\n",
        "mechanism: accordion\nanimals: {valeu: tears, source: invented}\n",
        "5:11: unknown key 'valeu'; did you mean 'value'?",
    ),
    "a fact whose source is left out": Fault(
        CELLS,
        "mechanism: accordion\n",
        "mechanism: accordion\nanimals: {value: tears}\n",
        "5:10: animals has no source beside its value; invented, common practice or 'published — <where>' is expected",
    ),
}


@pytest.mark.parametrize("fault", FAULTS.values(), ids=FAULTS.keys())
def test_a_fault_is_reported_once_at_its_place_with_what_to_write(content: Path, fault: Fault) -> None:
    spoil(content, fault.file, fault.sound, fault.put)
    assert told(content) == [f"content/{fault.file}:{fault.report}"]


@pytest.mark.parametrize("fault", FAULTS.values(), ids=FAULTS.keys())
def test_a_fault_is_told_in_spanish(content: Path, fault: Fault) -> None:
    spoil(content, fault.file, fault.sound, fault.put)
    (problem,) = problems_of(content)
    assert english_in(problem) == []


WHOLE_FILES = {
    "empty": (b"", "1:1: the file is empty; a mapping of keys and values is expected"),
    "only a remark": (b"# later\n", "1:1: the file is empty; a mapping of keys and values is expected"),
    "a list": (b"- a\n- b\n", "1:1: the file is no mapping; it must consist of lines such as 'name: Garden door'"),
    "words": (b"hello", "1:1: the file is no mapping; it must consist of lines such as 'name: Garden door'"),
    "a text begun too early": (
        b"care: | Dust it.\n",
        "1:7: a text of several lines begins on the line after its | or >",
    ),
    "a star in front": (b"name: *\n", "1:7: a '*' begins no text; put the text in quotes"),
    "an ampersand in front": (b"name: & Sons\n", "1:7: a '&' begins no text; put the text in quotes"),
    "a lost line": (b"name: T\nand more\nsummary: T\n", "2:1: a key without its ':'; write 'key: value'"),
    "another encoding": ("name: T\nsummary: Tür".encode("latin-1"), "2:11: the file is not in UTF-8; save it as UTF-8"),
    "brackets without end": (b"[" * 900, "2:1: a value is expected here, or a bracket before this is not closed"),
}


@pytest.mark.parametrize("case", WHOLE_FILES.values(), ids=WHOLE_FILES.keys())
def test_a_file_that_is_no_mapping_is_reported_as_a_whole(content: Path, case: tuple[bytes, str]) -> None:
    data, report = case
    (content / CELLS).write_bytes(data)
    assert told(content) == [f"content/{CELLS}:{report}"]


@pytest.mark.parametrize("data", [data for data, _ in WHOLE_FILES.values()], ids=WHOLE_FILES.keys())
def test_a_file_that_is_no_mapping_is_told_in_spanish(content: Path, data: bytes) -> None:
    (content / CELLS).write_bytes(data)
    (problem,) = problems_of(content)
    assert english_in(problem) == []


@given(st.one_of(st.binary(max_size=60), st.text("ab: \n\t-[]{}'\"#&*|>?,%@`!½\x00", max_size=60).map(str.encode)))
def test_no_file_whatever_its_bytes_ends_in_a_traceback(tmp_path_factory: pytest.TempPathFactory, data: bytes) -> None:
    path = tmp_path_factory.getbasetemp() / "any.yaml"
    path.write_bytes(data)
    file = read_content(path, "any.yaml")
    check(file, DoorFile)
    assert file.problems
    assert all(problem.line > 0 and problem.column > 0 for problem in file.problems)


def test_problems_of_all_files_are_listed_at_once_in_order(content: Path) -> None:
    spoil(content, ROOM, "units: in", "units: yards")
    spoil(content, GARDEN, "width: 22 in", "width: 22")
    spoil(content, GARDEN, "swing: in", "swing: up")
    spoil(content, CELLS, "  pitch: 3/4 in", "  pitch: tall")
    spoil(content, LEVER, "neck: 3/4 in", "neck: 3/4")
    places = [report.split(": ")[0] for report in told(content)]
    assert places == [
        "content/doors/garden-pair.yaml:6:8",
        "content/doors/garden-pair.yaml:11:10",
        "content/families/cells.yaml:16:10",
        "content/handles/lever.yaml:9:7",
        "content/showroom.yaml:9:8",
    ]


def test_a_door_is_not_blamed_for_its_handles_faulty_file(content: Path) -> None:
    spoil(content, LEVER, "neck: 3/4 in", "neck: none")
    (report,) = told(content)
    assert report.startswith("content/handles/lever.yaml:9:7: neck is 'none'")


def test_a_missing_folder_is_named() -> None:
    assert told(Path("nowhere")) == ["nowhere: there is no such folder"]


def test_missing_parts_of_a_folder_are_named(content: Path) -> None:
    (content / ROOM).unlink()
    (content / CELLS).unlink()
    (content / "pages/imprint.md").unlink()
    assert told(content) == [
        "content/families: there is no file here; at least one .yaml file is expected",
        "content/pages: there is no page here; at least one .md file is expected",
        "content/showroom.yaml:1:1: there is no such file, but the content needs it",
    ]


def test_a_showroom_that_offers_nothing_is_told(content: Path) -> None:
    spoil(content, CELLS, "source: invented", "source: invented\nretired: yes")
    assert told(content) == [
        "content/families: every family is retired; at least one that is still offered is expected"
    ]


def test_a_file_with_another_ending_is_not_passed_over_in_silence(content: Path) -> None:
    (content / GARDEN).rename(content / "doors/garden-pair.yml")
    (content / LEVER).rename(content / "handles/My Lever.yaml")
    reports = told(content)
    assert "content/doors/garden-pair.yml:1:1: the file is not read; name it garden-pair.yaml" in reports
    assert (
        "content/handles/My Lever.yaml:1:1: 'My Lever' cannot be an id; "
        "name the file in small letters, digits and single hyphens"
    ) in reports


@pytest.mark.parametrize("name", [GARDEN, LEVER, CELLS, ROOM])
def test_no_spoiled_line_ever_ends_in_a_traceback(content: Path, name: str) -> None:
    """Each line is in turn dropped, emptied, doubled and turned into what it should not be."""
    path = content / name
    sound = path.read_text(encoding="utf-8").splitlines()
    for index, line in enumerate(sound):
        key = line.split(":")[0]
        for put in (
            [],
            [f"{key}:"],
            [line, line],
            [f"{key}: [a, {{b: c}}]"],
            [f"{key}: {{value: [1]}}"],
            [f"{key}: -1"],
        ):
            path.write_text("\n".join([*sound[:index], *put, *sound[index + 1 :]]), encoding="utf-8")
            assert all(problem.line > 0 and problem.column > 0 for problem in problems_of(content))


def test_a_side_wall_nearer_than_the_sidelight_was_measured_from_the_wrong_edge(content: Path) -> None:
    lights = "layout: sidelights\nsidelight: {width: 14 in, glass: 8 in}\ngaps: {wall: 6 in}"
    spoil(content, GARDEN, "layout: pair", lights)
    spoil(content, GARDEN, "pair: {meeting_gap: 1/8 in}\n", "")
    report = "gaps.wall is 6 in; the side wall would stand within the side panel, 14 in; "
    report += "measure past it, from the leaf's hinge edge"
    assert told(content) == [f"content/doors/garden-pair.yaml:7:14: {report}"]
    spoil(content, GARDEN, "wall: 6 in", "wall: 14 in")
    assert told(content) == []
