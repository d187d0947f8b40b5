"""What was agreed, frozen with everything that it came of, and what of it is no longer so today."""

from configurator.kernel.message import is_said, message, plain
from configurator.kernel.numbers import SAME_ON_TAPE
from configurator.kernel.resolve import find_option, resolve
from configurator.kernel.shapes import Answer, Choice, Door, Family, Figure, Fit, Handle, Message
from configurator.kernel.tape.field import Field
from configurator.kernel.tape.table import DOOR_WORDS, field_key, fields_of
from configurator.kernel.tongue import wording
from configurator.kernel.verdict_words import verdict_word
from configurator.kernel.visit.agreed_today import AgreedToday, agreed_today
from configurator.kernel.visit.control_side import control_side, side_told
from configurator.kernel.visit.hung_leaves import family_today, hung_leaves, is_offered, picks_today
from configurator.kernel.visit.leaf_answers import hung_answers
from configurator.kernel.visit.leaf_doors import opening_household
from configurator.kernel.visit.visit_shapes import (
    Agreed,
    AgreedPart,
    FrozenFigure,
    Moved,
    Opening,
    Proposal,
    Stamp,
    Visit,
    VisitStock,
)


def frozen_covering(fit: Fit) -> Family:
    """Return a family as it was picked: its numbers folded, and of each choice the one option."""
    family = fit["family"]
    choices: list[Choice] = []
    for choice in family["choices"]:
        choices.append({**choice, "options": [find_option(choice, fit["choices"][choice["id"]])]})
    return {**family, "numbers": resolve(family, fit["choices"]), "choices": choices}


def frozen_figures(answer: Answer) -> dict[str, FrozenFigure]:
    """Return an answer's figures without their workings."""
    frozen: dict[str, FrozenFigure] = {}
    for name, figure in answer["figures"].items():
        frozen[name] = {"name": figure["name"], "value": figure["value"], "unit": figure["unit"]}
    return frozen


def frozen_verdicts(answer: Answer) -> dict[str, str]:
    """Return the states of an answer's verdicts."""
    frozen: dict[str, str] = {}
    for name, verdict in answer["verdicts"].items():
        frozen[name] = verdict["state"]
    return frozen


def agreed_now(visit: Visit, opening: Opening, proposal: Proposal, stock: VisitStock, stamp: Stamp) -> Agreed:
    """Return a proposal as it is agreed on a day; it must be offered."""
    household = opening_household(opening, visit["household"])
    hung = hung_leaves(opening, proposal, stock)
    parts: list[AgreedPart] = []
    answers = hung_answers(hung, household)
    for i in range(len(hung)):
        answer = answers[i]
        parts.append(
            {
                "leaf": hung[i]["leaf"],
                "door": hung[i]["fit"]["door"],
                "figures": frozen_figures(answer),
                "verdicts": frozen_verdicts(answer),
                "control": control_side(hung[i], opening.get("control", "")),
            }
        )
    return {
        "proposal": proposal["id"],
        "on": stamp["on"],
        "price": proposal["price"],
        "covering": frozen_covering(hung[0]["fit"]),
        "choices": hung[0]["fit"]["choices"],
        "wishes": proposal["wishes"],
        "place": proposal["place"],
        "household": household,
        "parts": parts,
        "catalog": stamp["catalog"],
    }


def moved_thing(kind: str, leaf: str, ident: str, name: str, pair: list[Message]) -> Moved:
    """Return one thing that is no longer as it was agreed: ``pair`` is what was and what is."""
    return {"kind": kind, "leaf": leaf, "id": ident, "name": name, "then": pair[0], "now": pair[1]}


def named_so(name: str) -> Message:
    """Return a name as what is told."""
    return message("{name}", {"name": [name, "name"]})


def valued_so(value: float, unit: str) -> Message:
    """Return a number by itself as what is told."""
    return message("{value}", {"value": [value, unit]})


def has_moved(then: float, now: float, unit: str) -> bool:
    """Return whether a number is another one on any tape."""
    # Shares by a tenth of that in per cent.
    scale = 100.0 if unit == "share" else 1.0
    return abs(then - now) * scale > SAME_ON_TAPE


