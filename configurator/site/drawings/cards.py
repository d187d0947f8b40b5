"""Link previews: which there are, and what each shows and says."""

from concurrent.futures import ThreadPoolExecutor
from functools import partial

from PIL.Image import Image

from configurator.catalog.schema.photograph import Photograph
from configurator.drawing.card import Backdrop, Words, card, pair_card
from configurator.drawing.photo import upright
from configurator.drawing.picture_card import lettered, photo_card
from configurator.kernel.looks import no_look
from configurator.kernel.message import several
from configurator.kernel.shapes import Door, Family, Position
from configurator.site.drawings.pictures import (
    Window,
    bare_covering,
    bare_door,
    family_window,
    whole_door,
)
from configurator.site.drawings.rooms import backdrop_of
from configurator.site.drawings.shown_photos import pixels_of
from configurator.site.drawings.subjects import first_pair, first_single, fitting, own_door
from configurator.site.house import OWN_CARD, House

Cards = dict[str, bytes]
# How the files of previews end: few colors are small as PNG, pictures as JPEG.
DRAWING, PICTURE = "png", "jpg"


def door_card(house: House, door: Door) -> str:
    """Return the address of a door's preview; like its page's, it can be nobody else's."""
    pictured = house.catalog.door_notes[door["id"]].photo
    return f"cards/doors/{door['id']}.{PICTURE if pictured else DRAWING}"


def family_card(house: House, family: Family) -> str:
    """Return the address of a family's preview."""
    pictured = house.catalog.family_notes[family["id"]].photo or own_door(house, family)
    return f"cards/coverings/{family['id']}.{PICTURE if pictured else DRAWING}"


def fitted_card(door: Door, family: Family) -> str:
    """Return the address of the preview of a family on a door."""
    return f"cards/doors/{door['id']}/{family['id']}.png"


def cards(house: House) -> Cards:
    """Return every link preview by its address; Pillow packs those of several doors at the same time."""
    files = {OWN_CARD: own_card(house)}
    with ThreadPoolExecutor() as pool:
        for found in pool.map(partial(door_cards, house), house.doors):
            files.update(found)
        files.update(zip(family_urls(house), pool.map(partial(family_preview, house), house.families), strict=True))
    return files


def family_urls(house: House) -> list[str]:
    """Return the addresses of all families' previews."""
    return [family_card(house, family) for family in house.families]


def family_preview(house: House, family: Family) -> bytes:
    """Return the preview of a family: its photograph or else its room; the bare door where it goes on none."""
    notes, door = house.catalog.family_notes[family["id"]], own_door(house, family)
    words = Words(house.showroom.name, family["name"], notes.summary)
    if notes.photo:
        return photo_preview(house, notes.photo, words)
    if door is None:
        single = first_single(house)
        return DoorCards(house, single, family_window(house, single, [])).alone()
    colors = house.colors
    return house.once(
        lambda: lettered(backdrop_of(house, door, family), words, colors), "room card", door, family, words, colors
    )


def photo_preview(house: House, photo: Photograph, words: Words) -> bytes:
    """Return a preview that shows a photograph."""
    path, subject, colors = house.photos[photo.file].path, photo.middle, house.colors

    def made() -> bytes:
        return photo_card(upright(path), subject, words, colors)

    return house.once(made, "photo card", pixels_of(house, photo), subject, words, colors)


def door_cards(house: House, door: Door) -> Cards:
    """Return the previews of a door and of every family on it."""
    fits = fitting(house, door)
    drawn = DoorCards(house, door, family_window(house, door, fits))
    photo = house.catalog.door_notes[door["id"]].photo
    own = photo_preview(house, photo, drawn.words()) if photo else drawn.alone()
    files = {door_card(house, door): own}
    for family in house.families:
        sound = family in fits
        files[fitted_card(door, family)] = drawn.fitted(family) if sound else drawn.alone()
    return files


def own_card(house: House) -> bytes:
    """Return the showroom's own preview: a pair of doors."""
    door = first_pair(house)
    window = family_window(house, door, [])
    words = Words(house.showroom.name, house.showroom.strapline, ", ".join(house.showroom.contact.address))

    return bare_card(house, door, window, words)


def bare_card(house: House, door: Door, window: Window, words: Words) -> bytes:
    """Return a preview that shows a door with nothing on it."""

    def made() -> bytes:
        drawn = Backdrop(whole_door(house, door, window), house.colors)
        return card(drawn.with_marks([], no_look()), words, house.colors)

    return house.once(made, "card", door, window, words, house.colors)


class DoorCards:
    """The previews that show one door, which is painted once for all of them and only if one is wanted."""

    def __init__(self, house: House, door: Door, window: Window) -> None:
        self.house = house
        self.door = door
        self.window = window
        self._backdrop: Backdrop | None = None

    def backdrop(self) -> Backdrop:
        """Return the painted door."""
        if self._backdrop is None:
            self._backdrop = Backdrop(bare_door(self.door, self.window), self.house.colors)
        return self._backdrop

    def words(self) -> Words:
        """Return what the door's own preview says."""
        count = len(self.house.families)
        line = self.house.phrase(
            several(
                "{count} covering on it, to scale",
                "{count} coverings on it, compared to scale",
                {"count": [count, "count"]},
            )
        )
        return Words(self.house.showroom.name, self.door["name"], line)

    def alone(self) -> bytes:
        """Return the preview of the door itself."""
        return bare_card(self.house, self.door, self.window, self.words())

    def fitted(self, family: Family) -> bytes:
        """Return the preview of a family on the door, open and closed."""
        words = Words(self.house.showroom.name, family["name"], self.door["name"])
        colors = self.house.colors

        def made() -> bytes:
            return pair_card([self._shown(family, place) for place in self._places(family)], words, colors)

        # Where names are the same in two languages, so is the preview.
        door, alike = self.house.alike(self.door, family)
        return self.house.first.once(made, "pair card", door, alike, self.window, words, colors)

    def _places(self, family: Family) -> list[Position]:
        answer = self.house.answer(self.door, family)
        return [answer["closed"]] if answer["open"] == answer["closed"] else [answer["open"], answer["closed"]]

    def _shown(self, family: Family, place: Position) -> Image:
        drawn = bare_covering(self.house, self.door, family, place, self.window)
        return self.backdrop().with_marks(drawn["marks"], drawn["look"])
