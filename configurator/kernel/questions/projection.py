"""How far the covering stands out from the leaf, open, closed and at its worst between."""

from configurator.kernel.questions.figure import figure
from configurator.kernel.sampling import Sample
from configurator.kernel.shapes import Figure, Piece


def furthest(pieces: list[Piece]) -> Piece:
    """Return the piece that stands out furthest into the room."""
    best = pieces[0]
    for piece in pieces:
        if piece["z1"] > best["z1"]:
            best = piece
    return best


def projection_figure(key: str, name: str, piece: Piece) -> Figure:
    """Return a projection with the piece that makes it."""
    return figure(
        key,
        name,
        piece["z1"],
        "mm",
        "from the leaf's face to the front of what stands out furthest",
        "front of the " + piece["kind"].replace("-", " ") + " {front} from the leaf's face",
        {"front": [piece["z1"], "mm"]},
    )


def projection_figures(raised: list[Piece], down: list[Piece], samples: list[Sample]) -> list[Figure]:
    """Return the projection open, closed and the most over the whole travel."""
    most = furthest(raised)
    closed = furthest(down)
    if closed["z1"] > most["z1"]:
        most = closed
    for sample in samples:
        candidate = furthest(sample["pieces"])
        if candidate["z1"] > most["z1"]:
            most = candidate
    return [
        projection_figure("projection_open", "projection when open", furthest(raised)),
        projection_figure("projection_closed", "projection when closed", closed),
        projection_figure("projection_most", "greatest projection on the way", most),
    ]
