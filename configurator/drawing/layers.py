"""Several states of one drawing in one SVG: what they share is drawn once, what differs in one group a state."""

from svgwrite.base import BaseElement
from svgwrite.container import Defs, Group, Use

from configurator.drawing.svg import Pen, canvas, path_element, runs, text_element
from configurator.kernel.shapes import Drawing, Mark


def common_start(lists: list[list[Mark]]) -> int:
    """Return how many marks all lists begin with."""
    shared = 0
    for marks in zip(*lists, strict=False):
        if any(mark != marks[0] for mark in marks):
            break
        shared += 1
    return shared


def elements(marks: list[Mark], pen: Pen) -> list[BaseElement]:
    """Return marks as SVG elements."""
    return [text_element(run[0], pen) if run[0]["shape"] == "text" else path_element(run, pen) for run in runs(marks)]


def group(marks: list[Mark], pen: Pen, **attributes: str) -> Group:
    """Return marks as one group."""
    found = Group(debug=False, **attributes)
    for element in elements(marks, pen):
        found.add(element)
    return found


def layered_svg(drawings: list[Drawing], classes: list[str], prefix: str = "", base: str = "") -> str:
    """Return an SVG of drawings that share a window, with a group of each class for what is its own.

    Title and description are those of the first. ``base`` names a group on the same page
    (:func:`base_svg`) that is drawn first, and that the drawings leave out.
    """
    lists = [drawing["marks"] for drawing in drawings]
    start = common_start(lists)
    end = common_start([marks[start:][::-1] for marks in lists])
    paper = canvas(drawings[0], prefix)
    pen = Pen(drawings[0])
    if base:
        paper.add(Use(f"#{base}", debug=False))
    for element in elements(lists[0][:start], pen):
        paper.add(element)
    for marks, name in zip(lists, classes, strict=True):
        paper.add(group(marks[start : len(marks) - end], pen, class_=name))
    for element in elements(lists[0][len(lists[0]) - end :], pen):
        paper.add(element)
    return str(paper.tostring())


def base_svg(drawing: Drawing, name: str) -> str:
    """Return an SVG without size that only holds the drawing's marks as a group for others to use."""
    paper = canvas(drawing, f"{name}-")
    look = paper.attribs["class"]
    paper.elements.clear()
    paper.attribs.clear()
    paper.attribs.update({"width": "0", "height": "0", "aria-hidden": "true"})
    held = Defs(debug=False)
    # A style rule cannot reach into what is used, unless all of its selector lies within.
    held.add(group(drawing["marks"], Pen(drawing), id_=name, class_=look))
    paper.add(held)
    return str(paper.tostring())
