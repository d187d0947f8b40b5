"""Where is it fixed? Places as an installer marks them, the screws' length, and what holds the foot down."""

from configurator.kernel.fit import over_opening
from configurator.kernel.mount.fixing_spots import FAR_FACE
from configurator.kernel.shapes import Caution, Figure, Fit, Fixing, Household, Piece, Reply, Travel
from configurator.kernel.telling import caution, count, figure, length, reply, working
from configurator.kernel.tongue import wording

# Screw lines that lie nearer to each other than this, mm, are one line on any tape.
SAME_LINE = 0.5

END_RULE = wording(
    "from the covering's end to the middle of the fixing nearest to it, slid along to where there is wood"
)
COUNT_NAMES = {
    "bracket": wording("brackets"),
    "rod-holder": wording("rod holders"),
    "screw": wording("screws in the frame"),
}


def middle_of(piece: Piece) -> float:
    """Return the x of a piece's middle."""
    return (piece["x0"] + piece["x1"]) / 2


def held_places(fit: Fit, down: bool) -> list[Fixing]:
    """Return the hold-downs, or all the other fixings."""
    return [fixing for fixing in fit["fixings"] if (fixing["piece"]["kind"] == "hold-down") == down]


def first_figure(width: float, place: float) -> Figure:
    """Return how far from the hinge-side end, over the covering's width, the nearest fixing's middle lies."""
    how = working(END_RULE, "{place}, of a width of {width}", {"place": [place, "mm"], "width": [width, "mm"]})
    return figure("fixing_first", "first fixing from the hinge-side end", length(place), how)


def last_figure(width: float, place: float) -> Figure:
    """Return how far from the latch-side end the nearest fixing lies; ``place`` is from the hinge-side end."""
    how = working(END_RULE, "{width} - {place}", {"place": [place, "mm"], "width": [width, "mm"]})
    return figure("fixing_last", "first fixing from the latch-side end", length(width - place), how)


def line_figure(key: str, name: str, top: float, y: float) -> Figure:
    """Return the height of a line of screws above the floor, told from the covering's top edge too."""
    rule = wording("the screws' middle, from the covering's top edge")
    away = abs(top - y)
    terms: dict[str, list[float | str]] = {"top": [top, "mm"], "away": [away, "mm"]}
    template = "{top} + {away}" if y > top else "{top} - {away}"
    return figure(key, name, length(y), working(rule, template, terms))


def line_figures(fit: Fit, places: list[Fixing]) -> list[Figure]:
    """Return the height of the screw line, and of the lowest one where there are several."""
    top = fit["size"]["y1"]
    heights = [(fixing["piece"]["y0"] + fixing["piece"]["y1"]) / 2 for fixing in places]
    low = min(heights)
    high = max(heights)
    figures = [line_figure("fixing_height", wording("upper screws above the floor"), top, high)]
    if high - low > SAME_LINE:
        figures.append(line_figure("fixing_low", wording("lowest screws above the floor"), top, low))
    return figures


def ceiling_figure(fit: Fit, first: Fixing) -> Figure:
    """Return how far from the wall the screws in a ceiling lie."""
    wall = fit["door"]["reveal"]
    z = first["spots"][0][1]
    how = working(
        "the middle of the headrail's depth", "{middle} - {wall}", {"middle": [z, "mm"], "wall": [wall, "mm"]}
    )
    return figure("fixing_out", "screws in the ceiling, from the wall", length(z - wall), how)


def screw_figure(key: str, name: str, fit: Fit, fixing: Fixing) -> Figure:
    """Return the length of screw that a fixing needs."""
    rule = wording(
        "what lies under the screw's head, the spacer behind it, and the usual thread in the wood, or less where the "
        "leaf is too thin to keep the point off its far face"
    )
    template = wording("{plate} + {spacer} + {thread}, the leaf {leaf} thick and {keep} kept off its far face")
    terms: dict[str, list[float | str]] = {
        "plate": [fit["numbers"]["fixing_plate"], "mm"],
        "spacer": [fixing["spacer"], "mm"],
        "thread": [fixing["thread"], "mm"],
        "leaf": [fit["door"]["leaf_thickness"], "mm"],
        "keep": [FAR_FACE, "mm"],
    }
    if fixing["plane"] != "leaf":
        rule = wording("what lies under the screw's head and the thread, in solid wood behind casing, wall or ceiling")
        template = "{plate} + {spacer} + {thread}"
    return figure(key, name, length(fixing["screw"]), working(rule, template, terms))


