"""Drawings of the invented doors and coverings, for the tests."""

from collections.abc import Callable

from configurator.kernel.mount.hung import hung
from configurator.kernel.position import closed_position, open_position, position_at
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Door, Drawing, Position
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.detail import detail_handle_of, detail_head_of
from configurator.kernel.views.detail_upright import detail_upright_of
from configurator.kernel.views.draft import Draft, drafted
from configurator.kernel.views.elevation import elevation_of
from configurator.kernel.views.plan import plan_of
from configurator.kernel.views.section import section_of
from configurator.kernel.views.sheet import sheet_of
from configurator.kernel.views.subject import subject
from configurator.kernel.views.workroom import workroom_sheet
from tests.drawing.drawing_coverings import OWN, family
from tests.drawing.drawing_doors import DOORS, HOUSEHOLD

VIEWS: dict[str, Callable[[Draft], Drawing]] = {
    "elevation": elevation_of,
    "section": section_of,
    "plan": plan_of,
    "sheet": sheet_of,
    "detail head": detail_head_of,
    "detail handle": detail_handle_of,
    "detail upright": detail_upright_of,
}
PLACES = ("open", "closed", "0.4")
COVERINGS = tuple(OWN)


def place_of(covering: str, at: str) -> Position:
    """Return a position of a covering: ``open``, ``closed`` or a share of its travel."""
    numbers = resolve(family(covering), {})
    if at == "open":
        return open_position(numbers)
    return closed_position(numbers) if at == "closed" else position_at(numbers, float(at))


def draft_of(door: Door, covering: str, at: str, units: str = "in") -> Draft:
    """Return what the drawings of an invented covering on a door are drawn from."""
    given = subject(hung(door, family(covering), {}), place_of(covering, at), HOUSEHOLD, ENGLISH)
    return drafted(door, given, ENGLISH, units)


def every_drawing(draft: Draft) -> dict[str, Drawing]:
    """Return each drawing that there is of a draft, those of the workroom's sheet among them, by name."""
    workroom = workroom_sheet(draft)
    parts = {"workroom views": workroom["views"], "level": workroom["level"], "upright": workroom["upright"]}
    return {name: view(draft) for name, view in VIEWS.items()} | parts


def drawn(view: str, door: str, covering: str, at: str, units: str = "in") -> Drawing:
    """Return one drawing of an invented covering on an invented door."""
    return VIEWS[view](draft_of(DOORS[door], covering, at, units))
