"""Positions: open, closed, and the legs of the travel between them."""

from configurator.kernel.numbers import blend
from configurator.kernel.shapes import Leg, Position


def position(lower: float, upper: float, tilt: float) -> Position:
    """Return a position in full detail."""
    return {"lower": lower, "upper": upper, "tilt": tilt, "coarse": False}


def open_position(numbers: dict[str, float]) -> Position:
    """Return where the covering hides least: raised, or louvers edge-on where nothing is raised."""
    if numbers["lower_moves"] > 0:
        return position(0.0, 0.0, numbers["tilt_moving"])
    return position(1.0, 0.0, numbers["tilt_open"])


def closed_position(numbers: dict[str, float]) -> Position:
    """Return where the covering hides most: down, with louvers, vanes or bands closed."""
    return position(1.0, 0.0, numbers["tilt_closed"])


def legs(numbers: dict[str, float]) -> list[Leg]:
    """Return the stretches of the travel in the order in which a hand makes them."""
    stretches: list[Leg] = []
    tilt = numbers["tilt_moving"]
    if numbers["lower_moves"] > 0:
        stretches.append({"moves": "lower", "start": position(0.0, 0.0, tilt), "end": position(1.0, 0.0, tilt)})
    if numbers["upper_moves"] > 0:
        stretches.append({"moves": "upper", "start": position(1.0, 0.0, tilt), "end": position(1.0, 1.0, tilt)})
    if numbers["tilt_closed"] != numbers["tilt_far"]:
        stretches.append(
            {
                "moves": "tilt",
                "start": position(1.0, 0.0, numbers["tilt_closed"]),
                "end": position(1.0, 0.0, numbers["tilt_far"]),
            }
        )
    return stretches


def along(leg: Leg, share: float) -> Position:
    """Return the position a ``share`` (0 to 1) of the way along a leg, in full detail."""
    start = leg["start"]
    end = leg["end"]
    return position(
        blend(start["lower"], end["lower"], share),
        blend(start["upper"], end["upper"], share),
        blend(start["tilt"], end["tilt"], share),
    )


def coarse(place: Position) -> Position:
    """Return the same position, asking only for the boxes that bound each run."""
    return {"lower": place["lower"], "upper": place["upper"], "tilt": place["tilt"], "coarse": True}


def position_at(numbers: dict[str, float], share: float) -> Position:
    """Return the position a ``share`` of the way from open to closed along the covering's main movement."""
    stretches = legs(numbers)
    if len(stretches) == 0:
        return open_position(numbers)
    if stretches[0]["moves"] == "lower":
        return along(stretches[0], share)
    start = open_position(numbers)
    end = closed_position(numbers)
    return position(1.0, 0.0, blend(start["tilt"], end["tilt"], share))
