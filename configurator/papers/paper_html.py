"""A paper as one file that a browser shows and prints: one style sheet, drawings in true millimeters."""

from functools import cache
from pathlib import Path

from jinja2 import Environment, StrictUndefined, Template
from markupsafe import Markup

from configurator.drawing.drawing_palette import STYLE_SHEET
from configurator.drawing.pen import Pen
from configurator.drawing.svg import canvas, markup, put_on
from configurator.kernel.message import plain
from configurator.kernel.papers.blocks import Paper, Scaled
from configurator.papers.reader import RULE_LENGTH, Reader, rule_words
from configurator.papers.square_code import CODE_WIDE, square_code
from configurator.places import THEMES

PAPER_STYLE = THEMES / "shared" / "css" / "paper.css"
# What a whole file says of its sheets; a page of the site has margins of its own.
SHEETS_STYLE = "body { margin: 0; } @page { margin: 10mm; }"
PAPER_PAGE = Path(__file__).with_name("paper.html")


@cache
def page() -> Template:
    """Return the page's template."""
    return Environment(autoescape=True, undefined=StrictUndefined).from_string(PAPER_PAGE.read_text(encoding="utf-8"))


def scaled_svg(one: Scaled, prefix: str) -> Markup:
    """Return a drawing as an SVG of true size on paper, its ids begun with a prefix."""
    drawing, scale = one["drawing"], one["scale"]
    paper = canvas(drawing, prefix)
    paper.attribs["width"] = f"{drawing['width'] / scale:.2f}mm"
    paper.attribs["height"] = f"{drawing['height'] / scale:.2f}mm"
    put_on(paper, drawing["marks"], Pen(scale))
    return Markup(markup(paper))


def paper_html(paper: Paper, reader: Reader) -> str:
    """Return a paper as an HTML file that needs no other."""
    styles = [path.read_text(encoding="utf-8") for path in (STYLE_SHEET, PAPER_STYLE)]
    return page().render(
        paper=paper,
        language=reader.words["language"],
        told=reader.told,
        cells=reader.cells,
        drawn=scaled_svg,
        date=plain("date"),
        holds=plain("A code that holds this link"),
        squares=square_code,
        code_wide=f"{CODE_WIDE:g}",
        scale=rule_words(reader),
        ruler=RULE_LENGTH[reader.units],
        style=Markup("\n".join([*styles, SHEETS_STYLE])),
    )
