"""One answer of the kernel as a terminal shows it, as JSON and as a row of a table."""

import csv
import io
import json
from collections.abc import Iterable
from itertools import product
from textwrap import fill

from configurator.asked import Configuration, place
from configurator.catalog import Reading
from configurator.kernel.answer import ask, ask_fit
from configurator.kernel.message import is_said, message, plain, say, say_phrase, say_working
from configurator.kernel.moment import moment
from configurator.kernel.mount.hung import hung_with
from configurator.kernel.remedy.fixes import fixes
from configurator.kernel.remedy.plight import REFUSAL
from configurator.kernel.say import say_value
from configurator.kernel.scene import asked_scene
from configurator.kernel.shapes import Caution, Figure, Fix, Message, Piece, Verdict
from configurator.kernel.tongue import Words, in_words, wording
from configurator.kernel.views.words import covering_words

WIDTH = 100
NAME_WIDTH = 44
OTHER_UNITS = {"in": "mm", "mm": "in"}
PIECE_KEYS = ("kind", "x0", "x1", "y0", "y1", "z0", "z1")


def wrapped(text: str, indent: int) -> str:
    """Return a paragraph set in by ``indent``."""
    return fill(text, WIDTH, initial_indent=" " * indent, subsequent_indent=" " * indent)


def title(asked: Configuration, words: Words) -> str:
    """Return the family, the door and the choices as people name them."""
    named = {"family": asked.family["name"], "door": asked.door["name"], "place": ""}
    lines = [say(covering_words(named), words, "in")]
    for choice in asked.family["choices"]:
        names = {option["id"]: option["name"] for option in choice["options"]}
        lines.append(f"  {choice['name']}: {names[asked.choices[choice['id']]]}")
    return "\n".join(lines)


def heading(text: str) -> str:
    """Return a heading with the end of its line."""
    return f"{text}\n"


def at_place(at: str) -> Message:
    """Return the heading of a position that was asked for: ``open``, ``closed`` or a share."""
    if at == "open":
        return plain("At open")
    if at == "closed":
        return plain("At closed")
    return message("At {share}", {"share": [at, "name"]})


def said(value: float, unit: str, words: Words, units: str) -> str:
    """Return a value in the units asked for, lengths and areas in the others as well."""
    text = say_value(value, unit, words, units)
    return f"{text:<14} {say_value(value, unit, words, OTHER_UNITS[units])}" if unit in ("mm", "mm2") else text


def figure_lines(figure: Figure, words: Words, units: str) -> str:
    """Return a figure with its working below."""
    value = said(figure["value"], figure["unit"], words, units)
    return f"  {in_words(figure['name'], words):<{NAME_WIDTH}} {value}\n{wrapped(say_working(figure, words, units), 6)}"


def between(verdict: Verdict, words: Words) -> str:
    """Return the positions between which a verdict holds, or nothing where it holds wherever the covering stands."""
    if verdict["moves"] == "":
        return ""
    ends: dict[str, list[float | str]] = {
        "start": [f"{verdict['start']:.2f}", "name"],
        "end": [f"{verdict['end']:.2f}", "name"],
    }
    if verdict["moves"] == "upper":
        return say_phrase(message(", upper from {start} to {end}", ends), words, "in")
    if verdict["moves"] == "tilt":
        return say_phrase(message(", tilt from {start} to {end}", ends), words, "in")
    return say_phrase(message(", lower from {start} to {end}", ends), words, "in")


def fix_lines(told: list[Fix], words: Words, units: str) -> list[str]:
    """Return a line for each fix of a verdict with what it costs."""
    return [
        in_words(wording("What would fix it:"), words)
        + " "
        + " ".join(say(part, words, units) for part in [fix["says"], *fix["costs"]])
        for fix in told
    ]


def mending(told: list[Fix], mended: str) -> list[Fix]:
    """Return the fixes of one verdict."""
    return [fix for fix in told if fix["verdict"] == mended]


def verdict_lines(verdict: Verdict, told: list[Fix], words: Words, units: str) -> str:
    """Return a verdict with its positions, its reason and what mends it."""
    why = wrapped(say(verdict["why"], words, units), 6)
    says = say_phrase(verdict["says"], words, units)
    mends = "".join("\n" + wrapped(line, 6) for line in fix_lines(mending(told, verdict["id"]), words, units))
    return f"  {in_words(verdict['name'], words)}: {says}{between(verdict, words)}\n{why}{mends}"


def caution_lines(caution: Caution, words: Words, units: str) -> str:
    """Return a caution with its source."""
    return wrapped(f"{say(caution['text'], words, units)} ({in_words(caution['source'], words)})", 2)


def as_text(read: Reading, asked: Configuration, at: str | None, units: str) -> str:
    """Return every figure, verdict and caution, or the plain reason why there are none."""
    words = read.words
    answer = ask_fit(hung_with(*asked), read.household)
    told = fixes(hung_with(*asked), read.household)
    if is_said(answer["refusal"]):
        why = wrapped(say(answer["refusal"], words, units), 0)
        mends = "".join("\n" + wrapped(line, 0) for line in fix_lines(mending(told, REFUSAL), words, units))
        return f"{title(asked, words)}\n\n{why}{mends}"
    parts = [title(asked, words)]
    if at:
        figures = moment(hung_with(*asked), place(asked, at))
        parts.append(
            heading(say(at_place(at), words, "in"))
            + "\n".join(figure_lines(figure, words, units) for figure in figures)
        )
    parts.append(
        heading(in_words(wording("Figures"), words))
        + "\n".join(figure_lines(figure, words, units) for figure in answer["figures"].values())
    )
    parts.append(
        heading(in_words(wording("Verdicts"), words))
        + "\n".join(verdict_lines(verdict, told, words, units) for verdict in answer["verdicts"].values())
    )
    if answer["cautions"]:
        parts.append(
            heading(in_words(wording("Cautions"), words))
            + "\n".join(caution_lines(caution, words, units) for caution in answer["cautions"])
        )
    return "\n\n".join(parts)


