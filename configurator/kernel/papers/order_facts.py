"""What a workroom must know of a piece to make it: picks, size, cloth, bars, cut-out and what holds it.

Each fact comes with how it came about. Figures are those of the questions; what is added here are the numbers that the
questions put in: the bolt, the repeat, the hems, how many bars, and the cut-out from the panel's own edges.
"""

from typing import TypedDict

from configurator.kernel.fit import over_opening
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.message import plain, silence
from configurator.kernel.papers.blocks import named_cell, value_cell
from configurator.kernel.papers.making import Making, which_leaf
from configurator.kernel.questions.fixing import held_places
from configurator.kernel.shapes import Choice, Cloth, Figure, Message
from configurator.kernel.telling import figure, length, working
from configurator.kernel.tongue import wording
from configurator.kernel.visit.control_side import control_side, control_told, is_worked_aside

BAR_COUNTS: dict[str, str] = {
    "rod": wording("rods"),
    "tube": wording("tubes"),
    "cassette": wording("cassettes"),
    "headrail": wording("headrails"),
    "track": wording("tracks"),
    "upper_rail": wording("upper rails"),
    "bottom_rail": wording("bottom rails"),
}
CLOTH_NUMBERS: dict[str, dict[str, str]] = {
    "cloth": {
        "bolt": wording("width of the cloth on its bolt"),
        "repeat": wording("pattern repeat of the cloth"),
        "hem": wording("side hem of the cloth, each side"),
        "fullness": wording("fullness of the cloth"),
    },
    "lining": {
        "bolt": wording("width of the lining on its bolt"),
        "repeat": wording("pattern repeat of the lining"),
        "hem": wording("side hem of the lining, each side"),
        "fullness": wording("fullness of the lining"),
    },
}


class Fact(TypedDict):
    """One thing that is told of a piece, with the rule and the numbers of which it came (silent where given).

    ``value`` is a cell of one term, so that a table can have it as a number.
    """

    id: str
    name: Message
    value: Message
    rule: Message
    worked: Message


class FactGroup(TypedDict):
    """Facts that belong together."""

    id: str
    name: Message
    facts: list[Fact]


def fact(key: str, name: Message, value: Message) -> Fact:
    """Return a fact that is given, not worked out."""
    return {"id": key, "name": name, "value": value, "rule": silence(), "worked": silence()}


def figure_fact(told: Figure) -> Fact:
    """Return a figure as a fact, with its working."""
    how = told["working"]
    return {
        "id": told["id"],
        "name": plain(told["name"]),
        "value": value_cell(told["value"], told["unit"]),
        "rule": {"text": how["rule"], "terms": how["terms"]},
        "worked": {"text": how["template"], "terms": how["terms"]},
    }


def figure_facts(making: Making, keys: list[str]) -> list[Fact]:
    """Return those of the figures that the piece has, in this order."""
    return [figure_fact(making["figures"][key]) for key in keys if key in making["figures"]]


def option_name(choice: Choice, ident: str) -> str:
    """Return the name of a choice's option."""
    named = [option["name"] for option in choice["options"] if option["id"] == ident]
    return named[0]


def pick_facts(making: Making) -> list[Fact]:
    """Return what was picked, choice by choice: fabric and color, lift, header, mount and all else."""
    fit = making["fit"]
    facts: list[Fact] = []
    for choice in fit["family"]["choices"]:
        picked = option_name(choice, fit["choices"][choice["id"]])
        facts.append(fact("pick_" + choice["id"], named_cell(choice["name"]), named_cell(picked)))
    return facts


def said_control(making: Making) -> str:
    """Return the side on which a piece is worked where that is said or agreed, else nothing."""
    return making["commission"]["controls"].get(making["leaf"], "")


def making_control(making: Making) -> str:
    """Return the side on which a piece is worked, ``left`` or ``right``; nothing where it is on neither."""
    return control_side({"leaf": making["leaf"], "fit": making["fit"]}, said_control(making))


def control_facts(making: Making) -> list[Fact]:
    """Return the control's side, where a battery is charged, written in by hand where not said, and the lead's side."""
    numbers = making["fit"]["numbers"]
    facts: list[Fact] = []
    if is_worked_aside(numbers):
        side = control_told({"leaf": making["leaf"], "fit": making["fit"]}, said_control(making))
        facts.append(fact("control_side", plain("control side"), side))
    if numbers["motor_mass"] > 0 and numbers["wired"] == 0:
        socket = making["commission"]["socket"]
        place = named_cell(socket) if socket != "" else plain("to write in")
        facts.append(fact("charger", plain("socket for the charger"), place))
    if numbers["wired"] > 0:
        facts.append(fact("lead", plain("side on which the lead leaves"), plain("at the motor, on the control side")))
    return facts


def piece_facts(making: Making) -> list[Fact]:
    """Return what a piece is and where it goes."""
    commission = making["commission"]
    mount = plain("on the wall over the opening") if over_opening(making["fit"]) else plain("on the leaf")
    facts = [fact("position", plain("position"), value_cell(making["position"], "count"))]
    if commission["room"] != "":
        facts.append(fact("room", plain("room"), named_cell(commission["room"])))
    facts.append(fact("covering", plain("covering"), named_cell(making["fit"]["family"]["name"])))
    facts.append(fact("quantity", plain("quantity"), value_cell(commission["count"], "count")))
    facts.append(fact("leaf", plain("left or right"), which_leaf(making)))
    facts.append(fact("fixed_on", plain("fixed"), mount))
    facts.extend(pick_facts(making))
    facts.extend(control_facts(making))
    if commission["note"] != "":
        facts.append(fact("note", plain("note"), named_cell(commission["note"])))
    return facts


