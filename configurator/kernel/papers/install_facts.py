"""What an installer must know of a piece: each fixing's place, its screws against leaf and pane, its hold-downs."""

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.fit import over_opening
from configurator.kernel.message import message, plain
from configurator.kernel.mount.ground import screw_clear
from configurator.kernel.papers.blocks import Row, paper_row, value_cell
from configurator.kernel.papers.making import Making
from configurator.kernel.papers.order_facts import Fact, figure_fact, figure_facts, making_control
from configurator.kernel.shapes import Figure, Fit, Fixing, Message
from configurator.kernel.telling import figure, length, working
from configurator.kernel.tongue import wording
from configurator.kernel.views.fixing_front import fixed_area

# Places that lie nearer to an edge than this, mm, lie on it.
ON_EDGE = 0.05
# What the piece at hand must be, by the side on which it is worked.
PIECE_CHECKS: dict[str, str] = {
    "": wording("The piece is {width} wide and {height} high, and of the hand that stands above."),
    "left": wording(
        "The piece is {width} wide and {height} high, of the hand that stands above, and worked on the left, seen "
        "from the room."
    ),
    "right": wording(
        "The piece is {width} wide and {height} high, of the hand that stands above, and worked on the right, seen "
        "from the room."
    ),
}
FIXING_KINDS: dict[str, str] = {
    "bracket": wording("bracket"),
    "rod-holder": wording("rod holder"),
    "screw": wording("screw"),
    "hold-down": wording("hold-down"),
}


def beside_hinge_edge(fit: Fit, x: float) -> Message:
    """Return how far a place lies from the hinge-side edge of glass or opening, and to which side of it."""
    past = fixed_area(fit)["x0"] - x
    terms: dict[str, list[float | str]] = {"away": [abs(past), "mm"]}
    if past > ON_EDGE:
        return message("{away} outwards", terms)
    return message("{away} inwards", terms)


def about_upper_edge(fit: Fit, y: float) -> Message:
    """Return how far a place lies above or below the upper edge of glass or opening."""
    past = y - fixed_area(fit)["y1"]
    terms: dict[str, list[float | str]] = {"away": [abs(past), "mm"]}
    if past > ON_EDGE:
        return message("{away} above", terms)
    return message("{away} below", terms)


def fixing_middle(fixing: Fixing) -> list[float]:
    """Return the ``[x, y]`` of a fixing's middle."""
    piece = fixing["piece"]
    return [(piece["x0"] + piece["x1"]) / 2, (piece["y0"] + piece["y1"]) / 2]


def fixing_row(fit: Fit, number: int, fixing: Fixing) -> Row:
    """Return a fixing's line: number, what it is, its middle from edge and floor, its screws and spacer."""
    middle = fixing_middle(fixing)
    kind = fixing["piece"]["kind"]
    return paper_row(
        [
            value_cell(number, "count"),
            message("{kind}", {"kind": [FIXING_KINDS.get(kind, FIXING_KINDS["bracket"]), "text"]}),
            beside_hinge_edge(fit, middle[0]),
            about_upper_edge(fit, middle[1]),
            value_cell(middle[1], "mm"),
            value_cell(len(fixing["spots"]), "count"),
            value_cell(fixing["spacer"], "mm"),
            value_cell(fixing["screw"], "mm"),
        ]
    )


def fixing_rows(fit: Fit) -> list[Row]:
    """Return a line for each fixing, numbered as on the drawing."""
    return [fixing_row(fit, at + 1, fit["fixings"][at]) for at in range(len(fit["fixings"]))]


def past_glass(fit: Fit, spot: list[float]) -> float:
    """Return how far past the glass a screw stands; negative before it."""
    glass = glass_box(fit["door"])
    across = max(glass["x0"] - spot[0], spot[0] - glass["x1"])
    return max(across, glass["y0"] - spot[1], spot[1] - glass["y1"])


