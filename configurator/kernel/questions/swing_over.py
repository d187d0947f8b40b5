"""The turn of a leaf behind a covering that hangs over the opening and stays on the wall."""

from configurator.kernel.contact import sample_at
from configurator.kernel.door.leaf import leaf_box, leaf_width
from configurator.kernel.fit import lowest_edge
from configurator.kernel.message import message, plain
from configurator.kernel.mount.over_opening import OVER_LEAF
from configurator.kernel.questions.around import piece_obstacle
from configurator.kernel.questions.outline import own_outline
from configurator.kernel.questions.swing_figures import in_swing_figures, width_figure
from configurator.kernel.questions.touch import HALF_TURN, Obstacle, earlier, first_touch, from_pin, no_touch
from configurator.kernel.questions.turning import LEAST_TURN, RIGHT_ANGLE, latch_stop, leaf_front
from configurator.kernel.shapes import Door, Figure, Fit, Outer, Piece, Reply, Sample, Size, Touch, Travel, Verdict
from configurator.kernel.telling import figure, length, reply, verdict, working
from configurator.kernel.tongue import wording

# A hundredth of a millimeter of a travel of two meters.
SOLVED_SHARE = 5e-6


def turning_profile(door: Door) -> list[Outer]:
    """Return the reach of an in-swing leaf and its handle, from the pin."""
    return from_pin(own_outline(door), door["hinge_pin_out"])


def met_on_wall(door: Door, profile: list[Outer], pieces: list[Piece], limit: float) -> Touch:
    """Return what of an in-swing leaf's profile first meets which piece before an angle.

    What hangs above the leaf's top edge is passed under.
    """
    top = leaf_box(door)["y1"]
    obstacles: list[Obstacle] = []
    for piece in pieces:
        if piece["y0"] < top:
            obstacles.append(piece_obstacle(piece, door["hinge_pin_out"]))
    return first_touch(profile, obstacles, limit) if len(obstacles) > 0 else no_touch(limit)


def over_verdict(own: Touch, stack: Touch) -> Verdict:
    """Return whether an in-swing leaf opens while the covering is open."""
    name = wording("opening the leaf")
    if stack["angle"] >= min(own["angle"], RIGHT_ANGLE):
        why = wording("While the covering is open, the leaf opens as far as without it, or at least to a right angle.")
        return verdict("swing", name, "clears", plain(why))
    state = "blocked" if stack["angle"] < LEAST_TURN else "guide by hand"
    why = wording("Even while the covering is open, {piece} meets {obstacle} as the leaf opens.")
    terms: dict[str, list[float | str]] = {"piece": [stack["kind"], "kind"], "obstacle": [stack["met"], "kind"]}
    return verdict("swing", name, state, message(why, terms))


def leaf_is_met(door: Door, profile: list[Outer], sample: Sample) -> bool:
    """Return whether an in-swing leaf meets the covering before it stands at a right angle."""
    return met_on_wall(door, profile, sample["pieces"], RIGHT_ANGLE)["kind"] != ""


def closed_between(fit: Fit, profile: list[Outer], free: float, met: float) -> float:
    """Return where, between a share of the way that leaves a profile free and one that does not, it is first met."""
    while met - free > SOLVED_SHARE:
        middle = (free + met) / 2
        if leaf_is_met(fit["door"], profile, sample_at(fit, 0, middle)):
            met = middle
        else:
            free = middle
    return free


def closed_from(travel: Travel) -> float:
    """Return how far the covering may be closed while an in-swing leaf still opens to a right angle."""
    fit = travel["fit"]
    profile = turning_profile(fit["door"])
    free = 0.0
    for sample in travel["samples"]:
        if sample["leg"] == 0:
            # What of the leaf meets nothing here meets nothing of what is drawn less far either.
            stopped = [outer for outer in profile if leaf_is_met(fit["door"], [outer], sample)]
            if len(stopped) > 0:
                return closed_between(fit, stopped, free, sample["at"])
            free = sample["at"]
    return 1.0


