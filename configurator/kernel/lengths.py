"""Lengths as people write them: one reader and one writer of a field's text, for content and page alike.

The inch is 25.4 mm exactly (NIST SP 811, Appendix B). What is written stays a fraction of whole
numbers until a single division, so that nothing that a tape shows is read off in its last place.
"""

from typing import TypedDict

from configurator.kernel.message import is_said, message, plain, say_phrase, silence
from configurator.kernel.numbers import step_down, step_up
from configurator.kernel.say import INCH, TAPE, decimals, in_fractions, on_step
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import Words

# Signs that keyboards and papers have in place of the plain ones.
PLAIN_SIGNS: dict[str, str] = {
    "″": '"',
    "”": '"',
    "“": '"',
    "′": "'",
    "’": "'",
    "‘": "'",
    "−": "-",
    "–": "-",
    "‐": "-",
    "‑": "-",
    "⁄": "/",
    "∕": "/",
    ",": ".",
    "\t": " ",
    "\n": " ",
    "\r": " ",
    "\u00a0": " ",
    "\u2007": " ",
    "\u2009": " ",
    "\u202f": " ",
    "½": " 1/2",
    "⅓": " 1/3",
    "⅔": " 2/3",
    "¼": " 1/4",
    "¾": " 3/4",
    "⅕": " 1/5",
    "⅖": " 2/5",
    "⅗": " 3/5",
    "⅘": " 4/5",
    "⅙": " 1/6",
    "⅚": " 5/6",
    "⅐": " 1/7",
    "⅛": " 1/8",
    "⅜": " 3/8",
    "⅝": " 5/8",
    "⅞": " 7/8",
    "⅑": " 1/9",
    "⅒": " 1/10",
    "⅟": " 1/",
}
UNIT_WORDS: dict[str, str] = {
    '"': "in",
    "in": "in",
    "ins": "in",
    "inch": "in",
    "inches": "in",
    "'": "ft",
    "ft": "ft",
    "foot": "ft",
    "feet": "ft",
    "mm": "mm",
    "cm": "cm",
    "m": "m",
}
# Millimeters in a unit, as a fraction of whole numbers.
MM_ABOVE: dict[str, float] = {"in": 254.0, "ft": 3048.0, "mm": 1.0, "cm": 10.0, "m": 1000.0}
MM_BELOW: dict[str, float] = {"in": 10.0, "ft": 10.0, "mm": 1.0, "cm": 1.0, "m": 1.0}
DIGITS = "0123456789"
# As many digits as a float holds exactly.
MOST_DIGITS = 15


class Length(TypedDict):
    """What a text says as a length.

    ``sound`` where it is one: ``mm`` is its length, ``step`` the step in which it was written, in mm (for
    ``22 1/2 in`` half an inch), ``unit`` the unit it names: ``in`` (feet as well), ``mm``, ``cm``, ``m``, or
    empty for a bare number. Otherwise ``fault`` says what is wrong with it, and is empty where it is no length at all.
    """

    sound: bool
    mm: float
    step: float
    unit: str
    fault: Message


class Amount(TypedDict):
    """A number as a fraction of whole numbers; where it is none, ``below`` is 0 and ``fault`` may say why."""

    above: float
    below: float
    fault: Message


def no_amount(fault: Message) -> Amount:
    """Return what stands for a number that cannot be read."""
    return {"above": 0.0, "below": 0.0, "fault": fault}


def no_length(fault: Message) -> Length:
    """Return what stands for a text that is no length."""
    return {"sound": False, "mm": 0.0, "step": 0.0, "unit": "", "fault": fault}


def plain_length(text: str) -> str:
    """Return a text in small letters, with typographic signs, fractions and spaces made plain."""
    smoothed = "".join([PLAIN_SIGNS.get(sign, sign) for sign in text.lower()])
    return " ".join([part for part in smoothed.replace("''", '"').split(" ") if part != ""])


def length_sign(sign: str) -> str:
    """Return of what sort a sign is: ``digit``, ``letter``, or itself."""
    if sign in DIGITS or sign == ".":
        return "digit"
    return "letter" if sign >= "a" and sign <= "z" else sign


def length_words(smoothed: str) -> list[str]:
    """Return the numbers, words and signs of a plain text in their order; spaces only part them."""
    words: list[str] = []
    last = ""
    for sign in smoothed:
        sort = length_sign(sign)
        # The dot of an abbreviated unit says nothing more.
        if sign == "." and last == "letter":
            sort = " "
        elif sort == last and (sort == "digit" or sort == "letter"):
            words[len(words) - 1] = words[len(words) - 1] + sign
        elif sort != " ":
            words.append(sign)
        last = sort
    return words


def decimal_amount(word: str) -> Amount:
    """Return ``22``, ``22.5`` or ``.5`` as a number."""
    above = 0.0
    below = 1.0
    digits = 0
    points = 0
    for sign in word:
        if sign == ".":
            points += 1
        elif sign in DIGITS:
            above = above * 10 + DIGITS.find(sign)
            digits += 1
            below = below * 10 if points > 0 else below
        else:
            return no_amount(silence())
    if digits == 0 or digits > MOST_DIGITS or points > 1:
        return no_amount(silence())
    return {"above": above, "below": below, "fault": silence()}


