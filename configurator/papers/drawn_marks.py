"""A drawing's marks on a page of a PDF, in true millimeters of paper: the colors and weights of the drawings' style."""

from collections.abc import Sequence

from fpdf import FPDF
from fpdf.enums import StrokeJoinStyle

from configurator.drawing.drawing_palette import PAPER_WEIGHTS, colors, dashes
from configurator.drawing.png import bar_points, dashed, round_points, style_of
from configurator.drawing.rgb import rgb
from configurator.kernel.looks import is_dyed, is_hard
from configurator.kernel.shapes import Drawing, Look, Mark

POINT = 72 / 25.4
Point = tuple[float, float]


def palette(look: Look) -> dict[str, str]:
    """Return the colors by name, those of a look in the place of the theme's; its weave is left to the eye."""
    found = colors()
    if is_dyed(look):
        found = found | {"cloth": look["color"], "crease": look["line"], "rim": look["rim"]}
        if is_hard(look):
            found = found | {"louver": look["color"]}
    return found


class MarkPen:
    """Draws marks with the drawing's upper left corner at a place of the page, at 1:``scale``."""

    def __init__(self, pdf: FPDF, drawing: Drawing, scale: float, corner: Point) -> None:
        self.pdf = pdf
        self.scale = scale
        self.corner = corner
        self.x, self.y = drawing["x"], drawing["y"]
        self.palette = palette(drawing["look"])

    def points(self, flat: Sequence[float]) -> list[Point]:
        """Return flat model coordinates as places on the page."""
        x, y = self.corner
        pairs = zip(flat[::2], flat[1::2], strict=True)
        return [(x + (across - self.x) / self.scale, y + (down - self.y) / self.scale) for across, down in pairs]

    def fill(self, points: list[Point], color: str, share: float) -> None:
        """Fill a polygon, hiding ``share`` of what lies beneath it."""
        if share <= 0:
            return
        self.pdf.set_fill_color(*rgb(self.palette[color]))
        if share >= 1:
            self.pdf.polygon(points, style="F")
            return
        with self.pdf.local_context(fill_opacity=share):
            self.pdf.polygon(points, style="F")

    def line(self, points: list[Point], color: str, weight: str, pattern: str) -> None:
        """Draw a line of a weight, broken where a pattern is given."""
        self.pdf.set_draw_color(*rgb(self.palette[color]))
        self.pdf.set_line_width(PAPER_WEIGHTS[weight])
        if not pattern:
            self.pdf.polyline(points)
            return
        lengths = [float(length) for length in dashes(pattern, 1.0).split(": ")[1].split()]
        for piece in dashed(points, lengths):
            self.pdf.polyline(piece)

    def letters(self, mark: Mark, color: str) -> None:
        """Write words, turned and anchored as the mark says."""
        x, y = self.points(mark["points"][:2])[0]
        self.pdf.set_text_color(*rgb(self.palette[color]))
        self.pdf.set_font(
            style="B" if "title" in mark["role"].split() else "", size=mark["points"][2] / self.scale * POINT
        )
        wide = self.pdf.get_string_width(mark["text"])
        before = {"start": 0.0, "middle": wide / 2, "end": wide}[mark["anchor"]]
        if mark["turn"] == 0:
            self.pdf.text(x - before, y, mark["text"])
            return
        with self.pdf.rotation(-mark["turn"], x, y):
            self.pdf.text(x - before, y, mark["text"])

    def put(self, mark: Mark) -> None:
        """Draw one mark."""
        style = style_of(mark["role"])
        if mark["shape"] == "text":
            self.letters(mark, style.fill if style.fill != "none" else "ink")
            return
        if mark["shape"] == "bars":
            for bar in bar_points(mark):
                self.fill(self.points(bar), style.fill, mark["fade"])
            return
        closed = mark["shape"] in ("polygon", "circle")
        points = self.points(round_points(mark) if mark["shape"] == "circle" else mark["points"])
        if closed and style.fill != "none":
            self.fill(points, style.fill, mark["fade"])
        if style.line != "none":
            self.line([*points, points[0]] if closed else points, style.line, style.weight, style.dashes)


def put_drawing(pdf: FPDF, drawing: Drawing, scale: float, corner: Point) -> None:
    """Draw a whole drawing at 1:``scale`` with its window's upper left corner at a place of the page, in mm."""
    pen = MarkPen(pdf, drawing, scale, corner)
    wide, high = drawing["width"] / scale, drawing["height"] / scale
    with (
        pdf.local_context(stroke_join_style=StrokeJoinStyle.ROUND),
        pdf.rect_clip(corner[0], corner[1], wide, high),
    ):
        for mark in drawing["marks"]:
            pen.put(mark)
