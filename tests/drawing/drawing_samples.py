"""Drawings of the invented doors and coverings, for the tests."""

from collections.abc import Callable

from configurator.kernel.position import closed_position, open_position, position_at
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Door, Drawing, Family, Household, Position
from configurator.kernel.views.detail import detail_handle_of, detail_head_of
from configurator.kernel.views.elevation import elevation
from configurator.kernel.views.plan import plan
from configurator.kernel.views.section import section
from configurator.kernel.views.sheet import sheet
from configurator.kernel.views.subject import subject
from tests.drawing.drawing_coverings import OWN, family
from tests.drawing.drawing_doors import DOORS, HOUSEHOLD

View = Callable[[Door, Family, dict[str, str], Position, Household, str], Drawing]


def detail(enlarge: Callable[..., Drawing]) -> View:
    """Return an enlarged detail as a view like the others."""

    def view(
        door: Door, covering: Family, choices: dict[str, str], place: Position, household: Household, units: str
    ) -> Drawing:
        given = subject(door, covering, choices, place, household)
        return enlarge(given["scene"], door, given["answer"], units, given["names"])

    return view


VIEWS: dict[str, View] = {
    "elevation": elevation,
    "section": section,
    "plan": plan,
    "sheet": sheet,
    "detail head": detail(detail_head_of),
    "detail handle": detail(detail_handle_of),
}
PLACES = ("open", "closed", "0.4")
COVERINGS = tuple(OWN)


def place_of(covering: str, at: str) -> Position:
    """Return a position of a covering: ``open``, ``closed`` or a share of its travel."""
    numbers = resolve(family(covering), {})
    if at == "open":
        return open_position(numbers)
    return closed_position(numbers) if at == "closed" else position_at(numbers, float(at))


def drawn(view: str, door: str, covering: str, at: str, units: str = "in") -> Drawing:
    """Return one drawing of an invented covering on an invented door."""
    return VIEWS[view](DOORS[door], family(covering), {}, place_of(covering, at), HOUSEHOLD, units)
