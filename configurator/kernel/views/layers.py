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


def covering_marks(view: str, scene: Scene, door: Door, answer: Answer, units: str) -> list[Mark]:
    """Return the covering, the handles and the annotation of a view: the upper layer."""
    frame = layout(scene, door, answer)
    if view == "elevation":
        marks = covering_front(scene, door, frame)
        marks.extend(elevation_notes(scene, door, answer, frame, units))
        return marks
    if view == "section":
        marks = covering_side(scene, door, answer, frame)
        marks.extend(section_notes(scene, door, answer, frame, units, True))
        return marks
    marks = covering_top(scene, door, frame)
    marks.extend(plan_notes(door, answer, frame, units))
    return marks
