"""What people write, in letters that links are made of: any writing, and the very same text again.

Letters and digits stand as they are and a space is ``_``; whatever else follows one another stands between two dashes,
each by its code point in digits of base 32, points between them: ``Küche`` is ``K-7s-che``.
"""

import math
from typing import TypedDict

STANDING_LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.,:;"
CODE_DIGITS = "0123456789abcdefghijklmnopqrstuv"
CODE_MOST = 0x10FFFF
CODE_DIGITS_MOST = 5
NEW_LINE = 10
# Code points, first and last, that no text shows: controls, halves of letters, and what turns the way that others read.
UNSEEN_CODES = [[0, 9], [11, 31], [127, 159], [0x202A, 0x202E], [0x2066, 0x2069], [0xD800, 0xDFFF]]


class ToldText(TypedDict):
    """A text read from a link; ``good`` is false where what stands there is none."""

    good: bool
    text: str


def is_seen(code: float) -> bool:
    """Return whether a code point is one that a text may show."""
    for span in UNSEEN_CODES:
        if span[0] <= code and code <= span[1]:
            return False
    return code <= CODE_MOST


def seen_text(text: str) -> str:
    """Return a text with a space for whatever a text does not show, without spaces at its ends."""
    letters = [letter if is_seen(ord(letter)) else " " for letter in text]
    first = 0
    last = len(letters)
    while last > first and is_blank(letters[last - 1]):
        last -= 1
    while first < last and is_blank(letters[first]):
        first += 1
    return "".join(letters[first:last])


def is_blank(letter: str) -> bool:
    """Return whether a letter is a space or ends a line."""
    return letter == " " or ord(letter) == NEW_LINE


def letter_count(text: str) -> int:
    """Return how many letters a text has, counted alike by Python and a browser."""
    return len(list(text))


def spell_text(text: str) -> str:
    """Return a text in letters of a link; what is not seen becomes a space."""
    spelled: list[str] = []
    codes: list[str] = []
    for letter in text:
        blank = letter == " " or not is_seen(ord(letter))
        if blank or letter in STANDING_LETTERS:
            spelled.append(between_dashes(codes) + ("_" if blank else letter))
            codes = []
        else:
            codes.append(spell_code(ord(letter)))
    spelled.append(between_dashes(codes))
    return "".join(spelled)


def between_dashes(codes: list[str]) -> str:
    """Return spelled code points between two dashes, or nothing for none."""
    return "-" + ".".join(codes) + "-" if len(codes) > 0 else ""


def spell_code(code: float) -> str:
    """Return a code point in digits of base 32."""
    base = len(CODE_DIGITS)
    text = ""
    while True:
        rest = math.floor(code / base)
        text = CODE_DIGITS[int(code - rest * base)] + text
        code = rest
        if code == 0:
            return text


def read_code(text: str) -> float:
    """Return the code point that digits of base 32 spell, or -1 for none that a text shows."""
    if text == "" or len(text) > CODE_DIGITS_MOST:
        return -1.0
    code = 0.0
    for letter in text:
        digit = CODE_DIGITS.find(letter)
        if digit < 0:
            return -1.0
        code = code * len(CODE_DIGITS) + digit
    return code if is_seen(code) else -1.0


def no_text() -> ToldText:
    """Return that nothing could be read."""
    return {"good": False, "text": ""}


def read_text_of(spelled: str) -> ToldText:
    """Return the text that :func:`spell_text` spelled."""
    parts = spelled.split("-")
    if len(parts) % 2 == 0:
        return no_text()
    text: list[str] = []
    for i in range(len(parts)):
        part = read_codes(parts[i]) if i % 2 == 1 else read_standing(parts[i])
        if not part["good"]:
            return no_text()
        text.append(part["text"])
    return {"good": True, "text": "".join(text)}


def read_standing(part: str) -> ToldText:
    """Return what stands in a link as it is, but for spaces."""
    strange = [letter for letter in part if letter != "_" and letter not in STANDING_LETTERS]
    return {"good": len(strange) == 0, "text": part.replace("_", " ")}


def read_codes(part: str) -> ToldText:
    """Return what stands between two dashes."""
    codes = [read_code(code) for code in part.split(".")]
    if len([code for code in codes if code < 0]) > 0:
        return no_text()
    return {"good": True, "text": "".join([chr(int(code)) for code in codes])}
