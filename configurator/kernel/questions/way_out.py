"""Is the way out kept? A caution where the published rules on doorways are touched; local code decides.

A doorway is judged in bands of height, each by what stands there: below 34 in nothing may stand in the width that must
stay clear, up to 80 in 4 in may, and what stands higher takes no width at all.
"""

from typing import TypedDict

from configurator.kernel.fit import lowest_edge, over_opening
from configurator.kernel.message import message, plain
from configurator.kernel.questions.swing_over import doorway_left, hangs_above
from configurator.kernel.questions.touch import earlier
from configurator.kernel.questions.turning import RIGHT_ANGLE, clear_width, leaf_front
from configurator.kernel.shapes import Caution, Door, Figure, Household, Piece, Reply, Sample, Travel
from configurator.kernel.telling import caution_with, figure, length, reply, working
from configurator.kernel.tongue import wording

CLEAR_WIDTH_LEAST = 812.8
CLEAR_HEIGHT_LEAST = 1981.2
LOW_UP_TO = 863.6
MID_UP_TO = 2032.0
MID_MOST = 101.6
WIDTH_RULE = wording("2010 ADA Standards 404.2.3; IRC R311.2")
BAND_RULE = wording("2010 ADA Standards 404.2.3")
HEIGHT_RULE = wording("IRC R311.2")
NO_END = 1e9


class Band(TypedDict):
    """What of a covering stands in a band of height of the doorway, out of the open leaf's face, and what it leaves.

    ``most`` is the deepest over the whole travel, ``open`` that while the covering is open; ``bare`` the clear width
    without it.
    """

    most: float
    open: float
    bare: float


def projection_between(pieces: list[Piece], low: float, high: float) -> float:
    """Return how far the pieces stand out of the leaf's face between two heights above the floor."""
    most = 0.0
    for piece in pieces:
        if piece["z1"] > most and piece["y0"] < high and piece["y1"] > low:
            most = piece["z1"]
    return most


def band_between(samples: list[Sample], low: float, high: float, bare: float) -> Band:
    """Return what stands between two heights, over the whole travel and with the covering open."""
    most = 0.0
    for sample in samples:
        most = max(most, projection_between(sample["pieces"], low, high))
    return {"most": most, "open": projection_between(samples[0]["pieces"], low, high), "bare": bare}


def band_left(band: Band) -> float:
    """Return the width that stays clear in a band at the worst place of the travel."""
    return max(0.0, band["bare"] - band["most"])


def into_figure(key: str, name: str, band: Band) -> Figure:
    """Return how far a covering stands into the doorway within a band."""
    rule = wording(
        "the open leaf turns its room face into the doorway; the deepest that stands on it between these heights, "
        "over the covering's whole travel ({open} while it is open)"
    )
    terms: dict[str, list[float | str]] = {"most": [band["most"], "mm"], "open": [band["open"], "mm"]}
    return figure(key, name, length(band["most"]), working(rule, "{most}", terms))


def left_figure(key: str, name: str, band: Band) -> Figure:
    """Return what clear width a covering leaves within a band."""
    rule = wording(
        "the clear width without the covering less what stands into it between these heights, over the whole travel"
    )
    terms: dict[str, list[float | str]] = {"bare": [band["bare"], "mm"], "most": [band["most"], "mm"]}
    return figure(key, name, length(band_left(band)), working(rule, "max(0, {bare} - {most})", terms))


def width_cautions(bare: float, covered: float) -> list[Caution]:
    """Return what to say where less than 32 in stay clear."""
    text = wording(
        "With this covering only {clear} of the doorway stay clear, less than {least}. Local code decides; ask before "
        "ordering where this door is a way out."
    )
    if bare < CLEAR_WIDTH_LEAST:
        text = wording(
            "Even without a covering this leaf, open, leaves only {clear} clear, less "
            "than {least}. Local code decides; "
            "ask before ordering where this door is a way out."
        )
    elif covered >= CLEAR_WIDTH_LEAST:
        return []
    clear = bare if bare < CLEAR_WIDTH_LEAST else covered
    terms: dict[str, list[float | str]] = {"clear": [clear, "mm"], "least": [CLEAR_WIDTH_LEAST, "mm"]}
    return [caution_with("clear_width", message(text, terms), WIDTH_RULE)]


def low_cautions(band: Band) -> list[Caution]:
    """Return what to say of the band next to the floor, where nothing may stand in the required width."""
    if band["most"] == 0 or band_left(band) >= CLEAR_WIDTH_LEAST:
        return []
    text = wording(
        "Below {height} above the floor nothing may stand in the {least} that must stay clear; on the open leaf this "
        "covering leaves {clear} there. Local code decides; ask before ordering where this door is a way out."
    )
    if band["open"] == 0 or band["bare"] - band["open"] >= CLEAR_WIDTH_LEAST:
        text = wording(
            "Below {height} above the floor nothing may stand in the {least} that must stay clear; on the open leaf "
            "this covering leaves {clear} there, but takes none of it while it is open. Local code decides; ask "
            "before ordering where this door is a way out."
        )
    terms: dict[str, list[float | str]] = {
        "height": [LOW_UP_TO, "mm"],
        "least": [CLEAR_WIDTH_LEAST, "mm"],
        "clear": [band_left(band), "mm"],
    }
    return [caution_with("way_out_low", message(text, terms), BAND_RULE)]