def count_figure(fit: Fit, places: list[Fixing]) -> Figure:
    """Return how many fixings there are."""
    kind = places[0]["piece"]["kind"]
    numbers = fit["numbers"]
    rule = wording("one near each end, and more between so that none is further from the next than the spacing")
    spacing = numbers["screw_spacing"] if kind == "screw" else numbers["bracket_spacing"]
    terms: dict[str, list[float | str]] = {
        "number": [len(places), "count"],
        "screws": [len(places[0]["spots"]), "count"],
        "spacing": [spacing, "mm"],
    }
    template = wording("{number}, with screws in each: {screws}, at most {spacing} apart")
    if kind == "rod-holder":
        rule = wording("one at each end of every rod")
        template = wording("{number}, with screws in each: {screws}")
    name = COUNT_NAMES.get(kind, "fixings")
    return figure("fixing_count", name, count(len(places)), working(rule, template, terms))


def own_figures(fit: Fit) -> list[Figure]:
    """Return where the covering itself is fixed."""
    places = held_places(fit, False)
    if len(places) == 0:
        return []
    size = fit["size"]
    width = size["x1"] - size["x0"]
    across = [middle_of(fixing["piece"]) for fixing in places]
    figures = [
        count_figure(fit, places),
        first_figure(width, min(across) - size["x0"]),
        last_figure(width, max(across) - size["x0"]),
    ]
    if places[0]["plane"] == "ceiling":
        figures.append(ceiling_figure(fit, places[0]))
    else:
        figures.extend(line_figures(fit, places))
    figures.append(screw_figure("screw_length", wording("screw length"), fit, places[0]))
    return figures


def rail_ends(down: list[Piece]) -> list[float]:
    """Return the span along x of the bottom rail where it comes when down."""
    rails = [piece for piece in down if piece["kind"] == "bottom-rail"]
    return [rails[0]["x0"], rails[0]["x1"]]


def hold_down_figures(travel: Travel) -> list[Figure]:
    """Return where the hold-downs go: their height, how far in from the rail's ends, their own spacer and screws."""
    fit = travel["fit"]
    places = held_places(fit, True)
    if len(places) == 0:
        return []
    ends = rail_ends(travel["down"])
    first = places[0]["piece"]
    last = places[len(places) - 1]["piece"]
    rail = first["y1"]
    half = (first["y1"] - first["y0"]) / 2
    depth = fit["numbers"]["hold_down_depth"]
    height = working(
        "the catch's middle, under the bottom rail where it comes when down",
        "{rail} - {half}",
        {"rail": [rail, "mm"], "half": [half, "mm"]},
    )
    spacer = working(
        "a stack of stock spacers that brings the catch's front to the middle of the bottom rail or just past it",
        "{front} - {depth}, in steps of {step}",
        {"front": [first["z1"], "mm"], "depth": [depth, "mm"], "step": [fit["numbers"]["spacer_step"], "mm"]},
    )
    return [
        figure("hold_down_height", "hold-downs above the floor", length(rail - half), height),
        catch_end(
            "hold_down_hinge", wording("hold-down from the bottom rail's hinge-side end"), [ends[0], middle_of(first)]
        ),
        catch_end(
            "hold_down_latch", wording("hold-down from the bottom rail's latch-side end"), [middle_of(last), ends[1]]
        ),
        figure("hold_down_spacer", "spacer behind each hold-down", length(places[0]["spacer"]), spacer),
        screw_figure("hold_down_screw", wording("screw length of the hold-downs"), fit, places[0]),
    ]


def catch_end(key: str, name: str, span: list[float]) -> Figure:
    """Return how far a hold-down's middle lies in from its end of the rail; the span has both, in order."""
    rule = wording("from the rail's own end to the catch's middle")
    terms: dict[str, list[float | str]] = {"low": [span[0], "mm"], "high": [span[1], "mm"]}
    return figure(key, name, length(span[1] - span[0]), working(rule, "{high} - {low}", terms))


def fixing_cautions(fit: Fit) -> list[Caution]:
    """Return what an installer must see to before the first hole is drilled."""
    if over_opening(fit):
        text = wording(
            "Over the opening its screws need a stud, a header or blocking, or anchors made for that wall or ceiling; "
            "plaster alone does not hold it above a doorway."
        )
        return [caution("fixing_wall", text, "common practice")]
    if fit["fixings"][0]["thread"] < fit["numbers"]["screw_thread"]:
        text = wording(
            "The leaf is too thin for the usual thread of its screws: fix it with more of them, or have it blocked."
        )
        return [caution("fixing_thread", text, "common practice")]
    return []


def fixing_question(travel: Travel, household: Household) -> Reply:
    """Answer with the places of its brackets, holders or screws and of its hold-downs, and the screws they need."""
    fit = travel["fit"]
    if len(fit["fixings"]) == 0:
        return reply([], [], [])
    figures = own_figures(fit)
    figures.extend(hold_down_figures(travel))
    return reply(figures, [], fixing_cautions(fit))
