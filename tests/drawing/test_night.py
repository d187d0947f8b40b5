"""What is made out at night, measured in pixels: the person fades with the view, the cloth glows with the light."""

import io
import re
from itertools import pairwise

import pytest
import resvg_py
from PIL import Image

from configurator.drawing.svg import to_svg
from configurator.kernel.door.leaf import glass_box
from configurator.kernel.mount.hung import hung
from configurator.kernel.shapes import Drawing, Family
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.draft import Draft, drafted
from configurator.kernel.views.evening import evening_of
from configurator.kernel.views.lit_room import on_glass
from configurator.kernel.views.street import street_of
from configurator.kernel.views.subject import subject
from tests.drawing.drawing_coverings import family
from tests.drawing.drawing_doors import HOUSEHOLD, SINGLE
from tests.drawing.drawing_samples import place_of

ACROSS = 900
# Places of the drawing, mm: the person's chest, the lit wall beside it, and the glass's own edge.
GLASS = glass_box(SINGLE)
MIDDLE = (GLASS["x0"] + GLASS["x1"]) / 2
CHEST = on_glass(HOUSEHOLD, HOUSEHOLD["person_distance"], HOUSEHOLD["person_height"] * 0.72)
BESIDE = MIDDLE + 235.0
BELOW = -GLASS["y0"] - 200.0


def cloth(view: float, light: float) -> Family:
    """Return a plain roller whose cloth lets so much through."""
    given = family("open roll")
    return {**given, "numbers": {**given["numbers"], "cloth_view": view, "cloth_light": light}}


def draft_with(covering: Family, at: str = "closed") -> Draft:
    """Return what is drawn from."""
    given = subject(hung(SINGLE, covering, {}), place_of("open roll", at), HOUSEHOLD, ENGLISH)
    return drafted(SINGLE, given, ENGLISH, "in")


def street(covering: Family, at: str = "closed") -> Drawing:
    """Return the view from the street."""
    return street_of(draft_with(covering, at), HOUSEHOLD)


class Picture:
    """A drawing as it is painted."""

    def __init__(self, drawing: Drawing) -> None:
        self.drawing = drawing
        self.scale = ACROSS / drawing["width"]
        sizeless = re.sub(r' (width|height)="[0-9.]+mm"', "", to_svg(drawing), count=2)
        painted = resvg_py.svg_to_bytes(svg_string=sizeless, width=ACROSS, background="#ffffff")
        self.image = Image.open(io.BytesIO(bytes(painted))).convert("RGB")

    def tone(self, x: float, y: float) -> float:
        """Return how bright a place is, 0 to 255."""
        at = round((x - self.drawing["x"]) * self.scale), round((y - self.drawing["y"]) * self.scale)
        pixel = self.image.getpixel(at)
        assert isinstance(pixel, tuple)
        return sum(pixel) / 3

    @property
    def contrast(self) -> float:
        """How far the person differs from the wall behind."""
        return self.tone(BESIDE, CHEST) - self.tone(MIDDLE, CHEST)


def test_the_person_shows_as_much_as_the_cloth_lets_the_view_through() -> None:
    bare = Picture(street(cloth(0.0, 0.0), "open")).contrast
    assert bare > 80
    for view, light in ((0.6, 0.7), (0.3, 0.5), (0.1, 0.35), (0.02, 0.3), (0.0, 0.3)):
        assert Picture(street(cloth(view, light))).contrast == pytest.approx(bare * view, abs=2)


def test_cloth_glows_with_the_light_it_lets_through_and_blind_cloth_is_dark() -> None:
    tones = [Picture(street(cloth(0.0, light))).tone(BESIDE, CHEST) for light in (0.0, 0.2, 0.4, 0.6)]
    steps = [after - before for before, after in pairwise(tones)]
    assert tones[0] < 50
    assert min(steps) > 20
    assert max(steps) - min(steps) < 4


def test_behind_blind_cloth_nothing_shows_but_the_light_past_its_edges() -> None:
    picture = Picture(street(cloth(0.0, 0.0)))
    assert picture.contrast == 0
    assert picture.tone(MIDDLE, BELOW) == picture.tone(MIDDLE, CHEST)
    rims = [picture.tone(x, CHEST) for x in (GLASS["x0"] + 8, GLASS["x1"] - 8)]
    assert min(rims) > picture.tone(MIDDLE, CHEST) + 20


def test_what_is_left_clear_shows_the_person_plainly() -> None:
    half, bare = Picture(street(cloth(0.0, 0.0), "0.4")), Picture(street(cloth(0.0, 0.0), "open"))
    assert half.contrast == 0
    assert half.tone(MIDDLE, BELOW) == bare.tone(MIDDLE, BELOW)


def test_in_the_evening_cloth_has_its_color_and_the_bare_glass_is_dark() -> None:
    dim, clear = (Picture(evening_of(draft_with(cloth(0.0, light), "0.4"))) for light in (0.0, 0.6))
    assert dim.tone(MIDDLE, BELOW) < 60
    assert dim.tone(MIDDLE, -GLASS["y1"] + 200) > 180
    # No daylight is behind it.
    assert dim.tone(MIDDLE, -GLASS["y1"] + 200) == clear.tone(MIDDLE, -GLASS["y1"] + 200)
