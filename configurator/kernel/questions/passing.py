"""Does the covering pass the handle, beside and behind, at every step of its travel?"""

from configurator.kernel.contact import (
    SOLVED,
    air_across,
    air_out,
    air_up,
    clustered,
    edge_of_trouble,
    nearest_among,
    nearest_of,
)
from configurator.kernel.door.grips import FINGER_ROOM, worked_grips
from configurator.kernel.fit import only_turns
from configurator.kernel.message import message
from configurator.kernel.mount.sideways import PASSING_AIR
from configurator.kernel.shapes import Figure, Fit, Household, Meeting, Message, Reply, Sample, Travel, Verdict
from configurator.kernel.telling import figure, length, reply, verdict, working
from configurator.kernel.tongue import wording

PASSING_NAME = wording("passing the handle")


def way_past(place: Meeting) -> str:
    """Return in words how a piece passes a part, by the axis with the most air."""
    piece = place["piece"]
    part = place["part"]
    across = air_across(piece, part)
    up = air_up(piece, part)
    out = air_out(piece, part)
    if across >= up and across >= out:
        return wording("beside")
    if up >= out:
        return wording("above or below")
    return wording("behind") if part["z0"] - piece["z1"] >= piece["z0"] - part["z1"] else wording("in front of")


def meeting_terms(place: Meeting) -> dict[str, list[float | str]]:
    """Return what a sentence about the tightest place may name."""
    return {
        "piece": [place["piece"]["kind"], "kind"],
        "part": [place["part"]["kind"], "kind"],
        "way": [way_past(place), "text"],
        "air": [place["air"], "mm"],
        "overlap": [-place["air"], "mm"],
    }


def tight_samples(travel: Travel, limit: float) -> list[Sample]:
    """Return the samples of the tightest leg at which there is less air than ``limit``."""
    fit = travel["fit"]
    place = travel["handle"]
    cluster = clustered(fit["handle"])
    tight: list[Sample] = []
    for sample in travel["samples"]:
        if sample["leg"] == place["leg"] and nearest_of(sample, cluster)["air"] < limit:
            tight.append(sample)
    return tight


def neighbor(travel: Travel, sample: Sample, step: int) -> Sample:
    """Return the sample before (``step`` -1) or after (1) another on its leg; itself at the leg's end."""
    samples = travel["samples"]
    best = sample
    for other in samples:
        beyond = (other["at"] - sample["at"]) * step
        nearest = best["at"] == sample["at"] or beyond < (best["at"] - sample["at"]) * step
        if other["leg"] == sample["leg"] and beyond > 0 and nearest:
            best = other
    return best


def trouble_span(travel: Travel, limit: float) -> list[float]:
    """Return the first and last position on the tightest leg at which the air is below ``limit``."""
    fit = travel["fit"]
    tight = tight_samples(travel, limit)
    if len(tight) == 0:
        return [0.0, 1.0]
    first = tight[0]
    last = tight[len(tight) - 1]
    before = neighbor(travel, first, -1)
    after = neighbor(travel, last, 1)
    start = first["at"]
    end = last["at"]
    if before["at"] < start:
        start = edge_of_trouble(fit, fit["handle"], [before, first], limit)
    if after["at"] > end:
        end = edge_of_trouble(fit, fit["handle"], [after, last], limit)
    return [start, end]


def stays_put(fit: Fit) -> bool:
    """Return whether a covering never passes the handle: it is fixed, or only parts of it turn."""
    return len(fit["legs"]) == 0 or only_turns(fit)


def hand_place(travel: Travel) -> Meeting:
    """Return where the covering comes nearest to what a hand takes of the handle."""
    fit = travel["fit"]
    held = clustered([grip["piece"] for grip in worked_grips(fit["door"], fit["handle"])])
    return nearest_among(travel["samples"], held)


def fixed_state(travel: Travel) -> str:
    """Return how what stays put stands to the handle: without air ``blocked``, without room for a hand ``caution``."""
    if travel["handle"]["air"] < SOLVED:
        return "blocked"
    return "clears" if hand_place(travel)["air"] >= FINGER_ROOM - SOLVED else "caution"


def passing_state(travel: Travel) -> str:
    """Return ``clears``, ``guide by hand`` or ``blocked``; ``caution`` where what stays put leaves a hand no room.

    What stays put need not pass: it must leave the fingers room that work the handle. Of what moves, less than the
    passing air is guided by hand, where a hand moves it: what a hand would ease past, a motor will catch; and what
    has no air at all no hand eases past.
    """
    fit = travel["fit"]
    air = travel["handle"]["air"]
    if air < -SOLVED:
        return "blocked"
    if stays_put(fit):
        return fixed_state(travel)
    if air >= PASSING_AIR - SOLVED:
        return "clears"
    if air < SOLVED or fit["numbers"]["hand_away"] > 0:
        return "blocked"
    return "guide by hand"


def passing_why(travel: Travel, state: str) -> Message:
    """Return in plain words where it is tightest."""
    place = travel["handle"]
    terms = meeting_terms(place)
    if place["air"] < -SOLVED:
        return message("{piece} meets {part} by {overlap}.", terms)
    if place["air"] < SOLVED:
        return message("{piece} touches {part}: there is no air between them.", terms)
    if state == "caution":
        text = wording("It is fixed; {piece} stands {way} {part} and leaves a hand only {air} to work it.")
        return message(text, meeting_terms(hand_place(travel)))
    if stays_put(travel["fit"]):
        return message("It is fixed; {piece} stands {way} {part} with {air} between them.", terms)
    if state == "blocked":
        return message("{piece} passes {way} {part} with only {air} to spare, on which a motor will catch.", terms)
    return message("At its tightest {piece} is {way} {part} with {air} to spare.", terms)


def passing_verdict(travel: Travel) -> Verdict:
    """Return whether the covering passes the handle, and if not by itself, between which positions."""
    state = passing_state(travel)
    found = verdict("pass_through", PASSING_NAME, state, passing_why(travel, state))
    if travel["tried"] or state == "clears" or state == "caution" or len(travel["fit"]["legs"]) == 0:
        return found
    place = travel["handle"]
    limit = 0.0 if place["air"] < -SOLVED else PASSING_AIR
    span = trouble_span(travel, limit - SOLVED)
    legs = travel["fit"]["legs"]
    found["moves"] = legs[place["leg"]]["moves"]
    found["start"] = span[0]
    found["end"] = span[1]
    return found


def gap_figures(place: Meeting) -> list[Figure]:
    """Return the free gap at the tightest place, and how far the covering is in the way there."""
    terms = meeting_terms(place)
    gap_rule = wording("the least air between the covering and any part of the handle over the whole travel")
    overlap_rule = wording(
        "how far the covering and the handle lie within each other where there is no air; else nothing"
    )
    gap = working(gap_rule, "max(0, {air}), {piece} {way} {part}", terms)
    inside = working(overlap_rule, "max(0, -({air})), {piece} {way} {part}", terms)
    return [
        figure("handle_gap", "free gap at the handle", length(max(0.0, place["air"])), gap),
        figure("handle_overlap", "overlap with the handle", length(max(0.0, -place["air"])), inside),
    ]


def passing_question(travel: Travel, household: Household) -> Reply:
    """Answer with the free gap at the handle and the verdict on passing it."""
    return reply(gap_figures(travel["handle"]), [passing_verdict(travel)], [])
