"""Contrast of colours: WCAG 2.2, success criterion 1.4.3, and the nearest colour that passes."""

import re
from collections.abc import Collection

Colour = tuple[int, int, int]

# WCAG 2.2, 1.4.3: text against its background.
TEXT_RATIO = 4.5

BLACK = (0, 0, 0)
WHITE = (255, 255, 255)
STEPS = 255


def read_colour(text: str) -> Colour:
    """Return ``#rrggbb`` as red, green and blue, 0 to 255; raises ValueError with what to write."""
    if not re.fullmatch(r"#[0-9a-fA-F]{6}", text):
        raise ValueError("a colour such as '#1f2a33' (in quotes) is expected")
    return (int(text[1:3], 16), int(text[3:5], 16), int(text[5:7], 16))


def say_colour(colour: Colour) -> str:
    """Return a colour as ``#rrggbb``."""
    return "#" + "".join(f"{part:02x}" for part in colour)


def luminance(colour: Colour) -> float:
    """Return the relative luminance, 0 to 1 (WCAG 2.2, definition of relative luminance)."""
    parts = [part / 255 for part in colour]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: Colour, other: Colour) -> float:
    """Return the contrast ratio of two colours, 1 to 21 (WCAG 2.2, definition of contrast ratio)."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def mixed(colour: Colour, towards: Colour, step: int) -> Colour:
    """Return the colour ``step`` of 255 parts of the way towards another."""
    red, green, blue = (round(a + (b - a) * step / STEPS) for a, b in zip(colour, towards, strict=True))
    return (red, green, blue)


def least_contrast(colour: Colour, grounds: Collection[Colour]) -> float:
    """Return the contrast ratio of a colour to that of the grounds on which it shows least."""
    return min(contrast(colour, ground) for ground in grounds)


def nearest_passing(colour: Colour, grounds: Collection[Colour], ratio: float) -> Colour:
    """Return the colour itself or the first on its way to black or to white that reaches the ratio on every ground.

    On one ground, one of the two ways always gets there for ratios up to 4.58, the best that mid grey allows. Where
    neither does on several grounds, the better of black and white is returned.
    """
    for step in range(STEPS + 1):
        for end in (BLACK, WHITE):
            tried = mixed(colour, end, step)
            if least_contrast(tried, grounds) >= ratio:
                return tried
    return max((BLACK, WHITE), key=lambda end: least_contrast(end, grounds))