def closed_verdict(travel: Travel, stack: Touch) -> Verdict:
    """Return whether the leaf opens while a covering over the opening is closed; ``stack`` is what it meets open."""
    name = wording("opening the leaf behind the closed covering")
    if travel["fit"]["door"]["swing"] == "out":
        why = wording("The leaf opens outwards, away from the covering.")
        return verdict("opens_covered", name, "clears", plain(why))
    why = wording("The leaf opens into the room, where the closed covering hangs: open the covering first.")
    if stack["angle"] < RIGHT_ANGLE:
        why = wording(
            "The leaf opens into the room, where the covering hangs, in its way wherever it is drawn or raised to."
        )
    blocked = verdict("opens_covered", name, "blocked", plain(why))
    blocked["moves"] = "lower"
    blocked["start"] = 0.0 if travel["tried"] or stack["angle"] < RIGHT_ANGLE else closed_from(travel)
    blocked["end"] = 1.0
    return blocked


def hangs_above(door: Door, pieces: list[Piece]) -> bool:
    """Return whether a covering, where it is open, hangs in the upper half of the doorway, not at its side."""
    leaf = leaf_box(door)
    return lowest_edge(pieces) > (leaf["y0"] + leaf["y1"]) / 2


def raised_figure(door: Door, pieces: list[Piece]) -> Figure:
    """Return the air between the leaf's top edge and the open covering."""
    low = lowest_edge(pieces)
    top = leaf_box(door)["y1"]
    return figure(
        "raised_over_leaf",
        "air between the leaf's top and the open covering",
        length(max(0.0, low - top)),
        working(
            "the open covering's lowest edge less the leaf's top edge; nothing where it hangs lower",
            "max(0, {low} - {top})",
            {"low": [low, "mm"], "top": [top, "mm"]},
        ),
    )


def head_figure(size: Size, pieces: list[Piece]) -> Figure:
    """Return the height that the open covering needs above the leaf's top edge."""
    stack = size["y1"] - lowest_edge(pieces)
    return figure(
        "head_needed",
        "height needed above the leaf's top",
        length(stack + OVER_LEAF),
        working(
            "the open covering's whole height, and the air between it and the leaf that opens under it",
            "{stack} + {air}",
            {"stack": [stack, "mm"], "air": [OVER_LEAF, "mm"]},
        ),
    )


def over_in_swing(travel: Travel) -> Reply:
    """Answer for a covering on the wall in front of an in-swing leaf."""
    door = travel["fit"]["door"]
    size = travel["fit"]["size"]
    samples = travel["samples"]
    own = travel["turn"]["own"]
    stack = travel["turn"]["covering"]
    figures = in_swing_figures(door, own, earlier(own, stack))
    if hangs_above(door, samples[0]["pieces"]):
        figures.append(head_figure(size, samples[0]["pieces"]))
        figures.append(raised_figure(door, samples[0]["pieces"]))
    return reply(figures, [over_verdict(own, stack), closed_verdict(travel, stack)], [])


def doorway_left(door: Door, pieces: list[Piece]) -> list[float]:
    """Return the span of the doorway that side stacks on the wall leave free, the out-swing leaf at 90 degrees."""
    start = leaf_front(door)
    end = leaf_width(door) - latch_stop(door)
    middle = (start + end) / 2
    leaf = leaf_box(door)
    for piece in pieces:
        # What only hangs from above is a matter of headroom, not of width.
        if piece["y0"] < (leaf["y0"] + leaf["y1"]) / 2:
            if (piece["x0"] + piece["x1"]) / 2 < middle:
                start = max(start, piece["x1"])
            else:
                end = min(end, piece["x0"])
    return [start, end]


def over_out_swing(travel: Travel) -> Reply:
    """Answer for a covering on the wall, the leaf opening away from it."""
    door = travel["fit"]["door"]
    samples = travel["samples"]
    span = doorway_left(door, samples[0]["pieces"])
    figures = [
        width_figure(
            door, ["clear_width_bare", wording("clear width without the covering")], RIGHT_ANGLE, leaf_front(door)
        ),
        figure(
            "clear_width_covered",
            "clear width with the covering open",
            length(max(0.0, span[1] - span[0])),
            working(
                "what the open leaf and the side stack leave of the doorway; of a pair the active leaf alone",
                "max(0, {end} - {start})",
                {"end": [span[1], "mm"], "start": [span[0], "mm"]},
            ),
        ),
    ]
    why = wording("The leaf opens outwards, away from the covering.")
    return reply(
        figures,
        [
            verdict("swing", "opening the leaf", "clears", plain(why)),
            closed_verdict(travel, no_touch(HALF_TURN)),
        ],
        [],
    )
