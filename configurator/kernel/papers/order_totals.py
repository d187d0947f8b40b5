"""What an order takes in all: cloth by its name, bars by their length, fixings and screws."""

from typing import TypedDict

from configurator.kernel.message import message, plain
from configurator.kernel.papers.blocks import named_cell, value_cell
from configurator.kernel.papers.making import Making
from configurator.kernel.papers.order_facts import BAR_COUNTS, option_name
from configurator.kernel.questions.cloth import cloth_run
from configurator.kernel.shapes import Cloth, Family, Message
from configurator.kernel.tongue import wording

# Lengths that differ by less than this, mm, are cut and counted as one.
SAME_LENGTH = 0.5
HOLDER_COUNTS: dict[str, str] = {
    "bracket": wording("brackets"),
    "rod-holder": wording("rod holders"),
    "hold-down": wording("hold-downs"),
}
CLOTH_KINDS: dict[str, str] = {"cloth": wording("cloth"), "lining": wording("lining")}


class Total(TypedDict):
    """So many, or so much, of one thing: ``what`` it is, of which ``size`` (silent for cloth), ``amount`` and unit.

    ``key`` and ``span`` (mm) tell which pieces are one thing.
    """

    key: str
    span: float
    what: Message
    size: Message
    amount: float
    unit: str


def add_total(totals: list[Total], more: Total) -> None:
    """Add to the total of the same thing, or begin one."""
    for total in totals:
        if total["key"] == more["key"] and abs(total["span"] - more["span"]) < SAME_LENGTH:
            total["amount"] = total["amount"] + more["amount"]
            return
    totals.append(more)


def cloth_picks(family: Family, choices: dict[str, str], lining: bool) -> list[str]:
    """Return the names of the picks by which a cloth is known: those that give it its look, or that line it."""
    names: list[str] = []
    for choice in family["choices"]:
        for option in choice["options"]:
            if option["id"] != choices[choice["id"]]:
                continue
            lines = "lined" in option["numbers"]
            looks = len(list(option["look"])) > 0
            if (lining and lines) or (looks and not lining):
                names.append(option["name"])
    return names


def cloth_name(making: Making, cloth: Cloth) -> str:
    """Return by which name a cloth is ordered: the covering's with its picks."""
    fit = making["fit"]
    names = [fit["family"]["name"]]
    names.extend(cloth_picks(fit["family"], fit["choices"], cloth["key"] == "lining"))
    return " · ".join(names)


def cloth_totals(made: list[Making]) -> list[Total]:
    """Return how much of each cloth and lining the order takes."""
    totals: list[Total] = []
    for making in made:
        for cloth in making["travel"]["cuts"][0]["cloths"]:
            name = cloth_name(making, cloth)
            terms: dict[str, list[float | str]] = {
                "name": [name, "name"],
                "kind": [CLOTH_KINDS[cloth["key"]], "text"],
            }
            add_total(
                totals,
                {
                    "key": cloth["key"] + "/" + name,
                    "span": cloth["bolt"],
                    "what": message("{name}, {kind}", terms),
                    "size": value_cell(cloth["bolt"], "mm"),
                    "amount": cloth_run(cloth) * making["commission"]["count"],
                    "unit": "run",
                },
            )
    return totals


def bar_totals(made: list[Making]) -> list[Total]:
    """Return how many bars of each length the order takes."""
    totals: list[Total] = []
    for making in made:
        for bar in making["travel"]["cuts"][0]["bars"]:
            name = making["fit"]["family"]["name"]
            terms: dict[str, list[float | str]] = {"name": [name, "name"], "kind": [BAR_COUNTS[bar["key"]], "text"]}
            long = bar["length"]["value"]
            add_total(
                totals,
                {
                    "key": bar["key"] + "/" + name,
                    "span": long,
                    "what": message("{name}, {kind}", terms),
                    "size": value_cell(long, "mm"),
                    "amount": bar["count"] * making["commission"]["count"],
                    "unit": "count",
                },
            )
    return totals


def holder_totals(made: list[Making]) -> list[Total]:
    """Return how many brackets, holders and hold-downs go with the order; each comes for its own covering."""
    totals: list[Total] = []
    for making in made:
        family = making["fit"]["family"]
        for fixing in making["fit"]["fixings"]:
            kind = fixing["piece"]["kind"]
            if kind in HOLDER_COUNTS:
                terms: dict[str, list[float | str]] = {
                    "name": [family["name"], "name"],
                    "kind": [HOLDER_COUNTS[kind], "text"],
                }
                what = message("{name}, {kind}", terms)
                add_total(totals, counted_total(kind + "/" + family["id"], what, 0.0, making_count(making)))
    return totals


def spacer_totals(made: list[Making]) -> list[Total]:
    """Return how many spacers of each thickness go with the order."""
    totals: list[Total] = []
    for making in made:
        for fixing in making["fit"]["fixings"]:
            if fixing["spacer"] > 0:
                what = plain("spacers, this thick")
                add_total(totals, counted_total("spacer", what, fixing["spacer"], making_count(making)))
    return totals


def screw_totals(made: list[Making]) -> list[Total]:
    """Return how many screws of each least length go with the order."""
    totals: list[Total] = []
    for making in made:
        for fixing in making["fit"]["fixings"]:
            screws = len(fixing["spots"]) * making_count(making)
            add_total(totals, counted_total("screw", plain("screws, this long at least"), fixing["screw"], screws))
    return totals


def counted_total(key: str, what: Message, span: float, amount: float) -> Total:
    """Return a total of things; a ``span`` of 0 tells no size."""
    size = value_cell(span, "mm") if span > 0 else plain("")
    return {"key": key, "span": span, "what": what, "size": size, "amount": amount, "unit": "count"}


def pick_totals(made: list[Making]) -> list[Total]:
    """Return how many of each lift, wand or motor go with the order: picks that bring a motor, a wand or a loop."""
    totals: list[Total] = []
    for making in made:
        family = making["fit"]["family"]
        for choice in family["choices"]:
            for option in choice["options"]:
                numbers = option["numbers"]
                brings = "motor_mass" in numbers or "hand_drop" in numbers or "loop_length" in numbers
                if option["id"] == making["fit"]["choices"][choice["id"]] and brings:
                    name = option_name(choice, option["id"])
                    add_total(
                        totals, counted_total(choice["id"] + "/" + name, named_cell(name), 0.0, making_count(making))
                    )
    return totals


def making_count(making: Making) -> float:
    """Return how many of a piece are made."""
    return making["commission"]["count"]


def hardware_totals(made: list[Making]) -> list[Total]:
    """Return all that is not cloth: bars, lifts and motors, fixings, spacers and screws."""
    totals = bar_totals(made)
    totals.extend(pick_totals(made))
    totals.extend(holder_totals(made))
    totals.extend(spacer_totals(made))
    totals.extend(screw_totals(made))
    return totals
