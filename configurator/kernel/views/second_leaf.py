"""What an enlarged plan about the handle shows of a second leaf: as far as its covering, then broken off."""

from configurator.kernel.door.opening import has_passive
from configurator.kernel.shapes import Mark, Piece
from configurator.kernel.views.draft import Draft, latch_edge
from configurator.kernel.views.layout import latch_is_right
from configurator.kernel.views.marks import hatching, make_mark, rectangle
from configurator.kernel.views.parts import top_bounds

# How much is shown beyond the latch edge at least, beyond where the second leaf's covering begins, and at most, mm.
EDGE_BEYOND = 45.0
SECOND_BEYOND = 30.0
SECOND_MOST = 160.0


def past_latch(draft: Draft) -> float:
    """Return how much is shown beyond the latch edge, mm: of a second leaf until its covering is seen."""
    door = draft["door"]
    order = draft["frame"]["order"]
    if not has_passive(door) or order["x1"] <= order["x0"]:
        return EDGE_BEYOND
    inset = latch_edge(draft) - order["x1"] if latch_is_right(door) else order["x0"] - latch_edge(draft)
    return min(SECOND_MOST, max(EDGE_BEYOND, inset + door["meeting_gap"] + SECOND_BEYOND))


def is_broken_off(piece: Piece, edge: float) -> bool:
    """Return whether a leaf's wood goes on beyond the edge at which a detail ends."""
    wood = piece["part"] == "door" and piece["kind"] == "stile"
    return wood and (piece["x0"] == edge or piece["x1"] == edge)


def broken_wood(piece: Piece, edge: float, spacing: float) -> list[Mark]:
    """Return cut wood that goes on beyond ``edge``, so that its outline is open there."""
    x = piece["x1"] if piece["x0"] == edge else piece["x0"]
    marks = [rectangle("leaf", top_bounds(piece))]
    marks.extend(hatching("hair", top_bounds(piece), spacing))
    marks.append(make_mark("polyline", "cut", [edge, piece["z0"], x, piece["z0"], x, piece["z1"], edge, piece["z1"]]))
    return marks
