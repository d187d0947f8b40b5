"""Link previews, 1200 × 630 px: a drawing on the right, words on the left."""

import io
from typing import NamedTuple, cast

from PIL import Image, ImageDraw, ImageFont

from configurator.drawing.png import Sheet, is_annotation, put
from configurator.drawing.rgb import Color, rgb
from configurator.drawing.typeface import typeface
from configurator.kernel.shapes import Drawing, Look, Mark

WIDTH, HEIGHT = 1200, 630
EDGE = 56
# The drawing's window on the card.
ACROSS, DOWN = 560, 352
# The drawing's edges are smoothed out of as many pixels each way.
FINER = 2
# Few colors keep a card small; those of its frame, of fine lines and of the garden are always among them.
COLORS = 13
OWN_COLORS = ("paper", "ink", "warm", "sky", "lawn", "tree")
# Every other pixel each way tells as well as all of them which colors a card shows most of.
SAMPLED = 2
# One step more takes twice the time, of a twelfth of a whole build, for three bytes in a hundred.
COMPRESSION = 8
# Colors no further apart than this are one: of 255 where they differ most, and half as far in their hue, since a gray
# cloth may not turn green with the lawn.
NEAR = 16
HUE = 2
TITLE_SIZES = (76, 64, 54, 46)
TITLE_LINES = 3
# Beneath the title a sentence is told whole: it has more lines, or smaller letters, before any of it is left out.
SENTENCE_SIZES = (30, 27, 24)
SENTENCE_LINES = 3
# Above two drawings there is room for two lines, beneath them for the showroom's name.
NAME_SIZES = (34, 28, 22)
LINE_SIZES = (24, 20, 16)
FOOT_SIZE = 20
NAMES_TOP = 84

Palette = dict[str, str]


class Words(NamedTuple):
    """What a card says: the showroom, the title and a line beneath it."""

    showroom: str
    title: str
    line: str


class Backdrop:
    """A drawing that stands behind several cards, painted once."""

    def __init__(self, drawing: Drawing, palette: Palette) -> None:
        width = min(ACROSS, int(DOWN * drawing["width"] / drawing["height"]))
        self.sheet = Sheet(drawing, width, rgb(palette["paper"]), FINER)
        self.sheet.take_colors(palette)
        put_all(self.sheet, drawing["marks"])

    def with_marks(self, marks: list[Mark], look: Look) -> Image.Image:
        """Return the drawing with more marks of a look in front of it, at the size of a card."""
        sheet = self.sheet.again()
        sheet.take_look(look)
        put_all(sheet, marks)
        return sheet.image.reduce(FINER)


def put_all(sheet: Sheet, marks: list[Mark]) -> None:
    """Draw all marks but dimensions and words."""
    for mark in marks:
        if not is_annotation(mark):
            put(sheet, mark)


def wrapped(text: str, font: ImageFont.FreeTypeFont, width: int) -> list[str]:
    """Return the text in lines that fit the width."""
    lines: list[str] = []
    for word in text.split():
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and font.getlength(longer) <= width:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines


def as_large(text: str, width: int, sizes: tuple[int, ...], most: int) -> tuple[list[str], ImageFont.FreeTypeFont]:
    """Return a text in at most so many lines, as large as it goes."""
    for size in sizes:
        font = typeface(size)
        lines = wrapped(text, font, width)
        if len(lines) <= most and all(font.getlength(line) <= width for line in lines):
            break
    return lines[:most], font


def write(image: Image.Image, words: Words, width: int, palette: Palette) -> None:
    """Write the words on the left of a card."""
    brush = ImageDraw.Draw(image)
    brush.text((EDGE, EDGE), words.showroom, font=typeface(30), fill=palette["warm"])
    lines, font = as_large(words.title, width, TITLE_SIZES, TITLE_LINES)
    step = font.size * 1.12
    top = HEIGHT / 2 - step * len(lines) / 2 - 24
    for at, line in enumerate(lines):
        brush.text((EDGE, top + at * step), line, font=font, fill=palette["ink"])
    foot = top + len(lines) * step + 28
    lines, font = as_large(words.line, width, SENTENCE_SIZES, SENTENCE_LINES)
    for at, line in enumerate(lines):
        brush.text((EDGE, foot + at * 40), line, font=font, fill=palette["ink-soft"])


