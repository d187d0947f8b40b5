"""No two solid bodies in one place: what of a covering that is hung still stands within fixed things.

What moves was pushed out in front of them over its whole travel; what is fixed stands alike at every place of it.
"""

from configurator.kernel.contact import air_across, air_between, air_out, air_up
from configurator.kernel.fit import made_at
from configurator.kernel.message import message, silence
from configurator.kernel.piece_kinds import kind_of
from configurator.kernel.position import closed_position, coarse
from configurator.kernel.shapes import Fit, Message, Piece
from configurator.kernel.tongue import wording

# Two bodies that lie within each other by less than this only touch.
TOUCHES = 0.05


def fixed_at_rest(fit: Fit) -> list[Piece]:
    """Return the covering's pieces that stay where they are fixed."""
    pieces = made_at(fit, coarse(closed_position(fit["numbers"])))
    return [piece for piece in pieces if piece["part"] == "covering" and kind_of(piece["kind"])["fixed"]]


def inside_message(piece: Piece, part: Piece) -> Message:
    """Return the refusal of a piece that would stand within a part, with the measures of what both share."""
    across = max(-air_across(piece, part), 0.0)
    up = max(-air_up(piece, part), 0.0)
    text = wording(
        "{piece} would stand in {part}, by {wide} across it and {deep} in depth, and there is no room to clear it."
    )
    return message(
        text,
        {
            "piece": [piece["kind"], "kind"],
            "part": [part["kind"], "kind"],
            "wide": [min(across, up), "mm"],
            "deep": [-air_out(piece, part), "mm"],
        },
    )


def most_inside(fit: Fit, parts: list[Piece]) -> list[Piece]:
    """Return the fixed piece that lies furthest within a part, and the part; empty where none does."""
    worst: list[Piece] = []
    least = -TOUCHES
    for piece in fixed_at_rest(fit):
        for part in parts:
            air = air_between(piece, part)
            if air < least:
                least = air
                worst = [piece, part]
    return worst


def solid_refusal(fit: Fit, parts: list[Piece]) -> Message:
    """Return why a covering as it is hung would stand within fixed things, or silence."""
    found = most_inside(fit, parts)
    return silence() if len(found) == 0 else inside_message(found[0], found[1])
