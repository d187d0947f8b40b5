"""A covering hung on a door: its pieces at a position."""

from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.shapes import Fit, Piece, Position


def pieces_at(fit: Fit, place: Position) -> list[Piece]:
    """Return the covering's pieces at a position, its hold-downs included, for a leaf hung on the left.

    None where the covering cannot go on the door.
    """
    if fit["size"]["refusal"]["text"] != "":
        return []
    return made_at(fit, place)


def made_at(fit: Fit, place: Position) -> list[Piece]:
    """Return the pieces of a fit whose size is still being found."""
    return made_round(fit, still_pieces(fit), place)


def still_pieces(fit: Fit) -> list[Piece]:
    """Return the pieces that are the same at every position."""
    return MECHANISMS[fit["family"]["mechanism"]]["still"](fit)


def made_round(fit: Fit, still: list[Piece], place: Position) -> list[Piece]:
    """Return all the pieces at a position from those that are the same at each, which are made once for many."""
    pieces = still.copy()
    pieces.extend(MECHANISMS[fit["family"]["mechanism"]]["pieces"](fit, place))
    for fixing in fit["fixings"]:
        # Brackets, holders and screws lie behind or within what they hold; only these stand on their own.
        if fixing["piece"]["kind"] == "hold-down":
            pieces.append(fixing["piece"])
    return pieces


def head_down(fit: Fit) -> float:
    """Set what the covering's head needs for its size, and return how far it reaches down from the top."""
    return MECHANISMS[fit["family"]["mechanism"]]["head"](fit)


def lowest_edge(pieces: list[Piece]) -> float:
    """Return the lowest y of the pieces that hang; what holds them down stays behind on the leaf."""
    low = pieces[0]["y0"]
    for piece in pieces:
        if piece["part"] == "covering":
            low = min(low, piece["y0"])
    return low


def moves_aside(fit: Fit) -> bool:
    """Return whether the covering's main movement is to the side."""
    return len(fit["legs"]) > 0 and fit["legs"][0]["way"] == "aside"


def only_turns(fit: Fit) -> bool:
    """Return whether parts of the covering turn, and nothing else of it moves."""
    return len(fit["legs"]) > 0 and fit["legs"][0]["way"] == "turn"


def stacks(fit: Fit) -> bool:
    """Return whether the covering hangs lower than it stands raised, rather than drawing aside or turning."""
    return not moves_aside(fit) and not only_turns(fit)


def over_opening(fit: Fit) -> bool:
    """Return whether it hangs on the wall above the opening instead of on the leaf."""
    return fit["size"]["mount"] == "over-opening"
