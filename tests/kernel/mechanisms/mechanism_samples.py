"""Sizes, numbers and checks that the tests of the mechanisms share."""

from configurator.kernel.fit import made_at
from configurator.kernel.looks import no_look
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.mechanisms.common import COMMON_TAKES
from configurator.kernel.mount.blank import blank_size
from configurator.kernel.shapes import Family, Fit, Piece, Position, Size
from tests.kernel.questions.question_samples import DOOR

ALONG = ("x", "y", "z")


def numbers_of(mechanism: str, **given: float) -> dict[str, float]:
    """Return every number that a mechanism reads: the given ones over the tables' presets."""
    common = {"headrail_height": 30.0, "headrail_depth": 57.0, "rail_height": 15.0, "rail_depth": 20.0}
    common |= {"overlap_side": 40.0, "overlap_bottom": 40.0, "cloth_view": 0.0, "cloth_light": 0.0}
    numbers = {name: float(row[1] or 0.0) for name, row in (COMMON_TAKES | MECHANISMS[mechanism]["takes"]).items()}
    return numbers | common | given


def size_of(width: float = 600.0, height: float = 1700.0, z0: float = 10.0) -> Size:
    """Return a size of the given width and height, from x 100 and y 250 up."""
    return blank_size("on-leaf") | {"x0": 100.0, "x1": 100.0 + width, "y0": 250.0, "y1": 250.0 + height, "z0": z0}


def at(lower: float = 1.0, tilt: float = 0.0, *, coarse: bool = False) -> Position:
    """Return a position."""
    return {"lower": lower, "upper": 0.0, "tilt": tilt, "coarse": coarse}


def fit_of(mechanism: str, numbers: dict[str, float], size: Size) -> Fit:
    """Return a covering of this mechanism, of a size, on the questions' door."""
    family: Family = {
        "id": mechanism,
        "name": mechanism,
        "mechanism": mechanism,
        "retired": False,
        "price_level": 0.0,
        "cleaning": "",
        "animals": "",
        "numbers": numbers,
        "look": no_look(),
        "cassettes": [],
        "choices": [],
    }
    legs = MECHANISMS[mechanism]["legs"](numbers)
    fit: Fit = {"door": DOOR, "family": family, "choices": {}, "numbers": numbers, "handle": [], "size": size}
    return fit | {"standing": size, "legs": legs, "fixings": []}


def pieces_of(mechanism: str, numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return a mechanism's pieces by its name."""
    return made_at(fit_of(mechanism, numbers, size), place)


def of_kind(pieces: list[Piece], kind: str) -> list[Piece]:
    """Return the pieces of one kind."""
    return [piece for piece in pieces if piece["kind"] == kind]


def bounds(pieces: list[Piece], axis: str) -> tuple[float, float]:
    """Return the least and the greatest coordinate of the pieces along an axis."""
    return min(piece[axis + "0"] for piece in pieces), max(piece[axis + "1"] for piece in pieces)


def assert_sound(pieces: list[Piece]) -> None:
    """Check that boxes are in order and that every outline lies within its own box."""
    for piece in pieces:
        for axis in ALONG:
            assert piece[axis + "0"] <= piece[axis + "1"], piece
        assert all(0 <= share <= 1 for share in piece["optics"].values())
        across, up = ("z", "y") if piece["axis"] == "x" else ("x", "z")
        for a, b in piece["outline"]:
            assert piece[across + "0"] - 1e-9 <= a <= piece[across + "1"] + 1e-9, piece
            assert piece[up + "0"] - 1e-9 <= b <= piece[up + "1"] + 1e-9, piece


def assert_bounded(exact: list[Piece], coarse: list[Piece]) -> None:
    """Check that every exact piece lies inside one of the coarse pieces, of which there are few."""
    assert len(coarse) <= 24
    for piece in exact:
        assert any(
            all(
                box[axis + "0"] <= piece[axis + "0"] + 1e-9 and piece[axis + "1"] <= box[axis + "1"] + 1e-9
                for axis in ALONG
            )
            for box in coarse
        ), piece


def covered(pieces: list[Piece], y: float, x: float = 400.0) -> list[Piece]:
    """Return the pieces in front of one point."""
    return [piece for piece in pieces if piece["y0"] <= y < piece["y1"] and piece["x0"] <= x < piece["x1"]]
