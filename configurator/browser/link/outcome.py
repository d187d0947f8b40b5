"""What came of a configuration when its link was made, and whether it does so still.

Only what comes out is noted, never what went in: a number that the software or the showroom gains, and that changes
nothing, leaves every kept link silent. A letter for each figure, then whether the covering passes the handle:
``w25in,h68in,s100.4,p31.8,g12,x0,v97.7,clears``; ``none`` where it could not be hung.
"""

from configurator.browser.link.shapes import Difference
from configurator.browser.link.spell import pointed, read_number, spell_sixty_fourths
from configurator.kernel.message import is_said, message, plain
from configurator.kernel.numbers import nearest
from configurator.kernel.shapes import Answer, Figure, Message
from configurator.kernel.tongue import wording
from configurator.kernel.verdict_words import VERDICT_WORDS, verdict_word

# A letter, once given, stays with its figure for ever; one that is not known is read over.
NOTED_FIGURES: dict[str, str] = {
    "w": "order_width",
    "h": "order_height",
    "s": "stack_height",
    "p": "projection_most",
    "g": "handle_gap",
    "x": "spacer",
    "v": "visible_glass_open",
}
NOTED_VERDICT = "pass_through"
NOT_HUNG = "none"
# Lengths are noted to 0.1 mm and shares to 0.1 %: half of that, and a little for halves that two machines round apart.
SAME_WITHIN = 0.06


def outcome_text(answer: Answer, units: str) -> str:
    """Return what a link notes of an answer; lengths in inches where ``units`` is ``in`` and they are sixty-fourths."""
    if is_said(answer["refusal"]):
        return NOT_HUNG
    words: list[str] = []
    for letter, key in NOTED_FIGURES.items():
        if key in answer["figures"]:
            words.append(letter + noted_number(answer["figures"][key], units))
    words.append(answer["verdicts"][NOTED_VERDICT]["state"].replace(" ", "-"))
    return ",".join(words)


def noted_number(figure: Figure, units: str) -> str:
    """Return a figure's value as it is noted."""
    value = in_tenths_of(figure) * figure["value"]
    sign = "-" if value < 0 else ""
    inches = spell_sixty_fourths(abs(value)) if units == "in" and figure["unit"] == "mm" else ""
    return sign + (inches if inches != "" else pointed(nearest(abs(value) * 10), 1))


def in_tenths_of(figure: Figure) -> float:
    """Return by what a figure's value is multiplied before it is noted to a tenth: shares are noted in percent."""
    return 100.0 if figure["unit"] == "share" else 1.0


def changes_of(noted: str, answer: Answer, configuration: int) -> list[Difference]:
    """Return what differs between what a link has noted of a configuration and today's answer."""
    now = answer["refusal"]
    if noted == NOT_HUNG or is_said(now):
        if noted == NOT_HUNG and is_said(now):
            return []
        then = plain("It could not be hung." if noted == NOT_HUNG else "It could be hung.")
        name = wording("On this door")
        told = now if is_said(now) else plain("It can be hung.")
        return [{"configuration": configuration, "id": "refusal", "name": name, "then": then, "now": told}]
    changes: list[Difference] = []
    for word in noted.split(","):
        letter = word[:1]
        reading = read_number(word[1:])
        if not reading["good"]:
            changes.extend(verdict_change(word.replace("-", " "), answer, configuration))
        elif letter in NOTED_FIGURES and NOTED_FIGURES[letter] in answer["figures"]:
            figure = answer["figures"][NOTED_FIGURES[letter]]
            changes.extend(figure_change(reading["value"], figure, configuration))
    return changes


def figure_change(noted: float, figure: Figure, configuration: int) -> list[Difference]:
    """Return the change of a figure, or none."""
    scale = in_tenths_of(figure)
    if abs(noted - figure["value"] * scale) <= SAME_WITHIN:
        return []
    then = told_value(noted / scale, figure["unit"])
    now = told_value(figure["value"], figure["unit"])
    return [{"configuration": configuration, "id": figure["id"], "name": figure["name"], "then": then, "now": now}]


def told_value(value: float, unit: str) -> Message:
    """Return a number by itself as what is told."""
    return message("{value}", {"value": [value, unit]})


def verdict_change(state: str, answer: Answer, configuration: int) -> list[Difference]:
    """Return the change of the verdict at the handle, or none; a word that is no state of it is read over."""
    verdict = answer["verdicts"][NOTED_VERDICT]
    if state == verdict["state"] or state not in VERDICT_WORDS[NOTED_VERDICT]:
        return []
    then = plain(verdict_word(NOTED_VERDICT, state))
    name = verdict["name"]
    return [{"configuration": configuration, "id": NOTED_VERDICT, "name": name, "then": then, "now": verdict["says"]}]
