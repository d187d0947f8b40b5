"""How much cloth the workroom cuts, where its seams fall, and the same of a lining.

Widths = flat width, gathered and with its hems and returns, by the bolt, up to whole widths; each is cut to the flat
length, heading and hem in it, up to whole pattern repeats. A panel short enough for the bolt's width is cut from cloth
run sideways instead, without a seam, where the cloth allows it. The rule is that of public workroom pages; the worked
examples stand in the reference tests.
"""

from configurator.kernel.numbers import step_down, step_up
from configurator.kernel.shapes import Cloth, Cuts, Figure, Household, Measured, Reply, Travel, Working
from configurator.kernel.telling import count, figure, length, reply, run, working
from configurator.kernel.tongue import wording

# What each figure is called, by what is cut.
CLOTH_NAMES: dict[str, dict[str, str]] = {
    "cloth": {
        "flat": wording("flat width of each panel of cloth"),
        "widths": wording("widths of cloth on a leaf"),
        "cut": wording("cut length of each width of cloth"),
        "sideways": wording("cut length of each panel, the cloth run sideways"),
        "seams": wording("seams in each panel of cloth"),
        "seam_lead": wording("first seam from the leading edge, in the finished panel"),
        "seam": wording("first seam from the left edge, in the finished panel"),
        "apart": wording("distance from seam to seam, in the finished panel"),
        "leaf": wording("cloth for this leaf"),
        "other": wording("cloth for the other leaf"),
        "total": wording("cloth in all"),
    },
    "lining": {
        "flat": wording("flat width of each panel of lining"),
        "widths": wording("widths of lining on a leaf"),
        "cut": wording("cut length of each width of lining"),
        "sideways": wording("cut length of each panel, the lining run sideways"),
        "seams": wording("seams in each panel of lining"),
        "seam_lead": wording("lining's first seam from the leading edge, in the finished panel"),
        "seam": wording("lining's first seam from the left edge, in the finished panel"),
        "apart": wording("distance from seam to seam of the lining, in the finished panel"),
        "leaf": wording("lining for this leaf"),
        "other": wording("lining for the other leaf"),
        "total": wording("lining in all"),
    },
}


def cloth_widths(flat: float, panels: float, bolt: float) -> float:
    """Return how many bolt widths ``panels`` of a flat width take; what is left of one serves the next panel."""
    if panels <= 2:
        return step_up(panels * flat / bolt, 1.0)
    if flat <= bolt:
        return step_up(panels / step_down(bolt / flat, 1.0), 1.0)
    return panels * step_up(flat / bolt, 1.0)


def cloth_cut(flat: float, repeat: float) -> float:
    """Return the length at which each width is cut: up to whole pattern repeats."""
    return step_up(flat, repeat) if repeat > 0 else flat


def run_sideways(cloth: Cloth) -> bool:
    """Return whether the panel is cut with the cloth run sideways: its length then lies across the bolt."""
    return cloth["railroads"] > 0 and cloth["length"]["value"] <= cloth["bolt"]


def cut_measure(cloth: Cloth) -> Measured:
    """Return what lies along the bolt: the flat length, or of cloth run sideways the flat width."""
    return cloth["width"] if run_sideways(cloth) else cloth["length"]


def lengths_cut(cloth: Cloth) -> float:
    """Return how many lengths are cut from the bolt for one leaf."""
    if run_sideways(cloth):
        return cloth["panels"]
    return cloth_widths(cloth["width"]["value"], cloth["panels"], cloth["bolt"])


def cloth_run(cloth: Cloth) -> float:
    """Return the length of cloth that one leaf takes from the bolt."""
    return lengths_cut(cloth) * cloth_cut(cut_measure(cloth)["value"], cloth["repeat"])


def worked_into(how: Working, rule: str, before: str, after: str) -> Working:
    """Return a working whose arithmetic goes on round that of another, whose terms it may add to."""
    terms: dict[str, list[float | str]] = {}
    for name, term in how["terms"].items():
        terms[name] = term
    return working(rule, before + how["template"] + after, terms)


def widths_figure(cloth: Cloth) -> Figure:
    """Return how many widths of cloth are cut for a leaf."""
    how = cloth["width"]["how"]
    panels = cloth["panels"]
    rule = wording("the flat width of all panels by the bolt, up to whole widths")
    if panels <= 2:
        made = worked_into(how, rule, "ceil({count} x (", ") / {bolt})")
    elif cloth["width"]["value"] <= cloth["bolt"]:
        rule = wording("as many panels side by side as the bolt holds")
        made = worked_into(how, rule, "ceil({count} / floor({bolt} / (", ")))")
    else:
        made = worked_into(
            how, wording("each panel by the bolt, up to whole widths"), "{count} x ceil((", ") / {bolt})"
        )
    made["terms"]["count"] = [panels, "count"]
    made["terms"]["bolt"] = [cloth["bolt"], "mm"]
    value = cloth_widths(cloth["width"]["value"], panels, cloth["bolt"])
    return figure(cloth["key"] + "_widths", CLOTH_NAMES[cloth["key"]]["widths"], count(value), made)


def cut_figure(cloth: Cloth) -> Figure:
    """Return the length at which each width is cut, or each panel where the cloth is run sideways."""
    given = cut_measure(cloth)
    how = given["how"]
    name = CLOTH_NAMES[cloth["key"]]["sideways" if run_sideways(cloth) else "cut"]
    if cloth["repeat"] > 0:
        how = worked_into(
            how,
            wording("the flat length with all that it holds, up to whole pattern repeats"),
            "{repeat} x ceil((",
            ") / {repeat})",
        )
        how["terms"]["repeat"] = [cloth["repeat"], "mm"]
    return figure(cloth["key"] + "_cut", name, length(cloth_cut(given["value"], cloth["repeat"])), how)


