"""How a piece is made, moved and mirrored. Spans are ``[low, high]`` in millimeters."""

from configurator.kernel.shapes import Optics, Piece


def optics(view: float, light: float) -> Optics:
    """Return what comes through a piece; of the sun's heat as much as of its light, where nothing else is known."""
    return {"view": view, "light": light, "solar": light}


# Nothing, or everything, comes through.
OPAQUE = optics(0.0, 0.0)
CLEAR = optics(1.0, 1.0)


def cloth_optics(numbers: dict[str, float]) -> Optics:
    """Return what comes through a family's cloth, slat or vane material."""
    return optics(numbers["cloth_view"], numbers["cloth_light"])


def layered(through: Optics, layers: float) -> Optics:
    """Return what comes through so many layers behind each other, a part of one in proportion; all where none is."""
    count = max(0.0, layers)
    return {
        "view": through["view"] ** count,
        "light": through["light"] ** count,
        "solar": through["solar"] ** count,
    }


def both_through(one: Optics, other: Optics) -> Optics:
    """Return what comes through two layers, one behind the other."""
    return {
        "view": one["view"] * other["view"],
        "light": one["light"] * other["light"],
        "solar": one["solar"] * other["solar"],
    }


def pushed(through: Optics, length: float, room: float) -> Optics:
    """Return what comes through a ``length`` of cloth pushed together into less ``room`` across the view.

    As often as the length goes into the room, so many layers lie behind each other: in the mean over its folds,
    however they fall. Cloth that has its full room is one layer.
    """
    return layered(through, max(1.0, length / max(room, 1e-6)))


def box(part: str, kind: str, spans: list[list[float]], through: Optics) -> Piece:
    """Return one piece whose true cut is its own box; ``spans`` are those along x, y and z."""
    return {
        "part": part,
        "kind": kind,
        "x0": spans[0][0],
        "x1": spans[0][1],
        "y0": spans[1][0],
        "y1": spans[1][1],
        "z0": spans[2][0],
        "z1": spans[2][1],
        "optics": through,
        "axis": "x",
        "outline": [],
        "count": 1,
        "pitch": 0.0,
    }


def veil(kind: str, across: list[float], up: list[float], out: list[float], through: Optics) -> Piece:
    """Return a piece of a covering through which something comes."""
    return box("covering", kind, [across, up, out], through)


def solid(kind: str, across: list[float], up: list[float], out: list[float]) -> Piece:
    """Return an opaque piece of a covering."""
    return box("covering", kind, [across, up, out], OPAQUE)


def moved(piece: Piece, dx: float, dy: float, dz: float) -> Piece:
    """Return the piece, shifted by the given millimeters, its outline with it."""
    across = dz if piece["axis"] == "x" else dx
    along = dy if piece["axis"] == "x" else dz
    return {
        **piece,
        "x0": piece["x0"] + dx,
        "x1": piece["x1"] + dx,
        "y0": piece["y0"] + dy,
        "y1": piece["y1"] + dy,
        "z0": piece["z0"] + dz,
        "z1": piece["z1"] + dz,
        "outline": [[point[0] + across, point[1] + along] for point in piece["outline"]],
    }


def mirrored(piece: Piece, width: float) -> Piece:
    """Return the piece as it is on the leaf of the other hand; ``width`` is the leaf's."""
    turned: Piece = {**piece, "x0": width - piece["x1"], "x1": width - piece["x0"]}
    if piece["axis"] == "y":
        # A run's outline is that of its leftmost unit, so mirroring must also walk it to the other end.
        back = (piece["count"] - 1) * piece["pitch"]
        turned["outline"] = [[width - point[0] - back, point[1]] for point in piece["outline"]]
    return turned
