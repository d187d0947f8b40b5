"""To which lengths rods, tubes, tracks and rails are cut."""

from configurator.kernel.shapes import Bar, Cuts, Figure, Household, Reply, Travel
from configurator.kernel.telling import figure, length, reply
from configurator.kernel.tongue import wording

# Lengths closer than this are one length on any saw.
SAME_CUT = 0.5

# What the cut of each kind of bar is called, on this leaf and on the other.
BAR_NAMES: dict[str, list[str]] = {
    "rod": [wording("cut length of each rod"), wording("cut length of each rod on the other leaf")],
    "tube": [wording("cut length of the tube"), wording("cut length of the tube on the other leaf")],
    "cassette": [wording("cut length of the cassette"), wording("cut length of the cassette on the other leaf")],
    "headrail": [wording("cut length of the headrail"), wording("cut length of the headrail on the other leaf")],
    "track": [wording("cut length of the track"), wording("cut length of the track on the other leaf")],
    "upper_rail": [wording("cut length of the upper rail"), wording("cut length of the upper rail on the other leaf")],
    "bottom_rail": [
        wording("cut length of each bottom rail"),
        wording("cut length of each bottom rail on the other leaf"),
    ],
}


def bar_figure(bar: Bar, leaf: int) -> Figure:
    """Return to what length a bar is cut, on this leaf (0) or on the other (1)."""
    key = bar["key"] + ("_cut" if leaf == 0 else "_cut_other")
    return figure(key, BAR_NAMES[bar["key"]][leaf], length(bar["length"]["value"]), bar["length"]["how"])


def cut_otherwise(bar: Bar, cuts: Cuts) -> list[Bar]:
    """Return the same bar of the other leaf where it has another length."""
    own = bar["length"]["value"]
    same = [other for other in cuts["bars"] if other["key"] == bar["key"]]
    return [other for other in same if abs(other["length"]["value"] - own) >= SAME_CUT]


def bars_question(travel: Travel, household: Household) -> Reply:
    """Answer with the cut length of each bar; of the other leaf's only where it differs."""
    cuts = travel["cuts"]
    figures: list[Figure] = []
    for bar in cuts[0]["bars"]:
        figures.append(bar_figure(bar, 0))
        if len(cuts) > 1:
            figures.extend([bar_figure(other, 1) for other in cut_otherwise(bar, cuts[1])])
    return reply(figures, [], [])