def fraction_amount(before: str, above: str, below: str) -> Amount:
    """Return a fraction, and the whole number before it, as a number."""
    first = decimal_amount(before)
    top = decimal_amount(above)
    bottom = decimal_amount(below)
    if first["below"] != 1 or top["below"] != 1 or bottom["below"] != 1:
        return no_amount(silence())
    if bottom["above"] == 0 or (first["above"] > 0 and top["above"] >= bottom["above"]):
        return no_amount(
            message("{fraction} is no fraction that a tape shows", {"fraction": [above + "/" + below, "name"]})
        )
    return {"above": first["above"] * bottom["above"] + top["above"], "below": bottom["above"], "fault": silence()}


def amount_of(words: list[str]) -> Amount:
    """Return the words before a unit as a number: ``22.5``, ``1/2``, ``22 1/2`` or ``22-1/2``."""
    count = len(words)
    if count == 1:
        return decimal_amount(words[0])
    if count >= 3 and count <= 5 and words[count - 2] == "/":
        if count == 3:
            return fraction_amount("0", words[0], words[2])
        if count == 4 or words[1] == "-":
            return fraction_amount(words[0], words[count - 3], words[count - 1])
    return no_amount(silence())


def feet_and_inches(feet: Amount, rest: Amount) -> Amount:
    """Return feet and inches as a number of inches."""
    if feet["below"] == 0 or rest["below"] == 0:
        return no_amount(feet["fault"] if is_said(feet["fault"]) else rest["fault"])
    if rest["above"] >= rest["below"] * 12:
        return no_amount(plain("inches after feet stay below 12"))
    above = feet["above"] * 12 * rest["below"] + rest["above"] * feet["below"]
    return {"above": above, "below": feet["below"] * rest["below"], "fault": silence()}


def measured_length(amount: Amount, unit: str, named: str, minus: bool) -> Length:
    """Return a number in a unit as a length; ``named`` is what the text itself says of the unit."""
    if amount["below"] == 0:
        return no_length(amount["fault"])
    below = amount["below"] * MM_BELOW[unit]
    mm = amount["above"] * MM_ABOVE[unit] / below
    return {
        "sound": True,
        "mm": -mm if minus and mm > 0 else mm,
        "step": MM_ABOVE[unit] / below,
        "unit": "in" if named == "ft" else named,
        "fault": silence(),
    }


def unit_groups(words: list[str]) -> list[list[str]]:
    """Return each number's words, led by the unit that follows it, or by an empty one."""
    groups: list[list[str]] = []
    own: list[str] = []
    for word in words:
        if word in UNIT_WORDS:
            group = [UNIT_WORDS[word]]
            group.extend(own)
            groups.append(group)
            own = []
        else:
            own.append(word)
    if len(own) > 0:
        last = [""]
        last.extend(own)
        groups.append(last)
    return groups


def written_length(text: str, units: str) -> Length:
    """Return what a text says as a length; a bare number is in ``units``, ``in`` or ``mm``, a bare fraction in inches.

    Takes inches (``22 1/2 in``, ``22.5"``, ``½``), feet and inches (``6'8"``, ``6 ft 8 1/2 in``) and metric
    (``571 mm``, ``57,1 cm``, ``2.1 m``), with a leading minus where one is wanted.
    """
    words = length_words(plain_length(text))
    minus = len(words) > 0 and words[0] == "-"
    groups = unit_groups(words[1:] if minus else words)
    if len(groups) == 1:
        named = groups[0][0]
        # Only a tape in inches shows fractions.
        bare = "in" if "/" in groups[0] else units
        return measured_length(amount_of(groups[0][1:]), bare if named == "" else named, named, minus)
    if len(groups) != 2 or groups[0][0] != "ft" or (groups[1][0] != "in" and groups[1][0] != ""):
        return no_length(silence())
    # A hyphen may join the inches to their feet.
    joined = len(groups[1]) > 1 and groups[1][1] == "-"
    rest = groups[1][2:] if joined else groups[1][1:]
    return measured_length(feet_and_inches(amount_of(groups[0][1:]), amount_of(rest)), "in", "in", minus)


def write_length(mm: float, words: Words, units: str) -> str:
    """Return a length as the text of a field that is in ``units``: read back, it is the same within 1e-6 mm.

    In inches: the fraction that a tape shows, or decimals where few hold it, or else the millimeters in which it
    must have been given.
    """
    if units == "mm":
        return decimals(mm, 6, words)
    if on_step(mm, INCH / TAPE):
        return in_fractions(mm, TAPE)
    if on_step(mm, INCH / 1000):
        return decimals(mm / INCH, 3, words)
    if on_step(mm, 0.001):
        return decimals(mm, 3, words) + " mm"
    return decimals(mm / INCH, 8, words)


def drawn_in(limits: list[float], units: str) -> list[float]:
    """Return two limits as they are told: in inches they are drawn in to whole eighths."""
    if units == "in":
        return [step_up(limits[0], INCH / 8), step_down(limits[1], INCH / 8)]
    return limits


def say_span(low: float, high: float, words: Words, units: str) -> str:
    """Return ``between 100 mm and 1500 mm``, drawn in as :func:`drawn_in` does."""
    limits = drawn_in([low, high], units)
    terms: dict[str, list[float | str]] = {"least": [limits[0], "mm"], "most": [limits[1], "mm"]}
    return say_phrase(message("between {least} and {most}", terms), words, units)
