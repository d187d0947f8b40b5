"""Contrast of colors: WCAG 2.2, success criterion 1.4.3, and the nearest color that passes."""

import re
from bisect import bisect_left
from collections.abc import Collection

from configurator.catalog.clauses import Slip
from configurator.kernel.message import plain
from configurator.kernel.tongue import wording

Color = tuple[int, int, int]

# WCAG 2.2, 1.4.3: text against its background.
TEXT_RATIO = 4.5

BLACK = (0, 0, 0)
WHITE = (255, 255, 255)
EXPECTED = wording("a color such as '#1f2a33' (in quotes) is expected")
STEPS = 255


def read_color(text: str) -> Color:
    """Return ``#rrggbb`` as red, green and blue, 0 to 255.

    :raises Slip: with what to write
    """
    if not re.fullmatch(r"#[0-9a-fA-F]{6}", text):
        raise Slip(plain(EXPECTED))
    return (int(text[1:3], 16), int(text[3:5], 16), int(text[5:7], 16))


def say_color(color: Color) -> str:
    """Return a color as ``#rrggbb``."""
    return "#" + "".join(f"{part:02x}" for part in color)


def luminance(color: Color) -> float:
    """Return the relative luminance, 0 to 1 (WCAG 2.2, definition of relative luminance)."""
    parts = [part / 255 for part in color]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: Color, other: Color) -> float:
    """Return the contrast ratio of two colors, 1 to 21 (WCAG 2.2, definition of contrast ratio)."""
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def mixed(color: Color, towards: Color, step: int) -> Color:
    """Return the color ``step`` of 255 parts of the way towards another."""
    red, green, blue = (round(a + (b - a) * step / STEPS) for a, b in zip(color, towards, strict=True))
    return (red, green, blue)


def least_contrast(color: Color, grounds: Collection[Color]) -> float:
    """Return the contrast ratio of a color to that of the grounds on which it shows least."""
    return min(contrast(color, ground) for ground in grounds)


def nearest_passing(color: Color, grounds: Collection[Color], ratio: float) -> Color:
    """Return the color itself or the first on its way to black or to white that reaches the ratio on every ground.

    On one ground, one of the two ways always gets there for ratios up to 4.58, the best that mid gray allows. Where
    neither does on several grounds, the better of black and white is returned.
    """
    for step in range(STEPS + 1):
        for end in (BLACK, WHITE):
            tried = mixed(color, end, step)
            if least_contrast(tried, grounds) >= ratio:
                return tried
    return max((BLACK, WHITE), key=lambda end: least_contrast(end, grounds))


def nearest_on(ground: Color, ratio: float) -> Color:
    """Return the first color on a ground's own way to black or to white that reaches the ratio on it, up to 4.58."""

    def steps_to(end: Color) -> int:
        # On the way from the ground the contrast only grows.
        return bisect_left(range(STEPS + 1), ratio, key=lambda step: contrast(mixed(ground, end, step), ground))

    end = min((BLACK, WHITE), key=steps_to)
    return mixed(ground, end, steps_to(end))
