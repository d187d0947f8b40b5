"""Link previews: which there are, and what each shows and says."""

from concurrent.futures import ThreadPoolExecutor
from functools import partial

from PIL.Image import Image

from configurator.drawing.card import Backdrop, Words, card, pair_card
from configurator.kernel.looks import no_look
from configurator.kernel.message import is_said, several
from configurator.kernel.shapes import Door, Family, Position
from configurator.site.drawings.pictures import (
    Window,
    bare_covering,
    bare_door,
    family_window,
    half_position,
    whole_door,
)
from configurator.site.drawings.subjects import first_pair, first_single
from configurator.site.house import OWN_CARD, House

Cards = dict[str, bytes]


def door_card(door: Door) -> str:
    """Return the address of a door's preview; like its page's, it can be nobody else's."""
    return f"cards/doors/{door['id']}.png"


def family_card(family: Family) -> str:
    """Return the address of a family's preview."""
    return f"cards/coverings/{family['id']}.png"


def fitted_card(door: Door, family: Family) -> str:
    """Return the address of the preview of a family on a door."""
    return f"cards/doors/{door['id']}/{family['id']}.png"


def cards(house: House) -> Cards:
    """Return every link preview by its address; Pillow packs those of several doors at the same time."""
    files = {OWN_CARD: own_card(house)}
    with ThreadPoolExecutor() as pool:
        for found in pool.map(partial(door_cards, house), house.doors):
            files.update(found)
    return files


def door_cards(house: House, door: Door) -> Cards:
    """Return the previews of a door and of every family on it, and of the families where this is the door they show."""
    fitting = [family for family in house.families if not is_said(house.answer(door, family)["refusal"])]
    drawn = DoorCards(house, door, family_window(house, door, fitting))
    files = {door_card(door): drawn.alone()}
    for family in house.families:
        sound = family in fitting
        files[fitted_card(door, family)] = drawn.fitted(family) if sound else drawn.alone()
        if door is first_single(house):
            files[family_card(family)] = drawn.family(family) if sound else drawn.alone()
    return files


def own_card(house: House) -> bytes:
    """Return the showroom's own preview: a pair of doors."""
    door = first_pair(house)
    window = family_window(house, door, [])
    words = Words(house.showroom.name, house.showroom.strapline, ", ".join(house.showroom.contact.address))

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

    def alone(self) -> bytes:
        """Return the preview of the door itself."""
        count = len(self.house.families)
        line = self.house.phrase(
            several(
                "{count} covering on it, to scale",
                "{count} coverings on it, compared to scale",
                {"count": [count, "count"]},
            )
        )
        words = Words(self.house.showroom.name, self.door["name"], line)

        def made() -> bytes:
            drawn = Backdrop(whole_door(self.house, self.door, self.window), self.house.colors)
            return card(drawn.with_marks([], no_look()), words, self.house.colors)

        return self.house.once(made, "card", self.door, self.window, words, self.house.colors)

    def fitted(self, family: Family) -> bytes:
        """Return the preview of a family on the door, open and closed."""
        answer = self.house.answer(self.door, family)
        places = [answer["open"], answer["closed"]]
        if answer["open"] == answer["closed"]:
            places = [answer["closed"]]
        words = Words(self.house.showroom.name, family["name"], self.door["name"])
        colors = self.house.colors

        def made() -> bytes:
            return pair_card([self._shown(family, place) for place in places], words, colors)

        # Where names are the same in two languages, so is the preview.
        door, alike = self.house.alike(self.door, family)
        return self.house.first.once(made, "pair card", door, alike, self.window, words, colors)

    def family(self, family: Family) -> bytes:
        """Return the preview of a family, shown on this door."""
        summary = self.house.catalog.family_notes[family["id"]].summary
        words = Words(self.house.showroom.name, family["name"], summary)

        def made() -> bytes:
            return card(self._shown(family, half_position(family)), words, self.house.colors)

        return self.house.once(made, "card", self.door, family, self.window, words, self.house.colors)

    def _shown(self, family: Family, place: Position) -> Image:
        drawn = bare_covering(self.house, self.door, family, place, self.window)
        return self.backdrop().with_marks(drawn["marks"], drawn["look"])
