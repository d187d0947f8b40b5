"""A room painted round a real drawing: its door and covering, a garden out of focus and the light that falls in."""

from PIL import Image, ImageChops

from configurator.drawing.room_door import painted_door
from configurator.drawing.room_place import RoomPlace
from configurator.drawing.room_setting import (
    LIGHT,
    SHADE,
    Points,
    bare_room,
    dim_edges,
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
    """Return the picture of a room with the drawing's door and covering, with a faint grain as of plaster.

    The drawing is an elevation without annotation whose window stands on the floor.
    """
    return ImageChops.overlay(smooth_room(drawing), grain())


def smooth_room(drawing: Drawing) -> Image.Image:
    """Return the same without grain, for files that must be small; the same drawing gives the same picture."""
    place = RoomPlace(drawing)
    image = bare_room(place.middle).copy()
    veil(image, SHADE, soft_mask([opening(place)], 70, 16))
    image.paste(painted_door(place, image.crop(place.box)), place.corner)
    through = sun_through(place)
    veil(image, LIGHT, on_boards(place, through))
    veil(image, LIGHT, spill(place, ImageChops.add(through, glow_of(place))))
    plant(image)
    veil(image, SHADE, dim_edges())
    return image


def opening(place: RoomPlace) -> Points:
    """Return the shadow of the whole opening on the wall."""
    wall = next(mark for mark in place.drawing["marks"] if "wall" in mark["role"].split())
    points = place.sheet().points(wall["points"])
    finer = place.sheet().pixels / place.pixels
    return [
        (place.corner[0] + x / finer - WALL_SHADOW[0], place.corner[1] + y / finer + WALL_SHADOW[1]) for x, y in points
    ]
