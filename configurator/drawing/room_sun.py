"""The sun in a painted room: through what of the glass is left clear onto the boards, and in the cloth itself."""

from PIL import Image, ImageChops, ImageDraw, ImageFilter

from configurator.drawing.png import bar_points
from configurator.drawing.room_door import COVERING, is_face
from configurator.drawing.room_place import RoomPlace
from configurator.drawing.room_setting import BOARD_FAR, BOARD_NEAR, blurred
from configurator.drawing.room_size import Points
from configurator.kernel.shapes import Mark
from configurator.kernel.views.tones import GLOW

IN_THE_WAY = {*COVERING, "muntin", "bead", "astragal"}
# From the wall to the eye, mm; how high the sun stands, and how far aside it falls, for each step into the room.
EYE_AWAY = 4000.0
SUN_HIGH, SUN_ASIDE = 0.78, 0.4
# How soft its edges are, px, and how strong it is, of 255.
SUN_SOFT, SUN = 3, 190
# Further than this above the floor nothing of those edges is seen.
SUN_SPREAD = 4 * SUN_SOFT
# How far light spills about what is bright, px, and how much of it, of 255.
SPILL_WIDE, SPILL = 40, 110


def sun_through(place: RoomPlace) -> Image.Image:
    """Return how much of the sun comes straight through each point of the window, past whatever hangs before glass."""
    through = Image.new("L", place.fine_size, 0)
    for mark in place.drawing["marks"]:
        if "glass" in mark["role"].split():
            ImageDraw.Draw(through).polygon(place.fine_points(mark["points"]), fill=255)
        elif is_face(mark, IN_THE_WAY) and mark["fade"] > 0:
            through = held_back(through, [place.fine_points(outline) for outline in outlines_of(mark)], mark["fade"])
    return through.reduce(place.room.finer)


def outlines_of(mark: Mark) -> list[list[float]]:
    """Return the outlines of a face, mm."""
    return bar_points(mark) if mark["shape"] == "bars" else [mark["points"]]


def held_back(through: Image.Image, outlines: list[Points], share: float) -> Image.Image:
    """Return what comes through past outlines in px that hold back a share, 0 to 1, of it."""
    held = through if share == 1 else Image.new("L", through.size, 255)
    brush = ImageDraw.Draw(held)
    for outline in outlines:
        brush.polygon(outline, fill=round((1 - share) * 255))
    return held if share == 1 else ImageChops.multiply(through, held)


def glow_of(place: RoomPlace) -> Image.Image:
    """Return how bright the cloth stands before the glass, at each point of the window."""
    bright = Image.new("L", place.fine_size, 0)
    brush = ImageDraw.Draw(bright)
    for mark in place.drawing["marks"]:
        if is_face(mark, {GLOW}):
            for outline in outlines_of(mark):
                brush.polygon(place.fine_points(outline), fill=round(mark["fade"] * 255))
    return bright.reduce(place.room.finer)


def on_boards(place: RoomPlace, through: Image.Image) -> Image.Image:
    """Return where the sun that comes through falls on the floor, from the wall towards the eye."""
    room = place.room
    (wide, high), spread = room.across_down, room.px(SUN_SPREAD)
    floor = (wide, high - room.floor)
    lit = through.transform(
        floor, Image.Transform.PERSPECTIVE, from_floor(place, through.size), Image.Resampling.BILINEAR
    )
    near = Image.new("L", (wide, floor[1] + spread), 0)
    near.paste(lit, (0, spread))
    soft = near.filter(ImageFilter.GaussianBlur(SUN_SOFT * room.share))
    whole = Image.new("L", (wide, high), 0)
    whole.paste(soft.point([level * SUN // 255 for level in range(256)]), (0, room.floor - spread))
    return whole


def from_floor(place: RoomPlace, size: tuple[int, int]) -> tuple[float, ...]:
    """Return the eight numbers of the perspective that leads from the floor to what of the window shines there.

    A row of the floor shows boards ``1 + growth × row`` as large as at the wall. What stands nearer the eye looks
    larger, so the row lies ``EYE_AWAY × (1 - 1 / larger)`` mm into the room; so far the sun has fallen, and gone aside.
    """
    wide, high = size
    growth = (BOARD_NEAR / BOARD_FAR - 1) / (place.room.across_down[1] - place.room.floor)
    aside, down = (EYE_AWAY * share * place.pixels for share in (SUN_ASIDE, SUN_HIGH))
    return (
        1.0,
        (wide / 2 + aside) * growth,
        wide / 2 - place.middle,
        0.0,
        (high - down) * growth,
        float(high),
        0.0,
        growth,
    )


def spill(place: RoomPlace, bright: Image.Image) -> Image.Image:
    """Return the light that spills about what is bright in the window."""
    whole = Image.new("L", place.room.across_down, 0)
    whole.paste(bright, place.corner)
    return blurred(whole, SPILL_WIDE * place.room.share).point([level * SPILL // 255 for level in range(256)])
