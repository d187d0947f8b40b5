"""How a louvered panel is made up: its louvers, their pitch, and how far they swing out of it."""

from configurator.kernel.mechanisms.blades import spread_count, spread_pitch
from configurator.kernel.mechanisms.louver_panel import louver_bays, louver_swing
from configurator.kernel.shapes import Figure, Fit
from configurator.kernel.telling import count, figure, length, working


def louver_figures(fit: Fit) -> list[Figure]:
    """Return count, pitch and sweep of the louvers."""
    numbers = fit["numbers"]
    bays = louver_bays(fit)
    height = bays[0][1] - bays[0][0]
    sweep = louver_swing(numbers)
    louvers = spread_count(height, numbers["louver_pitch"], sweep)
    return [
        figure(
            "louver_count",
            "louvers",
            count(louvers * len(bays)),
            working(
                "the fewest at no more than the greatest pitch, the end ones free to turn",
                "(ceil(({height} - {sweep}) / {pitch}) + 1) x {bays}, height less sweep by pitch, in each bay",
                {
                    "height": [height, "mm"],
                    "sweep": [sweep, "mm"],
                    "pitch": [numbers["louver_pitch"], "mm"],
                    "bays": [len(bays), "count"],
                },
            ),
        ),
        figure(
            "louver_pitch",
            "louver pitch",
            length(spread_pitch(height, louvers, sweep)),
            working(
                "the bay shared out evenly between the louvers",
                "({height} - {sweep}) / {spaces}, height less sweep in so many spaces",
                {"height": [height, "mm"], "sweep": [sweep, "mm"], "spaces": [louvers - 1, "count"]},
            ),
        ),
        figure(
            "louver_sweep",
            "louver sweep past the panel, each side",
            length(max(0.0, (sweep - numbers["panel_depth"]) / 2)),
            working(
                "a turning louver needs its diagonal; what the panel does not give of it lies half on each side",
                "max(0, ({sweep} - {panel}) / 2), diagonal less panel",
                {"sweep": [sweep, "mm"], "panel": [numbers["panel_depth"], "mm"]},
            ),
        ),
    ]
