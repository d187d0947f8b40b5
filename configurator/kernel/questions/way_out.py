"""Is the way out kept? A caution where the published rules on doorways are touched; local code decides."""

from configurator.kernel.fit import lowest_edge, over_opening
from configurator.kernel.questions.swing import swing_question
from configurator.kernel.questions.swing_over import hangs_above
from configurator.kernel.shapes import Caution, Door, Figure, Household, Piece, Reply, Sample, Travel
from configurator.kernel.telling import caution, figure, figure_value, length, reply, working

CLEAR_WIDTH_LEAST = 812.8
CLEAR_HEIGHT_LEAST = 1981.2
LOW_UP_TO = 863.6
MID_UP_TO = 2032.0
MID_MOST = 101.6
WIDTH_RULE = "2010 ADA Standards 404.2.3; IRC R311.2"
HEIGHT_RULE = "IRC R311.2"
LOCAL_CODE = " Local code decides; ask before ordering where this door is a way out."


def projection_between(pieces: list[Piece], low: float, high: float) -> float:
    """Return how far the pieces stand out of the leaf's face between two heights above the floor."""
    most = 0.0
    for piece in pieces:
        if piece["y0"] < high and piece["y1"] > low:
            most = max(most, piece["z1"])
    return most


def most_between(samples: list[Sample], low: float, high: float) -> float:
    """Return the deepest projection between two heights over the whole travel."""
    most = 0.0
    for sample in samples:
        most = max(most, projection_between(sample["pieces"], low, high))
    return most


def doorway_figure(key: str, name: str, value: float, open_value: float) -> Figure:
    """Return a projection into the doorway with its working."""
    return figure(
        key,
        name,
        length(value),
        working(
            "the open leaf turns its room face into the doorway; the deepest that stands on it between these heights, "
            "over the covering's whole travel",
            "{value} at most; {open} while the covering is open",
            {"value": [value, "mm"], "open": [open_value, "mm"]},
        ),
    )


def width_cautions(bare: float, covered: float) -> list[Caution]:
    """Return what to say where less than 32 in stay clear."""
    if bare < CLEAR_WIDTH_LEAST:
        text = "Even without a covering this leaf, open, leaves less than 32 in clear."
        return [caution("clear_width", text + LOCAL_CODE, WIDTH_RULE)]
    if covered < CLEAR_WIDTH_LEAST:
        text = "With this covering less than 32 in of the doorway stay clear."
        return [caution("clear_width", text + LOCAL_CODE, WIDTH_RULE)]
    return []


def projection_caution(low: float, mid: float, low_open: float) -> Caution:
    """Return what to say where a covering stands in the 32 in that must stay clear."""
    text = "On the open leaf the covering stands in the doorway."
    if low > 0:
        text = text + " Below 34 in above the floor nothing may project into the clear width"
        text = text + ("; raised, this covering keeps that." if low_open == 0 else ".")
    if mid > MID_MOST:
        text = text + " Between 34 and 80 in no more than 4 in may."
    return caution("way_out_projection", text + LOCAL_CODE, "2010 ADA Standards 404.2.3")


def out_swing_way(samples: list[Sample], bare: float, covered: float) -> Reply:
    """Answer for a covering that an out-swing leaf turns into the doorway."""
    low = most_between(samples, 0.0, LOW_UP_TO)
    mid = most_between(samples, LOW_UP_TO, MID_UP_TO)
    low_open = projection_between(samples[0]["pieces"], 0.0, LOW_UP_TO)
    mid_open = projection_between(samples[0]["pieces"], LOW_UP_TO, MID_UP_TO)
    figures = [
        doorway_figure("projection_low", "into the doorway, below 34 in", low, low_open),
        doorway_figure("projection_mid", "into the doorway, between 34 and 80 in", mid, mid_open),
    ]
    cautions = width_cautions(bare, covered)
    # The rule guards the required width only: what stands beside 32 in of free doorway does not touch it.
    if covered < CLEAR_WIDTH_LEAST and (low > 0 or mid > MID_MOST):
        cautions.append(projection_caution(low, mid, low_open))
    return reply(figures, [], cautions)


def over_way(door: Door, samples: list[Sample], bare: float, covered: float) -> Reply:
    """Answer for a covering on the wall in front of the doorway."""
    text = "While it is down or drawn, the covering hangs across the doorway"
    if door["swing"] == "in":
        text = text + " and the leaf cannot be opened"
    cautions = width_cautions(bare, covered)
    cautions.append(caution("way_out_covered", text + "." + LOCAL_CODE, "IRC R311.2"))
    headroom = lowest_edge(samples[0]["pieces"])
    if headroom < CLEAR_HEIGHT_LEAST and hangs_above(door, samples[0]["pieces"]):
        text = "Even when open, the covering hangs lower than 78 in above the floor."
        cautions.append(caution("clear_height", text + LOCAL_CODE, HEIGHT_RULE))
    return reply([], [], cautions)


def way_out_question(travel: Travel, household: Household) -> Reply:
    """Answer whether the way out is kept: 32 in clear, and what projects into it.

    Rules: 2010 ADA Standards 404.2.3 (32 in clear; nothing projects below 34 in, at most 4 in up to 80 in) and
    IRC R311.2 (32 in wide, 78 in high). Speaks only where a rule is touched, and never decides.
    """
    door = travel["fit"]["door"]
    samples = travel["samples"]
    swing = swing_question(travel, household)["figures"]
    bare = figure_value(swing, "clear_width_bare")
    covered = figure_value(swing, "clear_width_covered")
    if over_opening(travel["fit"]):
        return over_way(door, samples, bare, covered)
    if door["swing"] == "out":
        return out_swing_way(samples, bare, covered)
    return reply([], [], width_cautions(bare, covered))
