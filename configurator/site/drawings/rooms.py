"""The painted rooms: the first page's, and one round each covering, for its page and its card."""

import io
from collections.abc import Iterator

from PIL import Image

from configurator.drawing.photo import HERO, Cut, picture_sizes
from configurator.drawing.picture_card import jpeg, room_backdrop
from configurator.drawing.room import room_picture, smooth_room
from configurator.drawing.room_size import SMALL, WHOLE
from configurator.kernel.message import message
from configurator.kernel.shapes import Door, Drawing, Family
from configurator.site.drawings.pictures import bare, family_window
from configurator.site.drawings.shown_photos import ShownPhoto, shown_photo, shown_picture
from configurator.site.drawings.subjects import a_third_closed, own_door, room_subject
from configurator.site.house import House

FIRST = "painted-room"
# Where in the first page's room the door is.
FIRST_FOCUS = "72% 75%"
# A covering's room shows the door and the plant beside it, with less of the wall: from where to where in a small
# one, px.
NEAR = (432, 60, 1200, 700)
CLOSE = Cut("room", 0.0, (NEAR[2] - NEAR[0],))
# Of a backdrop on which words are still to be written.
KEPT_QUALITY = 92
BACKDROP = "backdrop"


def hero_photo(house: House) -> ShownPhoto:
    """Return the picture that the first page opens with."""
    own = shown_photo(house, house.showroom.photo, HERO)
    return own or shown_picture(FIRST, WHOLE.across_down, (room_words(house, *room_subject(house)), ""), HERO)


def hero_focus(house: House) -> str:
    """Return where the subject of the first page's picture is."""
    return house.showroom.photo.focus if house.showroom.photo else FIRST_FOCUS


def room_words(house: House, door: Door, family: Family) -> str:
    """Return what a painted room shows, for those who cannot see it."""
    shown = message("A sunlit room with a glazed door: {drawing}", {"drawing": [house.on_door(door, family), "text"]})
    return house.phrase(shown)


def room_drawing(house: House, door: Door, family: Family) -> Drawing:
    """Return the drawing that a room is painted round: the covering a third closed, so that the garden shows."""
    return bare(house, door, family, a_third_closed(family), family_window(house, door, [family]))


def opens_with_room(house: House) -> bool:
    """Return whether the first page opens with a room: the showroom has no photograph of its own for it."""
    return house.showroom.photo is None


def first_room(house: House, door: Door, family: Family) -> dict[str, bytes]:
    """Return the first page's room, painted round a covering on a door, as files by the ends of their names."""
    return house.once(
        lambda: picture_sizes(room_picture(room_drawing(house, door, family)), HERO), "room", door, family
    )


def first_room_files(house: House) -> dict[str, bytes]:
    """Return the files of the first page's room by their addresses, where it opens with one."""
    if not opens_with_room(house):
        return {}
    return {f"assets/{FIRST}{end}": content for end, content in first_room(house, *room_subject(house)).items()}


def covering_room(house: House, door: Door, family: Family) -> dict[str, bytes]:
    """Return the room painted round a covering on a door, as files by the ends of their names, and what a card shows of
    it under :data:`BACKDROP`."""

    colors = house.first.colors

    def made() -> dict[str, bytes]:
        room = smooth_room(room_drawing(house, door, family), SMALL)
        files = picture_sizes(room.crop(NEAR), CLOSE)
        return {**files, BACKDROP: jpeg(room_backdrop(room, colors), KEPT_QUALITY)}

    # No words are in it.
    alike_door, alike = house.alike(door, family)
    return house.first.once(made, "covering's room", alike_door, alike, colors)


def backdrop_of(house: House, door: Door, family: Family) -> Image.Image:
    """Return what a card shows of a covering's room, to be written on."""
    return Image.open(io.BytesIO(covering_room(house, door, family)[BACKDROP])).convert("RGB")


def shown_room(house: House, family: Family) -> ShownPhoto | None:
    """Return a covering's room as its page shows it; nothing where it goes on no door."""
    door = own_door(house, family)
    if door is None:
        return None
    return shown_picture(
        f"room-{family['id']}", (NEAR[2] - NEAR[0], NEAR[3] - NEAR[1]), (room_words(house, door, family), ""), CLOSE
    )


def rooms_painted(house: House) -> Iterator[tuple[Family, Door]]:
    """Yield each covering that goes on some door, with the door in its room."""
    for family in house.families:
        door = own_door(house, family)
        if door:
            yield family, door


def room_files(house: House) -> dict[str, bytes]:
    """Return the files of all coverings' rooms by their addresses."""
    return {
        f"assets/room-{family['id']}{end}": content
        for family, door in rooms_painted(house)
        for end, content in covering_room(house, door, family).items()
        if end != BACKDROP
    }
