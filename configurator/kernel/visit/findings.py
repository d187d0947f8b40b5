"""Everything that is wrong with what was measured of an opening, each where it is wrong and what to measure again."""

from configurator.kernel.lengths import written_length
from configurator.kernel.message import is_said, message, plain, silence
from configurator.kernel.resolve import find_option
from configurator.kernel.shapes import Door, Message
from configurator.kernel.tape.field import Field
from configurator.kernel.tape.impossible import Contradiction, door_denied, handle_denied, out_of_limits, out_of_usual
from configurator.kernel.tape.table import is_asked
from configurator.kernel.tongue import wording
from configurator.kernel.visit.finding import finding, slip_found
from configurator.kernel.visit.hung_leaves import family_today, is_offered, picks_today
from configurator.kernel.visit.leaf_doors import known_now, leaf_called, leaf_door
from configurator.kernel.visit.leaf_parts import part_findings
from configurator.kernel.visit.out_of_true import SEEN_FROM, true_findings
from configurator.kernel.visit.used import used_numbers
from configurator.kernel.visit.visit_fields import LEAF_NAMES, is_sidelight, visit_field
from configurator.kernel.visit.visit_shapes import Finding, Leaf, Opening, Proposal, Reading, Used, VisitStock

# What is alike on both leaves of a pair, and on both sidelights.
ALIKE_ON_A_PAIR = [
    "glass_width",
    "glass_height",
    "bead_width",
    "bead_projection",
    "rail_top",
    "rail_bottom",
    "leaf_thickness",
    "leaf_width",
    "leaf_height",
]
ALIKE_BESIDE = ["sidelight_width", "sidelight_glass_width", "glass_height"]
# A text and the length beside it are the same within this, mm.
AS_TYPED = 0.001


def count_denied(field: Field, value: float) -> Message:
    """Return why a number of things cannot be a field's; silence where it can."""
    limits = field["limits"]
    if value >= limits[0] and value <= limits[1]:
        return silence()
    return message(
        "{name} must lie between {least} and {most}.",
        {"name": [field["name"], "text"], "least": [limits[0], "count"], "most": [limits[1], "count"]},
    )


def limit_findings(leaf: str, used: dict[str, Used], units: str) -> list[Finding]:
    """Return which used numbers cannot be, and which are unusual."""
    found: list[Finding] = []
    for name, one in used.items():
        for field in visit_field(name):
            if not is_asked(field):
                continue
            counted = field["unit"] == "count"
            why = count_denied(field, one["mm"]) if counted else out_of_limits(field, one["mm"], units)
            if is_said(why):
                found.append(slip_found(leaf, name, why, plain("Measure it again; the preset's number stands in.")))
            elif not counted and is_said(out_of_usual(field, one["mm"], units)):
                found.append(finding(leaf, name, out_of_usual(field, one["mm"], units), silence()))
    return found


def is_as_typed(reading: Reading, units: str) -> bool:
    """Return whether the text of a reading says its length, if it says one at all."""
    written = written_length(reading["typed"], units)
    return not written["sound"] or abs(written["mm"] - reading["mm"]) <= AS_TYPED


def typed_findings(leaf: Leaf, units: str) -> list[Finding]:
    """Return the readings whose text says another length than the one that is worked with."""
    found: list[Finding] = []
    for reading in leaf["readings"]:
        lengths = [field for field in visit_field(reading["field"]) if field["unit"] == "length"]
        if len(lengths) > 0 and not is_as_typed(reading, units):
            says = message(
                "{typed} is written, but {counted} is worked with.",
                {"typed": [reading["typed"], "name"], "counted": [reading["mm"], "mm"]},
            )
            found.append(slip_found(leaf["id"], reading["field"], says, plain("Write it once more.")))
    return found