def cloth_numbers(cloth: Cloth) -> list[Fact]:
    """Return the bolt's width, the repeat, the side hems and the fullness of a cloth."""
    names = CLOTH_NUMBERS[cloth["key"]]
    facts = [fact(cloth["key"] + "_bolt", plain(names["bolt"]), value_cell(cloth["bolt"], "mm"))]
    if cloth["repeat"] > 0:
        facts.append(fact(cloth["key"] + "_repeat", plain(names["repeat"]), value_cell(cloth["repeat"], "mm")))
    if cloth["hem"] > 0:
        facts.append(fact(cloth["key"] + "_hem", plain(names["hem"]), value_cell(cloth["hem"], "mm")))
    if cloth["fullness"] != 1:
        facts.append(fact(cloth["key"] + "_fullness", plain(names["fullness"]), value_cell(cloth["fullness"], "count")))
    return facts


def cloth_facts(making: Making) -> list[Fact]:
    """Return all that is told of cloth and lining, each with what it is cut from."""
    facts: list[Fact] = []
    for cloth in making["travel"]["cuts"][0]["cloths"]:
        key = cloth["key"]
        told = ["_flat", "_cut", "_widths", "_seams", "_seam", "_seam_apart", "_total"]
        facts.extend(figure_facts(making, [key + part for part in told]))
        facts.extend(cloth_numbers(cloth))
    return facts


def bar_facts(making: Making) -> list[Fact]:
    """Return the cut length of each bar and how many of it there are."""
    facts: list[Fact] = []
    for bar in making["travel"]["cuts"][0]["bars"]:
        facts.extend(figure_facts(making, [bar["key"] + "_cut"]))
        facts.append(fact(bar["key"] + "_count", plain(BAR_COUNTS[bar["key"]]), value_cell(bar["count"], "count")))
    return facts


def from_edge(key: str, name: str, high: float, low: float) -> Figure:
    """Return how far an edge of the cut-out lies from the panel's own, the higher of both first."""
    terms: dict[str, list[float | str]] = {"high": [high, "mm"], "low": [low, "mm"]}
    return figure(key, name, length(high - low), working("from edge to edge of the panel", "{high} - {low}", terms))


def cutout_edges(making: Making) -> list[Figure]:
    """Return where a cut-out lies on its panel, from each of the panel's edges; it is open to the latch side."""
    size = making["fit"]["size"]
    hole = size["cutout"]
    if hole["x1"] <= hole["x0"]:
        return []
    return [
        from_edge("cutout_low", wording("cut-out from the panel's lower edge"), hole["y0"], size["y0"]),
        from_edge("cutout_top", wording("cut-out from the panel's upper edge"), size["y1"], hole["y1"]),
        from_edge("cutout_hinge", wording("cut-out from the panel's hinge-side edge"), hole["x0"], size["x0"]),
        from_edge("cutout_latch", wording("how deep it runs in from the latch-side edge"), size["x1"], hole["x0"]),
    ]


def cutout_facts(making: Making) -> list[Fact]:
    """Return what is cut out of a panel, dimensioned from its edges."""
    facts = figure_facts(making, ["cutout_width", "cutout_height"])
    facts.extend([figure_fact(told) for told in cutout_edges(making)])
    return facts


def own_facts(making: Making) -> list[Fact]:
    """Return the figures that only this kind of covering has, such as rod pockets, pleats and louvers."""
    return [figure_fact(told) for told in MECHANISMS[making["fit"]["family"]["mechanism"]]["tells"](making["fit"])]


def holding_facts(making: Making) -> list[Fact]:
    """Return brackets or screws, hold-downs and spacers that go with the piece, and its mass."""
    facts = figure_facts(making, ["fixing_count", "spacer", "screw_length"])
    caught = held_places(making["fit"], True)
    if len(caught) > 0:
        facts.append(fact("hold_down_count", plain("hold-downs"), value_cell(len(caught), "count")))
    facts.extend(figure_facts(making, ["hold_down_spacer", "hold_down_screw", "covering_mass"]))
    return facts


def fact_groups(making: Making) -> list[FactGroup]:
    """Return all that is told of a piece on the order, group by group; groups without a fact are left out."""
    size = figure_facts(making, ["order_width", "order_height"])
    groups: list[FactGroup] = [
        {"id": "piece", "name": plain("What it is"), "facts": piece_facts(making)},
        {"id": "size", "name": plain("Finished size"), "facts": size},
        {"id": "cloth", "name": plain("Cloth and lining"), "facts": cloth_facts(making)},
        {"id": "bars", "name": plain("Rods, tubes and rails"), "facts": bar_facts(making)},
        {"id": "own", "name": plain("Of this kind of covering"), "facts": own_facts(making)},
        {"id": "cutout", "name": plain("Cut-out round the handle"), "facts": cutout_facts(making)},
        {"id": "held", "name": plain("What holds it"), "facts": holding_facts(making)},
    ]
    return [group for group in groups if len(group["facts"]) > 0]


def all_facts(making: Making) -> list[Fact]:
    """Return the same in one list."""
    facts: list[Fact] = []
    for group in fact_groups(making):
        facts.extend(group["facts"])
    return facts