def seam_terms(cloth: Cloth) -> dict[str, list[float | str]]:
    """Return the terms of which the place of a seam is worked out."""
    return {
        "flat": [cloth["width"]["value"], "mm"],
        "bolt": [cloth["bolt"], "mm"],
        "side": [cloth["hem"], "mm"],
        "fullness": [cloth["fullness"], "count"],
    }


def seams_from_edge(cloth: Cloth, widths: float) -> list[Figure]:
    """Return the seams of a panel whose whole widths start at the leading edge, what is left over at the outer one."""
    names = CLOTH_NAMES[cloth["key"]]
    terms = seam_terms(cloth)
    many = working("one less than the widths in a panel", "ceil({flat} / {bolt}) - 1", terms)
    rule = wording("the first width starts at the leading edge, less its hem, as it is gathered")
    where = working(rule, "({bolt} - {side}) / {fullness}", terms)
    first = (cloth["bolt"] - cloth["hem"]) / cloth["fullness"]
    return [
        figure(cloth["key"] + "_seams", names["seams"], count(widths - 1), many),
        figure(cloth["key"] + "_seam", names["seam_lead"], length(first), where),
    ]


def seams_about_middle(cloth: Cloth, widths: float) -> list[Figure]:
    """Return the seams of a panel whose whole widths stand in the middle, one more halved to both sides."""
    names = CLOTH_NAMES[cloth["key"]]
    terms = seam_terms(cloth)
    many = working("whole widths in the middle, one more halved to the two sides", "ceil({flat} / {bolt})", terms)
    where = working(
        "what the whole widths in the middle leave, halved to both sides, less a hem, as it is gathered",
        "max(0, (({flat} - (ceil({flat} / {bolt}) - 1) x {bolt}) / 2 - {side}) / {fullness})",
        terms,
    )
    left = (cloth["width"]["value"] - (widths - 1) * cloth["bolt"]) / 2
    first = max(0.0, (left - cloth["hem"]) / cloth["fullness"])
    return [
        figure(cloth["key"] + "_seams", names["seams"], count(widths), many),
        figure(cloth["key"] + "_seam", names["seam"], length(first), where),
    ]


def seam_figures(cloth: Cloth) -> list[Figure]:
    """Return how many seams a panel has, where the first falls and how far apart they are; nothing without a seam."""
    widths = step_up(cloth["width"]["value"] / cloth["bolt"], 1.0)
    if widths < 2:
        return []
    found = seams_from_edge(cloth, widths) if cloth["leads"] > 0 else seams_about_middle(cloth, widths)
    if found[0]["value"] > 1:
        name = CLOTH_NAMES[cloth["key"]]["apart"]
        step = working("the bolt's width as it is gathered", "{bolt} / {fullness}", seam_terms(cloth))
        found.append(figure(cloth["key"] + "_seam_apart", name, length(cloth["bolt"] / cloth["fullness"]), step))
    return found


def run_figure(cloth: Cloth, key: str) -> Figure:
    """Return the length of cloth that one leaf takes from the bolt, as the figure with this key."""
    cut = cloth_cut(cut_measure(cloth)["value"], cloth["repeat"])
    terms: dict[str, list[float | str]] = {"count": [lengths_cut(cloth), "count"], "cut": [cut, "mm"]}
    rule = wording("every width at its cut length")
    if run_sideways(cloth):
        rule = wording("every panel at its cut length, the cloth run sideways")
    name = CLOTH_NAMES[cloth["key"]][key]
    return figure(cloth["key"] + "_" + key, name, run(cloth_run(cloth)), working(rule, "{count} x {cut}", terms))


def cloth_of(cuts: Cuts, key: str) -> list[Cloth]:
    """Return the cloth of a key among the cuts: one, or none."""
    return [cloth for cloth in cuts["cloths"] if cloth["key"] == key]


def total_figures(cloth: Cloth, others: list[Cloth]) -> list[Figure]:
    """Return the cloth for each leaf and in all."""
    if len(others) == 0:
        return [run_figure(cloth, "total")]
    own = cloth_run(cloth)
    other = cloth_run(others[0])
    terms: dict[str, list[float | str]] = {"leaf": [own, "run"], "other": [other, "run"]}
    rule = wording("the cloth of both leaves, each by its own size")
    name = CLOTH_NAMES[cloth["key"]]["total"]
    total = figure(cloth["key"] + "_total", name, run(own + other), working(rule, "{leaf} + {other}", terms))
    return [run_figure(cloth, "leaf"), run_figure(others[0], "other"), total]


def cloth_figures(cloth: Cloth, others: list[Cloth]) -> list[Figure]:
    """Return all that is told of one kind of cloth; ``others`` holds that of the other leaf, where it is dressed."""
    flat = cloth["width"]
    figures = [
        figure(cloth["key"] + "_flat", CLOTH_NAMES[cloth["key"]]["flat"], length(flat["value"]), flat["how"]),
        cut_figure(cloth),
    ]
    if not run_sideways(cloth):
        figures.append(widths_figure(cloth))
        figures.extend(seam_figures(cloth))
    figures.extend(total_figures(cloth, others))
    return figures


def cloth_question(travel: Travel, household: Household) -> Reply:
    """Answer with the cuts and the total of cloth and lining; nothing where no cloth is cut."""
    cuts = travel["cuts"]
    figures: list[Figure] = []
    for cloth in cuts[0]["cloths"]:
        figures.extend(cloth_figures(cloth, cloth_of(cuts[1], cloth["key"]) if len(cuts) > 1 else []))
    return reply(figures, [], [])
