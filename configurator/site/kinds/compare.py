"""One family on one door as a line of a comparison."""

from typing import TypedDict, TypeVar

from configurator.kernel.message import is_said
from configurator.kernel.shapes import Door, Family, Figure
from configurator.kernel.tongue import wording
from configurator.site.house import House

NO_FIT = "does not fit"
NO_FIT_WORDS = wording("does not fit")
# The best first; the place in this list is what a table sorts by.
STATES = ("clears", "guide by hand", "caution", "blocked", NO_FIT)
COLUMNS = (
    ("visible_glass_open", wording("Clear glass when open")),
    ("stack_height", wording("Stack")),
    ("stack_over_glass", wording("Stack over the glass")),
    ("projection_most", wording("Stands out at most")),
    ("light_closed", wording("Light when closed")),
)


class Line(TypedDict):
    """A family on a door, by their ids: the page's address, the verdict at the handle, its words and its place among
    :data:`STATES`, and the figures by name, or in their place a refusal."""

    family: str
    door: str
    url: str
    state: str
    says: str
    rank: int
    refusal: str
    figures: dict[str, Figure]


class NamedLine(Line):
    """A line under the name of its family, or of its door."""

    name: str


Named = TypeVar("Named", bound=NamedLine)


def fitted_url(door: Door, family: Family) -> str:
    """Return the address of the page of a family on a door."""
    return f"doors/{door['id']}/{family['id']}.html"


def compared(house: House, door: Door, family: Family) -> Line:
    """Return a family's figures and verdict on a door; a refusal stands in place of the figures."""
    answer = house.answer(door, family)
    state, says = NO_FIT, house.named(NO_FIT_WORDS)
    if not is_said(answer["refusal"]):
        passing = answer["verdicts"]["pass_through"]
        state, says = passing["state"], house.phrase(passing["says"])
    return {
        "family": family["id"],
        "door": door["id"],
        "url": fitted_url(door, family),
        "state": state,
        "says": says,
        "rank": STATES.index(state),
        "refusal": house.say(answer["refusal"]),
        "figures": answer["figures"],
    }


def best_first(lines: list[Named]) -> list[Named]:
    """Return the lines by verdict, then by how much glass stays clear when open."""
    return sorted(lines, key=lambda line: (line["rank"], -clear_glass(line), line["name"]))


def light_when_closed(line: Line) -> float:
    """Return the light that comes in when closed, beside the covering too where sidelights stay bare."""
    figures = line["figures"]
    key = "light_closed_opening" if "light_closed_opening" in figures else "light_closed"
    return float(figures[key]["value"])


def view_when_closed(line: Line) -> float:
    """Return the view that is left when closed, beside the covering too where sidelights stay bare."""
    figures = line["figures"]
    key = "view_closed_opening" if "view_closed_opening" in figures else "view_closed"
    return float(figures[key]["value"])


def clear_glass(line: Line) -> float:
    """Return the visible glass when open, 0 where the family does not fit."""
    return 0.0 if line["refusal"] else line["figures"]["visible_glass_open"]["value"]
