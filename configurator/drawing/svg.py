"""A drawing as SVG, through svgwrite: classes instead of colors, true millimeters in the viewBox."""

from svgwrite.base import BaseElement
from svgwrite.container import SVG, Style
from svgwrite.path import Path as SvgPath
from svgwrite.text import Text

from configurator.drawing.drawing_palette import paper_scale, standalone_style
from configurator.kernel.shapes import Drawing, Mark

# Of a drawing enlarged to less than this scale, hundredths of a millimeter show.
FINE_SCALE = 8.0
# The class by which style sheets know a drawing.
LOOK = "drawing-sheet"


class Pen:
    """Writes coordinates with as many decimals as the drawing's scale can show."""

    def __init__(self, drawing: Drawing) -> None:
        self.decimals = 2 if paper_scale(drawing) < FINE_SCALE else 1
        # The size of letters that need not be said.
        self.letters = ""

    def lift(self) -> None:
        """Begin a new path."""

    def number(self, value: float) -> str:
        """Return a coordinate without needless zeros."""
        written = f"{value:.{self.decimals}f}".rstrip("0").rstrip(".")
        return "0" if written == "-0" else written

    def path(self, mark: Mark) -> str:
        """Return the path data of a shape."""
        points = mark["points"]
        if mark["shape"] == "circle":
            return self._circle(points)
        number = self.number
        written = [f"M{number(points[0])} {number(points[1])}"]
        for i in range(2, len(points), 2):
            same_x = number(points[i]) == number(points[i - 2])
            same_y = number(points[i + 1]) == number(points[i - 1])
            if same_x and same_y:
                continue
            if same_y:
                written.append(f"H{number(points[i])}")
            elif same_x:
                written.append(f"V{number(points[i + 1])}")
            else:
                written.append(f"L{number(points[i])} {number(points[i + 1])}")
        return "".join(written) + ("z" if mark["shape"] == "polygon" else "")

    def _circle(self, points: list[float]) -> str:
        radius = self.number(points[2])
        across = self.number(2 * points[2])
        start = f"M{self.number(points[0] - points[2])} {self.number(points[1])}"
        return f"{start}a{radius} {radius} 0 1 0 {across} 0a{radius} {radius} 0 1 0-{across} 0z"


def runs(marks: list[Mark]) -> list[list[Mark]]:
    """Return the marks in runs that can be one path: consecutive, of one role, hiding all or nothing beneath them.

    See-through marks stay apart, since two that overlap hide more than one path would.
    """
    result: list[list[Mark]] = []
    for mark in marks:
        last = result[-1][-1] if result else None
        solid = mark["fade"] in (0.0, 1.0) and mark["shape"] != "text"
        if solid and last and last["shape"] != "text" and last["role"] == mark["role"] and last["fade"] == mark["fade"]:
            result[-1].append(mark)
        else:
            result.append([mark])
    return result


def fade_attributes(mark: Mark) -> dict[str, str]:
    """Return the attribute that makes a fill let the view through; none where it hides all."""
    if mark["fade"] >= 1:
        return {}
    return {"fill-opacity": f"{mark['fade']:.3f}".rstrip("0").rstrip(".")}


def text_element(mark: Mark, pen: Pen) -> Text:
    """Return words as an SVG text."""
    x, y, size = (pen.number(value) for value in mark["points"])
    extra = {"class_": mark["role"]}
    if size != pen.letters:
        extra["font_size"] = size
    if mark["anchor"] != "start":
        extra["text_anchor"] = mark["anchor"]
    if mark["turn"]:
        extra["transform"] = f"rotate({mark['turn']:g} {x} {y})"
    return Text(mark["text"], insert=(x, y), debug=False, **extra)


def path_element(run: list[Mark], pen: Pen) -> SvgPath:
    """Return a run of shapes as one SVG path."""
    element = SvgPath(d="".join(pen.path(mark) for mark in run), class_=run[0]["role"], debug=False)
    element.attribs.update(fade_attributes(run[0]))
    return element


def put_on(paper: BaseElement, marks: list[Mark], pen: Pen) -> None:
    """Put marks as elements into another one."""
    for run in runs(marks):
        pen.lift()
        paper.add(text_element(run[0], pen) if run[0]["shape"] == "text" else path_element(run, pen))


def canvas(drawing: Drawing, prefix: str) -> SVG:
    """Return an SVG with the drawing's window and words and nothing on it."""
    pen = Pen(drawing)
    box = " ".join(pen.number(value) for value in (drawing["x"], drawing["y"], drawing["width"], drawing["height"]))
    name = f"{prefix}{drawing['id']}"
    paper = SVG(debug=False, class_=LOOK, role="img", viewBox=box)
    paper.attribs["aria-labelledby"] = f"{name}-title {name}-desc"
    paper.elements.remove(paper.defs)
    paper.set_desc(title=drawing["title"], desc=drawing["desc"])
    for element, kind in zip(paper.elements, ("title", "desc"), strict=True):
        element.xml.attrib["id"] = f"{name}-{kind}"
    return paper


def markup(paper: BaseElement) -> str:
    """Return an element's markup."""
    return str(paper.tostring()).replace(" />", "/>")


def to_svg(drawing: Drawing) -> str:
    """Return a whole SVG file with its own style, sized for paper: letters 2.8 mm high."""
    paper = canvas(drawing, "")
    scale = paper_scale(drawing)
    paper.attribs["xmlns"] = "http://www.w3.org/2000/svg"
    paper.attribs["width"] = f"{drawing['width'] / scale:.1f}mm"
    paper.attribs["height"] = f"{drawing['height'] / scale:.1f}mm"
    paper.add(Style(standalone_style(drawing)))
    put_on(paper, drawing["marks"], Pen(drawing))
    return markup(paper) + "\n"
