"""Does the handle work, wherever the covering stands: does a lever turn both ways, and has a hand room for it?"""

from typing import TypedDict

from configurator.kernel.contact import SOLVED, air_between
from configurator.kernel.door.grips import FINGER_ROOM, FULL_TURN, TURN_SLACK, Grip, free_turn, hides_grip, worked_grips
from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Figure, Household, Message, Piece, Reply, Sample, Travel, Verdict
from configurator.kernel.telling import angle, figure, length, reply, verdict, working
from configurator.kernel.tongue import wording

HANDLE_NAME = wording("working the handle")


class Hindrance(TypedDict):
    """What a piece leaves of what a part of the handle needs: degrees of a turn, or millimeters of room."""

    left: float
    piece: Piece
    part: Piece


class Worked(TypedDict):
    """The worst over the travel: a lever's free turn, the room round what is taken, and what hides it when open.

    The room is negative where a piece stands within what is worked. ``hidden`` is empty where a hand comes to it.
    """

    turn: Hindrance
    room: Hindrance
    hidden: list[Hindrance]


def near_grip(grip: Grip) -> Piece:
    """Return the space round a grip, as far as it is worked and fingers reach; what hangs in front is not in it."""
    held = grip["piece"]
    far = FINGER_ROOM + grip["reach"]
    return {
        **held,
        "x0": held["x0"] - FINGER_ROOM,
        "x1": held["x1"] + FINGER_ROOM,
        "y0": held["y0"] - far,
        "y1": held["y1"] + far,
        "z0": held["z0"] - FINGER_ROOM,
    }


def note_hindrance(worked: Worked, grip: Grip, piece: Piece) -> None:
    """Set what a piece leaves of what a grip needs, where it leaves less than others so far."""
    room = air_between(piece, grip["piece"])
    if room < worked["room"]["left"]:
        worked["room"] = {"left": room, "piece": piece, "part": grip["piece"]}
    turn = free_turn(grip, piece)
    if turn < worked["turn"]["left"]:
        worked["turn"] = {"left": turn, "piece": piece, "part": grip["piece"]}


def note_sample(worked: Worked, grip: Grip, near: Piece, sample: Sample) -> None:
    """Set what hinders a grip more at one place of the travel than what did so far."""
    for piece in sample["pieces"]:
        # Written out rather than called: this runs for every piece at every step of the travel.
        if piece["z0"] >= near["z1"] or piece["y1"] <= near["y0"] or piece["y0"] >= near["y1"]:
            continue
        if piece["x1"] > near["x0"] and piece["x0"] < near["x1"] and piece["z1"] > near["z0"]:
            note_hindrance(worked, grip, piece)


def worked_over(travel: Travel, grips: list[Grip]) -> Worked:
    """Return the worst for the handles over a travel; ``grips`` must not be empty."""
    samples = travel["samples"]
    piece = samples[0]["pieces"][0]
    worked: Worked = {
        "turn": {"left": FULL_TURN, "piece": piece, "part": grips[0]["piece"]},
        "room": {"left": FINGER_ROOM, "piece": piece, "part": grips[0]["piece"]},
        "hidden": [],
    }
    for grip in grips:
        near = near_grip(grip)
        for sample in samples:
            note_sample(worked, grip, near, sample)
        for before in samples[0]["pieces"]:
            if hides_grip(grip, before):
                worked["hidden"].append({"left": 0.0, "piece": before, "part": grip["piece"]})
    return worked


def hindrance_terms(found: Hindrance, unit: str, needed: float) -> dict[str, list[float | str]]:
    """Return what a sentence about a hindrance may name: what is left, and what is needed, in a unit."""
    return {
        "piece": [found["piece"]["kind"], "kind"],
        "part": [found["part"]["kind"], "kind"],
        "left": [found["left"], unit],
        "inside": [-found["left"], unit],
        "needed": [needed, unit],
    }


def handle_state(worked: Worked) -> str:
    """Return ``blocked`` where it cannot be worked, ``caution`` where fingers have too little room, or ``clears``."""
    room = worked["room"]["left"]
    if len(worked["hidden"]) > 0 or worked["turn"]["left"] < FULL_TURN - TURN_SLACK or room < -SOLVED:
        return "blocked"
    return "caution" if room < FINGER_ROOM - SOLVED else "clears"


def handle_why(worked: Worked) -> Message:
    """Return in words what hinders the handle, and by how much."""
    turn = hindrance_terms(worked["turn"], "deg", FULL_TURN)
    room = hindrance_terms(worked["room"], "mm", FINGER_ROOM)
    if len(worked["hidden"]) > 0:
        text = wording("Even while the covering is open, {piece} hangs in front of {part}: no hand comes to it.")
        return message(text, hindrance_terms(worked["hidden"][0], "mm", FINGER_ROOM))
    if worked["turn"]["left"] < TURN_SLACK:
        return message("The lever cannot be turned at all: {piece} stands in its way.", turn)
    if worked["turn"]["left"] < FULL_TURN - TURN_SLACK:
        return message("The lever turns by {left} before it meets {piece}; it needs {needed} up and down.", turn)
    if worked["room"]["left"] < -SOLVED:
        return message("{piece} stands in the way of {part} as it is worked, by {inside}.", room)
    if worked["room"]["left"] < FINGER_ROOM - SOLVED:
        return message("It can be worked, but {piece} leaves fingers only {left} of room at {part}.", room)
    return plain("It can be worked wherever the covering stands, with room for a hand.")


def room_figure(found: Hindrance) -> Figure:
    """Return the least room for fingers, as far as they need any."""
    rule = wording(
        "the least air round what a hand takes, wherever the covering stands; counted up to what fingers take"
    )
    told = working(rule, "max(0, {left}), {piece} at {part}", hindrance_terms(found, "mm", FINGER_ROOM))
    return figure("hand_room", "room for a hand at the handle", length(max(0.0, found["left"])), told)


def lever_turn_figure(found: Hindrance) -> Figure:
    """Return how far the lever turns."""
    rule = wording("the least that the lever turns, up or down, before it meets a piece, wherever the covering stands")
    told = working(rule, "{left}, of {needed}", hindrance_terms(found, "deg", FULL_TURN))
    return figure("lever_turn", "turn left to the lever", angle(found["left"]), told)


def handle_verdict(worked: Worked) -> Verdict:
    """Return whether the handle works wherever the covering stands."""
    return verdict("handle_works", HANDLE_NAME, handle_state(worked), handle_why(worked))


def working_handle_question(travel: Travel, household: Household) -> Reply:
    """Answer whether the handle can be worked wherever the covering stands, from its solid pieces.

    Of what hangs in front of the handle only the open covering counts: a hand opens the covering first.
    """
    fit = travel["fit"]
    grips = worked_grips(fit["door"], fit["handle"])
    if len(grips) == 0:
        return reply([], [], [])
    worked = worked_over(travel, grips)
    figures = [room_figure(worked["room"])]
    if fit["door"]["handle"]["kind"] == "lever":
        figures.append(lever_turn_figure(worked["turn"]))
    return reply(figures, [handle_verdict(worked)], [])
