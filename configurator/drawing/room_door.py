"""The door and its covering as they are painted into a room: the garden in the sun behind the glass, out of focus."""

from PIL import Image, ImageChops, ImageDraw

from configurator.drawing.png import Sheet, put
from configurator.drawing.room_place import COLORS, FINER, RoomPlace
from configurator.drawing.room_setting import LIGHT, SHADE, blurred
from configurator.kernel.shapes import Mark
from configurator.kernel.views.evening import OUTDOORS

OUT_OF_FOCUS = 5 * FINER
HAZE = 0.22
BRASS = "#9b8455"
COVERING = {"headrail", "frame", "louver", "cloth", "sheer", "rail", "rod"}
# A covering's shadow on the leaf, px: how far aside and down, how soft; and how strong, of 255.
SHADOW_ASIDE, SHADOW_DOWN, SHADOW_SOFT = 4 * FINER, 8 * FINER, 6 * FINER
SHADOW = 80


def has_role(mark: Mark, roles: set[str]) -> bool:
    """Return whether a mark has one of the roles."""
    return not roles.isdisjoint(mark["role"].split())


def is_face(mark: Mark, roles: set[str]) -> bool:
    """Return whether a mark is the face of something of one of the roles, and no line or circle."""
    return mark["shape"] in ("polygon", "bars") and has_role(mark, roles)


def garden(place: RoomPlace) -> Image.Image:
    """Return the garden, out of focus and in the sun."""
    sheet = place.sheet()
    for mark in place.drawing["marks"]:
        if mark["role"] in OUTDOORS:
            put(sheet, mark)
    soft = blurred(sheet.image, OUT_OF_FOCUS)
    return Image.blend(soft, Image.new("RGB", soft.size, LIGHT), HAZE)


def polygons_mask(sheet: Sheet, marks: list[Mark]) -> Image.Image:
    """Return a mask of the marks' outlines."""
    mask = Image.new("L", sheet.image.size, 0)
    brush = ImageDraw.Draw(mask)
    for mark in marks:
        brush.polygon(sheet.points(mark["points"]), fill=255)
    return mask


def cast_shadow(sheet: Sheet, marks: list[Mark], glass: Image.Image) -> None:
    """Lay the covering's soft shadow on the leaf; the garden behind the glass takes none."""
    faces = [mark for mark in marks if mark["shape"] == "polygon" and is_face(mark, COVERING)]
    shadow = Image.new("L", sheet.image.size, 0)
    shadow.paste(polygons_mask(sheet, faces), (SHADOW_ASIDE, SHADOW_DOWN))
    shadow = blurred(shadow, SHADOW_SOFT).point([level * SHADOW // 255 for level in range(256)])
    sheet.image.paste(SHADE, (0, 0), ImageChops.multiply(shadow, ImageChops.invert(glass)))


def painted_door(place: RoomPlace, ground: Image.Image) -> Image.Image:
    """Return the window of the drawing painted on its part of the room."""
    marks = place.drawing["marks"]
    panes = [mark for mark in marks if has_role(mark, {"glass"})]
    start = next((at for at, mark in enumerate(marks) if is_face(mark, COVERING)), len(marks))
    sheet = place.sheet(ground)
    glass = polygons_mask(sheet, panes)
    outside = garden(place)
    for at, mark in enumerate(marks):
        if at == start:
            cast_shadow(sheet, marks[start:], glass)
        if mark in panes:
            sheet.image.paste(outside, (0, 0), polygons_mask(sheet, [mark]))
        if mark["role"] not in OUTDOORS:
            sheet.palette = {**sheet.palette, "ground": BRASS if has_role(mark, {"handle"}) else COLORS["ground"]}
            put(sheet, mark)
    return sheet.image.resize(place.size, Image.Resampling.BOX)
