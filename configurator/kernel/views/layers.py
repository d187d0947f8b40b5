"""Drawings in two layers, so that only what moves need be drawn anew while a rail is dragged."""

from configurator.kernel.shapes import Household, Mark
from configurator.kernel.views.covering_front import covering_front
from configurator.kernel.views.draft import Draft
from configurator.kernel.views.elevation import door_front
from configurator.kernel.views.elevation_notes import elevation_notes
from configurator.kernel.views.evening import evening_covering
from configurator.kernel.views.plan import covering_top, door_top, plan_notes
from configurator.kernel.views.section import covering_side, section_notes, section_still
from configurator.kernel.views.street import street_covering, street_notes


def door_marks(view: str, draft: Draft) -> list[Mark]:
    """Return the marks of ``elevation``, ``section`` or ``plan`` that no position changes: the lower layer."""
    if view == "elevation":
        return door_front(draft)
    if view == "section":
        return section_still(draft)
    return door_top(draft)


def section_marks(draft: Draft, annotated: bool) -> list[Mark]:
    """Return the upper layer of the section: covering, handles and, if ``annotated``, the annotation."""
    side = covering_side(draft)
    if annotated:
        side.extend(section_notes(draft, True))
    return side


def plan_marks(draft: Draft, annotated: bool) -> list[Mark]:
    """Return the upper layer of the plan: covering, handles and, if ``annotated``, the annotation."""
    above = covering_top(draft)
    if annotated:
        above.extend(plan_notes(draft))
    return above


def elevation_marks(draft: Draft, annotated: bool) -> list[Mark]:
    """Return the upper layer of the elevation by day."""
    front = covering_front(draft)
    if annotated:
        front.extend(elevation_notes(draft))
    return front


def evening_marks(draft: Draft, annotated: bool) -> list[Mark]:
    """Return the upper layer of the elevation in the evening."""
    front = evening_covering(draft)
    if annotated:
        front.extend(elevation_notes(draft))
    return front


def street_marks(draft: Draft, household: Household, annotated: bool) -> list[Mark]:
    """Return the upper layer of the view from the street."""
    front = street_covering(draft)
    if annotated:
        front.extend(street_notes(draft, household))
    return front
