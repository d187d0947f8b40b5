"""PNG: the same picture as the SVG, without fonts or programs of the machine."""

import io

import pytest
from PIL import Image, ImageChops

from configurator.drawing.drawing_palette import colors
from configurator.drawing.png import rgb, to_image, to_png
from configurator.drawing.texture import tile_image
from configurator.kernel.views.weaves import WEAVES, weave_tile
from tests.drawing.drawing_samples import drawn

WIDTH = 500


def pixel(name: str) -> tuple[int, int, int]:
    return rgb(colors()[name])


def at(image: Image.Image, drawing, x: float, y: float) -> tuple[int, int, int]:
    scale = image.width / drawing["width"]
    return image.getpixel((int((x - drawing["x"]) * scale), int((y - drawing["y"]) * scale)))


def test_a_png_has_the_width_asked_for_and_the_drawing_s_proportions() -> None:
    drawing = drawn("elevation", "single", "cellular", "open")
    image = Image.open(io.BytesIO(to_png(drawing, WIDTH)))
    assert image.width == WIDTH
    assert abs(image.height - WIDTH * drawing["height"] / drawing["width"]) < 1


def test_the_covering_hides_the_garden_where_it_hangs() -> None:
    opened, closed = (drawn("elevation", "single", "nested fold", at) for at in ("open", "closed"))
    assert at(to_image(opened, WIDTH), opened, 250, -500) == pixel("lawn")
    seen = [at(to_image(closed, WIDTH), closed, 250, height) for height in (-500, -1600)]
    assert seen[0] == seen[1]


def test_a_veil_lets_the_garden_shimmer_through() -> None:
    drawing = drawn("elevation", "single", "panel", "closed")
    image = to_image(drawing, WIDTH)
    lawn, sky = (at(image, drawing, 200, height) for height in (-620, -1700))
    through = max(abs(one - other) for one, other in zip(lawn, sky, strict=True))
    bare = max(abs(one - other) for one, other in zip(pixel("lawn"), pixel("sky"), strict=True))
    assert 0 < through < bare


def test_annotation_can_be_left_out() -> None:
    drawing = drawn("elevation", "single", "cellular", "open")
    bare, full = to_image(drawing, WIDTH, annotated=False), to_image(drawing, WIDTH)
    changed = ImageChops.difference(bare, full).getbbox()
    assert changed is not None
    assert changed[0] < 80
    assert bare.crop((0, 0, 60, bare.height)).getcolors() == [(60 * bare.height, pixel("ground"))]


def test_the_same_drawing_gives_the_same_bytes() -> None:
    drawing = drawn("plan", "single", "roller", "open")
    assert to_png(drawing, 200) == to_png(drawing, 200)


@pytest.mark.parametrize("weave", sorted(WEAVES))
def test_a_weave_is_told_as_large_as_it_can_be_seen_and_is_one_color_beneath_that(weave: str) -> None:
    near, far = tile_image("#806040", weave, 4.0), tile_image("#806040", weave, 0.02)
    tile = weave_tile(weave)
    assert far.size == (1, 1)
    if near.size != (1, 1):
        assert near.size == (round(tile["width"] * 4), round(tile["height"] * 4))
        assert len(near.getcolors(near.width * near.height)) > 1
