"""A room painted round a real drawing: its door and covering, a garden out of focus and the light that falls in."""

import random

from PIL import Image, ImageChops

from configurator.drawing.room_door import painted_door
from configurator.drawing.room_place import RoomPlace
from configurator.drawing.room_setting import (
    HEIGHT,
    LIGHT,
    SHADE,
    WIDTH,
    Points,
    bare_room,
    grain,
    plant,
    soft_mask,
    veil,
)
from configurator.drawing.room_sun import glow_of, on_boards, spill, sun_through
from configurator.kernel.shapes import Drawing

# How far the opening's shadow lies aside and down on the wall, px.
WALL_SHADOW = (14, 10)


def room_picture(drawing: Drawing) -> Image.Image:
    """Return the picture of a room with the drawing's door and covering; the same drawing gives the same picture.

    The drawing is an elevation without annotation whose window stands on the floor.
    """
    dice = random.Random(drawing["title"])
    place = RoomPlace(drawing)
    image = bare_room(place.middle)
    veil(image, SHADE, soft_mask([opening(place)], 70, 16))
    image.paste(painted_door(place, image.crop(place.box)), place.corner)
    through = sun_through(place)
    veil(image, LIGHT, on_boards(place, through))
    veil(image, LIGHT, spill(place, ImageChops.add(through, glow_of(place))))
    plant(image, dice)
    edges = Image.radial_gradient("L").resize((WIDTH, HEIGHT)).point([level * level // 1100 for level in range(256)])
    veil(image, SHADE, edges)
    speckle = grain(dice)
    return ImageChops.overlay(image, Image.merge("RGB", (speckle, speckle, speckle)))


def opening(place: RoomPlace) -> Points:
    """Return the shadow of the whole opening on the wall."""
    wall = next(mark for mark in place.drawing["marks"] if "wall" in mark["role"].split())
    points = place.sheet().points(wall["points"])
    finer = place.sheet().pixels / place.pixels
    return [
        (place.corner[0] + x / finer - WALL_SHADOW[0], place.corner[1] + y / finer + WALL_SHADOW[1]) for x, y in points
    ]
