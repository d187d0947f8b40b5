"""The colors of a site can be told apart: both themes, by day and in the evening, from the style sheet as built.

Published: WCAG 2.2, 1.4.3 (text, 4.5 : 1) and 1.4.11 (what bounds a control, shows the focus or makes up a
drawing, 3 : 1).
"""

import re
from pathlib import Path

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from configurator.catalog.contrast import (
    BLACK,
    WHITE,
    contrast,
    least_contrast,
    nearest_passing,
    read_color,
    say_color,
)
from configurator.catalog.grounds import grounds
from configurator.site.face.site_palette import own_tokens, readable
from tests.site.pages import asset

TEXT = 4.5
GRAPHICS = 3.0

SHEETS = ("paper", "ground", "well")
WORDS = ("ink", "ink-soft", "warm", "cool", "clears", "guided", "blocked")
TEXTS = [
    *((word, sheet) for word in WORDS for sheet in SHEETS),
    ("on-warm", "warm"),
    ("paper", "ink"),
]
# Edges of fields, the ring of the focus, the ink of drawings on all that it outlines, the accents on a drawing's sheet.
EDGES = [
    *((edge, sheet) for edge in ("line-strong", "cool", "warm") for sheet in SHEETS),
    *(("drawn", body) for body in ("ground", "leaf", "cloth", "louver", "wall", "floor", "sky")),
]

DAY = r":root\{color-scheme:light;([^}]*)\}"
EVENING = r":root:not\(\[data-shade=light\]\)\{color-scheme:dark;([^}]*)\}"
CHOSEN_EVENING = r":root\[data-shade=dark\]\{color-scheme:dark;([^}]*)\}"


def colors(style: str, rule: str) -> dict[str, str]:
    """Return the colors that a rule of the style sheet sets, by name."""
    found = re.search(rule, style)
    assert found
    return dict(re.findall(r"--([\w-]+):(#[0-9a-fA-F]{6})", found[1]))


def too_faint(tokens: dict[str, str], pairs: list[tuple[str, str]], least: float) -> list[str]:
    """Return each pair whose contrast is under the least, with its ratio."""
    ratios = [(one, other, contrast(read_color(tokens[one]), read_color(tokens[other]))) for one, other in pairs]
    return [f"{one} on {other}: {ratio:.2f}" for one, other, ratio in ratios if ratio < least]


@pytest.fixture(scope="module", params=["demo", "other_theme"])
def style(request: pytest.FixtureRequest) -> str:
    """The style sheet of a site in either theme."""
    site: Path = request.getfixturevalue(request.param)
    return asset(site, "site.css").read_text(encoding="utf-8")


@pytest.mark.parametrize("rule", [DAY, EVENING])
def test_words_can_be_read(style: str, rule: str) -> None:
    assert too_faint(colors(style, rule), TEXTS, TEXT) == []


@pytest.mark.parametrize("rule", [DAY, EVENING])
def test_edges_focus_and_drawings_can_be_seen(style: str, rule: str) -> None:
    assert too_faint(colors(style, rule), EDGES, GRAPHICS) == []


def test_an_evening_that_is_chosen_is_the_device_s_evening(style: str) -> None:
    assert colors(style, CHOSEN_EVENING) == colors(style, EVENING)


def test_the_evening_sets_every_color_of_the_day(style: str) -> None:
    assert set(colors(style, EVENING)) == set(colors(style, DAY))


any_color = st.tuples(*[st.integers(0, 255)] * 3)


@given(any_color, any_color, any_color)
def test_any_colors_that_the_catalog_takes_can_be_read_in_every_shade(
    paper: tuple[int, int, int], ink: tuple[int, int, int], verdict: tuple[int, int, int]
) -> None:
    sheets = grounds(paper).values()
    assume(max(least_contrast(end, sheets) for end in (BLACK, WHITE)) >= TEXT)
    pen = say_color(nearest_passing(ink, sheets, TEXT))
    tokens = own_tokens(say_color(paper), pen, pen, pen)
    tokens |= readable({"blocked": say_color(verdict)}, ("blocked",), say_color(paper))
    words = ("ink", "ink-soft", "warm", "cool", "blocked")
    assert too_faint(tokens, [(word, sheet) for word in words for sheet in SHEETS], TEXT) == []
    assert too_faint(tokens, [("on-warm", "warm"), ("paper", "ink")], TEXT) == []
    assert too_faint(tokens, [("line-strong", sheet) for sheet in SHEETS], GRAPHICS) == []
