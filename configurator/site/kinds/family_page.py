"""One kind of covering: what it is, how it moves, what may be chosen, and how it fits each door."""

from typing import TypedDict

from configurator.drawing.page_svg import layered_svg, sized
from configurator.drawing.photo import FIGURE, SWATCH
from configurator.drawing.swatch_svg import swatch_svg
from configurator.kernel.shapes import Answer, Choice, Door, Family, Option
from configurator.kernel.views.swatch import swatch_of
from configurator.kernel.whereabouts import place_words
from configurator.site.drawings.pictures import (
    bare_covering,
    bare_door,
    bare_section,
    family_window,
    share_position,
    with_door,
)
from configurator.site.drawings.rooms import shown_room
from configurator.site.drawings.shown_photos import ShownPhoto, shown_photo
from configurator.site.drawings.subjects import first_single, own_door
from configurator.site.house import House
from configurator.site.kinds.compare import NamedLine, compared
from configurator.site.kinds.facts import FactLine, fact_lines
from configurator.site.kinds.figure_rules import FigureRules, figure_rules
from configurator.site.kinds.sourced_numbers import NumberGroup, sourced_numbers

STEPS = 10
FIRST = 4


class Mover(TypedDict):
    """Elevation and section that a reader moves, both to one scale; each step in words, the first and the last step."""

    views: list[str]
    words: list[str]
    first: int
    last: int


class OptionLine(TypedDict):
    """An option, what is said of it, its photograph, and its swatch or nothing."""

    name: str
    words: str
    photo: ShownPhoto | None
    swatch: str


class ChoiceLines(TypedDict):
    """A choice with what is offered of it."""

    name: str
    options: list[OptionLine]


class FamilyPage(TypedDict):
    """What the page of a family, known by its id, shows: its photograph, and the room painted round it. Nothing is
    painted and nothing moves where it goes on no door."""

    family: str
    photo: ShownPhoto | None
    room: ShownPhoto | None
    name: str
    summary: str
    also_called: list[str]
    description: list[str]
    good_at: list[str]
    bad_at: list[str]
    facts: list[FactLine]
    care: list[str]
    safety: list[str]
    numbers: list[NumberGroup]
    mover: Mover | None
    door_name: str
    choices: list[ChoiceLines]
    doors: list[NamedLine]
    rules: list[FigureRules]
    try_url: str


def mover(house: House, door: Door, family: Family) -> Mover:
    """Return elevation and section that a reader moves from open to closed, a frame a step, each step in words."""
    answer = house.answer(door, family)
    household = house.catalog.household
    return house.once(lambda: moving(house, door, family, answer), "mover", door, family, house.units, household)


def moving(house: House, door: Door, family: Family, answer: Answer) -> Mover:
    """Return the frames of the moving drawing."""
    window = family_window(house, door, [family])
    places = [share_position(family, step / STEPS) for step in range(STEPS + 1)]
    classes = ["frame now" if step == FIRST else "frame" for step in range(STEPS + 1)]
    behind = bare_door(door, window)
    fronts = [with_door(bare_covering(house, door, family, place, window), behind) for place in places]
    sides = [bare_section(house, door, family, place, window) for place in places]
    return {
        "views": [
            sized(layered_svg(drawings, classes, "mover-"), f"{drawings[0]['width']:.0f}")
            for drawings in (fronts, sides)
        ],
        "words": [place_words(answer["legs"], place, house.words) for place in places],
        "first": FIRST,
        "last": STEPS,
    }


def option_swatch(family: Family, choice: Choice, option: Option) -> str:
    """Return the swatch of an option that has a color, or nothing."""
    return swatch_svg(swatch_of(family, {choice["id"]: option["id"]})) if "color" in option["look"] else ""


def choice_lines(house: House, family: Family) -> list[ChoiceLines]:
    """Return the choices with what is offered of each."""
    notes = house.catalog.family_notes[family["id"]].choices
    return [
        {
            "name": choice["name"],
            "options": [
                {
                    "name": option["name"],
                    "words": notes[choice["id"]].options[option["id"]].note,
                    "photo": shown_photo(house, notes[choice["id"]].options[option["id"]].photo, SWATCH),
                    "swatch": option_swatch(family, choice, option),
                }
                for option in choice["options"]
                if not option["retired"]
            ],
        }
        for choice in family["choices"]
    ]


def family_page(house: House, family: Family) -> FamilyPage:
    """Return what the page of a family shows."""
    notes = house.catalog.family_notes[family["id"]]
    fits = own_door(house, family)
    shown = fits or first_single(house)
    return {
        "family": family["id"],
        "photo": shown_photo(house, notes.photo, FIGURE),
        "room": shown_room(house, family),
        "name": notes.name,
        "summary": notes.summary,
        "also_called": notes.also_called,
        "description": [*notes.description, *notes.moves],
        "good_at": notes.good_at,
        "bad_at": notes.bad_at,
        "facts": fact_lines(house, family),
        "care": notes.care,
        "safety": notes.safety,
        "numbers": sourced_numbers(house, notes),
        "mover": mover(house, shown, family) if fits else None,
        "door_name": shown["name"],
        "choices": choice_lines(house, family),
        "doors": [{**compared(house, door, family), "name": door["name"]} for door in house.doors],
        "rules": figure_rules(house, family),
        "try_url": house.try_url(shown, family),
    }
