"""Drawings in two layers, so that only what moves need be drawn anew while a rail is dragged."""

from configurator.kernel.shapes import Mark
from configurator.kernel.views.covering_front import covering_front
from configurator.kernel.views.draft import Draft
from configurator.kernel.views.elevation import door_front
from configurator.kernel.views.elevation_notes import elevation_notes
from configurator.kernel.views.plan import covering_top, door_top, plan_notes
from configurator.kernel.views.section import covering_side, section_notes, section_still


def door_marks(view: str, draft: Draft) -> list[Mark]:
    """Return the marks of ``elevation``, ``section`` or ``plan`` that no position changes: the lower layer."""
    if view == "elevation":
        return door_front(draft)
    if view == "section":
        return section_still(draft)
    return door_top(draft)


def moving_marks(draft: Draft, annotated: bool) -> dict[str, list[Mark]]:
    """Return the upper layer of each view by its name: covering, handles and, if ``annotated``, the annotation."""
    front = covering_front(draft)
    side = covering_side(draft)
    above = covering_top(draft)
    if annotated:
        front.extend(elevation_notes(draft))
        side.extend(section_notes(draft, True))
        above.extend(plan_notes(draft))
    return {"elevation": front, "section": side, "plan": above}
