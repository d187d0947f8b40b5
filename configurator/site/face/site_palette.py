"""The colors of a site: the showroom's four, and the shades between them that still can be read.

Ratios are those of WCAG 2.2: 1.4.3 for text, 1.4.11 for the lines that bound a control.
"""

from collections.abc import Collection

from configurator.catalog.contrast import (
    BLACK,
    STEPS,
    TEXT_RATIO,
    WHITE,
    Color,
    contrast,
    least_contrast,
    mixed,
    nearest_passing,
    read_color,
    say_color,
)
from configurator.catalog.grounds import grounds, is_day

LINE_RATIO = 3.0

Tokens = dict[str, str]


def as_far_as(ink: Color, paper: Color, step: int, sheets: Collection[Color], ratio: float) -> Color:
    """Return ink thinned with ``step`` of 255 parts of paper, or less where it could not be seen on every ground."""
    while step > 0 and least_contrast(mixed(ink, paper, step), sheets) < ratio:
        step -= 1
    return mixed(ink, paper, step)


def own_tokens(paper: str, ink: str, warm: str, cool: str) -> Tokens:
    """Return the tokens that follow from a showroom's four colors (``#rrggbb``)."""
    sheet, pen, accent = read_color(paper), read_color(ink), read_color(warm)
    places = grounds(sheet)
    sheets = places.values()
    shades = {
        "ground": places["ground"],
        "well": places["well"],
        "ink-soft": as_far_as(pen, sheet, STEPS * 28 // 100, sheets, TEXT_RATIO),
        # By night, lines at full strength would glare.
        "drawn": pen if is_day(sheet) else mixed(pen, sheet, STEPS * 22 // 100),
        "line": mixed(pen, sheet, STEPS * 80 // 100),
        "line-strong": as_far_as(pen, sheet, STEPS * 50 // 100, sheets, LINE_RATIO),
        "on-warm": max((WHITE, BLACK), key=lambda color: contrast(color, accent)),
    }
    tokens = {"paper": paper, "ink": ink, "warm": warm, "cool": cool}
    return tokens | {name: say_color(color) for name, color in shades.items()}


def readable(tokens: Tokens, names: tuple[str, ...], paper: str) -> Tokens:
    """Return the named colors of a theme, each moved as little as needed to be read on the paper and its grounds."""
    sheets = grounds(read_color(paper)).values()
    return {name: say_color(nearest_passing(read_color(tokens[name]), sheets, TEXT_RATIO)) for name in names}
