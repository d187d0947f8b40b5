"""What a covering is made of, measured in pixels: color, view and light follow the content's numbers."""

from functools import cache
from itertools import combinations

import pytest
from PIL import Image

from configurator.catalog import Catalog
from configurator.drawing.png import to_image
from configurator.drawing.rgb import Color, rgb
from configurator.kernel.looks import look_of
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Drawing
from tests.drawing.starter_drawings import Shown, drawn, looks, picks_of

# As wide as a drawing stands on a shelf's card, and as a sheet shows it.
CARD, SHEET = 150, 700
# Two points of the garden that differ, and one of the leaf beside the glass, mm; cloth hangs over all when it is down.
TREE, SKY = (620.0, -1700.0), (300.0, -1700.0)
STILE = (155.0, -1300.0)
# Two looks whose colors are nearer than this, of 255, are one to the eye.
TOLD_APART = 4.0
FLAT = ("roller-shade", "screen-pearl"), ("roller-shade", "screen-charcoal")
PRIVATE = ("roller-shade", "plain-milk"), ("roller-shade", "night-clay")


@cache
def picture(drawing_name: Shown, width: int) -> tuple[Image.Image, Drawing]:
    """Return the picture of a drawing, and the drawing."""
    drawing = drawn(CATALOG[0], drawing_name)
    return to_image(drawing, width), drawing


CATALOG: list[Catalog] = []


@pytest.fixture(autouse=True)
def starter(catalog: Catalog) -> None:
    """Have the starter at hand."""
    CATALOG[:] = [catalog]


def mean(image: Image.Image, box: tuple[int, int, int, int]) -> tuple[float, ...]:
    """Return the mean color of a part of a picture."""
    pixel = image.crop(box).resize((1, 1), Image.Resampling.BOX).getpixel((0, 0))
    assert isinstance(pixel, tuple)
    return pixel


def near(shown: Shown, place: tuple[float, float], width: int = SHEET) -> tuple[float, ...]:
    """Return the mean color about a place of a picture, so wide that a weave does not count."""
    image, drawing = picture(shown, width)
    scale = image.width / drawing["width"]
    x, y = ((at - start) * scale for at, start in zip(place, (drawing["x"], drawing["y"]), strict=True))
    reach = 20 * scale
    return mean(image, (round(x - reach / 4), round(y - reach), round(x + reach / 4), round(y + reach)))


def apart(one: tuple[float, ...], other: tuple[float, ...]) -> float:
    """Return how far two colors lie apart, of 255, where they differ most."""
    return max(abs(part - beside) for part, beside in zip(one, other, strict=True))


def closed(family: str, option: str) -> Shown:
    """Return a covering seen from the room, drawn down or across."""
    return Shown(family, option, "elevation", "closed")


def color_of(shown: Shown) -> Color:
    """Return the color that the content gives."""
    return rgb(look_of(CATALOG[0].families[shown.family], picks_of(CATALOG[0], shown))["color"])


def number(shown: Shown, name: str) -> float:
    """Return a number of a covering in a look."""
    return resolve(CATALOG[0].families[shown.family], picks_of(CATALOG[0], shown))[name]


def garden_through(shown: Shown) -> float:
    """Return how much a tree and the sky still differ through a covering."""
    return apart(near(shown, TREE), near(shown, SKY))


@pytest.mark.parametrize("look", [*FLAT, *PRIVATE])
def test_cloth_before_wood_has_the_color_that_the_content_gives(look: tuple[str, str]) -> None:
    shown = closed(*look)
    hidden = 1 - number(shown, "cloth_view")
    leaf = near(Shown("metal-blind", "silver", "elevation", "open"), (155.0, -600.0))
    expected = tuple(part * hidden + behind * (1 - hidden) for part, behind in zip(color_of(shown), leaf, strict=True))
    assert apart(near(shown, STILE), expected) < 12


def test_what_is_given_darker_is_drawn_darker() -> None:
    pearl, charcoal = (closed(*look) for look in FLAT)
    assert sum(near(charcoal, STILE)) < sum(near(pearl, STILE)) - 100
    assert sum(near(charcoal, SKY)) < sum(near(pearl, SKY)) - 60


def test_the_garden_shows_through_as_much_as_the_view_says() -> None:
    bare = apart(*(near(Shown("roller-shade", "plain-milk", "elevation", "open"), place) for place in (TREE, SKY)))
    for look in (*FLAT, *PRIVATE):
        shown = closed(*look)
        view = number(shown, "cloth_view")
        assert garden_through(shown) == pytest.approx(bare * view, abs=0.06 * bare + 1)


def test_cloth_that_lets_more_light_through_glows_more_before_the_glass() -> None:
    milk, clay = (closed(*look) for look in PRIVATE)
    gains = {}
    for shown in (milk, clay):
        lit, unlit = near(shown, SKY), near(shown, STILE)
        room = 3 * 255 - sum(unlit)
        gains[shown.option] = (sum(lit) - sum(unlit)) / room
    assert number(milk, "cloth_light") > number(clay, "cloth_light")
    assert gains["plain-milk"] > gains["night-clay"] + 0.05
    for shown in (milk, clay):
        assert gains[shown.option] == pytest.approx(0.8 * number(shown, "cloth_light"), abs=0.03)


def test_any_two_looks_of_a_family_are_told_apart_on_a_card(catalog: Catalog) -> None:
    alike = []
    for family in catalog.families.values():
        shown = [closed(family["id"], *picks.values()) for picks in looks(family)]
        for one, other in combinations(shown, 2):
            colors = [[near(each, place, CARD) for place in (STILE, SKY, (450.0, -900.0))] for each in (one, other)]
            if max(apart(a, b) for a, b in zip(*colors, strict=True)) < TOLD_APART:
                alike.append((one.option, other.option))
    assert alike == []
