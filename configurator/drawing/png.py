"""A drawing as a bitmap, through Pillow, in the default colors."""

import io
import math
import re
from copy import copy
from functools import cache
from itertools import pairwise
from typing import NamedTuple

from PIL import Image, ImageDraw

from configurator.drawing.drawing_palette import PAPER_WEIGHTS, STYLE_SHEET, colors, dashes, paper_scale
from configurator.drawing.rgb import Color, rgb
from configurator.drawing.texture import Texture
from configurator.drawing.typeface import typeface
from configurator.kernel.looks import is_dyed, is_hard
from configurator.kernel.shapes import Drawing, Look, Mark

OVERSAMPLING = 3
ANNOTATION = {"dim", "tick", "dim-text", "label", "axis-line", "title"}
CIRCLE_SIDES = 48
Point = tuple[float, float]


class RoleStyle(NamedTuple):
    """How a role is drawn: colors of fill and line, the line's weight (``cut``, ``seen``, ``hair``) and its dashes."""

    fill: str
    line: str
    weight: str
    dashes: str


@cache
def rules() -> list[tuple[frozenset[str], str]]:
    """Return the style sheet's rules for classes, in order, as the classes needed and the declarations."""
    text = STYLE_SHEET.read_text(encoding="utf-8").split("@media print")[0]
    found = re.findall(r"\.drawing-sheet ((?:\.[a-z-]+)+) \{([^}]*)\}", text)
    return [(frozenset(selector[1:].split(".")), declarations) for selector, declarations in found]


@cache
def style_of(role: str) -> RoleStyle:
    """Return how the style sheet has marks of a role drawn; a rule for more classes wins, then the later one."""
    classes = set(role.split())
    values: dict[str, str] = {}
    for needed, declarations in sorted(rules(), key=lambda rule: len(rule[0])):
        if needed <= classes:
            values.update(re.findall(r"([a-z-]+): ([^;]+);", declarations))
    named = {name: re.sub(r"var\(--(.+)\)", r"\1", value) for name, value in values.items()}
    return RoleStyle(
        named.get("fill", "none"),
        named.get("stroke", "none"),
        named.get("stroke-width", "hair"),
        named.get("stroke-dasharray", ""),
    )


class Sheet:
    """A bitmap with the drawing's window laid over it, ``finer`` times as large as the picture it is for."""

    def __init__(self, drawing: Drawing, width: int, ground: Color, finer: int = OVERSAMPLING) -> None:
        self.across = width * finer
        self.pixels = self.across / drawing["width"]
        self.down = max(1, round(drawing["height"] * self.pixels))
        self.x = drawing["x"]
        self.y = drawing["y"]
        self.scale = paper_scale(drawing)
        self.plain = colors()
        self.take_look(drawing["look"])
        self.paint_on(Image.new("RGB", (self.across, self.down), ground))

    def take_colors(self, own: dict[str, str]) -> None:
        """Take colors, by name, in place of the default ones; a look that is taken after them comes first."""
        self.palette = self.plain = self.plain | own

    def take_look(self, look: Look) -> None:
        """Take the colors of a look for what is drawn from here on."""
        self.palette = self.plain
        self.textures: dict[str, Texture] = {}
        if not is_dyed(look):
            return
        self.palette = self.palette | {"crease": look["line"], "rim": look["rim"]}
        texture = Texture(look["color"], look["weave"], self.pixels)
        for name in ("cloth", "louver") if is_hard(look) else ("cloth",):
            self.textures[name] = texture

    def paint_on(self, image: Image.Image) -> None:
        """Take an image of the sheet's size to draw on, with a brush that hides and one that lets through."""
        self.image = image
        self.brush = ImageDraw.Draw(image)
        self.glaze = ImageDraw.Draw(image, "RGBA")

    def again(self) -> "Sheet":
        """Return a sheet with all that has been drawn, to draw on apart from this one."""
        other = copy(self)
        other.paint_on(self.image.copy())
        return other

    def points(self, flat: list[float]) -> list[Point]:
        """Return flat model coordinates as pixels."""
        return [
            ((flat[i] - self.x) * self.pixels, (flat[i + 1] - self.y) * self.pixels) for i in range(0, len(flat), 2)
        ]

    def width(self, weight: str) -> int:
        """Return a line weight in pixels."""
        return max(1, round(PAPER_WEIGHTS[weight] * self.scale * self.pixels))

    def fill(self, shapes: list[list[Point]], name: str, share: float) -> None:
        """Fill polygons with a color or a texture by its name, hiding ``share`` of what lies beneath them."""
        texture = self.textures.get(name)
        color = texture.even if texture else rgb(self.palette[name])
        for points in shapes:
            if texture and color is None:
                self.weave(points, texture, share)
            elif color is not None:
                self.tint(points, color, share)

    def weave(self, points: list[Point], texture: Texture, share: float) -> None:
        """Fill a polygon with a texture."""
        across, down = [x for x, _ in points], [y for _, y in points]
        box = (
            max(0, math.floor(min(across))),
            max(0, math.floor(min(down))),
            min(self.across, math.ceil(max(across)) + 1),
            min(self.down, math.ceil(max(down)) + 1),
        )
        if box[2] <= box[0] or box[3] <= box[1]:
            return
        mask = Image.new("L", (box[2] - box[0], box[3] - box[1]), 0)
        ImageDraw.Draw(mask).polygon([(x - box[0], y - box[1]) for x, y in points], fill=round(share * 255))
        self.image.paste(texture.crop(box), box[:2], mask)

    def tint(self, points: list[Point], color: Color, share: float) -> None:
        """Fill a polygon with a color."""
        if share >= 1:
            self.brush.polygon(points, fill=color)
        elif share > 0:
            self.glaze.polygon(points, fill=(*color, round(share * 255)))

    def line(self, points: list[Point], color: Color, weight: str, pattern: str) -> None:
        """Draw a line, dashed where a pattern is given."""
        width = self.width(weight)
        if pattern:
            lengths = [float(length) * self.pixels for length in dashes(pattern, self.scale).split(": ")[1].split()]
            for piece in dashed(points, lengths):
                self.brush.line(piece, fill=color, width=width)
            return
        self.brush.line(points, fill=color, width=width, joint="curve")
        # Pillow ends lines flat; a dot closes the corner where a line begins and ends.
        if points[0] == points[-1] and width > 2:
            x, y = points[0]
            self.brush.ellipse((x - width / 2, y - width / 2, x + width / 2, y + width / 2), fill=color)

    def text(self, mark: Mark, color: Color) -> None:
        """Write words, turned and anchored as the mark says."""
        x, y = self.points(mark["points"][:2])[0]
        words = mark["text"]
        font = typeface(mark["points"][2] * self.pixels)
        if mark["turn"] == 0:
            anchor = {"start": "ls", "middle": "ms", "end": "rs"}[mark["anchor"]]
            self.brush.text((x, y), words, font=font, fill=color, anchor=anchor)
            return
        width = round(font.getlength(words))
        rise, fall = font.getmetrics()
        strip = Image.new("L", (width, rise + fall), 0)
        ImageDraw.Draw(strip).text((0, rise), words, font=font, fill=255, anchor="ls")
        strip = strip.rotate(90, expand=True)
        before = {"start": width, "middle": width / 2, "end": 0}[mark["anchor"]]
        self.image.paste(color, (round(x - rise), round(y - before)), strip)


