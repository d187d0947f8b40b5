"""A room painted round a real drawing: plaster, boards, a garden out of focus and the light that falls in."""

import math
import random
from itertools import pairwise

from PIL import Image, ImageChops, ImageDraw, ImageFilter

from configurator.drawing.png import round_points
from configurator.drawing.rgb import Color, rgb
from configurator.drawing.svg import ALONE
from configurator.kernel.shapes import Drawing, Mark

WIDTH, HEIGHT = 1800, 1080
FLOOR = 890
DOOR_HEIGHT = 770
DOOR_MIDDLE = 1190
PLANT = 1712
GARDEN = {
    "sky": "#f6dfb9",
    "hill": "#c8c28f",
    "lawn": "#b4bd7c",
    "path-stone": "#e9d4b0",
    "tree": "#8fa366",
    "trunk": "#7d6246",
}
MATERIALS = {
    "wall": "#efe4d2",
    "leaf": "#fbf5ea",
    "bead": "#f4ebdb",
    "muntin": "#fbf5ea",
    "hinge": "#9b8455",
    "handle": "#8b7345",
    "headrail": "#efe3cd",
    "frame": "#f6ecda",
    "louver": "#f8efdf",
    "cloth": "#ecdcbf",
    "sheer": "#fbf4e6",
    "rail": "#e6d5b6",
    "rod": "#8b7345",
}
LIGHT = rgb("#fff1cf")
SHADE = rgb("#3b2413")
Points = list[tuple[float, float]]


class Place:
    """Where the drawing stands in the room."""

    def __init__(self, drawing: Drawing) -> None:
        self.pixels = DOOR_HEIGHT / drawing["height"]
        self.x = DOOR_MIDDLE - (drawing["x"] + drawing["width"] / 2) * self.pixels

    def points(self, mark: Mark) -> Points:
        """Return a mark's outline in the picture."""
        flat = round_points(mark) if mark["shape"] == "circle" else mark["points"]
        return [(self.x + x * self.pixels, FLOOR + y * self.pixels) for x, y in zip(flat[::2], flat[1::2], strict=True)]


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


def bare_room() -> Image.Image:
    """Return the wall and the floor."""
    image = Image.new("RGB", (WIDTH, HEIGHT))
    image.paste(ramp(rgb("#e2cfb3"), rgb("#f1e3cb"), (WIDTH, FLOOR)), (0, 0))
    image.paste(ramp(rgb("#b58a5d"), rgb("#7d5635"), (WIDTH, HEIGHT - FLOOR)), (0, FLOOR))
    brush = ImageDraw.Draw(image)
    for at in range(-30, 31):
        brush.line((DOOR_MIDDLE + at * 62, FLOOR, DOOR_MIDDLE + at * 150, HEIGHT), fill=rgb("#8f6640"), width=2)
    brush.rectangle((0, FLOOR - 46, WIDTH, FLOOR), fill=rgb("#f3e8d5"))
    brush.line((0, FLOOR - 46, WIDTH, FLOOR - 46), fill=rgb("#cdb899"), width=2)
    glow = soft_mask(
        [[(DOOR_MIDDLE - 380, 40), (DOOR_MIDDLE + 380, 40), (DOOR_MIDDLE + 460, FLOOR), (DOOR_MIDDLE - 460, FLOOR)]],
        120,
        120,
    )
    veil(image, LIGHT, glow)
    return image


def garden(marks: list[Mark], place: Place) -> Image.Image:
    """Return the garden, out of focus and in the sun."""
    image = Image.new("RGB", (WIDTH, HEIGHT), rgb(GARDEN["sky"]))
    brush = ImageDraw.Draw(image)
    for mark in marks:
        if mark["role"] in GARDEN:
            brush.polygon(place.points(mark), fill=rgb(GARDEN[mark["role"]]))
    blurred = image.filter(ImageFilter.GaussianBlur(5))
    return Image.blend(blurred, Image.new("RGB", (WIDTH, HEIGHT), LIGHT), 0.22)


def material(mark: Mark) -> str:
    """Return what a mark is made of, or nothing for lines, glass and garden."""
    return next((role for role in mark["role"].split() if role in MATERIALS), "")


def solid(image: Image.Image, mark: Mark, points: Points) -> None:
    """Paint one part: its fill, as dense as it hides the view, and the light and shade along its edges."""
    mask = Image.new("L", (WIDTH, HEIGHT), 0)
    ImageDraw.Draw(mask).polygon(points, fill=round(max(mark["fade"], 0.3) * 255))
    veil(image, rgb(MATERIALS[material(mark)]), mask)
    brush = ImageDraw.Draw(image)
    for start, end in pairwise([*points, points[0]]):
        lit = end[1] < start[1] - 1 or end[0] > start[0] + 1
        brush.line((start, end), fill=rgb("#fffaf0") if lit else rgb("#c9b394"), width=2)


def daylight(panes: list[Points]) -> Image.Image:
    """Return where the sun through the panes falls on the boards."""
    patches: list[Points] = []
    for pane in panes:
        left, right = min(x for x, _ in pane), max(x for x, _ in pane)
        patches.append([(left - 20, FLOOR + 18), (right - 20, FLOOR + 18), (right - 250, HEIGHT), (left - 330, HEIGHT)])
    return soft_mask(patches, 135, 12)


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
    veil(
        image,
        SHADE,
        soft_mask(
            [[(PLANT - 115, foot - 16), (PLANT + 55, foot - 16), (PLANT + 15, foot + 30), (PLANT - 195, foot + 30)]],
            130,
            14,
        ),
    )
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
    return noise.resize((WIDTH, HEIGHT), Image.Resampling.BICUBIC).point([118 + level // 13 for level in range(256)])


def room_picture(drawing: Drawing) -> Image.Image:
    """Return the picture of a room with the drawing's door and covering; the same drawing gives the same picture."""
    dice = random.Random(drawing["title"])
    place = Place(drawing)
    panes = [place.points(mark) for mark in drawing["marks"] if "glass" in mark["role"].split()]
    image = bare_room()
    veil(image, SHADE, soft_mask([[(x - 14, y + 10) for x, y in outline(drawing, place)]], 70, 16))
    outside = garden(drawing["marks"], place)
    behind = True
    for mark in drawing["marks"]:
        points = place.points(mark) if mark["shape"] not in ALONE else []
        if "glass" in mark["role"].split():
            pane = Image.new("L", (WIDTH, HEIGHT), 0)
            ImageDraw.Draw(pane).polygon(points, fill=255)
            image.paste(outside, (0, 0), pane)
            behind = False
        elif material(mark) and len(points) > 2:
            if not behind and "cloth" in mark["role"]:
                veil(image, SHADE, soft_mask([[(x + 5, y + 9) for x, y in points]], 60, 7))
            solid(image, mark, points)
    veil(image, LIGHT, daylight(panes))
    plant(image, dice)
    edges = Image.radial_gradient("L").resize((WIDTH, HEIGHT)).point([level * level // 700 for level in range(256)])
    veil(image, SHADE, edges)
    speckle = grain(dice)
    return ImageChops.overlay(image, Image.merge("RGB", (speckle, speckle, speckle)))


def outline(drawing: Drawing, place: Place) -> Points:
    """Return the outline of the whole opening."""
    wall = next(mark for mark in drawing["marks"] if "wall" in mark["role"].split())
    return place.points(wall)
