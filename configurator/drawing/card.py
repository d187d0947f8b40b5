"""Link previews, 1200 × 630 px: a drawing on the right, words on the left."""

import io
from typing import NamedTuple, cast

from PIL import Image, ImageDraw, ImageFont

from configurator.drawing.drawing_palette import colors
from configurator.drawing.png import Sheet, is_annotation, put
from configurator.drawing.rgb import Color, rgb
from configurator.drawing.typeface import typeface
from configurator.kernel.shapes import Drawing, Look, Mark

WIDTH, HEIGHT = 1200, 630
EDGE = 56
# The drawing's window on the card.
ACROSS, DOWN = 560, 424
# The drawing's edges are smoothed out of as many pixels each way.
FINER = 2
# Few colors keep a card small; those of its frame and the garden are always among them.
COLORS = 12
OWN_COLORS = ("paper", "ink", "warm", "ground", "sky", "lawn", "tree")
# Every other pixel each way tells as well as all of them which colors a card shows most of.
SAMPLED = 2
# Colors no further apart than this, of 255, are one.
NEAR = 8
TITLE_SIZES = (76, 64, 54, 46)
TITLE_LINES = 3


class Words(NamedTuple):
    """What a card says: the showroom, the title and a line beneath it."""

    showroom: str
    title: str
    line: str


class Backdrop:
    """A drawing that stands behind several cards, painted once."""

    def __init__(self, drawing: Drawing) -> None:
        width = min(ACROSS, int(DOWN * drawing["width"] / drawing["height"]))
        self.sheet = Sheet(drawing, width, rgb(colors()["paper"]), FINER)
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


def title_lines(text: str, width: int) -> tuple[list[str], ImageFont.FreeTypeFont]:
    """Return the title in at most three lines, as large as it goes."""
    for size in TITLE_SIZES:
        font = typeface(size)
        lines = wrapped(text, font, width)
        if len(lines) <= TITLE_LINES and all(font.getlength(line) <= width for line in lines):
            break
    return lines[:TITLE_LINES], font


def write(image: Image.Image, words: Words, width: int) -> None:
    """Write the words on the left of a card."""
    brush = ImageDraw.Draw(image)
    palette = {name: rgb(value) for name, value in colors().items()}
    brush.text((EDGE, EDGE), words.showroom, font=typeface(30), fill=palette["warm"])
    lines, font = title_lines(words.title, width)
    step = font.size * 1.12
    top = HEIGHT / 2 - step * len(lines) / 2 - 24
    for at, line in enumerate(lines):
        brush.text((EDGE, top + at * step), line, font=font, fill=palette["ink"])
    small = typeface(30)
    for at, line in enumerate(wrapped(words.line, small, width)[:2]):
        brush.text((EDGE, top + len(lines) * step + 28 + at * 40), line, font=small, fill=palette["ink-soft"])


def card(picture: Image.Image, words: Words) -> bytes:
    """Return a link preview as PNG: the picture stands on the floor line at the right."""
    palette = colors()
    image = Image.new("RGB", (WIDTH, HEIGHT), rgb(palette["paper"]))
    left = WIDTH - EDGE - ACROSS + (ACROSS - picture.width) // 2
    image.paste(picture, (left, HEIGHT - EDGE - picture.height))
    brush = ImageDraw.Draw(image)
    brush.line((WIDTH - EDGE - ACROSS, HEIGHT - EDGE, WIDTH, HEIGHT - EDGE), fill=rgb(palette["ink"]), width=3)
    write(image, words, WIDTH - 3 * EDGE - ACROSS)
    return small_png(image)


def pair_card(pictures: list[Image.Image], showroom: str) -> bytes:
    """Return a link preview of a drawing in two states side by side; its words stand beside it wherever it is shown."""
    palette = colors()
    image = Image.new("RGB", (WIDTH, HEIGHT), rgb(palette["paper"]))
    room = WIDTH // len(pictures)
    for at, picture in enumerate(pictures):
        left = at * room + (room - picture.width) // 2
        image.paste(picture, (left, HEIGHT - EDGE - picture.height))
    brush = ImageDraw.Draw(image)
    brush.line((0, HEIGHT - EDGE, WIDTH, HEIGHT - EDGE), fill=rgb(palette["ink"]), width=3)
    brush.text((WIDTH / 2, HEIGHT - EDGE / 2), showroom, font=typeface(26), fill=rgb(palette["warm"]), anchor="mm")
    return small_png(image)


def small_png(image: Image.Image) -> bytes:
    """Return a picture as PNG with few colors and nothing but pixels in it."""
    out = io.BytesIO()
    flat = image.quantize(palette=palette_of(image), dither=Image.Dither.NONE)
    flat.save(out, "PNG", compress_level=9)
    return out.getvalue()


def palette_of(image: Image.Image) -> Image.Image:
    """Return the few colors that stand for all of a card's: the frame's and the garden's, then the most common."""
    palette = Image.new("P", (1, 1))
    palette.putpalette([part for color in few_colors(image) for part in color])
    return palette


def few_colors(image: Image.Image) -> list[Color]:
    """Return the colors that every card has and the most common others; of near ones only the first."""
    sample = image.resize((image.width // SAMPLED, image.height // SAMPLED), Image.Resampling.NEAREST)
    counted = cast(list[tuple[int, Color]], sample.getcolors(sample.width * sample.height))
    kept = [rgb(colors()[name]) for name in OWN_COLORS]
    for _, color in sorted(counted, reverse=True):
        if all(apart(color, other) > NEAR for other in kept):
            kept.append(color)
        if len(kept) == COLORS:
            break
    return kept


def apart(one: Color, other: Color) -> int:
    """Return how far two colors lie apart, of 255, where they differ most."""
    return max(abs(part - beside) for part, beside in zip(one, other, strict=True))
