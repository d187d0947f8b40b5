"""How a piece is made, moved and mirrored."""

from configurator.kernel.shapes import Piece


def box(
    part: str, kind: str, x0: float, x1: float, y0: float, y1: float, z0: float, z1: float, view: float, light: float
) -> Piece:
    """Return one piece whose true cut is its own box."""
    return {
        "part": part,
        "kind": kind,
        "x0": x0,
        "x1": x1,
        "y0": y0,
        "y1": y1,
        "z0": z0,
        "z1": z1,
        "view": view,
        "light": light,
        "axis": "x",
        "outline": [],
        "count": 1,
        "pitch": 0.0,
    }


def solid(kind: str, x0: float, x1: float, y0: float, y1: float, z0: float, z1: float) -> Piece:
    """Return an opaque piece of a covering."""
    return box("covering", kind, x0, x1, y0, y1, z0, z1, 0.0, 0.0)


def moved(piece: Piece, dx: float, dy: float, dz: float) -> Piece:
    """Return the piece, shifted by the given millimetres, its outline with it."""
    outline: list[list[float]] = []
    for point in piece["outline"]:
        if piece["axis"] == "x":
            outline.append([point[0] + dz, point[1] + dy])
        else:
            outline.append([point[0] + dx, point[1] + dz])
    return {
        "part": piece["part"],
        "kind": piece["kind"],
        "x0": piece["x0"] + dx,
        "x1": piece["x1"] + dx,
        "y0": piece["y0"] + dy,
        "y1": piece["y1"] + dy,
        "z0": piece["z0"] + dz,
        "z1": piece["z1"] + dz,
        "view": piece["view"],
        "light": piece["light"],
        "axis": piece["axis"],
        "outline": outline,
        "count": piece["count"],
        "pitch": piece["pitch"],
    }


def mirrored(piece: Piece, width: float) -> Piece:
    """Return the piece as it is on the leaf of the other hand; ``width`` is the leaf's."""
    outline: list[list[float]] = []
    # A run's outline is that of its leftmost unit, so mirroring must also walk it to the other end.
    back = (piece["count"] - 1) * piece["pitch"]
    for point in piece["outline"]:
        if piece["axis"] == "x":
            outline.append([point[0], point[1]])
        else:
            outline.append([width - point[0] - back, point[1]])
    return {
        "part": piece["part"],
        "kind": piece["kind"],
        "x0": width - piece["x1"],
        "x1": width - piece["x0"],
        "y0": piece["y0"],
        "y1": piece["y1"],
        "z0": piece["z0"],
        "z1": piece["z1"],
        "view": piece["view"],
        "light": piece["light"],
        "axis": piece["axis"],
        "outline": outline,
        "count": piece["count"],
        "pitch": piece["pitch"],
    }
