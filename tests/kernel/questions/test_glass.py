import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.glass_shares import glass_shares
from configurator.kernel.message import say_working
from configurator.kernel.pieces import optics
from configurator.kernel.questions.glass import glass_question
from configurator.kernel.shapes import Door, Piece, Reply, Size
from configurator.kernel.tongue import ENGLISH
from tests.kernel.questions.question_samples import (
    DOOR,
    HOUSEHOLD,
    INCH,
    assert_workings,
    door_with,
    figure_of,
    fit_with,
    shade,
    size_with,
    travel_of,
    value_of,
)

SIZE = size_with()
SIDELIGHTS = door_with(layout="sidelights", sidelight_width=350.0, sidelight_glass_width=200.0)
OPENING = ("view_closed_opening", "light_closed_opening")


def told(door: Door, size: Size, down: list[Piece]) -> Reply:
    """Return what is told of a shade's glass with these pieces when closed."""
    samples = [{"leg": 0, "at": 0.0, "pieces": shade(size, 0.0)}, {"leg": 0, "at": 1.0, "pieces": down}]
    return glass_question(travel_of(fit_with(door, size), samples), HOUSEHOLD)


def test_cloth_behind_cloth_multiplies() -> None:
    fit = fit_with(DOOR, SIZE)
    sheer = shade(SIZE, 1.0)[1] | {"optics": optics(0.3, 0.5)}
    one = glass_shares(fit, [sheer])
    three = glass_shares(fit, [sheer, sheer, sheer])
    bare = one["visible"]
    assert three["view"] - bare == pytest.approx((1 - bare) * 0.3**3)
    assert three["light"] - bare == pytest.approx((1 - bare) * 0.5**3)


def test_bare_sidelights_count_in_the_whole_opening_by_their_area() -> None:
    sheer = [shade(SIZE, 1.0)[1] | {"optics": optics(0.3, 0.5)}]
    found = told(SIDELIGHTS, SIZE, sheer)
    leaf, beside = 22 * INCH, 2 * 200.0
    view = (value_of(found, "view_closed") * leaf + beside) / (leaf + beside)
    light = (value_of(found, "light_closed") * leaf + beside) / (leaf + beside)
    assert value_of(found, "view_closed_opening") == pytest.approx(view)
    assert value_of(found, "light_closed_opening") == pytest.approx(light)
    assert_workings(found)
    assert "sidelights" in say_working(figure_of(found, OPENING[0]), ENGLISH, "in")


def test_nothing_is_told_of_sidelights_that_are_dressed_or_not_there() -> None:
    over = size_with("over-opening", x0=-400.0, x1=1400.0, y0=20.0, y1=2150.0)
    for door, size in ((DOOR, SIZE), (SIDELIGHTS, over)):
        keys = [figure["id"] for figure in told(door, size, shade(size, 1.0))["figures"]]
        assert not set(OPENING) & set(keys)


def test_each_share_of_the_glass_goes_by_its_own_name(catalog: Catalog) -> None:
    # Of a door with sidelights, which has all of them.
    door = next(door for door in catalog.doors.values() if door["layout"] == "sidelights")
    figures = ask(door, catalog.families["cellular-shade"], {}, catalog.household)["figures"]
    for what, word in (("visible_glass", "visible glass"), ("view", "view"), ("light", "light")):
        for state in ("open", "closed"):
            assert figures[f"{what}_{state}"]["name"] == f"{word}, {state}"
    for what in ("view", "light"):
        assert figures[f"{what}_closed_opening"]["name"] == f"{what}, closed, with the bare sidelights"
    names = [figure["name"] for figure in figures.values()]
    assert len(names) == len(set(names))