def moved_numbers(part: AgreedPart, now: Door) -> list[Moved]:
    """Return what is measured otherwise at a leaf today, its handle among it."""
    found: list[Moved] = []
    door: dict[str, float] = part["door"]  # type: ignore[assignment]
    today: dict[str, float] = now  # type: ignore[assignment]
    for field in fields_of("door"):
        if field["id"] in door:
            found.extend(moved_field(part["leaf"], field, [door[field["id"]], today[field["id"]]]))
    handle: Handle = part["door"]["handle"]
    if handle["id"] != now["handle"]["id"]:
        names = [named_so(handle["name"]), named_so(now["handle"]["name"])]
        found.append(moved_thing("measured", part["leaf"], "handle", wording("Handle"), names))
    held: dict[str, float] = handle  # type: ignore[assignment]
    holds: dict[str, float] = now["handle"]  # type: ignore[assignment]
    for field in fields_of("handle"):
        key = field_key(field["id"])
        if key in held:
            found.extend(moved_field(part["leaf"], field, [held[key], holds[key]]))
    return found


def moved_field(leaf: str, field: Field, pair: list[float]) -> list[Moved]:
    """Return that a field with a name has another number, or nothing."""
    unit = "mm" if field["unit"] == "length" else "count"
    if "name" not in field or not has_moved(pair[0], pair[1], unit):
        return []
    return [
        moved_thing("measured", leaf, field["id"], field["name"], [valued_so(pair[0], unit), valued_so(pair[1], unit)])
    ]


def moved_words(part: AgreedPart, now: Door) -> list[Moved]:
    """Return what a leaf is in other words today."""
    found: list[Moved] = []
    door: dict[str, str] = part["door"]  # type: ignore[assignment]
    today: dict[str, str] = now  # type: ignore[assignment]
    for name, word in DOOR_WORDS.items():
        if door[name] != today[name]:
            options = word["options"]
            pair = [plain(options.get(door[name], door[name])), plain(options[today[name]])]
            found.append(moved_thing("measured", part["leaf"], name, word["name"], pair))
    return found


def moved_picks(agreed: Agreed, stock: VisitStock) -> list[Moved]:
    """Return what of the covering and its picks has another name today, is retired, or is no longer there."""
    covering = agreed["covering"]
    ident = family_today(covering["id"], stock)
    gone = plain("no longer offered")
    if ident not in stock["families"]:
        return [moved_thing("covering", "", "family", wording("Covering"), [named_so(covering["name"]), gone])]
    found: list[Moved] = []
    family = stock["families"][ident]
    if family["name"] != covering["name"] or family["retired"]:
        now = gone if family["retired"] else named_so(family["name"])
        found.append(moved_thing("covering", "", "family", wording("Covering"), [named_so(covering["name"]), now]))
    picks = picks_today(family, agreed["choices"], stock)
    for choice in family["choices"]:
        known = [option for option in choice["options"] if option["id"] == picks.get(choice["id"], "")]
        was = named_so(option_then(agreed, choice["id"], picks.get(choice["id"], "")))
        if len(known) == 0 or known[0]["retired"]:
            found.append(moved_thing("covering", "", choice["id"], choice["name"], [was, gone]))
        elif known[0]["name"] != was["terms"]["name"][0]:
            found.append(moved_thing("covering", "", choice["id"], choice["name"], [was, named_so(known[0]["name"])]))
    return found


def moved_side(part: AgreedPart, now: str) -> list[Moved]:
    """Return that a covering is worked on another side today, or nothing."""
    then = part.get("control", now)
    if then == now:
        return []
    pair = [side_told(then), side_told(now)]
    return [moved_thing("covering", part["leaf"], "control_side", wording("control side"), pair)]


def moved_proposal(opening: Opening, agreed: Agreed, stock: VisitStock) -> list[Moved]:
    """Return in what the proposal that was agreed has been changed since: its price, its covering or its picks."""
    found = moved_price(opening, agreed)
    for one in opening["proposals"]:
        if one["id"] == agreed["proposal"] and is_offered(one, stock):
            found.extend(picked_anew(agreed, one, stock))
    return found


def picked_anew(agreed: Agreed, proposal: Proposal, stock: VisitStock) -> list[Moved]:
    """Return which other covering, or which other picks of the same, are proposed today."""
    then = agreed["covering"]
    family = stock["families"][family_today(proposal["family"], stock)]
    if family["id"] != family_today(then["id"], stock):
        return [
            moved_thing(
                "proposed", "", "family", wording("Covering"), [named_so(then["name"]), named_so(family["name"])]
            )
        ]
    found: list[Moved] = []
    was = picks_today(family, agreed["choices"], stock)
    now = picks_today(family, proposal["choices"], stock)
    for choice in family["choices"]:
        pick = now.get(choice["id"], "")
        if choice["id"] in was and pick != "" and pick != was[choice["id"]]:
            names = [option_then(agreed, choice["id"], was[choice["id"]]), find_option(choice, pick)["name"]]
            pair = [named_so(name) for name in names]
            found.append(moved_thing("proposed", "", choice["id"], choice["name"], pair))
    return found