def leaf_figures(fit: Fit) -> list[Figure]:
    """Return the thread in the leaf, the wood left behind the point, and the screw that comes nearest to the glass."""
    thread = fit["fixings"][0]["thread"]
    thick = fit["door"]["leaf_thickness"]
    least = past_glass(fit, fit["fixings"][0]["spots"][0])
    for fixing in fit["fixings"]:
        for spot in fixing["spots"]:
            least = min(least, past_glass(fit, spot))
    terms: dict[str, list[float | str]] = {"leaf": [thick, "mm"], "thread": [thread, "mm"]}
    behind = working(wording("the leaf less the thread in it"), "{leaf} - {thread}", terms)
    near: dict[str, list[float | str]] = {"near": [least, "mm"], "least": [screw_clear(fit), "mm"]}
    clear = working(
        wording("the screw that comes nearest to the glass that shows"),
        wording("{near}, {least} at the least"),
        near,
    )
    deep = working(wording("what of each screw is in the wood"), "{thread}", terms)
    return [
        figure("screw_thread", wording("thread in the leaf"), length(thread), deep),
        figure("screw_behind", wording("wood left behind a screw's point"), length(thick - thread), behind),
        figure("screw_glass", wording("nearest screw past the edge of the glass"), length(least), clear),
    ]


def level_facts(making: Making) -> list[Fact]:
    """Return where the level line is drawn and how far in from its ends the covering is fixed."""
    keys = ["fixing_height", "fixing_low", "fixing_out", "fixing_first", "fixing_last", "spacer", "screw_length"]
    facts = figure_facts(making, keys)
    if len(making["fit"]["fixings"]) > 0 and not over_opening(making["fit"]):
        facts.extend([figure_fact(told) for told in leaf_figures(making["fit"])])
    return facts


def held_down_facts(making: Making) -> list[Fact]:
    """Return where its hold-downs go."""
    keys = ["hold_down_height", "hold_down_hinge", "hold_down_latch", "hold_down_spacer", "hold_down_screw"]
    return figure_facts(making, keys)


def before_drilling(making: Making) -> list[Message]:
    """Return what to check before the first hole."""
    fit = making["fit"]
    figures = making["figures"]
    terms: dict[str, list[float | str]] = {
        "width": [figures["order_width"]["value"], "mm"],
        "height": [figures["order_height"]["value"], "mm"],
    }
    checks = [
        message(PIECE_CHECKS[making_control(making)], terms),
        plain("Glass, beads and handle are as measured; the leaf shuts, latches and swings freely."),
    ]
    if over_opening(fit):
        checks.append(plain("Studs, header or blocking are found, and no wire or pipe runs where a screw goes."))
    else:
        clear: dict[str, list[float | str]] = {"clear": [screw_clear(fit), "mm"]}
        checks.append(message("No screw comes nearer than {clear} to the glass, nor to the lock in the stile.", clear))
        screw: dict[str, list[float | str]] = {
            "thread": [fit["fixings"][0]["thread"], "mm"],
            "leaf": [fit["door"]["leaf_thickness"], "mm"],
        }
        checks.append(
            message("The screws at hand go {thread} into the leaf and no deeper; the leaf is {leaf} thick.", screw)
        )
    if "fixing_height" in figures:
        line: dict[str, list[float | str]] = {"line": [figures["fixing_height"]["value"], "mm"]}
        checks.append(message("A level line is drawn {line} above the floor, by a level and not by the leaf.", line))
    return checks


def handed_over(making: Making) -> list[Message]:
    """Return what is tried and shown to the client once it hangs."""
    numbers = making["fit"]["numbers"]
    runs = plain("It runs its whole way, and past the handle, without touching; the handle turns and the door latches.")
    if len(making["fit"]["legs"]) == 0:
        runs = plain("It hangs taut and clear of the handle; the handle turns and the door latches.")
    shown = [
        runs,
        plain("The door opens as far as it did; the way out is as wide as promised, and everyone can work it."),
    ]
    if numbers["loop_length"] > 0 or numbers["cord_length"] > 0:
        shown.append(
            plain("Every cord and loop is held by its device, out of a child's reach; its danger has been explained.")
        )
    else:
        shown.append(plain("No cord and no loop hangs free."))
    if making["fit"]["numbers"]["hold_down"] > 0:
        shown.append(plain("How its rail is set into the hold-downs, and out of them, has been shown."))
    if numbers["motor_mass"] > 0:
        shown.append(plain("The motor's end stops are set; how it is charged or switched off has been shown."))
    shown.append(plain("How it is cleaned has been told, and this sheet is left with the client."))
    return shown
