"""How far the covering stands out from the leaf, open, closed and at its worst between."""

from configurator.kernel.shapes import Figure, Household, Piece, Reply, Travel
from configurator.kernel.telling import figure, length, reply, working
from configurator.kernel.tongue import wording

PROJECTION_RULE = wording("from the leaf's face to the front of what stands out furthest")


def furthest(pieces: list[Piece]) -> Piece:
    """Return the piece that stands out furthest into the room."""
    best = pieces[0]
    for piece in pieces:
        if piece["z1"] > best["z1"]:
            best = piece
    return best


def projection_figure(key: str, name: str, piece: Piece) -> Figure:
    """Return a projection with the piece that makes it."""
    terms: dict[str, list[float | str]] = {"piece": [piece["kind"], "kind"], "front": [piece["z1"], "mm"]}
    how = working(PROJECTION_RULE, "{front}, the front of {piece}", terms)
    return figure(key, name, length(piece["z1"]), how)


def furthest_ever(travel: Travel) -> Piece:
    """Return the piece that stands out furthest at any place of the travel."""
    most = furthest(travel["raised"])
    closed = furthest(travel["down"])
    if closed["z1"] > most["z1"]:
        most = closed
    for sample in travel["samples"]:
        candidate = furthest(sample["pieces"])
        if candidate["z1"] > most["z1"]:
            most = candidate
    return most


def projection_question(travel: Travel, household: Household) -> Reply:
    """Answer how far it projects open, closed and at most over the whole travel."""
    figures = [
        projection_figure("projection_open", wording("projection when open"), furthest(travel["raised"])),
        projection_figure("projection_closed", wording("projection when closed"), furthest(travel["down"])),
        projection_figure("projection_most", wording("greatest projection on the way"), furthest_ever(travel)),
    ]
    return reply(figures, [], [])
