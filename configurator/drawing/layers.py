"""Drawings for pages, small: whole millimetres where a screen shows no more, and what two share drawn once."""

from collections import Counter
from difflib import SequenceMatcher
from itertools import pairwise

from svgwrite.base import BaseElement
from svgwrite.container import SVG, Defs, Group, Use

from configurator.drawing.palette import paper_scale
from configurator.drawing.svg import Pen, canvas, path_element, runs, text_element
from configurator.kernel.shapes import Drawing, Mark

# From this scale on, a tenth of a millimetre is less than a screen or a printer shows.
COARSE_SCALE = 10.0
# What lies in the garden has no outline: fewer points show nowhere.
GARDEN = ("tree", "path-stone")
GARDEN_POINTS = 16
HANDS_ON = ("focus-", "part-")
# Fewer marks than this in a row are drawn again rather than referred to.
WORTH_SHARING = 3


class ScreenPen(Pen):
    """Writes whole millimetres in drawings of a whole door."""

    def __init__(self, drawing: Drawing) -> None:
        super().__init__(drawing)
        if paper_scale(drawing) >= COARSE_SCALE:
            self.decimals = 0
        self.lift()

    def lift(self) -> None:
        """Begin a new path: its first step starts at the origin."""
        self.x, self.y = 0, 0

    def number(self, value: float) -> str:
        """Return a coordinate without needless zeros."""
        return f"{round(value):d}" if self.decimals == 0 else super().number(value)

    def path(self, mark: Mark) -> str:
        """Return the path data of a shape, in steps from point to point where they are whole."""
        if self.decimals:
            return super().path(mark)
        if mark["shape"] == "circle":
            self.x, self.y = round(mark["points"][0] - mark["points"][2]), round(mark["points"][1])
            return super().path(mark)
        whole = [round(value) for value in mark["points"]]
        corners = list(zip(whole[::2], whole[1::2], strict=True))
        start = f"m{pair(corners[0][0] - self.x, corners[0][1] - self.y)}"
        steps = [(x - x0, y - y0) for (x0, y0), (x, y) in pairwise(corners)]
        closed = mark["shape"] == "polygon"
        self.x, self.y = corners[0] if closed else corners[-1]
        return start + written(steps) + ("z" if closed else "")


def pair(x: int, y: int) -> str:
    """Return two numbers, a space between them where no minus parts them."""
    return f"{x}{y}" if y < 0 else f"{x} {y}"


def written(steps: list[tuple[int, int]]) -> str:
    """Return steps as relative path data; a letter that repeats and a space before a minus are left out."""
    text, last = "", ""
    for dx, dy in steps:
        if dx == 0 and dy == 0:
            continue
        letter, numbers = ("h", [dx]) if dy == 0 else ("v", [dy]) if dx == 0 else ("l", [dx, dy])
        for at, number in enumerate(numbers):
            starts = at == 0 and letter != last
            text += letter if starts else "" if number < 0 else " "
            text += str(number)
        last = letter
    return text


def still(drawing: Drawing) -> Drawing:
    """Return a drawing without the classes by which the configurator takes hold of its marks, its garden plainer."""
    marks: list[Mark] = []
    for mark in drawing["marks"]:
        kept = [role for role in mark["role"].split() if not role.startswith(HANDS_ON)]
        soft = mark["role"] in GARDEN and len(mark["points"]) > 2 * GARDEN_POINTS
        points = every_other(mark["points"]) if soft else mark["points"]
        marks.append({**mark, "role": " ".join(kept), "points": points})
    return {**drawing, "marks": marks}


def every_other(points: list[float]) -> list[float]:
    """Return every other point of an outline."""
    return [value for at in range(0, len(points), 4) for value in points[at : at + 2]]


def screen_svg(drawing: Drawing, prefix: str = "") -> str:
    """Return an SVG element for a page; ``prefix`` keeps ids on the page apart."""
    paper = canvas(drawing, prefix)
    for element in elements(still(drawing)["marks"], ScreenPen(drawing)):
        paper.add(element)
    return markup(paper, drawing)


