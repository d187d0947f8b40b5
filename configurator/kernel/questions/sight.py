"""Who sees me? Which band of the glass must be covered against a given observer."""

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.fit import lowest_edge, pieces_at
from configurator.kernel.glass_shares import bare_sidelights, shares_within
from configurator.kernel.message import plain
from configurator.kernel.numbers import clamp
from configurator.kernel.position import coarse, position
from configurator.kernel.shapes import Door, Figure, Household, Piece, Reply, Travel, Verdict, Working
from configurator.kernel.telling import figure, length, reply, share, verdict, working
from configurator.kernel.tongue import wording

SIGHT_NAME = wording("hiding from a view outside")
# Less of the view than this shows nobody; no source.
HIDES = 0.02
HIDDEN = wording("Closed, or as far down as given, the covering hides the person from this observer.")
SEEN = wording(
    "Even closed, the covering lets some of the view through, most of all at night with the light on inside."
)
BESIDE = wording(
    "Closed, or as far down as given, the covering hides a person behind the leaf from this observer, but not one "
    "behind the sidelights, which stay bare. They can be dressed on their own, or a covering above the opening spans "
    "them."
)
SEEN_BESIDE = wording(
    "Even closed, the covering lets some of the view through, most of all at night with the light on inside. The "
    "sidelights stay bare: they can be dressed on their own, or a covering above the opening spans them."
)


def sight_crossing(household: Household, height: float) -> float:
    """Return the height at which the line from the observer's eye to a height on the person crosses the glass.

    eye + (height - eye) x outside / (outside + inside), with the distances of both from the glass.
    """
    eye = household["outside_level"] + household["outside_eye"]
    total = household["outside_distance"] + household["person_distance"]
    if total <= 0:
        return eye
    return eye + (height - eye) * household["outside_distance"] / total


def sight_band(door: Door, household: Household) -> list[float]:
    """Return ``[low, high]`` of the glass through which the person is seen, from the floor to the top of the head.

    Empty (both the same) where the lines pass above or below the glass.
    """
    glass = glass_box(door)
    low = clamp(sight_crossing(household, 0.0), glass["y0"], glass["y1"])
    high = clamp(sight_crossing(household, household["person_height"]), glass["y0"], glass["y1"])
    return [low, high]


def sight_working(door: Door, household: Household, height: float) -> Working:
    """Return how one edge of the band came about: that of the line to a height on the person."""
    glass = glass_box(door)
    return working(
        "the straight line from the observer's eye to the person, where it crosses the glass, above the floor; "
        "held within the glass",
        "max({foot}, min({top}, {eye} + ({height} - {eye}) x {outside} / ({outside} + {inside})))",
        {
            "foot": [glass["y0"], "mm"],
            "top": [glass["y1"], "mm"],
            "eye": [household["outside_level"] + household["outside_eye"], "mm"],
            "height": [height, "mm"],
            "outside": [household["outside_distance"], "mm"],
            "inside": [household["person_distance"], "mm"],
        },
    )


def rail_share_figure(key: str, name: str, start: float, end: float, edge: float) -> Figure:
    """Return how far an edge must travel from ``start`` towards ``end`` to stand at ``edge``."""
    return figure(
        key,
        name,
        share(clamp((start - edge) / (start - end), 0.0, 1.0)),
        working(
            "the edge's way to the band as a share of its whole way; 1 where even its whole way falls short",
            "({start} - {edge}) / ({start} - {end})",
            {"start": [start, "mm"], "edge": [edge, "mm"], "end": [end, "mm"]},
        ),
    )


def upper_edge(pieces: list[Piece], missing: float) -> float:
    """Return the top of the upper rail, or ``missing`` where there is none."""
    for piece in pieces:
        if piece["kind"] == "upper-rail":
            return piece["y1"]
    return missing


def band_view(door: Door, band: list[float], down: list[Piece]) -> float:
    """Return what of the view comes through the band past the closed covering, in the middle third of the glass.

    A third of the glass, not one line: a line would fall into the joint of what draws to both sides.
    """
    glass = glass_box(door)
    third = (glass["x1"] - glass["x0"]) / 3
    return shares_within([[glass["x0"] + third, glass["x1"] - third]], [band], down)["view"]


def view_figure(view: float) -> Figure:
    """Return what of the view still comes through the band when closed."""
    return figure(
        "sight_view",
        "view through that band when closed",
        share(view),
        working(
            "what of the view the closed covering lets through in the middle third of the glass, between these heights",
            "{view}, of the view",
            {"view": [view, "share"]},
        ),
    )


def sight_verdict(view: float, beside: bool) -> Verdict:
    """Return whether the closed covering hides the person from the observer; ``beside`` where sidelights stay bare."""
    hides = view <= HIDES
    if beside:
        return verdict("sight", SIGHT_NAME, "caution", plain(BESIDE if hides else SEEN_BESIDE))
    return verdict("sight", SIGHT_NAME, "clears" if hides else "caution", plain(HIDDEN if hides else SEEN))


def let_down(travel: Travel) -> list[Piece]:
    """Return the covering closed, with an upper rail that travels let down on the lower one."""
    numbers = travel["fit"]["numbers"]
    if numbers["upper_moves"] == 0:
        return travel["down"]
    return pieces_at(travel["fit"], coarse(position(1.0, 1.0, numbers["tilt_closed"])))


def sight_question(travel: Travel, household: Household) -> Reply:
    """Answer which band of the glass must be covered, and where the rails then stand.

    No share is given for a rail that does not travel, or where nothing need be covered.
    """
    door = travel["fit"]["door"]
    raised = travel["raised"]
    down = travel["down"]
    band = sight_band(door, household)
    tall = household["person_height"]
    seen = band[1] > band[0]
    figures = [
        figure("sight_low", "seen from outside: from", length(band[0]), sight_working(door, household, 0.0)),
        figure("sight_high", "seen from outside: up to", length(band[1]), sight_working(door, household, tall)),
    ]
    start = lowest_edge(raised)
    end = lowest_edge(down)
    if seen and start - end > 1.0:
        figures.append(
            rail_share_figure("sight_lower", wording("to hide that band: bottom rail at"), start, end, band[0])
        )
    top = upper_edge(down, 0.0)
    foot = upper_edge(let_down(travel), 0.0)
    if seen and top - foot > 1.0:
        figures.append(rail_share_figure("sight_upper", wording("or from below: upper rail at"), top, foot, band[1]))
    if not seen:
        why = wording("From there the lines of sight miss the glass; nothing need be covered.")
        return reply(figures, [verdict("sight", SIGHT_NAME, "clears", plain(why))], [])
    view = band_view(door, band, down)
    figures.append(view_figure(view))
    return reply(figures, [sight_verdict(view, bare_sidelights(travel["fit"]) > 0)], [])
