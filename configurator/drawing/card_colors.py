"""The few colors of a link preview: those of its frame, of fine lines and of the garden, then the most common."""

from typing import cast

from PIL import Image

from configurator.drawing.rgb import Color, rgb

Palette = dict[str, str]
# Few colors keep a card small; those that every card has are always among them.
COLORS = 13
OWN_COLORS = ("paper", "ink", "warm", "sky", "lawn", "tree")
# Which of a card's colors those are; the first of all is that of fine lines.
OWN_INDEX = {name: at for at, name in enumerate(OWN_COLORS, 1)}
# Every other pixel each way tells as well as all of them which colors a card shows most of.
SAMPLED = 2
# A drawing has no more colors than these; to count them with room for as many as it has pixels takes twice as long.
USUAL_COLORS = 4096
# Colors no further apart than this are one: of 255 where they differ most, and half as far in their hue, since a gray
# cloth may not turn green with the lawn.
NEAR = 16
HUE = 2


def in_few_colors(image: Image.Image, own: Palette) -> Image.Image:
    """Return a picture in palette mode, in the few colors that stand for all of it."""
    palette = Image.new("P", (1, 1))
    palette.putpalette([part for color in few_colors(image, own) for part in color])
    return image.quantize(palette=palette, dither=Image.Dither.NONE)


def few_colors(image: Image.Image, own: Palette) -> list[Color]:
    """Return the colors that every card has and the most common others; of near ones only the first."""
    sample = image.resize((image.width // SAMPLED, image.height // SAMPLED), Image.Resampling.NEAREST)
    found = sample.getcolors(USUAL_COLORS) or sample.getcolors(sample.width * sample.height)
    counted = cast(list[tuple[int, Color]], found)
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