def dashed(points: list[Point], lengths: list[float]) -> list[list[Point]]:
    """Return the drawn pieces of a line that is broken by a pattern of dashes and gaps."""
    pieces: list[list[Point]] = []
    index = 0
    left = lengths[0]
    for (x0, y0), (x1, y1) in pairwise(points):
        whole = ((x1 - x0) ** 2 + (y1 - y0) ** 2) ** 0.5
        done = 0.0
        while done < whole:
            step = min(left, whole - done)
            if index % 2 == 0:
                start, end = done / whole, (done + step) / whole
                ends = [(x0 + (x1 - x0) * share, y0 + (y1 - y0) * share) for share in (start, end)]
                pieces.append(ends)
            done += step
            left -= step
            if left <= 0:
                index += 1
                left = lengths[index % len(lengths)]
    return pieces


def round_points(mark: Mark) -> list[float]:
    """Return a circle as a polygon."""
    x, y, radius = mark["points"]
    flat: list[float] = []
    for i in range(CIRCLE_SIDES):
        angle = 2 * math.pi * i / CIRCLE_SIDES
        flat += [x + radius * math.cos(angle), y + radius * math.sin(angle)]
    return flat


def bar_points(mark: Mark) -> list[list[float]]:
    """Return each bar of a row as a polygon."""
    x0, y0, x1, y1, across, thick, pitch = mark["points"]
    found: list[list[float]] = []
    for at in range(round((x1 - x0 + y1 - y0 - thick) / pitch) + 1):
        if x0 == x1:
            left, top, right, foot = x0 - across / 2, y0 + at * pitch, x0 + across / 2, y0 + at * pitch + thick
        else:
            left, top, right, foot = x0 + at * pitch, y0 - across / 2, x0 + at * pitch + thick, y0 + across / 2
        found.append([left, top, right, top, right, foot, left, foot])
    return found


def put(sheet: Sheet, mark: Mark) -> None:
    """Draw one mark in the default colors."""
    style = style_of(mark["role"])
    if mark["shape"] == "bars":
        sheet.fill([sheet.points(bar) for bar in bar_points(mark)], style.fill, mark["fade"])
        return
    palette = sheet.palette
    if mark["shape"] == "text":
        sheet.text(mark, rgb(palette[style.fill if style.fill != "none" else "ink"]))
        return
    closed = mark["shape"] in ("polygon", "circle")
    points = sheet.points(round_points(mark) if mark["shape"] == "circle" else mark["points"])
    if closed and style.fill != "none":
        sheet.fill([points], style.fill, mark["fade"])
    if style.line != "none":
        sheet.line([*points, points[0]] if closed else points, rgb(palette[style.line]), style.weight, style.dashes)


def is_annotation(mark: Mark) -> bool:
    """Return whether a mark is a dimension, a word or a center line."""
    return not ANNOTATION.isdisjoint(mark["role"].split())


def to_image(drawing: Drawing, width_px: int, annotated: bool = True) -> Image.Image:
    """Return a drawing as a picture ``width_px`` wide, with or without its dimensions and words."""
    sheet = Sheet(drawing, width_px, rgb(colors()["ground"]))
    for mark in drawing["marks"]:
        if annotated or not is_annotation(mark):
            put(sheet, mark)
    size = (width_px, max(1, round(sheet.down / OVERSAMPLING)))
    return sheet.image.resize(size, Image.Resampling.LANCZOS)


def to_png(drawing: Drawing, width_px: int, annotated: bool = True) -> bytes:
    """Return a drawing as a PNG file ``width_px`` wide, with or without its dimensions and words."""
    out = io.BytesIO()
    to_image(drawing, width_px, annotated).save(out, "PNG", optimize=True)
    return out.getvalue()