def mid_cautions(band: Band) -> list[Caution]:
    """Return what to say of the band above, where no more than 4 in may stand in the doorway.

    What stands beside 32 in of free doorway is not held against it.
    """
    if band["most"] <= MID_MOST or band_left(band) >= CLEAR_WIDTH_LEAST:
        return []
    text = wording(
        "Between {low} and {high} above the floor no more than {most} may stand in the doorway; on the open leaf this "
        "covering stands {deep} into it and leaves {clear}. Local code decides; ask before ordering where this door "
        "is a way out."
    )
    terms: dict[str, list[float | str]] = {
        "low": [LOW_UP_TO, "mm"],
        "high": [MID_UP_TO, "mm"],
        "most": [MID_MOST, "mm"],
        "deep": [band["most"], "mm"],
        "clear": [band_left(band), "mm"],
    }
    return [caution_with("way_out_mid", message(text, terms), BAND_RULE)]


def out_swing_way(samples: list[Sample], bare: float) -> Reply:
    """Answer for a covering that an out-swing leaf turns into the doorway."""
    low = band_between(samples, 0.0, LOW_UP_TO, bare)
    mid = band_between(samples, LOW_UP_TO, MID_UP_TO, bare)
    high = band_between(samples, MID_UP_TO, NO_END, bare)
    figures = [
        into_figure("projection_low", wording("into the doorway, in the lowest band"), low),
        into_figure("projection_mid", wording("into the doorway, in the middle band"), mid),
        left_figure("clear_low", wording("clear width in the lowest band, with the covering"), low),
        left_figure("clear_mid", wording("clear width in the middle band, with the covering"), mid),
    ]
    if high["most"] > 0:
        figures.append(into_figure("projection_high", wording("into the doorway, above the bands"), high))
    cautions = width_cautions(bare, bare)
    cautions.extend(low_cautions(low))
    cautions.extend(mid_cautions(mid))
    return reply(figures, [], cautions)


def across_caution(door: Door) -> Caution:
    """Return what to say of a covering that hangs across the doorway while it is closed."""
    text = wording(
        "While it is down or drawn, the covering hangs across the doorway. Local code "
        "decides; ask before ordering where "
        "this door is a way out."
    )
    if door["swing"] == "in":
        text = wording(
            "While it is down or drawn, the covering hangs across the doorway and the "
            "leaf cannot be opened. Local code "
            "decides; ask before ordering where this door is a way out."
        )
    return caution_with("way_out_covered", plain(text), HEIGHT_RULE)


def headroom_figure(headroom: float) -> Figure:
    """Return the height that stays free under the open covering."""
    rule = wording("the lowest edge of the open covering above the floor")
    how = working(rule, "{low}", {"low": [headroom, "mm"]})
    return figure("headroom_open", "height under the open covering", length(headroom), how)


def over_way(door: Door, samples: list[Sample], bare: float, covered: float) -> Reply:
    """Answer for a covering on the wall in front of the doorway."""
    cautions = width_cautions(bare, covered)
    cautions.append(across_caution(door))
    if not hangs_above(door, samples[0]["pieces"]):
        return reply([], [], cautions)
    headroom = lowest_edge(samples[0]["pieces"])
    if headroom < CLEAR_HEIGHT_LEAST:
        text = wording(
            "Even when open, the covering hangs {low} above the floor, lower than {least}. Local code decides; ask "
            "before ordering where this door is a way out."
        )
        terms: dict[str, list[float | str]] = {"low": [headroom, "mm"], "least": [CLEAR_HEIGHT_LEAST, "mm"]}
        cautions.append(caution_with("clear_height", message(text, terms), HEIGHT_RULE))
    return reply([headroom_figure(headroom)], [], cautions)


def widths_left(travel: Travel) -> list[float]:
    """Return the clear width without the covering, and with it: on the leaf, or open over the opening.

    An out-swing leaf's own covering is judged by its bands; for it both are alike.
    """
    door = travel["fit"]["door"]
    front = leaf_front(door)
    pieces = travel["samples"][0]["pieces"]
    if door["swing"] == "out":
        bare = clear_width(door, RIGHT_ANGLE, front)
        span = doorway_left(door, pieces) if over_opening(travel["fit"]) else [0.0, bare]
        return [bare, max(0.0, span[1] - span[0])]
    own = travel["turn"]["own"]
    both = earlier(own, travel["turn"]["covering"])
    return [clear_width(door, own["angle"], front), clear_width(door, both["angle"], front)]


def way_out_question(travel: Travel, household: Household) -> Reply:
    """Answer whether the way out is kept: 32 in clear, and what projects into it in which band of height.

    Rules: 2010 ADA Standards 404.2.3 (32 in clear; nothing projects below 34 in, at most 4 in up to 80 in) and
    IRC R311.2 (32 in wide, face of the door to the stop; 78 in high). Never decides.
    """
    door = travel["fit"]["door"]
    samples = travel["samples"]
    left = widths_left(travel)
    if over_opening(travel["fit"]):
        return over_way(door, samples, left[0], left[1])
    if door["swing"] == "out":
        return out_swing_way(samples, left[0])
    return reply([], [], width_cautions(left[0], left[1]))
