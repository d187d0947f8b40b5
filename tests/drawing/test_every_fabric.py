"""Every fabric of every family, measured in pixels at a card's size: what is drawn follows view, light and color.

A picture is compared with others of the same family, which have the same folds, ribs and shade; so what differs is the
fabric. By how much numbers must differ for the eye to tell is invented.
"""

from collections.abc import Iterator
from functools import cache
from itertools import combinations

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image

from configurator.catalog import Catalog
from configurator.drawing.png import to_image
from configurator.kernel.looks import look_of
from configurator.kernel.resolve import resolve
from tests.drawing.starter_drawings import STREET, Shown, draft_of, drawn, looks, picks_of

CARD = 150
# The glass that is looked at, in px, and how far within its edges, mm: past the light at a cloth's sides.
LOOKED_AT = (46, 135)
WITHIN = 25.0
BARE = Shown("roller-shade", "plain-milk", "elevation", "open")
# In these two layers lie over each other, so that no one number tells what comes through.
LAYERED = {"banded-roll", "vane-roll"}
# Of these the color is that of a stripe or of what is printed round leaves, not of the whole.
FIGURED = {"stripe", "leaf"}
HIDDEN = 0.01
FABRICS: list[Catalog] = []


@pytest.fixture(autouse=True)
def starter(catalog: Catalog) -> None:
    """Have the starter at hand."""
    FABRICS[:] = [catalog]


def fabrics() -> Iterator[list[Shown]]:
    """Yield the fabrics of each family, closed and by day; families of two layers are left out."""
    for family in FABRICS[0].families.values():
        if family["mechanism"] not in LAYERED:
            yield [Shown(family["id"], *picks.values(), "elevation", "closed") for picks in looks(family)]


def pairs() -> Iterator[tuple[Shown, Shown]]:
    """Yield any two fabrics of a family, each way round."""
    for shown in fabrics():
        for one, other in combinations(shown, 2):
            yield one, other
            yield other, one


def number(shown: Shown, name: str) -> float:
    """Return a number of a fabric."""
    return resolve(FABRICS[0].families[shown.family], picks_of(FABRICS[0], shown))[name]


@cache
def glass(shown: Shown) -> NDArray[np.float64]:
    """Return how bright each point of the glass is, and of what hangs before it, 0 to 255."""
    frame = draft_of(FABRICS[0], shown)["frame"]
    left, right = frame["glass"]["x0"] + WITHIN, frame["glass"]["x1"] - WITHIN
    if shown.view == STREET:
        # From outside, left and right are exchanged.
        left, right = frame["out0"] + frame["out1"] - right, frame["out0"] + frame["out1"] - left
    drawing = drawn(FABRICS[0], shown)
    image = to_image(drawing, CARD).convert("L")
    scale = image.width / drawing["width"]
    top, foot = -frame["glass"]["y1"] + 6 * WITHIN, -frame["glass"]["y0"] - 2 * WITHIN
    x, y = drawing["x"], drawing["y"]
    box = ((left - x) * scale, (top - y) * scale, (right - x) * scale, (foot - y) * scale)
    return np.asarray(image.resize(LOOKED_AT, Image.Resampling.BOX, box=box), dtype=float)


def shapes(shown: Shown) -> NDArray[np.float64]:
    """Return what stands out on the glass when all that runs straight across or down it is taken away: folds, ribs."""
    seen = glass(shown)
    return seen - seen.mean(0, keepdims=True) - seen.mean(1, keepdims=True) + seen.mean()


def seen_through(shown: Shown) -> float:
    """Return how much of what stands behind bare glass shows through a fabric, as a share of its contrast."""
    behind = shapes(BARE._replace(view=shown.view))
    return float((behind * shapes(shown)).sum() / (behind**2).sum())


def glow(shown: Shown) -> float:
    """Return by how much a fabric is brighter by day than in the evening, as a share of what is left to white."""
    lit, unlit = glass(shown).mean(), glass(shown._replace(view="evening")).mean()
    return float((lit - unlit) / (255 - unlit))


@pytest.mark.parametrize("view", ["elevation", STREET])
def test_what_lets_more_of_the_view_through_shows_more_of_what_is_behind(view: str) -> None:
    wrong, compared = [], 0
    for one, other in pairs():
        if number(one, "cloth_view") > number(other, "cloth_view"):
            compared += 1
            if seen_through(one._replace(view=view)) <= seen_through(other._replace(view=view)):
                wrong.append((one, other))
    assert compared > 20
    assert wrong == []


@pytest.mark.parametrize("view", ["elevation", STREET])
def test_behind_what_lets_no_view_through_nothing_shows(view: str) -> None:
    blind = [shown for some in fabrics() for shown in some if number(shown, "cloth_view") == 0]
    # A louvered panel leaves a gap at its handle.
    blind = [shown for shown in blind if shown.family != "louvered-shutter"]
    assert len(blind) > 15
    assert [shown for shown in blind if abs(seen_through(shown._replace(view=view))) > HIDDEN] == []


def test_at_night_one_sees_of_the_person_what_the_view_says() -> None:
    flat = [shown for some in fabrics() for shown in some if shown.family in ("roller-shade", "stretched-panel")]
    for shown in flat:
        assert seen_through(shown._replace(view=STREET)) == pytest.approx(number(shown, "cloth_view"), abs=0.03)


def test_what_lets_more_light_through_glows_more() -> None:
    wrong, compared = [], 0
    for one, other in pairs():
        blind = number(one, "cloth_view") == number(other, "cloth_view") == 0
        if blind and number(one, "cloth_light") > number(other, "cloth_light") + 0.01:
            compared += 1
            if glow(one) <= glow(other):
                wrong.append((one, other))
    assert compared >= 10
    assert wrong == []


def test_what_is_drawn_darker_at_night_hides_more() -> None:
    wrong, compared = [], 0
    for one, other in pairs():
        blind = number(one, "cloth_view") == number(other, "cloth_view") == 0
        if blind and glass(one._replace(view=STREET)).mean() < glass(other._replace(view=STREET)).mean() - 2:
            compared += 1
            if number(one, "cloth_light") >= number(other, "cloth_light"):
                wrong.append((one, other))
    assert compared >= 10
    assert wrong == []


def test_what_is_given_a_darker_color_is_drawn_darker() -> None:
    """In the evening, so that no daylight counts, of what lets no view through."""
    wrong, compared = [], 0
    for one, other in pairs():
        given = [look_of(FABRICS[0].families[each.family], picks_of(FABRICS[0], each)) for each in (one, other)]
        plain = not any(look["weave"] in FIGURED for look in given)
        blind = number(one, "cloth_view") == number(other, "cloth_view") == 0
        tones = [
            np.dot([int(look["color"][at : at + 2], 16) for at in (1, 3, 5)], [0.299, 0.587, 0.114]) for look in given
        ]
        if plain and blind and tones[0] < tones[1] - 15:
            compared += 1
            if glass(one._replace(view="evening")).mean() >= glass(other._replace(view="evening")).mean():
                wrong.append((one, other))
    assert compared >= 10
    assert wrong == []
