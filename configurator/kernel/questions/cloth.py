"""How much cloth the workroom cuts for a gathered panel.

Widths = (finished width x fullness + returns and hems) / bolt width, up to whole widths; each is cut
to the finished height and its allowance, up to whole pattern repeats. The rule is that of
public workroom pages; the worked examples stand in the reference tests.
"""

from configurator.kernel.numbers import step_up
from configurator.kernel.shapes import Figure, Household, Reply, Travel
from configurator.kernel.telling import count, figure, length, reply, working


def cloth_widths(width: float, fullness: float, allowance: float, bolt: float) -> float:
    """Return how many bolt widths a gathered panel takes."""
    return step_up((width * fullness + allowance) / bolt, 1.0)


def cloth_cut(height: float, allowance: float, repeat: float) -> float:
    """Return the length at which each width is cut."""
    cut = height + allowance
    if repeat > 0:
        return step_up(cut, repeat)
    return cut


def widths_figure(numbers: dict[str, float], width: float, widths: float) -> Figure:
    """Return how many widths of cloth are joined, with the working."""
    return figure(
        "cloth_widths",
        "widths of cloth",
        count(widths),
        working(
            "gathered width and allowances by the bolt, up to whole widths",
            "({width} x {fullness} + {allowance}) / {bolt}",
            {
                "width": [width, "mm"],
                "fullness": [numbers["fullness"], "count"],
                "allowance": [numbers["side_allowance"], "mm"],
                "bolt": [numbers["bolt_width"], "mm"],
            },
        ),
    )


def cut_figure(numbers: dict[str, float], height: float, cut: float) -> Figure:
    """Return the length of each width, with the working."""
    repeats = ", in repeats of {repeat}" if numbers["pattern_repeat"] > 0 else ""
    return figure(
        "cloth_cut",
        "cut length of each width",
        length(cut),
        working(
            "finished height and allowances, up to whole pattern repeats",
            "{height} + {allowance}" + repeats,
            {
                "height": [height, "mm"],
                "allowance": [numbers["cut_allowance"], "mm"],
                "repeat": [numbers["pattern_repeat"], "mm"],
            },
        ),
    )


def cloth_question(travel: Travel, household: Household) -> Reply:
    """Answer with widths, cut length and total of cloth; nothing where nothing is gathered."""
    numbers = travel["fit"]["numbers"]
    size = travel["fit"]["size"]
    if numbers.get("fullness", 0.0) == 0:
        return reply([], [], [])
    width = size["x1"] - size["x0"]
    height = size["y1"] - size["y0"]
    widths = cloth_widths(width, numbers["fullness"], numbers["side_allowance"], numbers["bolt_width"])
    cut = cloth_cut(height, numbers["cut_allowance"], numbers["pattern_repeat"])
    terms: dict[str, list[float | str]] = {"widths": [widths, "count"], "cut": [cut, "mm"]}
    total = working("every width at its cut length", "{widths} x {cut}", terms)
    figures = [
        widths_figure(numbers, width, widths),
        cut_figure(numbers, height, cut),
        figure("cloth_total", "cloth in all", length(widths * cut), total),
    ]
    return reply(figures, [], [])
