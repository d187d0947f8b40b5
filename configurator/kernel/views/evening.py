"""The elevation in the evening: the lamps are on in the room, and the garden behind the glass is dark."""

from configurator.kernel.message import plain, say
from configurator.kernel.shapes import Drawing, Mark, Message
from configurator.kernel.tongue import wording
from configurator.kernel.views.covering_front import covering_front
from configurator.kernel.views.draft import Draft, blank_drawing
from configurator.kernel.views.elevation import door_front, elevation_window
from configurator.kernel.views.elevation_notes import elevation_notes
from configurator.kernel.views.tones import GLOW
from configurator.kernel.views.words import title_words

OUTDOORS = ["sky", "hill", "tree", "trunk", "lawn", "path-stone"]
# The class of what no light falls on.
UNLIT = " unlit"


def unlit(mark: Mark) -> Mark:
    """Return a mark of the garden as it is in the dark, any other as it is."""
    return {**mark, "role": mark["role"] + UNLIT} if mark["role"] in OUTDOORS else mark


def evening_door(draft: Draft) -> list[Mark]:
    """Return what does not move: the door in lamplight, and the dark garden through its glass."""
    return [unlit(mark) for mark in door_front(draft)]


def evening_covering(draft: Draft) -> list[Mark]:
    """Return the covering and the handles in lamplight: no daylight shines through the cloth."""
    return [mark for mark in covering_front(draft) if mark["role"] != GLOW]


def evening_words() -> list[Message]:
    """Return what the view takes for granted."""
    return [plain("The lamps are on, and the garden is dark: glass that is not covered shows black.")]


def evening_of(draft: Draft) -> Drawing:
    """Return the elevation in the evening."""
    view = elevation_window(draft, blank_drawing("elevation", draft))
    view["id"] = "evening"
    view["title"] = title_words(wording("elevation from the room in the evening"), draft["names"], draft["words"])
    view["desc"] = view["desc"] + " " + say(evening_words()[0], draft["words"], draft["units"])
    view["marks"].extend(evening_door(draft))
    view["marks"].extend(evening_covering(draft))
    view["marks"].extend(elevation_notes(draft))
    return view
