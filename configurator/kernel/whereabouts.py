"""Where the moving parts stand, in words: the one way of saying it, on drawings, pages and at the terminal."""

from configurator.kernel.message import message, plain, say_phrase
from configurator.kernel.position import share_along
from configurator.kernel.shapes import Leg, Message, Position
from configurator.kernel.tongue import Words

# A tilt nearer to level than this, in degrees, is level to the eye; a part nearer to its end, in shares, is there.
LEVEL = 0.5
AT_END = 1e-9


def part_place(leg: Leg, place: Position) -> Message:
    """Return where the part that a leg moves stands."""
    words = leg["words"]
    share = share_along(leg, place)
    if share <= AT_END:
        return plain(words["start"])
    if share >= 1 - AT_END:
        return plain(words["end"])
    if leg["way"] == "turn" and abs(place["tilt"]) < LEVEL:
        return plain(words["level"])
    return message(words["between"], {"share": [share, "percent"], "tilt": [place["tilt"], "deg"]})


def worth_saying(leg: Leg, place: Position) -> bool:
    """Return whether a leg's place tells anything: a tilt only when all is down, an upper rail once it is let down."""
    if leg["moves"] == "lower":
        return True
    return place["lower"] >= 1 and (leg["moves"] == "tilt" or place["upper"] > 0)


def place_messages(legs: list[Leg], place: Position) -> list[Message]:
    """Return where every part stands, in the order of the legs; that it is in place where nothing moves."""
    told = [part_place(leg, place) for leg in legs if worth_saying(leg, place)]
    return told if len(told) > 0 else [plain("in place")]


def place_words(legs: list[Leg], place: Position, words: Words) -> str:
    """Return a position in words of a language, in one phrase in the middle of a sentence."""
    return ", ".join([say_phrase(told, words, "mm") for told in place_messages(legs, place)])
