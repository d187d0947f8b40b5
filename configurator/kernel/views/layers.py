"""Drawings in two layers, so that only what moves need be drawn anew while a rail is dragged."""

from configurator.kernel.shapes import Answer, Door, Mark, Scene
from configurator.kernel.views.elevation import covering_front, door_front, elevation_notes
from configurator.kernel.views.layout import layout
from configurator.kernel.views.plan import covering_top, door_top, plan_notes
from configurator.kernel.views.section import covering_side, section_notes, section_still


def door_marks(view: str, scene: Scene, door: Door, answer: Answer) -> list[Mark]:
    """Return the marks of ``elevation``, ``section`` or ``plan`` that no position changes: the lower layer."""
    frame = layout(scene, door, answer)
    if view == "elevation":
        return door_front(scene, door, frame)
    if view == "section":
        return section_still(scene, door, frame)
    return door_top(scene, door, frame)


def moving_marks(scene: Scene, door: Door, answer: Answer, units: str, lettered: bool) -> dict[str, list[Mark]]:
    """Return the upper layer of each view by its name: covering, handles and, if ``lettered``, the annotation."""
    frame = layout(scene, door, answer)
    front = covering_front(scene, door, frame)
    side = covering_side(scene, door, answer, frame)
    above = covering_top(scene, door, frame)
    if lettered:
        front.extend(elevation_notes(scene, door, answer, frame, units))
        side.extend(section_notes(scene, door, answer, frame, units, True))
        above.extend(plan_notes(door, answer, frame, units))
    return {"elevation": front, "section": side, "plan": above}
