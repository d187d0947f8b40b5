"""Link previews, 1200 × 630 px: a drawing on the right, words on the left."""

from functools import lru_cache
from typing import NamedTuple

from PIL import Image, ImageDraw, ImageFont

from configurator.drawing.card_colors import OWN_INDEX, Palette, in_few_colors
from configurator.drawing.flat_png import Strip, flat_png, strip_of
from configurator.drawing.png import Sheet, is_annotation, put
from configurator.drawing.rgb import rgb
from configurator.drawing.typeface import typeface
from configurator.kernel.shapes import Drawing, Look, Mark

WIDTH, HEIGHT = 1200, 630
EDGE = 56
# The drawing's window on the card.
ACROSS, DOWN = 560, 352
# How thick the line is on which it stands.
FLOOR = 3
# The drawing's edges are smoothed out of as many pixels each way.
FINER = 2
TITLE_SIZES = (76, 64, 54, 46)
TITLE_LINES = 3
# Beneath the title a sentence is told whole: it has more lines, or smaller letters, before any of it is left out.
SENTENCE_SIZES = (30, 27, 24)
SENTENCE_LINES = 3
# Above two drawings there is room for two lines, beneath them for the showroom's name.
NAME_SIZES = (34, 28, 22)
LINE_SIZES = (24, 20, 16)
FOOT_SIZES = (20,)
# How far down in its strip each line has its foot, and how high the strip is: with the drawings' they make up a card.
NAME_HIGH, LINE_HIGH, FOOT_HIGH = (128, 127), (30, 95), (39, 54)


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
    brush.line((WIDTH - EDGE - ACROSS, HEIGHT - EDGE, WIDTH, HEIGHT - EDGE), fill=palette["ink"], width=FLOOR)
    write(image, words, WIDTH - 3 * EDGE - ACROSS, palette)
    flat = in_few_colors(image, palette)
    return flat_png([strip_of(flat)], flat.getpalette() or [])


def pair_card(pictures: list[Image.Image], words: Words, palette: Palette) -> bytes:
    """Return a link preview of a drawing in two states side by side, under its title and the line."""
    flat = in_few_colors(side_by_side(pictures, palette), palette)
    strips = [
        name_strip(words.title, "ink", NAME_HIGH, NAME_SIZES),
        name_strip(words.line, "ink", LINE_HIGH, LINE_SIZES),
        strip_of(flat),
        name_strip(words.showroom, "warm", FOOT_HIGH, FOOT_SIZES),
    ]
    return flat_png(strips, flat.getpalette() or [])


@lru_cache(maxsize=64)
def name_strip(text: str, color: str, place: tuple[int, int], sizes: tuple[int, ...]) -> Strip:
    """Return one line as large as it goes, in a color across a card: so far down to its foot, and so high in all, px.

    Of cards with two drawings there are hundreds, and smooth letters would be a quarter of their bytes; their few names
    come again and again.
    """
    foot, high = place
    lines, font = as_large(text, WIDTH - 2 * EDGE, sizes, 1)
    strip = Image.new("P", (WIDTH, high), OWN_INDEX["paper"])
    brush = ImageDraw.Draw(strip)
    brush.fontmode = "1"
    brush.text((WIDTH // 2, foot), "".join(lines), font=font, fill=OWN_INDEX[color], anchor="md")
    return strip_of(strip)


def side_by_side(pictures: list[Image.Image], palette: Palette) -> Image.Image:
    """Return pictures on a floor line across a card, each in the middle of its share."""
    strip = Image.new("RGB", (WIDTH, DOWN + FLOOR // 2 + 1), palette["paper"])
    room = WIDTH // len(pictures)
    for at, picture in enumerate(pictures):
        strip.paste(picture, (at * room + (room - picture.width) // 2, DOWN - picture.height))
    ImageDraw.Draw(strip).line((0, DOWN, WIDTH, DOWN), fill=palette["ink"], width=FLOOR)
    return strip
