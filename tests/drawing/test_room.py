"""What the sun does in a painted room: it falls through what is left clear, and stands in the cloth."""

import pytest
from PIL import Image, ImageChops, ImageStat

from configurator.drawing.room import smooth_room
from configurator.drawing.room_door import garden, glass_mask, painted_door
from configurator.drawing.room_place import RoomPlace
from configurator.drawing.room_size import SMALL, WHOLE, RoomSize
from configurator.drawing.room_sun import glow_of, on_boards, sun_through
from configurator.kernel.mount.hung import hung
from configurator.kernel.shapes import Family
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.draft import drafted
from configurator.kernel.views.elevation import elevation_alone
from configurator.kernel.views.subject import subject
from tests.drawing.drawing_coverings import family
from tests.drawing.drawing_doors import DOORS, HOUSEHOLD
from tests.drawing.drawing_samples import place_of


def cloth(view: float, light: float) -> Family:
    """Return a roller whose cloth lets so much through."""
    given = family("open roll")
    return {**given, "numbers": {**given["numbers"], "cloth_view": view, "cloth_light": light}}


def placed(covering: Family, at: str, door: str = "single", room: RoomSize = WHOLE) -> RoomPlace:
    """Return a covering on a door, in the room."""
    given = subject(hung(DOORS[door], covering, {}), place_of("open roll", at), HOUSEHOLD, ENGLISH)
    return RoomPlace(elevation_alone(drafted(DOORS[door], given, ENGLISH, "mm")), room)


def brightness(picture: Image.Image) -> float:
    """Return how bright a picture is in all."""
    return ImageStat.Stat(picture).sum[0]


def test_the_sun_on_the_boards_is_what_comes_through() -> None:
    lit = {}
    for name, covering, at in (
        ("open", cloth(0.0, 0.0), "open"),
        ("half", cloth(0.0, 0.0), "0.4"),
        ("sheer", cloth(0.3, 0.5), "closed"),
        ("blind", cloth(0.0, 0.5), "closed"),
    ):
        place = placed(covering, at)
        lit[name] = brightness(on_boards(place, sun_through(place)))
    assert lit["open"] > lit["half"] > lit["blind"]
    assert lit["sheer"] == pytest.approx(0.3 * (lit["open"] - lit["blind"]) + lit["blind"], rel=0.1)
    assert lit["blind"] < 0.03 * lit["open"]


def test_cloth_before_the_glass_glows_as_its_light_says() -> None:
    glows = [brightness(glow_of(placed(cloth(0.0, light), "closed"))) for light in (0.0, 0.2, 0.4)]
    assert glows[0] == 0
    assert glows[2] == pytest.approx(2 * glows[1], rel=0.05)


@pytest.mark.parametrize("room", [WHOLE, SMALL])
def test_the_sun_lies_on_the_floor_alone(room: RoomSize) -> None:
    place = placed(cloth(0.0, 0.0), "open", room=room)
    left, top, right, foot = on_boards(place, sun_through(place)).getbbox() or (0, 0, 0, 0)
    assert room.floor - 12 * room.share <= top < foot <= room.across_down[1]
    assert left < right


@pytest.mark.parametrize("room", [WHOLE, SMALL])
@pytest.mark.parametrize("door", DOORS)
def test_every_door_stands_in_the_room(door: str, room: RoomSize) -> None:
    left, top, right, foot = placed(cloth(0.0, 0.0), "open", door, room).box
    assert foot == room.floor
    assert top > 0
    assert 500 * room.share < left < right < 1700 * room.share


def test_a_small_room_shows_what_the_whole_one_shows() -> None:
    drawing = placed(cloth(0.0, 0.3), "0.4").drawing
    whole, small = smooth_room(drawing, WHOLE), smooth_room(drawing, SMALL)
    tiles = (60, 36)
    apart = ImageChops.difference(*(picture.resize(tiles, Image.Resampling.BOX) for picture in (whole, small)))
    assert max(most for _, most in apart.getextrema()) < 20
    assert max(ImageStat.Stat(apart).mean) < 1


@pytest.mark.parametrize("door", ["single", "divided", "sidelights"])
def test_the_garden_shows_in_every_pane_and_on_no_wood(door: str) -> None:
    place = placed(cloth(0.0, 0.0), "open", door)
    gray = Image.new("RGB", place.size, (90, 90, 90))
    seen, outside = painted_door(place, gray), garden(place)
    panes = [mark for mark in place.drawing["marks"] if "glass" in mark["role"].split()]
    # A roll hangs before the tops of the uppermost.
    glass = glass_mask(place, panes).resize(place.size, Image.Resampling.BOX)
    left, top, right, foot = glass.getbbox() or (0, 0, 0, 0)
    below = (left - 12, (top + foot) // 2, right + 12, foot + 12)
    apart = ImageChops.difference(seen, outside).convert("L").crop(below)
    within = glass.crop(below).point(lambda level: 255 if level == 255 else 0)
    assert ImageStat.Stat(apart, within).mean[0] < 2
    assert ImageStat.Stat(apart, ImageChops.invert(glass.crop(below))).mean[0] > 20
