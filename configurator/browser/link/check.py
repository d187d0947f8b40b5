"""The check at a link's end: does the text stand as it was written?"""

import math

# Digits and small letters but for those that are misread or make words.
CHECK_LETTERS = "0123456789bcdfghjkmnpqrstvwxyz"
LINK_LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_.,;:=@/"
# A prime under thirty to the fifth; with the factor, every step stays exact in a double.
CHECK_PRIME = 24299981
CHECK_FACTOR = 257


def check_of(text: str) -> str:
    """Return five letters that change with any letter of the text."""
    return check_digits(check_sum(text), 5)


def check_sum(text: str) -> float:
    """Return a whole number under :data:`CHECK_PRIME` that depends on each letter and its place."""
    total = 1.0
    for letter in text:
        total = total * CHECK_FACTOR + ord(letter)
        total = total - math.floor(total / CHECK_PRIME) * CHECK_PRIME
    return total


def check_digits(value: float, count: int) -> str:
    """Return the lowest ``count`` digits of a whole number, base thirty."""
    base = len(CHECK_LETTERS)
    text = ""
    for _place in range(count):
        rest = math.floor(value / base)
        text = CHECK_LETTERS[int(value - rest * base)] + text
        value = rest
    return text


def is_link_text(text: str) -> bool:
    """Return whether a text has only letters that links are made of."""
    return len([letter for letter in text if letter not in LINK_LETTERS]) == 0
