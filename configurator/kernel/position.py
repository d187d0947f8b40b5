"""Positions: open, closed, and what lies between them."""

from configurator.kernel.numbers import blend, clamp
from configurator.kernel.shapes import Leg, Position

# The way of a rail or a leading edge is long, that of a wand is short.
TURNED_FROM = 0.9


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


def main_position(numbers: dict[str, float], share: float) -> Position:
    """Return the position a ``share`` of the way along the covering's main movement alone.

    It is let down or drawn across with its louvers, vanes or bands as they move; turned where nothing else moves.
    """
    if numbers["lower_moves"] > 0:
        return position(share, 0.0, numbers["tilt_moving"])
    return position(1.0, 0.0, blend(numbers["tilt_open"], numbers["tilt_closed"], share))


def turned_from(numbers: dict[str, float]) -> float:
    """Return the share of the way from open to closed at which the main movement is done and turning shut begins."""
    if numbers["lower_moves"] > 0 and numbers["tilt_moving"] != numbers["tilt_closed"]:
        return TURNED_FROM
    return 1.0


def position_at(numbers: dict[str, float], share: float) -> Position:
    """Return the position a ``share`` of the way from open to closed: first let down or drawn across, then turned."""
    turned = turned_from(numbers)
    if share <= turned:
        return main_position(numbers, share / turned)
    return position(1.0, 0.0, blend(numbers["tilt_moving"], numbers["tilt_closed"], (share - turned) / (1 - turned)))


def turned_share(start: float, end: float, tilt: float) -> float:
    """Return how far a tilt has come, 0 to 1, the same either way; 0 where there is nothing to turn."""
    return 0.0 if start == end else clamp(abs(tilt - start) / abs(end - start), 0.0, 1.0)


def share_at(numbers: dict[str, float], place: Position) -> float:
    """Return the share of the way from open to closed at which a position stands, 0 to 1.

    Closed the other way is closed; of what has not come all the way down the tilt does not count.
    """
    if numbers["lower_moves"] == 0:
        return turned_share(numbers["tilt_open"], numbers["tilt_closed"], place["tilt"])
    turned = turned_from(numbers)
    if place["lower"] < 1:
        return place["lower"] * turned
    return blend(turned, 1.0, turned_share(numbers["tilt_moving"], numbers["tilt_closed"], place["tilt"]))


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
    return {**place, "coarse": True}


def part_value(place: Position, moves: str) -> float:
    """Return where the part that a leg ``moves`` stands."""
    if moves == "lower":
        return place["lower"]
    return place["upper"] if moves == "upper" else place["tilt"]


def with_part(place: Position, moves: str, value: float) -> Position:
    """Return the position, in full detail, with one part moved."""
    return position(
        value if moves == "lower" else place["lower"],
        value if moves == "upper" else place["upper"],
        value if moves == "tilt" else place["tilt"],
    )


def share_along(leg: Leg, place: Position) -> float:
    """Return how far along its leg a part stands, 0 to 1; 0 where the leg has no length."""
    start = part_value(leg["start"], leg["moves"])
    end = part_value(leg["end"], leg["moves"])
    if start == end:
        return 0.0
    return (part_value(place, leg["moves"]) - start) / (end - start)


def moved_to(legs: list[Leg], place: Position, moves: str, value: float) -> Position:
    """Return where everything stands when a hand brings one part to a value.

    A leg that can be travelled only ``alone`` takes the other parts to where it starts; and when one of those
    leaves that place, what the leg moves goes back to where it stands while they travel.
    """
    after = with_part(place, moves, value)
    for leg in legs:
        if not leg["alone"]:
            continue
        if leg["moves"] == moves:
            after = with_part(leg["start"], moves, value)
        elif value != part_value(leg["start"], moves):
            for other in legs:
                if other["moves"] == moves:
                    after = with_part(after, leg["moves"], part_value(other["start"], leg["moves"]))
    return after
