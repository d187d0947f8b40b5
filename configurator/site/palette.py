"""The colours of a site: the showroom's four, and the shades between them that still can be read.

Ratios are those of WCAG 2.2: 1.4.3 for text, 1.4.11 for the lines that bound a control.
"""

from configurator.catalog.contrast import (
    BLACK,
    STEPS,
    TEXT_RATIO,
    WHITE,
    Colour,
    contrast,
    luminance,
    mixed,
    nearest_passing,
    read_colour,
    say_colour,
)

LINE_RATIO = 3.0

Tokens = dict[str, str]


def as_far_as(ink: Colour, paper: Colour, step: int, ratio: float) -> Colour:
    """Return ink thinned with ``step`` of 255 parts of paper, or less where it could not be read."""
    while step > 0 and contrast(mixed(ink, paper, step), paper) < ratio:
        step -= 1
    return mixed(ink, paper, step)


def own_tokens(paper: str, ink: str, warm: str, cool: str) -> Tokens:
    """Return the tokens that follow from a showroom's four colours (``#rrggbb``)."""
    sheet, pen, accent = read_colour(paper), read_colour(ink), read_colour(warm)
    day = luminance(sheet) > luminance(pen)
    # The ground lies closer to the reader than the paper: lighter by day and by night.
    ground = mixed(sheet, WHITE, STEPS * 6 // 10) if day else mixed(sheet, pen, STEPS * 4 // 100)
    shades = {
        "ground": ground,
        "well": mixed(sheet, pen if day else BLACK, STEPS * 5 // 100 if day else STEPS * 25 // 100),
        "ink-soft": as_far_as(pen, sheet, STEPS * 28 // 100, TEXT_RATIO + 0.5),
        # By night, lines at full strength would glare.
        "drawn": pen if day else mixed(pen, sheet, STEPS * 22 // 100),
        "line": mixed(pen, sheet, STEPS * 80 // 100),
        # A little more than asked for, so that it bounds a control on the well as well.
        "line-strong": as_far_as(pen, sheet, STEPS * 50 // 100, LINE_RATIO + 0.3),
        "on-warm": max((WHITE, BLACK), key=lambda colour: contrast(colour, accent)),
    }
    tokens = {"paper": paper, "ink": ink, "warm": warm, "cool": cool}
    return tokens | {name: say_colour(colour) for name, colour in shades.items()}


def readable(tokens: Tokens, names: tuple[str, ...], paper: str) -> Tokens:
    """Return the named colours of a theme, each moved as little as needed to be read on the paper."""
    sheet = read_colour(paper)
    return {name: say_colour(nearest_passing(read_colour(tokens[name]), sheet, TEXT_RATIO)) for name in names}
