"""Drawings for pages, small: whole millimeters where a screen shows no more, and what two share drawn once."""

from collections import Counter
from difflib import SequenceMatcher
from functools import cache

from svgwrite.container import SVG, Defs, Group, Use

from configurator.drawing.drawing_palette import paper_scale
from configurator.drawing.look_rules import LOOK_ATTRIBUTE
from configurator.drawing.pen import StepPen, decimals_at
from configurator.drawing.svg import SHEET_CLASS, UNCHECKED, canvas, markup, put_on
from configurator.drawing.thin import thinned
from configurator.kernel.shapes import Drawing, Mark
from configurator.kernel.views.paint import paint_name

# From this scale on, a tenth of a millimeter is less than a screen or a printer shows.
COARSE_SCALE = 10.0
# What lies in the garden has no outline: a corner less shows nowhere that lies no further off than this, mm.
GARDEN = ("hill", "tree", "path-stone")
GARDEN_SLACK = 4.5
HANDS_ON = ("focus-", "part-")
# Fewer marks than this in a row are drawn again rather than referred to.
WORTH_SHARING = 3


class ScreenPen(StepPen):
    """Writes whole millimeters in drawings of a whole door, finer ones where more is shown."""

    def __init__(self, drawing: Drawing) -> None:
        scale = paper_scale(drawing)
        super().__init__(scale)
        if scale < COARSE_SCALE:
            self.decimals = decimals_at(scale)
        self.letters = self._usual_letters(drawing)

    def _usual_letters(self, drawing: Drawing) -> str:
        """Return the size that most of a drawing's words have, or nothing."""
        sizes = Counter(mark["points"][2] for mark in drawing["marks"] if mark["shape"] == "text")
        return self.number(sizes.most_common(1)[0][0]) if sizes else ""


def still(drawing: Drawing) -> Drawing:
    """Return a drawing without the classes by which the configurator takes hold of its marks, its garden plainer."""
    return {**drawing, "marks": [still_mark(mark) for mark in drawing["marks"]]}


def still_mark(mark: Mark) -> Mark:
    """Return a mark as a page shows it that is only looked at."""
    role = still_role(mark["role"])
    if role in GARDEN:
        return {**mark, "points": list(plainer(tuple(mark["points"])))}
    return mark if role == mark["role"] else {**mark, "role": role}


@cache
def still_role(role: str) -> str:
    """Return a role without the classes that are there for the hand."""
    return " ".join(kept for kept in role.split() if not kept.startswith(HANDS_ON))


@cache
def plainer(points: tuple[float, ...]) -> tuple[float, ...]:
    """Return an outline in the garden with fewer corners: that of a door is on many pages."""
    return tuple(thinned(list(points), GARDEN_SLACK))


def screen_svg(drawing: Drawing, prefix: str = "") -> str:
    """Return an SVG element for a page; ``prefix`` keeps ids on the page apart."""
    pen = ScreenPen(drawing)
    paper = screen_canvas(drawing, prefix, pen)
    put_on(paper, still(drawing)["marks"], pen)
    return markup(paper)


def screen_canvas(drawing: Drawing, prefix: str, pen: ScreenPen) -> SVG:
    """Return a page's canvas of a drawing, which says its look, and the usual size of its words once."""
    paper = canvas(drawing, prefix)
    look = paint_name(drawing["look"])
    if look:
        paper.attribs[LOOK_ATTRIBUTE] = look
    if pen.letters:
        paper.attribs["font-size"] = pen.letters
    return paper


def common_start(lists: list[list[Mark]]) -> int:
    """Return how many marks all lists begin with."""
    shared = 0
    for marks in zip(*lists, strict=False):
        if any(mark != marks[0] for mark in marks):
            break
        shared += 1
    return shared


def group(marks: list[Mark], pen: ScreenPen, **values: str) -> Group:
    """Return marks as one group."""
    found = Group(factory=UNCHECKED, **values)
    put_on(found, marks, pen)
    return found


