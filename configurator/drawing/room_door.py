"""The door and its covering as they are painted into a room: the garden in the sun behind the glass, out of focus."""

from PIL import Image, ImageChops, ImageDraw

from configurator.drawing.png import put
from configurator.drawing.room_place import COLORS, RoomPlace
from configurator.drawing.room_setting import LIGHT, SHADE, blurred, veil
from configurator.kernel.shapes import Mark
from configurator.kernel.views.evening import OUTDOORS

# Px of the whole room.
OUT_OF_FOCUS = 5
HAZE = 0.22
BRASS = "#9b8455"
COVERING = {"headrail", "frame", "louver", "cloth", "sheer", "rail", "rod"}
# A covering's shadow on the leaf, px of the whole room: how far aside and down, how soft; and how strong, of 255.
SHADOW_ASIDE, SHADOW_DOWN, SHADOW_SOFT = 4, 8, 6
SHADOW = 80


def has_role(mark: Mark, roles: set[str]) -> bool:
    """Return whether a mark has one of the roles."""
    return not roles.isdisjoint(mark["role"].split())


def is_face(mark: Mark, roles: set[str]) -> bool:
    """Return whether a mark is the face of something of one of the roles, and no line or circle."""
    return mark["shape"] in ("polygon", "bars") and has_role(mark, roles)


def garden(place: RoomPlace) -> Image.Image:
    """Return the garden as large as the window, out of focus and in the sun."""
    sheet = place.sheet()
    for mark in place.drawing["marks"]:
        if mark["role"] in OUTDOORS:
            put(sheet, mark)
    soft = blurred(sheet.image, OUT_OF_FOCUS * place.room.share)
    return Image.blend(soft, Image.new("RGB", soft.size, LIGHT), HAZE)


def glass_mask(place: RoomPlace, panes: list[Mark]) -> Image.Image:
    """Return a mask of panes, as fine as the door is painted."""
    mask = Image.new("L", place.fine_size, 0)
    brush = ImageDraw.Draw(mask)
    for pane in panes:
        brush.polygon(place.fine_points(pane["points"]), fill=255)
    return mask


def shadow_of(place: RoomPlace, marks: list[Mark]) -> Image.Image:
    """Return the soft shadow of a covering's faces, as large as the window."""
    shadow = Image.new("L", place.size, 0)
    brush = ImageDraw.Draw(shadow)
    aside, down = SHADOW_ASIDE * place.room.share, SHADOW_DOWN * place.room.share
    for mark in marks:
        if mark["shape"] == "polygon" and is_face(mark, COVERING):
            brush.polygon([(x + aside, y + down) for x, y in place.points(mark["points"])], fill=SHADOW)
    return blurred(shadow, SHADOW_SOFT * place.room.share)


def painted_door(place: RoomPlace, ground: Image.Image) -> Image.Image:
    """Return the window of the drawing painted on its part of the room."""
    marks = place.drawing["marks"]
    panes = [mark for mark in marks if has_role(mark, {"glass"})]
    start = next((at for at, mark in enumerate(marks) if is_face(mark, COVERING)), len(marks))
    sheet = place.sheet(place.room.finer)
    sheet.paint_on(as_fine(place, ground))
    outside = as_fine(place, garden(place))
    for at, mark in enumerate(marks):
        if at == start:
            # The garden behind the glass takes no shadow.
            shadow = as_fine(place, shadow_of(place, marks[start:]))
            veil(sheet.image, SHADE, ImageChops.subtract(shadow, glass_mask(place, panes)))
        if mark in panes:
            reveal(sheet.image, outside, glass_mask(place, [mark]))
        if mark["role"] not in OUTDOORS:
            sheet.palette = {**sheet.palette, "ground": BRASS if has_role(mark, {"handle"}) else COLORS["ground"]}
            put(sheet, mark)
    return sheet.image.reduce(place.room.finer)


def as_fine(place: RoomPlace, image: Image.Image) -> Image.Image:
    """Return a picture as large as the window as fine as the door is painted; made small, it is the same again."""
    return image.resize(place.fine_size, Image.Resampling.NEAREST)


def reveal(image: Image.Image, behind: Image.Image, mask: Image.Image) -> None:
    """Show another picture through the white of a mask."""
    part = mask.getbbox()
    if part:
        image.paste(behind.crop(part), part, mask.crop(part))
