"""A text in which what comes again is told by where it stood before, so that a script with it is short.

``~`` and three digits stand for letters that were there already: how far back, in two digits, and how many. What is
packed are letters of ASCII without quotation marks of its own; a browser needs nothing but this to read it.
"""

PACKED_SIGN = "~"
PACKED_DIGITS = "!#$%&()*+,-./0123456789:;<=>?@ABCDEFGHIJKLMNOPQRSTUVWXYZ[]^_`abcdefghijklmnopqrstuvwxyz{|}"


def unpacked_text(packed: str) -> str:
    """Return the text that was packed."""
    base = len(PACKED_DIGITS)
    text = ""
    at = 0
    while at < len(packed):
        if packed[at] == PACKED_SIGN:
            digits = [PACKED_DIGITS.find(packed[at + place]) for place in [1, 2, 3]]
            start = len(text) - digits[0] * base - digits[1]
            text = text + text[start : start + digits[2]]
            at = at + 4
        else:
            text = text + packed[at]
            at = at + 1
    return text
