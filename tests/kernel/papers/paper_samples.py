"""Commissions and desks for the tests of papers."""

from configurator.catalog import Catalog
from configurator.kernel.mount.hung import hung_with
from configurator.kernel.papers.blocks import Block, Paper
from configurator.kernel.papers.making import Commission, Desk, hung_both
from configurator.kernel.shapes import Fit
from configurator.kernel.tongue import ENGLISH

INCH = 25.4


def fit_of(catalog: Catalog, door: str, family: str, **choices: str) -> Fit:
    """Return a family hung on a door of the starter content; a pick's underscores stand for its hyphens."""
    picks = {name.replace("_", "-"): option for name, option in choices.items()}
    return hung_with(catalog.doors[door], catalog.families[family], picks, {})


def commission_of(catalog: Catalog, fit: Fit, room: str = "Study") -> Commission:
    """Return a covering as something to be made."""
    return {
        "opening": "",
        "room": room,
        "socket": "",
        "controls": {},
        "links": {},
        "count": 1.0,
        "leaves": hung_both(fit),
        "note": "",
        "household": catalog.household,
    }


def desk(units: str = "in") -> Desk:
    """Return where the papers of the tests are written."""
    return {
        "words": ENGLISH,
        "units": units,
        "client": "Mrs Tansy",
        "showroom": "Lantern & Sill",
        "day": "20 March 2025",
        "link": "",
        "home": "",
    }


def kinds(paper: Paper, kind: str) -> list[Block]:
    """Return the blocks of a kind."""
    return [block for block in paper["blocks"] if block["kind"] == kind]
