"""The figures of a turning leaf: its angles and the clear widths, without and with the covering."""

from configurator.kernel.door.leaf import leaf_width
from configurator.kernel.questions.figure import figure
from configurator.kernel.questions.outline import touch_words
from configurator.kernel.questions.turning import RIGHT_ANGLE, Touch, clear_width, latch_stop, leaf_front
from configurator.kernel.shapes import Door, Figure


def turn_figure(door: Door, key: str, name: str, touch: Touch) -> Figure:
    """Return how far a leaf opens, with its working."""
    return figure(
        key,
        name,
        touch["angle"],
        "deg",
        "each outer point turns about the pin until it meets the side wall; the least angle counts, "
        "180 degrees at most; first to touch: " + touch_words(touch["kind"]),
        "least of acos(-{wall} / R) - atan2(out, along), R = sqrt(out x out + along x along), "
        "out from the pin, which stands {pin} in front of the face",
        {"wall": [door["wall_gap"], "mm"], "pin": [door["hinge_pin_out"], "mm"]},
    )


def width_figure(door: Door, key: str, name: str, turn: float, front: float) -> Figure:
    """Return a clear width with its working."""
    return figure(
        key,
        name,
        clear_width(door, turn, front),
        "mm",
        "the leaf's width less the stop's lap and less what the open leaf, with all that hangs on it, takes of the "
        "doorway; open 90 degrees, or as far as it goes; of a pair the active leaf alone",
        "leaf {leaf} - stop {stop} - (leaf x cos {angle} + front of the open leaf {front} x sin {angle})",
        {
            "leaf": [leaf_width(door), "mm"],
            "stop": [latch_stop(door), "mm"],
            "angle": [min(turn, RIGHT_ANGLE), "deg"],
            "front": [front, "mm"],
        },
    )


def in_swing_figures(door: Door, own: Touch, both: Touch) -> list[Figure]:
    """Return the angles and clear widths of an in-swing leaf, by itself and with the covering."""
    front = leaf_front(door)
    return [
        turn_figure(door, "swing_bare", "leaf opens, without the covering", own),
        turn_figure(door, "swing_covered", "leaf opens, with the covering", both),
        width_figure(door, "clear_width_bare", "clear width without the covering", own["angle"], front),
        width_figure(door, "clear_width_covered", "clear width with the covering", both["angle"], front),
    ]