def figure_json(figure: Figure, words: Words, units: str) -> dict[str, object]:
    """Return a figure: its value in mm, as a share, in degrees or as a count, and its working in words."""
    return {
        "value": figure["value"],
        "unit": figure["unit"],
        "name": in_words(figure["name"], words),
        "working": say_working(figure, words, units),
    }


def verdict_json(verdict: Verdict, words: Words, units: str) -> dict[str, object]:
    """Return a verdict; ``from`` and ``to`` are positions on the leg that ``moves`` names, absent where it clears."""
    why = say(verdict["why"], words, units)
    says = say_phrase(verdict["says"], words, units)
    told: dict[str, object] = {
        "state": verdict["state"],
        "says": says,
        "name": in_words(verdict["name"], words),
        "why": why,
    }
    if verdict["state"] != "clears":
        told |= {"moves": verdict["moves"], "from": verdict["start"], "to": verdict["end"]}
    return told


def fix_json(fix: Fix, words: Words, units: str) -> dict[str, object]:
    """Return a fix: which verdict it mends and to what, what to pick or set (mm), in words, and what it costs."""
    costs = {"glass": fix["glass"], "stack": fix["stack"], "projection": fix["projection"]}
    return {
        "mends": fix["verdict"],
        "state": fix["state"],
        **fix["change"],
        "text": say(fix["says"], words, units),
        "changes": costs | {"text": [say(cost, words, units) for cost in fix["costs"]]},
    }


def caution_json(caution: Caution, words: Words, units: str) -> dict[str, str | bool]:
    """Return a caution in words with the rule that it names, and whether it is general guidance."""
    return {
        "id": caution["id"],
        "text": say(caution["text"], words, units),
        "source": in_words(caution["source"], words),
        "general": caution["general"],
    }


def piece_json(piece: Piece) -> dict[str, object]:
    """Return a piece's kind, box, and how much of the view and of the light comes through it."""
    through = piece["optics"]
    box = {key: value for key, value in piece.items() if key in PIECE_KEYS}
    return {**box, "view": through["view"], "light": through["light"]}


def pieces_json(asked: Configuration, at: str | None) -> dict[str, list[dict[str, object]]]:
    """Return the door's pieces and the covering's at open, at closed and, where asked for, at one more position."""
    states = {"open": "open", "closed": "closed"} | ({"at": at} if at else {})
    fit = hung_with(*asked)
    scenes = {state: asked_scene(fit, place(asked, where)) for state, where in states.items()}
    told = {"door": [piece_json(piece) for piece in scenes["open"]["door"]]}
    return told | {state: [piece_json(piece) for piece in held["covering"]] for state, held in scenes.items()}


def as_json(read: Reading, asked: Configuration, at: str | None, units: str) -> str:
    """Return one JSON object: lengths in mm, shares 0 to 1; ``refusal`` is empty where the family fits."""
    return json.dumps(answer_json(read, asked, at, units), indent=2, ensure_ascii=False)


def answer_json(read: Reading, asked: Configuration, at: str | None, units: str) -> dict[str, object]:
    """Return what that JSON object holds."""
    words = read.words
    answer = ask_fit(hung_with(*asked), read.household)
    return {
        "door": asked.door["id"],
        "family": asked.family["id"],
        "choices": asked.choices,
        "refusal": say(answer["refusal"], words, units),
        "figures": {name: figure_json(figure, words, units) for name, figure in answer["figures"].items()},
        "verdicts": {name: verdict_json(verdict, words, units) for name, verdict in answer["verdicts"].items()},
        "fixes": [fix_json(fix, words, units) for fix in fixes(hung_with(*asked), read.household)],
        "cautions": [caution_json(caution, words, units) for caution in answer["cautions"]],
        "pieces": {} if is_said(answer["refusal"]) else pieces_json(asked, at),
    }


def names_of(groups: Iterable[Iterable[str]]) -> list[str]:
    """Return every name once, in the order in which it first turns up."""
    return list(dict.fromkeys(name for group in groups for name in group))


def as_csv(read: Reading) -> str:
    """Return a row for every family on every door: lengths in mm, shares 0 to 1, verdicts by their state."""
    pairs = product(read.doors.values(), read.families.values())
    answers = [ask(door, family, {}, read.household) for door, family in pairs if not family["retired"]]
    figures = names_of(answer["figures"] for answer in answers)
    verdicts = names_of(answer["verdicts"] for answer in answers)
    text = io.StringIO()
    table = csv.writer(text, lineterminator="\n")
    table.writerow(["door", "family", "refusal", *figures, *verdicts])
    for answer in answers:
        values = [round(answer["figures"][name]["value"], 3) if name in answer["figures"] else "" for name in figures]
        states = [answer["verdicts"][name]["state"] if name in answer["verdicts"] else "" for name in verdicts]
        refusal = say(answer["refusal"], read.words, read.units)
        table.writerow([answer["door"], answer["family"], refusal, *values, *states])
    return text.getvalue()
