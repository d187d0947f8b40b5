"""Weaves and surfaces as tiles of light and shade in true size, laid over a material's color.

A tile repeats without a seam. What reaches over its edge is cut off there, so it is drawn at the other edge too.
"""

import math
from collections.abc import Callable
from typing import TypedDict

from configurator.kernel.shapes import Mark
from configurator.kernel.views.garden import oval
from configurator.kernel.views.marks import faded, wash
from configurator.kernel.views.tones import GLEAM, SHADE


class Tile(TypedDict):
    """A pattern's repeat, mm, and its marks from its upper left corner; without marks the surface is smooth."""

    width: float
    height: float
    marks: list[Mark]


def slanted(x: float, edges: list[float], lean: float, wide: float) -> list[float]:
    """Return a rib from ``x`` at the upper of two ``edges`` that leans sideways by ``lean`` on its way down."""
    return [x, edges[0], x + wide, edges[0], x + wide + lean, edges[1], x + lean, edges[1]]


def spindle(x: float, y: float, length: float, thick: float) -> list[float]:
    """Return a level yarn or vein, thick in its middle, from ``x`` on."""
    return [x, y, x + length / 2, y - thick / 2, x + length, y, x + length / 2, y + thick / 2]


def grid(count: int, pitch: float, wide: float, fade: float) -> list[Mark]:
    """Return so many level and so many upright yarns of a square tile, each with its shadow side."""
    marks: list[Mark] = []
    whole = count * pitch
    for i in range(count):
        marks.append(wash(SHADE, [0.0, i * pitch, whole, i * pitch + wide], fade))
    for i in range(count):
        marks.append(wash(SHADE, [i * pitch, 0.0, i * pitch + wide, whole], fade))
    return marks


def plain_tile() -> Tile:
    """Return a plain weave, its yarns so fine that they hardly show."""
    return {"width": 12.0, "height": 12.0, "marks": grid(4, 3.0, 1.2, 0.04)}


def scattered(role: str, count: int, tile: list[float], yarn: list[float]) -> list[Mark]:
    """Return level spindles over a tile ``[width, height]``; ``yarn`` is ``[length, thickness, fade]`` in the mean."""
    marks: list[Mark] = []
    for i in range(count):
        # Steps of the golden section fall evenly and never in a row.
        x = tile[0] * ((i * 0.618) % 1)
        y = tile[1] * (i + 0.5) / count
        length = yarn[0] * (0.7 + 0.6 * ((i * 0.382) % 1))
        thick = yarn[1] * (0.7 + 0.6 * ((i * 0.7) % 1))
        for start in [x, x - tile[0]]:
            if start + length > 0:
                marks.append(faded("polygon", role, spindle(start, y, length, thick), yarn[2]))
    return marks


def slub_tile() -> Tile:
    """Return linen: yarns that swell and thin out."""
    marks = scattered(SHADE, 7, [160.0, 42.0], [120.0, 3.2, 0.14])
    marks.extend(scattered(GLEAM, 4, [160.0, 42.0], [100.0, 3.0, 0.3]))
    return {"width": 160.0, "height": 42.0, "marks": marks}


def twill_tile() -> Tile:
    """Return fine ribs that slant."""
    marks: list[Mark] = []
    for i in range(-4, 4):
        marks.append(faded("polygon", SHADE, slanted(i * 4.0, [0.0, 16.0], 16.0, 1.6), 0.11))
    return {"width": 16.0, "height": 16.0, "marks": marks}


def basket_tile() -> Tile:
    """Return blocks of yarns that lie level and upright by turns."""
    marks: list[Mark] = []
    for block in range(4):
        x = 8.0 * (block % 2)
        y = 8.0 * int(block / 2)
        level = block == 0 or block == 3
        for yarn in range(3):
            step = yarn * 2.7
            edges = [x, y + step, x + 8.0, y + step + 1.1] if level else [x + step, y, x + step + 1.1, y + 8.0]
            marks.append(wash(SHADE, edges, 0.16 if level else 0.1))
    return {"width": 16.0, "height": 16.0, "marks": marks}


def herringbone_tile() -> Tile:
    """Return ribs that turn back and forth, each way as wide as a finger."""
    marks: list[Mark] = []
    for i in range(-3, 3):
        low = i * 6.0
        for side in [0.0, 1.0]:
            foot = 18.0 * (1 - side)
            edges = [18.0 * side, 18.0 + 18.0 * side]
            points = [edges[0], low + 18.0 - foot, edges[1], low + foot, edges[1], low + foot + 2.6]
            points.extend([edges[0], low + 20.6 - foot])
            marks.append(faded("polygon", SHADE, points, 0.13))
    return {"width": 36.0, "height": 18.0, "marks": marks}


def stripe_tile() -> Tile:
    """Return ticking: groups of three narrow stripes in the color, on a ground much lighter than it."""
    marks: list[Mark] = []
    for edges in [[0.0, 14.0], [17.0, 20.0], [30.0, 33.0], [36.0, 36.0]]:
        if edges[1] > edges[0]:
            marks.append(wash(GLEAM, [edges[0], 0.0, edges[1], 12.0], 0.78))
    return {"width": 36.0, "height": 12.0, "marks": marks}


