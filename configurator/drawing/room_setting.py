"""The room that a door is painted into: plaster, boards and a plant, with the brushes that paint them softly."""

import math
import random
from functools import cache

from PIL import Image, ImageDraw, ImageFilter

from configurator.drawing.rgb import Color, rgb
from configurator.drawing.room_size import FLOOR, HEIGHT, WIDTH, Points, RoomSize

# How far boards lie apart at the wall and at the picture's foot, px: what is nearer looks larger by as much.
BOARD_FAR, BOARD_NEAR = 62, 150
# How high the plinth is along the foot of the wall, px.
PLINTH = 46
POT_FOOT = FLOOR + 62
PLANT = 1712
# What of a room holds the plant with its farthest leaves, px; a small room's pixels meet its edges.
PLANT_BOX = (1470, 369, 1800, 969)
# Every room has the same plant and the same grain.
DICE = "astragal"
# A blur so many times as wide as a pixel hides that it was made on coarser ones.
COARSE = 2
LIGHT = rgb("#fff1cf")
SHADE = rgb("#3b2413")


def ramp(top: Color, bottom: Color, size: tuple[int, int]) -> Image.Image:
    """Return a picture that runs from one color down to another."""
    column = Image.linear_gradient("L").resize(size)
    return Image.composite(Image.new("RGB", size, bottom), Image.new("RGB", size, top), column)


def veil(image: Image.Image, color: Color, mask: Image.Image) -> None:
    """Lay a color over a picture, as thick as the mask is bright."""
    part = mask.getbbox()
    if part:
        image.paste(color, part, mask.crop(part))


def blurred(image: Image.Image, radius: float) -> Image.Image:
    """Return a picture out of focus by a radius in px, blurred on no finer pixels than show."""
    step = max(1, int(radius // COARSE))
    small = image.reduce(step) if step > 1 else image
    return small.filter(ImageFilter.GaussianBlur(radius / step)).resize(image.size, Image.Resampling.BILINEAR)


def soft_mask(room: RoomSize, shape: Points, strength: int, blur: float) -> Image.Image:
    """Return a mask of a blurred shape of the whole room."""
    mask = Image.new("L", room.across_down, 0)
    ImageDraw.Draw(mask).polygon(room.points(shape), fill=strength)
    return blurred(mask, blur * room.share)


@cache
def bare_room(room: RoomSize, middle: float) -> Image.Image:
    """Return the wall and the floor, lit about a door whose middle is given in px of the whole room; nobody may paint
    on it."""
    (wide, high), floor = room.across_down, room.floor
    image = Image.new("RGB", (wide, high))
    image.paste(ramp(rgb("#e2cfb3"), rgb("#f1e3cb"), (wide, floor)), (0, 0))
    image.paste(ramp(rgb("#b58a5d"), rgb("#7d5635"), (wide, high - floor)), (0, floor))
    brush, fine = ImageDraw.Draw(image), room.px(2)
    for at in range(-30, 31):
        board: Points = [(middle + at * BOARD_FAR, FLOOR), (middle + at * BOARD_NEAR, HEIGHT)]
        brush.line(room.points(board), fill=rgb("#8f6640"), width=fine)
    plinth = room.px(FLOOR - PLINTH)
    brush.rectangle((0, plinth, wide, floor), fill=rgb("#f3e8d5"))
    brush.line((0, plinth, wide, plinth), fill=rgb("#cdb899"), width=fine)
    lit: Points = [(middle - 380, 40), (middle + 380, 40), (middle + 460, FLOOR), (middle - 460, FLOOR)]
    veil(image, LIGHT, soft_mask(room, lit, 120, 120))
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


def plant(room: RoomSize, image: Image.Image) -> None:
    """Paint a plant in a pot beside the door, a little out of focus, and its shadow on the boards."""
    veil(image, SHADE, plant_shadow(room))
    potted = potted_plant(room)
    image.paste(potted, (room.px(PLANT_BOX[0]), room.px(PLANT_BOX[1])), potted)


@cache
def plant_shadow(room: RoomSize) -> Image.Image:
    """Return the mask of the plant's shadow."""
    back, front = POT_FOOT - 16, POT_FOOT + 30
    shadow: Points = [(PLANT - 115, back), (PLANT + 55, back), (PLANT + 15, front), (PLANT - 195, front)]
    return soft_mask(room, shadow, 130, 14)


@cache
def potted_plant(room: RoomSize) -> Image.Image:
    """Return the plant in its pot, on nothing, as large as what it can lie in."""
    dice = random.Random(DICE)
    left, top, right, below = PLANT_BOX
    stem, foot, floor = PLANT - left, POT_FOOT - top, FLOOR - top
    layer = Image.new("RGBA", (right - left, below - top), (0, 0, 0, 0))
    brush = ImageDraw.Draw(layer)
    for _ in range(64):
        bend = dice.uniform(-1.2, 1.2)
        reach = dice.uniform(0.45, 1.0)
        tip = (stem + math.sin(bend) * 110 * reach, floor - 90 - math.cos(bend) * 260 * reach)
        green = rgb(dice.choice(("#5d6d3f", "#74844c", "#8a965a", "#4c5c38")))
        brush.line([(stem, floor - 80), tip], fill=(*rgb("#5b6238"), 255), width=3)
        brush.polygon(
            blade(*tip, bend - math.pi / 2 + dice.uniform(-0.7, 0.7), dice.uniform(70, 120)), fill=(*green, 255)
        )
    pot = [(stem - 70, floor - 90), (stem + 70, floor - 90), (stem + 50, foot), (stem - 50, foot)]
    brush.polygon(pot, fill=(*rgb("#a8643e"), 255))
    brush.polygon([(stem + 17, floor - 90), *pot[1:3], (stem + 11, foot)], fill=(*rgb("#b9744a"), 255))
    brush.rectangle((stem - 79, floor - 104, stem + 79, floor - 78), fill=(*rgb("#b06c44"), 255))
    size = (room.px(layer.width), room.px(layer.height))
    return layer.filter(ImageFilter.GaussianBlur(1.6)).resize(size, Image.Resampling.BOX)


@cache
def dim_edges(room: RoomSize) -> Image.Image:
    """Return the mask of the shade that lies about the edges of a picture."""
    return Image.radial_gradient("L").resize(room.across_down).point([level * level // 1100 for level in range(256)])


@cache
def grain() -> Image.Image:
    """Return a faint grain around middle gray, for the whole room."""
    noise = Image.frombytes("L", (WIDTH // 2, HEIGHT // 2), random.Random(DICE).randbytes(WIDTH * HEIGHT // 4))
    speckle = noise.resize((WIDTH, HEIGHT), Image.Resampling.BICUBIC).point([123 + at // 26 for at in range(256)])
    return Image.merge("RGB", (speckle, speckle, speckle))
