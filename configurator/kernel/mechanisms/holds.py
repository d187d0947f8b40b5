"""Where coverings are fixed: the footholds that most mechanisms share."""

from configurator.kernel.mechanisms.common import whole_width
from configurator.kernel.numbers import step_up
from configurator.kernel.shapes import Fit, Foothold

# How far along a headrail a bracket may be slid from its end: a share of the width, so that the ends do not droop.
BRACKET_SLIDE = 0.25


def within_edges(span: list[float], edge: float) -> list[float]:
    """Return what an edge on either side leaves of a span; its middle where it leaves nothing."""
    low = span[0] + edge
    high = span[1] - edge
    if low > high:
        middle = (span[0] + span[1]) / 2
        return [middle, middle]
    return [low, high]


def evenly_placed(span: list[float], inset: float, spacing: float) -> list[float]:
    """Return places along a span, its ends held ``inset`` in, never further apart than ``spacing``.

    One in the middle where the span is too short for two.
    """
    ends = within_edges(span, inset)
    if ends[1] <= ends[0]:
        return [ends[0]]
    gaps = max(1, int(step_up((ends[1] - ends[0]) / spacing, 1.0)))
    return [ends[0] + (ends[1] - ends[0]) * i / gaps for i in range(gaps + 1)]


def bracket_at(fit: Fit, x: float, across: list[float], up: list[float]) -> Foothold:
    """Return a bracket wanted at ``x`` and half-way up what it holds, to be slid within both spans."""
    numbers = fit["numbers"]
    room = within_edges(up, numbers["screw_edge"])
    return {
        "kind": "bracket",
        "held": "headrail",
        "x": x,
        "y": (up[0] + up[1]) / 2,
        "across": across,
        "up": room,
        "screws": max(1, int(numbers["bracket_screws"])),
        "spread": [numbers["bracket_width"] / 2, 0.0],
        "width": numbers["bracket_width"],
        "height": min(numbers["screw_edge"] * 2, up[1] - up[0]),
    }


def slide_of(span: list[float], x: float, width: float) -> list[float]:
    """Return the span in which a bracket ``width`` wide and wanted at ``x`` may be slid along its headrail."""
    slide = (span[1] - span[0]) * BRACKET_SLIDE
    low = span[0] + width / 2
    high = span[1] - width / 2
    if x <= span[0] + slide:
        return [min(low, x), max(span[0] + slide, x)]
    if x >= span[1] - slide:
        return [min(span[1] - slide, x), max(high, x)]
    return [x - width, x + width]


def brackets_along(fit: Fit, height: float) -> list[Foothold]:
    """Return a bracket near each end of a headrail ``height`` high, and more between where it is wide."""
    numbers = fit["numbers"]
    span = whole_width(fit)
    up = [fit["size"]["y1"] - height, fit["size"]["y1"]]
    width = numbers["bracket_width"]
    places = evenly_placed(span, max(numbers["bracket_inset"], width / 2), numbers["bracket_spacing"])
    return [bracket_at(fit, x, slide_of(span, x, width), up) for x in places]


def headrail_holds(fit: Fit) -> list[Foothold]:
    """Return the brackets of a plain headrail."""
    return brackets_along(fit, fit["numbers"]["headrail_height"])