def leaf_blade(x: float, y: float, turn: float, length: float) -> list[float]:
    """Return a leaf from its stem at ``x``, ``y``, pointing along ``turn`` (radians from the right, downwards)."""
    along = [math.cos(turn), math.sin(turn)]
    points: list[float] = []
    for i in range(10):
        share = i / 5 if i <= 5 else 2 - i / 5
        wide = math.sin(math.pi * share**0.8) * length * (0.24 if i <= 5 else -0.24)
        points.append(x + along[0] * share * length - along[1] * wide)
        points.append(y + along[1] * share * length + along[0] * wide)
    return points


def leaf_tile() -> Tile:
    """Return a printed sprig: leaves on either side of a stem, and once more half a repeat further."""
    marks: list[Mark] = []
    for sprig in [[42.0, 100.0], [126.0, 208.0], [126.0, -8.0]]:
        stem = [sprig[0] - 1.5, sprig[1] + 4, sprig[0] - 0.5, sprig[1] - 76, sprig[0] + 0.5, sprig[1] - 76]
        stem.extend([sprig[0] + 1.5, sprig[1] + 4])
        marks.append(faded("polygon", GLEAM, stem, 0.5))
        for pair in range(3):
            foot = sprig[1] - 6 - pair * 24
            for side in [-0.7, 0.7]:
                turn = -math.pi / 2 + side
                marks.append(faded("polygon", GLEAM, leaf_blade(sprig[0], foot, turn, 46.0 - pair * 7), 0.5))
        marks.append(faded("polygon", GLEAM, leaf_blade(sprig[0], sprig[1] - 72, -math.pi / 2, 34.0), 0.5))
    return {"width": 168.0, "height": 216.0, "marks": marks}


def lace_tile() -> Tile:
    """Return rosettes of close stitches on a net."""
    marks = grid(9, 6.0, 0.9, 0.13)
    for center in [[13.5, 13.5], [40.5, 40.5]]:
        for petal in range(6):
            turn = math.pi * petal / 3
            x = center[0] + 6.5 * math.cos(turn)
            y = center[1] + 6.5 * math.sin(turn)
            marks.append(faded("polygon", GLEAM, oval(x, y, 3.4, 3.4, 8), 0.6))
    return {"width": 54.0, "height": 54.0, "marks": marks}


def mesh_tile() -> Tile:
    """Return the grid of a screen, its openings seen as dark points."""
    marks: list[Mark] = []
    for i in range(16):
        x = 3.0 * (i % 4)
        y = 3.0 * int(i / 4)
        marks.append(wash(SHADE, [x, y, x + 1.5, y + 1.5], 0.2))
    return {"width": 12.0, "height": 12.0, "marks": marks}


def fleece_tile() -> Tile:
    """Return fibers that lie anyhow."""
    marks: list[Mark] = []
    for i in range(8):
        turn = i * 2.4
        x = 9.0 + 24.0 * ((i * 0.618) % 1)
        y = 9.0 + 24.0 * (i + 0.5) / 8
        along = [math.cos(turn), math.sin(turn)]
        points = [x - 9 * along[0], y - 9 * along[1], x - 0.8 * along[1], y + 0.8 * along[0]]
        points.extend([x + 9 * along[0], y + 9 * along[1]])
        marks.append(faded("polygon", SHADE if i % 2 == 0 else GLEAM, points, 0.12 if i % 2 == 0 else 0.45))
    return {"width": 42.0, "height": 42.0, "marks": marks}


def grain_tile() -> Tile:
    """Return wood: long veins along it, some darker than others."""
    marks = scattered(SHADE, 7, [320.0, 54.0], [230.0, 3.4, 0.13])
    marks.extend(scattered(GLEAM, 3, [320.0, 54.0], [170.0, 3.0, 0.16]))
    return {"width": 320.0, "height": 54.0, "marks": marks}


def paint_tile() -> Tile:
    """Return a smooth coat: nothing but its color."""
    return {"width": 12.0, "height": 12.0, "marks": []}


def brushed_tile() -> Tile:
    """Return metal brushed along its length."""
    marks = scattered(SHADE, 5, [160.0, 16.0], [120.0, 1.1, 0.13])
    marks.extend(scattered(GLEAM, 4, [160.0, 15.0], [130.0, 1.1, 0.3]))
    return {"width": 160.0, "height": 16.0, "marks": marks}


WEAVES: dict[str, Callable[[], Tile]] = {
    "plain": plain_tile,
    "slub": slub_tile,
    "twill": twill_tile,
    "basket": basket_tile,
    "herringbone": herringbone_tile,
    "stripe": stripe_tile,
    "leaf": leaf_tile,
    "lace": lace_tile,
    "mesh": mesh_tile,
    "fleece": fleece_tile,
    "grain": grain_tile,
    "paint": paint_tile,
    "brushed": brushed_tile,
}


def weave_tile(weave: str) -> Tile:
    """Return the tile of a weave by its name."""
    return WEAVES[weave]()
