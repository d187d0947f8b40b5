"""A drawing as SVG, through svgwrite: classes instead of colors, true millimeters in the viewBox."""

from svgwrite.base import BaseElement
from svgwrite.container import SVG, Defs, Style
from svgwrite.etree import etree
from svgwrite.path import Path as SvgPath
from svgwrite.pattern import Pattern
from svgwrite.shapes import Rect
from svgwrite.text import Text

from configurator.drawing.drawing_palette import paper_scale, standalone_style
from configurator.drawing.pen import FINE_SCALE, Pen, StepPen, brief
from configurator.kernel.looks import is_dyed
from configurator.kernel.shapes import Drawing, Look, Mark
from configurator.kernel.views.paint import paint_name
from configurator.kernel.views.tones import is_tone
from configurator.kernel.views.weaves import weave_tile

# What is small is written in parts of a millimeter so fine that they are whole.
FINER = 10.0
# A swatch is drawn in true size.
TRUE_SIZE = 1.0
# Shapes that are an element each.
ALONE = ("text", "bars")
# Elements have their manners from one that has none checked: svgwrite makes checks ready for each that has its own.
UNCHECKED = BaseElement(debug=False)
# The class by which style sheets know a drawing.
SHEET_CLASS = "drawing-sheet"


def runs(marks: list[Mark]) -> list[list[Mark]]:
    """Return the marks in runs that can be one path: consecutive, of one role, hiding all or nothing beneath them.

    See-through marks stay apart, since two that overlap hide more than one path would; but light and shade of one
    strength never overlap.
    """
    result: list[list[Mark]] = []
    for mark in marks:
        last = result[-1][-1] if result else None
        solid = (mark["fade"] in (0.0, 1.0) or is_tone(mark["role"])) and mark["shape"] not in ALONE
        alike = last and last["shape"] not in ALONE and last["role"] == mark["role"] and last["fade"] == mark["fade"]
        if solid and alike:
            result[-1].append(mark)
        else:
            result.append([mark])
    return result


def fade_attributes(mark: Mark) -> dict[str, str]:
    """Return the attribute that makes a fill let the view through; none where it hides all."""
    if mark["fade"] >= 1:
        return {}
    if is_tone(mark["role"]):
        return {"opacity": brief(mark["fade"], 2)}
    share = f"{mark['fade']:.3f}".rstrip("0").rstrip(".")
    return {} if share == "1" else {"fill-opacity": share}


def bar_attributes(mark: Mark) -> dict[str, str]:
    """Return the attributes that make an axis a row of bars."""
    across, thick, pitch = mark["points"][4:]
    return {
        "stroke-width": brief(across, 1),
        # The steps of a row would add up what a coarser number leaves out.
        "stroke-dasharray": f"{brief(thick, 2)} {brief(pitch - thick, 2)}",
        "opacity": brief(mark["fade"], 2),
    }


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
    return Text(mark["text"], insert=(x, y), factory=UNCHECKED, **extra)


def path_element(run: list[Mark], pen: Pen) -> SvgPath:
    """Return a run of shapes as one SVG path."""
    mark = run[0]
    element = SvgPath(d="".join(pen.path(mark) for mark in run), class_=mark["role"], factory=UNCHECKED)
    element.attribs.update(bar_attributes(mark) if mark["shape"] == "bars" else fade_attributes(mark))
    return element


def put_on(paper: BaseElement, marks: list[Mark], pen: Pen) -> None:
    """Put marks as elements into another one."""
    for run in runs(marks):
        pen.lift()
        paper.add(text_element(run[0], pen) if run[0]["shape"] == "text" else path_element(run, pen))


def canvas(drawing: Drawing, prefix: str) -> SVG:
    """Return an SVG with the drawing's window and words and nothing on it."""
    pen = Pen(paper_scale(drawing))
    box = " ".join(pen.number(value) for value in (drawing["x"], drawing["y"], drawing["width"], drawing["height"]))
    name = f"{prefix}{drawing['id']}"
    paper = SVG(factory=UNCHECKED, class_=SHEET_CLASS, role="img", viewBox=box)
    paper.attribs["aria-labelledby"] = f"{name}-title {name}-desc"
    paper.elements.remove(paper.defs)
    paper.set_desc(title=drawing["title"], desc=drawing["desc"])
    for element, kind in zip(paper.elements, ("title", "desc"), strict=True):
        element.xml.attrib["id"] = f"{name}-{kind}"
    return paper


def markup(paper: BaseElement) -> str:
    """Return an element's markup."""
    # Its own method writes bytes first, which takes a fifth longer.
    return str(etree.tostring(paper.get_xml(), encoding="unicode")).replace(" />", "/>")


def finer(mark: Mark) -> Mark:
    """Return a mark in parts of a millimeter."""
    return {**mark, "points": [value * FINER for value in mark["points"]]}


def pattern(look: Look) -> Pattern:
    """Return a look's pattern, to be filled with by its name."""
    tile = weave_tile(look["weave"])
    width, height = f"{tile['width'] * FINER:g}", f"{tile['height'] * FINER:g}"
    found = Pattern(id_=paint_name(look), patternUnits="userSpaceOnUse", factory=UNCHECKED, width=width, height=height)
    # A style rule reaches what is referred to only if all of its selector lies within.
    found.attribs["class"] = SHEET_CLASS
    found.add(Rect(size=(width, height), fill=look["color"], factory=UNCHECKED))
    found.attribs["patternTransform"] = f"scale({brief(1 / FINER, 1)})"
    put_on(found, [finer(mark) for mark in tile["marks"]], StepPen(FINE_SCALE))
    return found


def to_svg(drawing: Drawing) -> str:
    """Return a whole SVG file with its own style, sized for paper: letters 2.8 mm high."""
    paper = canvas(drawing, "")
    scale = paper_scale(drawing)
    paper.attribs["xmlns"] = "http://www.w3.org/2000/svg"
    paper.attribs["width"] = f"{drawing['width'] / scale:.1f}mm"
    paper.attribs["height"] = f"{drawing['height'] / scale:.1f}mm"
    paper.add(Style(standalone_style(drawing)))
    if is_dyed(drawing["look"]):
        held = Defs(factory=UNCHECKED)
        held.add(pattern(drawing["look"]))
        paper.add(held)
    put_on(paper, drawing["marks"], Pen(scale))
    return markup(paper) + "\n"
