"""Drawings of the starter's coverings in each of their looks."""

from collections.abc import Callable, Iterator
from typing import NamedTuple

from configurator.catalog import Catalog
from configurator.kernel.mount.hung import hung
from configurator.kernel.position import closed_position, main_position, open_position, position
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Drawing, Family, Position
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.draft import Draft, drafted
from configurator.kernel.views.elevation import elevation_of
from configurator.kernel.views.evening import evening_of
from configurator.kernel.views.plan import plan_of
from configurator.kernel.views.section import section_of
from configurator.kernel.views.street import street_of
from configurator.kernel.views.subject import subject

DOOR = "garden-door"
VIEWS: dict[str, Callable[[Draft], Drawing]] = {
    "elevation": elevation_of,
    "evening": evening_of,
    "section": section_of,
    "plan": plan_of,
}
STREET = "street"
ANNOTATION = {"dim", "tick", "dim-text", "label", "axis-line", "swing"}


def half_way(numbers: dict[str, float]) -> Position:
    """Return the position half way along the main movement."""
    return main_position(numbers, 0.5)


def turned(numbers: dict[str, float]) -> Position:
    """Return the position with blades let down and half way between open and closed."""
    return position(1.0, 0.0, (numbers["tilt_open"] + numbers["tilt_closed"]) / 2)


PLACES: dict[str, Callable[[dict[str, float]], Position]] = {
    "open": open_position,
    "half": half_way,
    "closed": closed_position,
    "turned": turned,
}


class Shown(NamedTuple):
    """A family in a look, at a place, in a view."""

    family: str
    option: str
    view: str
    place: str

    @property
    def name(self) -> str:
        """What it is called."""
        return "-".join(self)


def looks(family: Family) -> list[dict[str, str]]:
    """Return a pick for each option that has a color."""
    return [
        {choice["id"]: option["id"]}
        for choice in family["choices"]
        for option in choice["options"]
        if "color" in option["look"]
    ]


def places_of(numbers: dict[str, float]) -> list[str]:
    """Return the places in which a covering is shown: half turned where it turns."""
    return [place for place in PLACES if place != "turned" or numbers["tilt_open"] != numbers["tilt_closed"]]


def every_shown(catalog: Catalog) -> Iterator[Shown]:
    """Return every family in every look, view and place."""
    for family in catalog.families.values():
        for picks in looks(family):
            for view in [*VIEWS, STREET]:
                for place in places_of(resolve(family, picks)):
                    yield Shown(family["id"], *picks.values(), view, place)


def picks_of(catalog: Catalog, shown: Shown) -> dict[str, str]:
    """Return the pick of a look."""
    return next(picks for picks in looks(catalog.families[shown.family]) if shown.option in picks.values())


def draft_of(catalog: Catalog, shown: Shown) -> Draft:
    """Return what is drawn from."""
    door, family, picks = catalog.doors[DOOR], catalog.families[shown.family], picks_of(catalog, shown)
    place = PLACES[shown.place](resolve(family, picks))
    given = subject(hung(door, family, picks), place, catalog.household, ENGLISH)
    return drafted(door, given, ENGLISH, "in")


def drawn(catalog: Catalog, shown: Shown) -> Drawing:
    """Return a drawing without its annotation."""
    draft = draft_of(catalog, shown)
    drawing = street_of(draft, catalog.household) if shown.view == STREET else VIEWS[shown.view](draft)
    marks = [mark for mark in drawing["marks"] if ANNOTATION.isdisjoint(mark["role"].split())]
    return {**drawing, "marks": marks}
