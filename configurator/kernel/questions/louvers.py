"""How a louvered panel is made up, and what a cut-out costs in glass and in privacy."""

from configurator.kernel.mechanisms.blades import spread_count, spread_pitch
from configurator.kernel.mechanisms.louver_panel import louver_bays, louver_swing, panel_light
from configurator.kernel.mount.cutout import without_cutout
from configurator.kernel.questions.figure import figure
from configurator.kernel.questions.glass import glass_shares
from configurator.kernel.sampling import covering_pieces
from configurator.kernel.shapes import Door, Figure, Position, Size
from configurator.kernel.travel import closed_position, open_position


def louver_figures(door: Door, mechanism: str, numbers: dict[str, float], size: Size) -> list[Figure]:
    """Return count, pitch, sweep and the cut-out's figures; nothing for a family without louvers."""
    figures: list[Figure] = []
    if numbers.get("louver_width", 0.0) == 0:
        return figures
    bay = louver_bays(numbers, panel_light(numbers, size))[0]
    bays = len(louver_bays(numbers, panel_light(numbers, size)))
    height = bay[1] - bay[0]
    sweep = louver_swing(numbers)
    count = spread_count(height, numbers["louver_pitch"], sweep)
    figures.append(
        figure(
            "louver_count",
            "louvers",
            count * bays,
            "count",
            "the fewest at no more than the greatest pitch, the end ones free to turn",
            "({height} less sweep {sweep}) by {pitch}, up to whole spaces, and one, in each of {bays} bays",
            {
                "height": [height, "mm"],
                "sweep": [sweep, "mm"],
                "pitch": [numbers["louver_pitch"], "mm"],
                "bays": [bays, "count"],
            },
        )
    )
    figures.append(
        figure(
            "louver_pitch",
            "louver pitch",
            spread_pitch(height, count, sweep),
            "mm",
            "the bay shared out evenly between the louvers",
            "({height} less sweep {sweep}) in {spaces} spaces",
            {"height": [height, "mm"], "sweep": [sweep, "mm"], "spaces": [count - 1, "count"]},
        )
    )
    figures.append(sweep_figure(numbers, sweep))
    if size["cutout"]["x1"] > size["cutout"]["x0"]:
        figures.extend(cutout_figures(door, mechanism, numbers, size))
    return figures


def sweep_figure(numbers: dict[str, float], sweep: float) -> Figure:
    """Return how far the louvers swing out of the panel on each side."""
    return figure(
        "louver_sweep",
        "louver sweep past the panel, each side",
        max(0.0, (sweep - numbers["panel_depth"]) / 2),
        "mm",
        "a turning louver needs its diagonal; what the panel's own thickness does not give lies half on each side",
        "(diagonal {sweep} less panel {panel}) / 2",
        {"sweep": [sweep, "mm"], "panel": [numbers["panel_depth"], "mm"]},
    )


def cutout_figures(door: Door, mechanism: str, numbers: dict[str, float], size: Size) -> list[Figure]:
    """Return the cut-out's size and place, and its cost against the same panel without one."""
    hole = size["cutout"]
    clear = numbers["cutout_clear"]
    rule = "all parts of the handle and the clearance round them, open to the latch side"
    return [
        figure(
            "cutout_width",
            "cut-out width",
            hole["x1"] - hole["x0"],
            "mm",
            rule,
            "from {x0} to {x1} from the hinge edge, clearance {clear} included",
            {"x0": [hole["x0"], "mm"], "x1": [hole["x1"], "mm"], "clear": [clear, "mm"]},
        ),
        figure(
            "cutout_height",
            "cut-out height",
            hole["y1"] - hole["y0"],
            "mm",
            rule,
            "from {y0} to {y1} above the floor, clearance {clear} included",
            {"y0": [hole["y0"], "mm"], "y1": [hole["y1"], "mm"], "clear": [clear, "mm"]},
        ),
        cost_figure(door, mechanism, numbers, size, open_position(numbers), "cutout_glass", "glass"),
        cost_figure(door, mechanism, numbers, size, closed_position(numbers), "cutout_privacy", "privacy"),
    ]


def cost_figure(
    door: Door, mechanism: str, numbers: dict[str, float], size: Size, place: Position, key: str, name: str
) -> Figure:
    """Return a cut-out's cost: view hidden by its frame when open, or glass left bare when closed."""
    whole = size["mount"] == "over-opening"
    cut = glass_shares(door, whole, covering_pieces(mechanism, numbers, size, place))
    plain = glass_shares(door, whole, covering_pieces(mechanism, numbers, without_cutout(size), place))
    cost = plain["view"] - cut["view"] if name == "glass" else cut["visible"] - plain["visible"]
    rule = "the view that its frame takes when open" if name == "glass" else "the glass that it leaves bare when closed"
    return figure(
        key,
        "cost of the cut-out in " + name,
        max(0.0, cost),
        "share",
        rule,
        "without the cut-out {plain}, with it {cut}",
        {
            "plain": [plain["view"] if name == "glass" else plain["visible"], "share"],
            "cut": [cut["view"] if name == "glass" else cut["visible"], "share"],
        },
    )
