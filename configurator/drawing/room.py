"""A room painted round a real drawing: its door and covering, a garden out of focus and the light that falls in."""

from PIL import Image, ImageChops

from configurator.drawing.room_door import painted_door
from configurator.drawing.room_place import RoomPlace
from configurator.drawing.room_setting import (
    LIGHT,
    SHADE,
    bare_room,
    dim_edges,
    grain,
    plant,
    soft_mask,
    veil,
)
from configurator.drawing.room_size import WHOLE, Points, RoomSize
from configurator.drawing.room_sun import glow_of, on_boards, spill, sun_through
from configurator.kernel.shapes import Drawing

# How far the opening's shadow lies aside and down on the wall, px.
WALL_SHADOW = (14, 10)


def room_picture(drawing: Drawing) -> Image.Image:
    """Return the picture of a room with the drawing's door and covering, with a faint grain as of plaster.

    The drawing is an elevation without annotation whose window stands on the floor.
    """
    return ImageChops.overlay(smooth_room(drawing, WHOLE), grain())


def smooth_room(drawing: Drawing, room: RoomSize) -> Image.Image:
    """Return the same without grain, for files that must be small; the same drawing gives the same picture."""
    place = RoomPlace(drawing, room)
    image = bare_room(room, place.middle / room.share).copy()
    veil(image, SHADE, soft_mask(room, opening(place), 70, 16))
    image.paste(painted_door(place, image.crop(place.box)), place.corner)
    through = sun_through(place)
    veil(image, LIGHT, on_boards(place, through))
    veil(image, LIGHT, spill(place, ImageChops.add(through, glow_of(place))))
    plant(room, image)
    veil(image, SHADE, dim_edges(room))
    return image


def opening(place: RoomPlace) -> Points:
    """Return the shadow of the whole opening on the wall, px of the whole room."""
    wall = next(mark for mark in place.drawing["marks"] if "wall" in mark["role"].split())
    left, top = (edge / place.room.share for edge in place.corner)
    return [
        (left + x / place.room.share - WALL_SHADOW[0], top + y / place.room.share + WALL_SHADOW[1])
        for x, y in place.points(wall["points"])
    ]