def moved_price(opening: Opening, agreed: Agreed) -> list[Moved]:
    """Return that another price is named today for the proposal that was agreed, or nothing."""
    found: list[Moved] = []
    for one in opening["proposals"]:
        if one["id"] == agreed["proposal"] and one["price"] != "" and one["price"] != agreed["price"]:
            then = plain("no price") if agreed["price"] == "" else named_so(agreed["price"])
            found.append(moved_thing("price", "", "price", wording("Price"), [then, named_so(one["price"])]))
    return found


def option_then(agreed: Agreed, choice: str, missing: str) -> str:
    """Return what the option of a choice was called that was agreed."""
    for frozen in agreed["covering"]["choices"]:
        if frozen["id"] == choice and len(frozen["options"]) > 0:
            return frozen["options"][0]["name"]
    return missing


def moved_covering(agreed: Agreed, now: dict[str, float]) -> list[Moved]:
    """Return which of the covering's numbers the catalog gives otherwise today."""
    found: list[Moved] = []
    then = resolve(agreed["covering"], agreed["choices"])
    for name, value in now.items():
        if name in then and abs(then[name] - value) > 0.000001:
            words = name.replace("_", " ")
            found.append(
                moved_thing("number", "", name, words, [valued_so(then[name], "count"), valued_so(value, "count")])
            )
    return found


def moved_outcome(part: AgreedPart, answer: Answer) -> list[Moved]:
    """Return which figures and verdicts of a leaf come out otherwise today."""
    leaf = part["leaf"]
    if is_said(answer["refusal"]):
        if len(list(part["figures"])) == 0:
            return []
        pair = [plain("It could be hung."), answer["refusal"]]
        return [moved_thing("outcome", leaf, "refusal", wording("On this door"), pair)]
    found: list[Moved] = []
    for name, figure in part["figures"].items():
        if name in answer["figures"]:
            found.extend(moved_figure(leaf, figure, answer["figures"][name]))
    for name, state in part["verdicts"].items():
        if name in answer["verdicts"] and answer["verdicts"][name]["state"] != state:
            verdict = answer["verdicts"][name]
            pair = [plain(verdict_word(name, state)), verdict["says"]]
            found.append(moved_thing("outcome", leaf, name, verdict["name"], pair))
    return found


def moved_figure(leaf: str, then: FrozenFigure, now: Figure) -> list[Moved]:
    """Return that a figure has another value, or nothing."""
    if not has_moved(then["value"], now["value"], now["unit"]):
        return []
    pair = [valued_so(then["value"], now["unit"]), valued_so(now["value"], now["unit"])]
    return [moved_thing("outcome", leaf, now["id"], now["name"], pair)]


def agreed_beside_today(visit: Visit, opening: Opening, agreed: Agreed, stock: VisitStock) -> list[Moved]:
    """Return everything that is no longer as it was agreed, as :func:`moved_since` does."""
    return moved_since(opening, agreed, agreed_today(visit, opening, agreed, stock), stock)


def moved_since(opening: Opening, agreed: Agreed, today: AgreedToday, stock: VisitStock) -> list[Moved]:
    """Return everything that is no longer as it was agreed: inputs first, then what comes of them.

    Where the catalog has no longer what was agreed, the covering as it was frozen is hung on today's door.
    """
    found = moved_proposal(opening, agreed, stock)
    found.extend(moved_picks(agreed, stock))
    hung = today["hung"]
    if today["known"]:
        found.extend(moved_covering(agreed, resolve(hung[0]["fit"]["family"], hung[0]["fit"]["choices"])))
    outcome: list[Moved] = []
    for part in agreed["parts"]:
        for i in range(len(hung)):
            if hung[i]["leaf"] == part["leaf"]:
                found.extend(moved_side(part, today["sides"][i]))
                found.extend(moved_words(part, hung[i]["fit"]["door"]))
                found.extend(moved_numbers(part, hung[i]["fit"]["door"]))
                outcome.extend(moved_outcome(part, today["answers"][i]))
    found.extend(outcome)
    return found