def unlike_findings(ident: str, used: dict[str, Used], other: dict[str, Used], alike: list[str]) -> list[Finding]:
    """Return what differs between two leaves that are mostly alike, told at the one that is called ``ident``."""
    found: list[Finding] = []
    for name in alike:
        if name in used and name in other and abs(used[name]["mm"] - other[name]["mm"]) > SEEN_FROM:
            says = message(
                "Here it is {here}, on its counterpart {there}: {off} apart.",
                {
                    "here": [used[name]["mm"], "mm"],
                    "there": [other[name]["mm"], "mm"],
                    "off": [abs(used[name]["mm"] - other[name]["mm"]), "mm"],
                },
            )
            found.append(finding(ident, name, says, plain("Measure it again on both.")))
    return found


def pair_findings(opening: Opening) -> list[Finding]:
    """Return what differs between the leaves of a pair, and between both sidelights."""
    used = [used_numbers(leaf_called(opening, leaf)) for leaf in LEAF_NAMES]
    found = unlike_findings("other", used[1], used[0], ALIKE_ON_A_PAIR)
    found.extend(unlike_findings("right-sidelight", used[3], used[2], ALIKE_BESIDE))
    return found


def denied_findings(leaf: str, door: Door) -> list[Finding]:
    """Return what the numbers of a leaf deny each other, those that nobody measured among them."""
    denied: list[Contradiction] = door_denied(door)
    denied.extend(handle_denied(door["handle"]))
    return [slip_found(leaf, each["field"], each["why"], plain("Measure it again.")) for each in denied]


def leaf_findings(leaf: Leaf, units: str) -> list[Finding]:
    """Return what is wrong with the readings of one leaf by themselves; lengths as readers of ``units`` have them."""
    used = used_numbers(leaf)
    found = typed_findings(leaf, units)
    found.extend(limit_findings(leaf["id"], used, units))
    found.extend(part_findings(leaf["id"], used))
    found.extend(true_findings(leaf["id"], used))
    return found


def opening_findings(opening: Opening, stock: VisitStock, units: str) -> list[Finding]:
    """Return everything that is wrong with what was measured of an opening, leaf by leaf."""
    found: list[Finding] = []
    for leaf in opening["leaves"]:
        found.extend(leaf_findings(leaf, units))
        if not is_sidelight(leaf["id"]):
            found.extend(denied_findings(leaf["id"], leaf_door(opening, leaf["id"], stock)))
    found.extend(pair_findings(opening))
    return found


def stand_ins(opening: Opening, stock: VisitStock) -> list[Message]:
    """Return what of an opening the catalog does not know, so that something else stands in for it."""
    told: list[Message] = []
    ident = opening["preset"]
    if ident not in stock["doors"] and known_now("door", ident, stock) == ident:
        text = wording("The door {door} is not in this showroom's list; another stands in for it.")
        told.append(message(text, {"door": [ident, "name"]}))
    for leaf in opening["leaves"]:
        named = leaf["handle"]
        if named != "" and named not in stock["handles"] and known_now("handle", named, stock) == named:
            text = wording("The handle {handle} is not in this showroom's list; the preset's is shown.")
            told.append(message(text, {"handle": [named, "name"]}))
    for proposal in opening["proposals"]:
        if not is_offered(proposal, stock):
            text = wording("The covering {covering} is not in this showroom's list; nothing is told of it.")
            told.append(message(text, {"covering": [proposal["family"], "name"]}))
        else:
            told.extend(unknown_picks(proposal, stock))
    return told


def unknown_picks(proposal: Proposal, stock: VisitStock) -> list[Message]:
    """Return which picks of a proposal its family does not have, so that the presets stand in."""
    family = stock["families"][family_today(proposal["family"], stock)]
    picks = picks_today(family, proposal["choices"], stock)
    told: list[Message] = []
    for choice in family["choices"]:
        picked = picks.get(choice["id"], "")
        if picked != "" and find_option(choice, picked)["id"] != picked:
            text = wording("The option {option} of {choice} is not known; the preset is shown.")
            told.append(message(text, {"option": [picked, "name"], "choice": [choice["name"], "name"]}))
    return told
