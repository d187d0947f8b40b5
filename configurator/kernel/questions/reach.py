"""Who can work it? The height of the hand at open, half and closed."""

from configurator.kernel.numbers import clamp
from configurator.kernel.questions.figure import caution, figure
from configurator.kernel.questions.reply import Reply, reply, standing_verdict
from configurator.kernel.sampling import lowest_edge
from configurator.kernel.shapes import Caution, Door, Figure, Household, Piece, Size, Verdict

# 2010 ADA Standards 308.2.1, 308.3.1: 15 to 48 in above the floor, unobstructed.
REACH_LOW = 381.0
REACH_HIGH = 1219.2
REACH_RULE = "2010 ADA Standards 308.2.1, 308.3.1"
# A raised hand grips about 0.38 of the body's height above the shoulder: common practice, no source.
ARM_SHARE = 0.38


def nothing_to_work(numbers: dict[str, float]) -> bool:
    """Return whether the covering has nothing that moves."""
    return (
        numbers["lower_moves"] == 0 and numbers["upper_moves"] == 0 and numbers["tilt_open"] == numbers["tilt_closed"]
    )


def part_middle(pieces: list[Piece], kind: str, missing: float) -> float:
    """Return the middle height of the first piece of a kind, or ``missing``."""
    for piece in pieces:
        if piece["kind"] == kind:
            return (piece["y0"] + piece["y1"]) / 2
    return missing


def hand_height(door: Door, numbers: dict[str, float], size: Size, pieces: list[Piece]) -> float:
    """Return where the hand takes the covering, above the floor.

    A wand or loop hangs ``hand_drop`` below the headrail and is held at its lower end; a rail is
    taken at its middle; what draws to the side or only tilts may be taken anywhere along its
    height, here at the height of the door's handle.
    """
    if numbers["hand_drop"] > 0:
        return max(0.0, size["y1"] - numbers["headrail_height"] - numbers["hand_drop"])
    if numbers["draws_aside"] > 0 or numbers["lower_moves"] == 0:
        return clamp(door["handle_height"], size["y0"], size["y1"])
    return part_middle(pieces, "bottom-rail", lowest_edge(pieces))


def hand_rule(numbers: dict[str, float]) -> str:
    """Return in words where the hand takes the covering."""
    if numbers["hand_drop"] > 0:
        return "the lower end of the wand or loop, as high above the floor at every position"
    if numbers["draws_aside"] > 0 or numbers["lower_moves"] == 0:
        return "it may be taken anywhere along its height; here at the height of the door's handle"
    return "the middle of the bottom rail, or the lower hem, above the floor"


def hand_figure(numbers: dict[str, float], key: str, name: str, height: float) -> Figure:
    """Return one height of the hand with its working."""
    return figure(key, name, height, "mm", hand_rule(numbers), "{height} above the floor", {"height": [height, "mm"]})


def overhead(household: Household) -> float:
    """Return how high a standing person of the household grips overhead: the shoulder and an arm."""
    return household["shoulder_height"] + household["person_height"] * ARM_SHARE


def reach_why(low: float, high: float, household: Household) -> str:
    """Return in words between which bounds the hand moves."""
    if high > household["shoulder_height"]:
        text = "At its highest the hand is above the shoulder"
    else:
        text = "The hand never has to go above the shoulder"
    if low < REACH_LOW:
        return text + ", at its lowest it is below 15 in."
    return text + "."


def reach_verdict(low: float, high: float, household: Household) -> Verdict:
    """Return who can work it: ``clears`` within 15 to 48 in, ``blocked`` beyond a raised arm, else ``caution``."""
    name = "reaching the covering"
    if low >= REACH_LOW and high <= REACH_HIGH:
        return standing_verdict("reach", name, "clears", "The hand stays between 15 and 48 in above the floor.", [])
    fixes = ["a wand that hangs lower", "a motor"]
    if high > overhead(household):
        why = "Raised, it is higher than a standing person of this household can reach."
        return standing_verdict("reach", name, "blocked", why, fixes)
    return standing_verdict("reach", name, "caution", reach_why(low, high, household), fixes)


def reach_cautions(low: float, high: float) -> list[Caution]:
    """Return the caution that goes with a hand outside 15 to 48 in."""
    if low >= REACH_LOW and high <= REACH_HIGH:
        return []
    text = "The hand must go outside 15 to 48 in above the floor, which not everyone can, seated for instance."
    return [caution("reach", text + " Where it must be within reach, local code decides.", REACH_RULE)]


def upper_figure(pieces: list[Piece], top: float) -> Figure:
    """Return how high the upper rail stands before it is let down."""
    height = part_middle(pieces, "upper-rail", top)
    return figure(
        "hand_upper",
        "height of the hand at the upper rail, before it is let down",
        height,
        "mm",
        "the middle of the upper rail while it is up; once let down it is worked lower",
        "{height} above the floor",
        {"height": [height, "mm"]},
    )


def reach_answers(
    door: Door,
    household: Household,
    numbers: dict[str, float],
    size: Size,
    raised: list[Piece],
    half: list[Piece],
    down: list[Piece],
) -> Reply:
    """Answer who can work it, from the pieces open, half way and closed.

    No figure where nothing moves or the hand is elsewhere, on a remote control or a switch.
    """
    name = "reaching the covering"
    if nothing_to_work(numbers):
        return reply([], [standing_verdict("reach", name, "clears", "Nothing on it is worked by hand.", [])], [])
    if numbers["hand_away"] > 0:
        why = "It is worked from a remote control or a switch, to be placed within reach."
        return reply([], [standing_verdict("reach", name, "clears", why, [])], [])
    heights = [hand_height(door, numbers, size, pieces) for pieces in [raised, half, down]]
    figures = [
        hand_figure(numbers, "hand_open", "height of the hand when open", heights[0]),
        hand_figure(numbers, "hand_half", "height of the hand half way", heights[1]),
        hand_figure(numbers, "hand_closed", "height of the hand when closed", heights[2]),
    ]
    low = min(heights[0], min(heights[1], heights[2]))
    high = max(heights[0], max(heights[1], heights[2]))
    if numbers["upper_moves"] > 0 and numbers["hand_drop"] == 0:
        figures.append(upper_figure(down, size["y1"]))
        high = max(high, figures[3]["value"])
    return reply(figures, [reach_verdict(low, high, household)], reach_cautions(low, high))
