"""The house with four glazed doors that the tests of visits work with, as it was first measured."""

import json
from pathlib import Path

from configurator.kernel.visit.visit_shapes import Leaf, Opening, Proposal, Reading, Visit

FILE = Path(__file__).parent / "visits" / "weir-cottage.visit.json"


def house() -> Visit:
    """Return the visit to the house, anew for whoever changes it."""
    visit: Visit = json.loads(FILE.read_text(encoding="utf-8"))
    return visit


def opening_of(visit: Visit, ident: str) -> Opening:
    """Return one of its openings."""
    return next(opening for opening in visit["openings"] if opening["id"] == ident)


def leaf_of(visit: Visit, opening: str, leaf: str) -> Leaf:
    """Return a leaf of one of its openings."""
    return next(each for each in opening_of(visit, opening)["leaves"] if each["id"] == leaf)


def proposal_of(visit: Visit, opening: str, ident: str) -> Proposal:
    """Return a proposal for one of its openings."""
    return next(each for each in opening_of(visit, opening)["proposals"] if each["id"] == ident)


def reading(field: str, mm: float, spot: str = "", **beside: str) -> Reading:
    """Return a measured reading."""
    taken: Reading = {
        "field": field,
        "spot": spot,
        "typed": str(mm),
        "mm": mm,
        "how": beside.get("how", "measured"),
        "who": "R. Fenn",
        "on": beside.get("on", "2025-03-12"),
    }
    return taken
