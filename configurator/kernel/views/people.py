"""Who lives behind the door and who looks in, seen along the wall: the observer outside on the left."""

from configurator.kernel.looks import no_look
from configurator.kernel.say import say_length
from configurator.kernel.shapes import Door, Drawing, Household, Mark
from configurator.kernel.tongue import Words, in_words
from configurator.kernel.views.bare import bare_draft
from configurator.kernel.views.dimensions import (
    EDGE_ROOM,
    FIRST_TIER,
    TIER,
    Notes,
    blank_notes,
    dim_across,
    dim_upright,
    noted,
    said,
    tier,
)
from configurator.kernel.views.draft import Draft, lettered
from configurator.kernel.views.marks import letters, make_mark, rectangle, stroke, text_width
from configurator.kernel.views.section import covering_side, door_side
from configurator.kernel.views.walls import wall_back, wall_side

# Letters are this share of the way from one person to the other.
PEOPLE_LETTERS = 0.026
# In parts of a person's height: the eye above the ground, the head's radius, and half the body at heights.
EYE_SHARE = 0.936
HEAD_RADIUS = 0.064
BODY = [[0.0, 0.045], [0.5, 0.07], [0.74, 0.092], [0.81, 0.075], [0.845, 0.03]]
# In parts of the height as well: how far beside a person's middle their dimensions begin, clear of the body.
BESIDE_BODY = 0.1
# How far the ground goes on beyond a person, in letters, and how thick it is drawn.
GROUND_BEYOND = 1.5
GROUND_DEPTH = 0.5


def person_side(x: float, ground: float, height: float) -> list[Mark]:
    """Return a standing person as a scale figure on the ground at ``ground``."""
    right: list[float] = []
    left: list[float] = []
    for level in BODY:
        right.extend([x + level[1] * height, -ground - level[0] * height])
    for i in range(len(BODY)):
        level = BODY[len(BODY) - 1 - i]
        left.extend([x - level[1] * height, -ground - level[0] * height])
    right.extend(left)
    head = -ground - EYE_SHARE * height
    return [
        make_mark("polygon", "leaf seen", right),
        make_mark("circle", "leaf seen", [x, head, HEAD_RADIUS * height]),
    ]


def ground_marks(household: Household, back: float, size: float) -> list[Mark]:
    """Return the room's floor and the ground outside, up to the wall's outer face."""
    level = -household["outside_level"]
    far = -household["outside_distance"] - size * GROUND_BEYOND
    near = household["person_distance"] + size * GROUND_BEYOND
    depth = size * GROUND_DEPTH
    return [
        rectangle("floor", [back, 0.0, near, depth]),
        rectangle("lawn", [far, level, back, level + depth]),
        stroke("floor cut", back, 0.0, near, 0.0),
        stroke("floor cut", far, level, back, level),
        stroke("floor cut", back, 0.0, back, level),
        stroke("hidden", -household["outside_distance"], 0.0, back, 0.0),
    ]


def sight_lines(household: Household, eye: float) -> list[Mark]:
    """Return the lines from the eye outside to the head and to the feet of the person inside."""
    x = -household["outside_distance"]
    there = household["person_distance"]
    return [
        stroke("axis-line", x, -eye, there, -household["person_height"]),
        stroke("axis-line", x, -eye, there, 0.0),
    ]


def inside_dims(notes: Notes, household: Household, low: float) -> None:
    """Add the heights of the person inside and the distance from the glass, below ``low``."""
    size = notes["size"]
    there = household["person_distance"]
    side = there + household["person_height"] * BESIDE_BODY
    x = side + size * FIRST_TIER
    height = household["shoulder_height"]
    label = said(notes, height, "below", "household_shoulder_height")
    dim_upright(notes, [-height, 0.0], tier(x, side), label)
    height = household["person_height"]
    label = said(notes, height, "below", "household_person_height")
    dim_upright(notes, [-height, 0.0], tier(x + size * TIER, side), label)
    dim_across(notes, [0.0, there], tier(low, 0.0), said(notes, there, "after", "household_person_distance"))


def outside_dims(notes: Notes, household: Household, low: float) -> None:
    """Add the observer's eye, distance and ground, the distance below ``low``."""
    size = notes["size"]
    far = household["outside_distance"]
    level = household["outside_level"]
    eye = household["outside_eye"]
    side = -far - eye * BESIDE_BODY
    x = side - size * FIRST_TIER
    dim_upright(notes, [-level, 0.0], tier(x, side), said(notes, level, "above", "household_outside_level"))
    label = said(notes, eye, "below", "household_outside_eye")
    dim_upright(notes, [-level - eye, -level], tier(x - size * TIER, side), label)
    label = said(notes, far, "before", "household_outside_distance")
    dim_across(notes, [-far, 0.0], tier(low, -level), label)


def people_window(household: Household, draft: Draft, low: float, view: Drawing) -> None:
    """Set the drawing's window round both people, the door and the distances at ``low``."""
    size = draft["size"]
    reach = size * (FIRST_TIER + TIER * 2 + EDGE_ROOM)
    view["x"] = -household["outside_distance"] - household["outside_eye"] * BESIDE_BODY - reach
    there = household["person_distance"]
    words = text_width(say_length(there, draft["words"], draft["units"]), size) + size
    view["width"] = there + max(household["person_height"] * BESIDE_BODY + reach, words) - view["x"]
    eye = household["outside_level"] + household["outside_eye"] / EYE_SHARE
    view["y"] = -max(draft["frame"]["top"] + size * 1.5, household["person_height"], eye) - size * EDGE_ROOM
    view["height"] = low + size * EDGE_ROOM - view["y"]


def people_notes(household: Household, draft: Draft, low: float) -> list[Mark]:
    """Return which side is which, and every measure of both people, the distances at ``low``."""
    size = draft["size"]
    back = wall_back(draft["door"])
    y = -draft["frame"]["top"]
    notes = blank_notes(size, draft["words"], draft["units"])
    inside_dims(notes, household, low)
    outside_dims(notes, household, low)
    marks = [
        letters("label", [back - size * 0.6, y], size, in_words("outside", draft["words"]), "end"),
        letters("label", [size * 0.9, y], size, in_words("room", draft["words"]), "start"),
    ]
    marks.extend(noted(notes))
    return marks


def measure_people(household: Household, door: Door, words: Words, units: str) -> Drawing:
    """Return the door in section between the person inside and the one who looks in, with every measure of theirs."""
    size = (household["outside_distance"] + household["person_distance"]) * PEOPLE_LETTERS
    draft = lettered(bare_draft(door, words, units), size, 0.0)
    level = household["outside_level"]
    low = max(0.0, -level) + size * (FIRST_TIER + GROUND_DEPTH)
    view: Drawing = {
        "id": "measure-people",
        "title": in_words("Who lives behind the door and who looks in", words),
        "desc": in_words(
            "From the side: someone outside, the door in section and someone in the room, with the lines of sight.",
            words,
        ),
        "x": 0.0,
        "y": 0.0,
        "width": 0.0,
        "height": 0.0,
        "marks": ground_marks(household, wall_back(door), size),
        "look": no_look(),
    }
    marks = view["marks"]
    marks.extend(wall_side(draft))
    marks.extend(door_side(draft))
    marks.extend(covering_side(draft))
    marks.extend(person_side(household["person_distance"], 0.0, household["person_height"]))
    marks.extend(person_side(-household["outside_distance"], level, household["outside_eye"] / EYE_SHARE))
    marks.extend(sight_lines(household, level + household["outside_eye"]))
    marks.extend(people_notes(household, draft, low))
    people_window(household, draft, low, view)
    return view
