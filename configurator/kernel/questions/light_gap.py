"""The strips of light beside a rolled cloth, which is narrower than its brackets."""

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.mechanisms.roll import cloth_span
from configurator.kernel.mount.cassette import has_roll
from configurator.kernel.questions.figure import figure
from configurator.kernel.shapes import Door, Figure, Size


def light_gap_figures(door: Door, numbers: dict[str, float], size: Size) -> list[Figure]:
    """Return the cloth's width and the bare glass beside it, hinge and latch side; nothing for other kinds."""
    figures: list[Figure] = []
    if not has_roll(numbers) or size["mount"] == "over-opening":
        return figures
    glass = glass_box(door)
    cloth = cloth_span(numbers, size)
    figures.append(
        figure(
            "cloth_width",
            "cloth width",
            cloth[1] - cloth[0],
            "mm",
            "the order width less what the brackets take on either side",
            "{order} less twice {bracket}",
            {"order": [size["x1"] - size["x0"], "mm"], "bracket": [numbers["bracket_gap"], "mm"]},
        )
    )
    figures.append(bare_figure("hinge", cloth[0] - glass["x0"]))
    figures.append(bare_figure("latch", glass["x1"] - cloth[1]))
    return figures


def bare_figure(side: str, gap: float) -> Figure:
    """Return the strip of glass that the cloth leaves bare on one side."""
    return figure(
        "light_gap_" + side,
        "light gap on the " + side + " side",
        max(0.0, gap),
        "mm",
        "the glass beyond the cloth's edge, not less than nothing",
        "edge of the glass against edge of the cloth: {gap}",
        {"gap": [gap, "mm"]},
    )