def common_start(lists: list[list[Mark]]) -> int:
    """Return how many marks all lists begin with."""
    shared = 0
    for marks in zip(*lists, strict=False):
        if any(mark != marks[0] for mark in marks):
            break
        shared += 1
    return shared


def elements(marks: list[Mark], pen: ScreenPen) -> list[BaseElement]:
    """Return marks as SVG elements."""
    found: list[BaseElement] = []
    for run in runs(marks):
        pen.lift()
        found.append(text_element(run[0], pen) if run[0]["shape"] == "text" else path_element(run, pen))
    return found


def text_size(drawing: Drawing) -> str:
    """Return the size of a drawing's words that most have, or nothing."""
    sizes = Counter(mark["points"][2] for mark in drawing["marks"] if mark["shape"] == "text")
    return ScreenPen(drawing).number(sizes.most_common(1)[0][0]) if sizes else ""


def markup(paper: SVG, drawing: Drawing) -> str:
    """Return an SVG's markup with the size of its words said once."""
    text = str(paper.tostring()).replace(" />", "/>")
    size = text_size(drawing)
    if not size:
        return text
    return text.replace(f' font-size="{size}"', "").replace("<svg ", f'<svg font-size="{size}" ', 1)


def group(marks: list[Mark], pen: ScreenPen, **attributes: str) -> Group:
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
    lists = [still(drawing)["marks"] for drawing in drawings]
    start = common_start(lists)
    end = common_start([marks[start:][::-1] for marks in lists])
    paper = canvas(drawings[0], prefix)
    pen = ScreenPen(drawings[0])
    if base:
        paper.add(Use(f"#{base}", debug=False))
    for element in elements(lists[0][:start], pen):
        paper.add(element)
    for marks, name in zip(lists, classes, strict=True):
        paper.add(group(marks[start : len(marks) - end], pen, class_=name))
    for element in elements(lists[0][len(lists[0]) - end :], pen):
        paper.add(element)
    return markup(paper, drawings[0])


def base_svg(drawing: Drawing, name: str) -> str:
    """Return an SVG without size that only holds the drawing's marks as a group for others to use."""
    paper = canvas(drawing, f"{name}-")
    look = paper.attribs["class"]
    paper.elements.clear()
    paper.attribs.clear()
    paper.attribs.update({"width": "0", "height": "0", "aria-hidden": "true"})
    held = Defs(debug=False)
    # A style rule cannot reach into what is used, unless all of its selector lies within.
    held.add(group(still(drawing)["marks"], ScreenPen(drawing), id_=name, class_=look))
    paper.add(held)
    return markup(paper, drawing)


def mark_key(mark: Mark) -> tuple[object, ...]:
    """Return a mark as something that can be compared quickly."""
    return tuple(tuple(value) if isinstance(value, list) else value for value in mark.values())


def shared_runs(one: list[Mark], other: list[Mark]) -> list[tuple[int, int, int]]:
    """Return the stretches that both lists have, as the two starts and the length."""
    matcher = SequenceMatcher(None, [mark_key(mark) for mark in one], [mark_key(mark) for mark in other], False)
    return [(match.a, match.b, match.size) for match in matcher.get_matching_blocks() if match.size >= WORTH_SHARING]


def twin_svgs(one: Drawing, other: Drawing, prefixes: tuple[str, str]) -> tuple[str, str]:
    """Return two SVGs for one page: the second refers to the first for what both show."""
    one, other = still(one), still(other)
    first, second = canvas(one, prefixes[0]), canvas(other, prefixes[1])
    pens = (ScreenPen(one), ScreenPen(other))
    look = first.attribs["class"]
    at, to = 0, 0
    for number, (start, end, size) in enumerate([*shared_runs(one["marks"], other["marks"]), (None, None, 0)]):
        for element in elements(one["marks"][at:start], pens[0]):
            first.add(element)
        for element in elements(other["marks"][to:end], pens[1]):
            second.add(element)
        if start is None or end is None:
            break
        name = f"{prefixes[0]}{number}"
        first.add(group(one["marks"][start : start + size], pens[0], id_=name, class_=look))
        second.add(Use(f"#{name}", debug=False))
        at, to = start + size, end + size
    return markup(first, one), markup(second, other)
