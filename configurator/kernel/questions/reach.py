"""Who can work it? The height of the hand at open, half and closed."""

from configurator.kernel.fit import lowest_edge, moves_aside, only_turns
from configurator.kernel.message import message, plain
from configurator.kernel.numbers import clamp
from configurator.kernel.shapes import Caution, Figure, Fit, Household, Message, Piece, Reply, Travel, Verdict
from configurator.kernel.telling import figure, guidance, length, reply, verdict, working
from configurator.kernel.tongue import wording

# 2010 ADA Standards 308.2.1, 308.3.1: 15 to 48 in above the floor, unobstructed.
REACH_LOW = 381.0
REACH_HIGH = 1219.2
REACH_TERMS: dict[str, list[float | str]] = {"low": [REACH_LOW, "mm"], "high": [REACH_HIGH, "mm"]}
REACH_RULE = wording("2010 ADA Standards 308.2.1, 308.3.1")
# A raised hand grips about 0.38 of the body's height above the shoulder: common practice, no source.
ARM_SHARE = 0.38


def part_middle(pieces: list[Piece], kind: str, missing: float) -> float:
    """Return the middle height of the first piece of a kind, or ``missing``."""
    for piece in pieces:
        if piece["kind"] == kind:
            return (piece["y0"] + piece["y1"]) / 2
    return missing


def taken_anywhere(fit: Fit) -> bool:
    """Return whether the hand may take it anywhere along its height, as what draws aside or only turns."""
    return moves_aside(fit) or only_turns(fit)


def hand_height(fit: Fit, pieces: list[Piece]) -> float:
    """Return where the hand takes the covering, above the floor.

    A wand or loop hangs ``hand_drop`` below the headrail and is held at its lower end; a rail is
    taken at its middle; what draws to the side or only tilts may be taken anywhere along its
    height, here at the height of the door's handle.
    """
    numbers = fit["numbers"]
    size = fit["size"]
    if numbers["hand_drop"] > 0:
        return max(0.0, size["y1"] - numbers["headrail_height"] - numbers["hand_drop"])
    if taken_anywhere(fit):
        return clamp(fit["door"]["handle_height"], size["y0"], size["y1"])
    return part_middle(pieces, "bottom-rail", lowest_edge(pieces))


def hand_rule(fit: Fit) -> str:
    """Return in words where the hand takes the covering."""
    if fit["numbers"]["hand_drop"] > 0:
        return wording("the lower end of the wand or loop, as high above the floor at every position")
    if taken_anywhere(fit):
        return wording("it may be taken anywhere along its height; here at the height of the door's handle")
    return wording("the middle of the bottom rail, or the lower hem, above the floor")


def hand_figure(fit: Fit, key: str, name: str, height: float) -> Figure:
    """Return one height of the hand with its working."""
    return figure(key, name, length(height), working(hand_rule(fit), "{height}", {"height": [height, "mm"]}))


def overhead(household: Household) -> float:
    """Return how high a standing person of the household grips overhead: the shoulder and an arm."""
    return household["shoulder_height"] + household["person_height"] * ARM_SHARE


def reach_why(low: float, high: float, household: Household) -> Message:
    """Return in words between which bounds the hand moves."""
    if high > household["shoulder_height"]:
        if low < REACH_LOW:
            return message(
                "At its highest the hand is above the shoulder, at its lowest it is below {low}.", REACH_TERMS
            )
        return plain("At its highest the hand is above the shoulder.")
    if low < REACH_LOW:
        return message("The hand never has to go above the shoulder, at its lowest it is below {low}.", REACH_TERMS)
    return plain("The hand never has to go above the shoulder.")


def reach_verdict(low: float, high: float, household: Household) -> Verdict:
    """Return who can work it: ``clears`` within 15 to 48 in, ``blocked`` beyond a raised arm, else ``caution``."""
    name = wording("reaching the covering")
    if low >= REACH_LOW and high <= REACH_HIGH:
        return verdict(
            "reach", name, "clears", message("The hand stays between {low} and {high} above the floor.", REACH_TERMS)
        )
    if high > overhead(household):
        why = wording("Raised, it is higher than a standing person of this household can reach.")
        return verdict("reach", name, "blocked", plain(why))
    return verdict("reach", name, "caution", reach_why(low, high, household))


def reach_guidance() -> Caution:
    """Return the guidance that goes with a hand outside 15 to 48 in: that of most coverings, on most doors."""
    text = wording(
        "Not everyone can reach outside {low} to {high} above the floor, seated for instance. Where a covering must be "
        "within reach, local code decides."
    )
    return guidance("reach", message(text, REACH_TERMS), REACH_RULE)


def reach_cautions(low: float, high: float) -> list[Caution]:
    """Return the guidance where the hand goes outside 15 to 48 in; that it does, the verdict says."""
    if low >= REACH_LOW and high <= REACH_HIGH:
        return []
    return [reach_guidance()]


def upper_figure(pieces: list[Piece], top: float) -> Figure:
    """Return how high the upper rail stands before it is let down."""
    height = part_middle(pieces, "upper-rail", top)
    return figure(
        "hand_upper",
        "height of the hand at the upper rail, before it is let down",
        length(height),
        working(
            "the middle of the upper rail while it is up; once let down it is worked lower",
            "{height}",
            {"height": [height, "mm"]},
        ),
    )


def reach_question(travel: Travel, household: Household) -> Reply:
    """Answer who can work it, from the pieces open, half way and closed.

    No figure where nothing moves or the hand is elsewhere, on a remote control or a switch.
    """
    fit = travel["fit"]
    name = wording("reaching the covering")
    if len(fit["legs"]) == 0:
        return reply([], [verdict("reach", name, "clears", plain("Nothing on it is worked by hand."))], [])
    if fit["numbers"]["hand_away"] > 0:
        why = wording("It is worked from a remote control or a switch, to be placed within reach.")
        return reply([], [verdict("reach", name, "clears", plain(why))], [])
    heights = [hand_height(fit, pieces) for pieces in [travel["raised"], travel["half"], travel["down"]]]
    figures = [
        hand_figure(fit, "hand_open", wording("height of the hand when open"), heights[0]),
        hand_figure(fit, "hand_half", wording("height of the hand half way"), heights[1]),
        hand_figure(fit, "hand_closed", wording("height of the hand when closed"), heights[2]),
    ]
    low = min(heights)
    high = max(heights)
    if fit["numbers"]["upper_moves"] > 0 and fit["numbers"]["hand_drop"] == 0:
        upper = upper_figure(travel["down"], fit["size"]["y1"])
        figures.append(upper)
        high = max(high, upper["value"])
    return reply(figures, [reach_verdict(low, high, household)], reach_cautions(low, high))