def card(picture: Image.Image, words: Words, palette: Palette) -> bytes:
    """Return a link preview as PNG: the picture stands on the floor line at the right."""
    image = Image.new("RGB", (WIDTH, HEIGHT), palette["paper"])
    left = WIDTH - EDGE - ACROSS + (ACROSS - picture.width) // 2
    image.paste(picture, (left, HEIGHT - EDGE - picture.height))
    brush = ImageDraw.Draw(image)
    brush.line((WIDTH - EDGE - ACROSS, HEIGHT - EDGE, WIDTH, HEIGHT - EDGE), fill=palette["ink"], width=3)
    write(image, words, WIDTH - 3 * EDGE - ACROSS, palette)
    return small_png(image, palette)


def pair_card(pictures: list[Image.Image], words: Words, palette: Palette) -> bytes:
    """Return a link preview of a drawing in two states side by side, under its title and the line."""
    image = Image.new("RGB", (WIDTH, HEIGHT), palette["paper"])
    room = WIDTH // len(pictures)
    for at, picture in enumerate(pictures):
        left = at * room + (room - picture.width) // 2
        image.paste(picture, (left, HEIGHT - EDGE - picture.height))
    brush = ImageDraw.Draw(image)
    brush.line((0, HEIGHT - EDGE, WIDTH, HEIGHT - EDGE), fill=palette["ink"], width=3)
    # Of these cards there are hundreds, and smooth letters would be a quarter of their bytes.
    brush.fontmode = "1"
    foot = (WIDTH // 2, HEIGHT - EDGE // 2)
    brush.text(foot, words.showroom, font=typeface(FOOT_SIZE), fill=palette["warm"], anchor="mm")
    top = NAMES_TOP
    for text, sizes in ((words.title, NAME_SIZES), (words.line, LINE_SIZES)):
        (line, *_), font = as_large(text, WIDTH - 2 * EDGE, sizes, 1)
        brush.text((WIDTH // 2, top), line, font=font, fill=palette["ink"], anchor="ma")
        top += round(font.size * 1.25)
    return small_png(image, palette)


def small_png(image: Image.Image, own: Palette) -> bytes:
    """Return a picture as PNG with few colors and nothing but pixels in it."""
    out = io.BytesIO()
    flat = image.quantize(palette=palette_of(image, own), dither=Image.Dither.NONE)
    flat.save(out, "PNG", compress_level=COMPRESSION)
    return out.getvalue()


def palette_of(image: Image.Image, own: Palette) -> Image.Image:
    """Return the few colors that stand for all of a card's: the frame's and the garden's, then the most common."""
    palette = Image.new("P", (1, 1))
    palette.putpalette([part for color in few_colors(image, own) for part in color])
    return palette


def few_colors(image: Image.Image, own: Palette) -> list[Color]:
    """Return the colors that every card has and the most common others; of near ones only the first."""
    sample = image.resize((image.width // SAMPLED, image.height // SAMPLED), Image.Resampling.NEAREST)
    counted = cast(list[tuple[int, Color]], sample.getcolors(sample.width * sample.height))
    kept = [between(own["paper"], own["ink"]), *(rgb(own[name]) for name in OWN_COLORS)]
    for _, color in sorted(counted, reverse=True):
        if all(apart(color, other) > NEAR for other in kept):
            kept.append(color)
        if len(kept) == COLORS:
            break
    return kept


def between(one: str, other: str) -> Color:
    """Return the color half way between two: that of lines finer than a pixel."""
    red, green, blue = ((part + beside) // 2 for part, beside in zip(rgb(one), rgb(other), strict=True))
    return red, green, blue


def apart(one: Color, other: Color) -> int:
    """Return how far two colors lie apart, of 255 where they differ most, their hues so many times that."""
    red, green, blue = (part - beside for part, beside in zip(one, other, strict=True))
    return max(abs(red), abs(green), abs(blue), HUE * abs(red - green), HUE * abs(blue - green))
