"""The room that a door is painted into: plaster, boards and a plant, with the brushes that paint them softly."""

import math
import random

from PIL import Image, ImageDraw, ImageFilter

from configurator.drawing.rgb import Color, rgb

WIDTH, HEIGHT = 1800, 1080
FLOOR = 890
# How far boards lie apart at the wall and at the picture's foot, px: what is nearer looks larger by as much.
BOARD_FAR, BOARD_NEAR = 62, 150
PLANT = 1712
LIGHT = rgb("#fff1cf")
SHADE = rgb("#3b2413")
Points = list[tuple[float, float]]


def ramp(top: Color, bottom: Color, size: tuple[int, int]) -> Image.Image:
    """Return a picture that runs from one color down to another."""
    column = Image.linear_gradient("L").resize(size)
    return Image.composite(Image.new("RGB", size, bottom), Image.new("RGB", size, top), column)


def veil(image: Image.Image, color: Color, mask: Image.Image) -> None:
    """Lay a color over a picture, as thick as the mask is bright."""
    image.paste(color, (0, 0), mask)


def soft_mask(shapes: list[Points], strength: int, blur: float) -> Image.Image:
    """Return a mask of blurred shapes."""
    mask = Image.new("L", (WIDTH, HEIGHT), 0)
    brush = ImageDraw.Draw(mask)
    for shape in shapes:
        brush.polygon(shape, fill=strength)
    return mask.filter(ImageFilter.GaussianBlur(blur))


def bare_room(middle: float) -> Image.Image:
    """Return the wall and the floor, lit about a door whose middle is given in px."""
    image = Image.new("RGB", (WIDTH, HEIGHT))
    image.paste(ramp(rgb("#e2cfb3"), rgb("#f1e3cb"), (WIDTH, FLOOR)), (0, 0))
    image.paste(ramp(rgb("#b58a5d"), rgb("#7d5635"), (WIDTH, HEIGHT - FLOOR)), (0, FLOOR))
    brush = ImageDraw.Draw(image)
    for at in range(-30, 31):
        line = (middle + at * BOARD_FAR, FLOOR, middle + at * BOARD_NEAR, HEIGHT)
        brush.line(line, fill=rgb("#8f6640"), width=2)
    brush.rectangle((0, FLOOR - 46, WIDTH, FLOOR), fill=rgb("#f3e8d5"))
    brush.line((0, FLOOR - 46, WIDTH, FLOOR - 46), fill=rgb("#cdb899"), width=2)
    lit: Points = [(middle - 380, 40), (middle + 380, 40), (middle + 460, FLOOR), (middle - 460, FLOOR)]
    veil(image, LIGHT, soft_mask([lit], 120, 120))
    return image


def blade(x: float, y: float, angle: float, length: float) -> Points:
    """Return a slender leaf from its stem outwards."""
    shares = [step / 8 for step in range(9)]
    sides = [(share, math.sin(math.pi * share**0.8) * length / 9) for share in shares]
    whole = [*sides, *((share, -wide) for share, wide in reversed(sides))]
    ahead, aside = (math.cos(angle), math.sin(angle)), (-math.sin(angle), math.cos(angle))
    return [
        (x + ahead[0] * share * length + aside[0] * wide, y + ahead[1] * share * length + aside[1] * wide)
        for share, wide in whole
    ]


def plant(image: Image.Image, dice: random.Random) -> None:
    """Paint a plant in a pot beside the door, a little out of focus, and its shadow on the boards."""
    foot = FLOOR + 62
    back, front = foot - 16, foot + 30
    shadow: Points = [(PLANT - 115, back), (PLANT + 55, back), (PLANT + 15, front), (PLANT - 195, front)]
    veil(image, SHADE, soft_mask([shadow], 130, 14))
    layer = Image.new("RGBA", (WIDTH, HEIGHT), (0, 0, 0, 0))
    brush = ImageDraw.Draw(layer)
    for _ in range(64):
        bend = dice.uniform(-1.2, 1.2)
        reach = dice.uniform(0.45, 1.0)
        tip = (PLANT + math.sin(bend) * 110 * reach, FLOOR - 90 - math.cos(bend) * 260 * reach)
        green = rgb(dice.choice(("#5d6d3f", "#74844c", "#8a965a", "#4c5c38")))
        brush.line([(PLANT, FLOOR - 80), tip], fill=(*rgb("#5b6238"), 255), width=3)
        brush.polygon(
            blade(*tip, bend - math.pi / 2 + dice.uniform(-0.7, 0.7), dice.uniform(70, 120)), fill=(*green, 255)
        )
    pot = [(PLANT - 70, FLOOR - 90), (PLANT + 70, FLOOR - 90), (PLANT + 50, foot), (PLANT - 50, foot)]
    brush.polygon(pot, fill=(*rgb("#a8643e"), 255))
    brush.polygon([(PLANT + 17, FLOOR - 90), *pot[1:3], (PLANT + 11, foot)], fill=(*rgb("#b9744a"), 255))
    brush.rectangle((PLANT - 79, FLOOR - 104, PLANT + 79, FLOOR - 78), fill=(*rgb("#b06c44"), 255))
    soft = layer.filter(ImageFilter.GaussianBlur(1.6))
    image.paste(soft, (0, 0), soft)


def grain(dice: random.Random) -> Image.Image:
    """Return a faint grain around middle gray."""
    noise = Image.frombytes("L", (WIDTH // 2, HEIGHT // 2), dice.randbytes(WIDTH * HEIGHT // 4))
    return noise.resize((WIDTH, HEIGHT), Image.Resampling.BICUBIC).point([123 + level // 26 for level in range(256)])
