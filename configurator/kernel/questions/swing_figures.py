"""The figures of a turning leaf: its angles and the clear widths, without and with the covering."""

from configurator.kernel.door.leaf import leaf_width
from configurator.kernel.door.opening import has_passive
from configurator.kernel.questions.turning import RIGHT_ANGLE, Touch, clear_width, latch_stop, leaf_front
from configurator.kernel.shapes import Door, Figure
from configurator.kernel.telling import angle, figure, length, working


def turn_figure(door: Door, key: str, name: str, touch: Touch) -> Figure:
    """Return how far an in-swing leaf opens, with the working of the point that stops it."""
    if touch["kind"] == "":
        rule = "no point of the leaf reaches the side wall; the wall of the doorway itself ends the turn"
        return figure(
            key, name, angle(touch["angle"]), working(rule, "side wall {wall} beside the pin", wall_term(door))
        )
    if touch["along"] == 0 and touch["out"] == 0:
        rule = "the leaf turns until it meets {piece}, which stays on the wall"
        how = working(rule, "pin {pin} in front of the face", pin_terms(door, touch))
        return figure(key, name, angle(touch["angle"]), how)
    terms = wall_term(door)
    terms["piece"] = [touch["kind"], "kind"]
    terms["along"] = [touch["along"], "mm"]
    terms["out"] = [touch["out"], "mm"]
    return figure(
        key,
        name,
        angle(touch["angle"]),
        working(
            "the first point to meet the side wall, turning about the pin, is that of {piece}",
            "acos(-{wall} / R) - atan2({out}, {along}), R = sqrt({out} x {out} + {along} x {along}), from the pin",
            terms,
        ),
    )


def wall_term(door: Door) -> dict[str, list[float | str]]:
    """Return the side wall's distance as a term."""
    return {"wall": [door["wall_gap"], "mm"]}


def pin_terms(door: Door, touch: Touch) -> dict[str, list[float | str]]:
    """Return the pin's distance and what is met as terms."""
    return {"pin": [door["hinge_pin_out"], "mm"], "piece": [touch["kind"], "kind"]}


def width_figure(door: Door, key: str, name: str, turn: float, front: float) -> Figure:
    """Return a clear width with its working."""
    terms: dict[str, list[float | str]] = {
        "leaf": [leaf_width(door), "mm"],
        "stop": [latch_stop(door), "mm"],
        "front": [front, "mm"],
    }
    rule = "the leaf's width less the stop's lap and less what the open leaf, with all that hangs on it, takes of it"
    template = "leaf {leaf} - stop {stop} - open leaf {front}"
    if turn < RIGHT_ANGLE:
        rule = rule + ", open as far as it goes"
        template = "leaf {leaf} - stop {stop} - ({leaf} x cos {angle} + {front} x sin {angle})"
        terms["angle"] = [turn, "deg"]
    if has_passive(door):
        rule = rule + "; the active leaf alone"
    return figure(key, name, length(clear_width(door, turn, front)), working(rule, template, terms))


def in_swing_figures(door: Door, own: Touch, both: Touch) -> list[Figure]:
    """Return the angles and clear widths of an in-swing leaf, by itself and with the covering."""
    front = leaf_front(door)
    return [
        turn_figure(door, "swing_bare", "leaf opens, without the covering", own),
        turn_figure(door, "swing_covered", "leaf opens, with the covering", both),
        width_figure(door, "clear_width_bare", "clear width without the covering", own["angle"], front),
        width_figure(door, "clear_width_covered", "clear width with the covering", both["angle"], front),
    ]