def sized(svg: str, width: str) -> str:
    """Return an SVG that is so wide wherever no style sheet says otherwise."""
    return svg.replace("<svg", f'<svg width="{width}"', 1)


def layered_svg(drawings: list[Drawing], classes: list[str], prefix: str = "", base: str = "") -> str:
    """Return an SVG of drawings that share a window, with a group of each class for what is its own.

    Title and description are those of the first. ``base`` names a group on the same page
    (:func:`base_svg`) that is drawn first, and that the drawings leave out.
    """
    lists = [still(drawing)["marks"] for drawing in drawings]
    start = common_start(lists)
    end = common_start([marks[start:][::-1] for marks in lists])
    pen = ScreenPen(drawings[0])
    paper = screen_canvas(drawings[0], prefix, pen)
    if base:
        paper.add(Use(f"#{base}", factory=UNCHECKED))
    put_on(paper, lists[0][:start], pen)
    for marks, name in zip(lists, classes, strict=True):
        paper.add(group(marks[start : len(marks) - end], pen, class_=name))
    put_on(paper, lists[0][len(lists[0]) - end :], pen)
    return markup(paper)


def base_svg(drawing: Drawing, name: str) -> str:
    """Return an SVG without size that only holds the drawing's marks as a group for others to use."""
    pen = ScreenPen(drawing)
    paper = screen_canvas(drawing, "", pen)
    paper.elements.clear()
    for stated in ("class", "role", "viewBox", "aria-labelledby"):
        del paper.attribs[stated]
    paper.attribs.update({"width": "0", "height": "0", "aria-hidden": "true"})
    held = Defs(factory=UNCHECKED)
    # A style rule cannot reach into what is used, unless all of its selector lies within.
    held.add(group(still(drawing)["marks"], pen, id_=name, class_=SHEET_CLASS))
    paper.add(held)
    return markup(paper)


def numbered(one: list[Mark], other: list[Mark]) -> tuple[list[int], list[int]]:
    """Return a number for each mark, the same for equal ones: numbers are compared faster."""
    numbers: dict[tuple[object, ...], int] = {}

    def number(mark: Mark) -> int:
        return numbers.setdefault(mark_key(mark), len(numbers))

    return [number(mark) for mark in one], [number(mark) for mark in other]


def mark_key(mark: Mark) -> tuple[object, ...]:
    """Return a mark as something that can be looked up."""
    return mark["shape"], mark["role"], tuple(mark["points"]), mark["fade"], mark["text"], mark["anchor"], mark["turn"]


def shared_runs(one: list[Mark], other: list[Mark]) -> list[tuple[int, int, int]]:
    """Return the stretches that both lists have, as the two starts and the length."""
    matcher = SequenceMatcher(None, *numbered(one, other), autojunk=False)
    return [(match.a, match.b, match.size) for match in matcher.get_matching_blocks() if match.size >= WORTH_SHARING]


def twin_svgs(one: Drawing, other: Drawing, prefixes: tuple[str, str]) -> tuple[str, str]:
    """Return two SVGs for one page: the second refers to the first for what both show."""
    one, other = still(one), still(other)
    pens = (ScreenPen(one), ScreenPen(other))
    first, second = screen_canvas(one, prefixes[0], pens[0]), screen_canvas(other, prefixes[1], pens[1])
    at, to = 0, 0
    for number, (start, end, size) in enumerate(shared_runs(one["marks"], other["marks"])):
        put_on(first, one["marks"][at:start], pens[0])
        put_on(second, other["marks"][to:end], pens[1])
        at, to = start + size, end + size
        name = f"{prefixes[0]}{number}"
        first.add(group(one["marks"][start:at], pens[0], id_=name, class_=SHEET_CLASS))
        second.add(Use(f"#{name}", factory=UNCHECKED))
    put_on(first, one["marks"][at:], pens[0])
    put_on(second, other["marks"][to:], pens[1])
    return markup(first), markup(second)
