import math

import pytest

from tests.kernel.mechanisms.mechanism_samples import (
    assert_bounded,
    assert_sound,
    at,
    numbers_of,
    of_kind,
    pieces_of,
    size_of,
)

CELLS = {"pitch": 20.0, "closed_thickness": 3.0, "cell_depth": 16.0}


def shade(lower=1.0, upper=0.0, coarse=False, size=None, **given):
    numbers = numbers_of("accordion", **(CELLS | given))
    return pieces_of("accordion", numbers, size or size_of(), at(lower, coarse=coarse) | {"upper": upper})


@pytest.mark.parametrize(("lower", "upper"), [(0.0, 0.0), (0.5, 0.0), (1.0, 0.0), (1.0, 0.5), (1.0, 1.0)])
@pytest.mark.parametrize("upper_moves", [0.0, 1.0])
def test_boxes_are_in_order_and_bounded_by_the_coarse_ones(lower, upper, upper_moves):
    given = {"upper_moves": upper_moves}
    assert_sound(shade(lower, upper, **given))
    assert_bounded(shade(lower, upper, **given), shade(lower, upper, coarse=True, **given))


@pytest.mark.parametrize("height", [900.0, 1700.0, 2300.0])
def test_the_stack_is_headrail_rail_and_every_cell_closed(height):
    size = size_of(height=height)
    cells = math.ceil((height - 30 - 15) / 20)
    assert size["y1"] - min(piece["y0"] for piece in shade(0.0, size=size)) == pytest.approx(30 + 15 + cells * 3)


def test_down_the_cells_hang_at_no_more_than_their_pitch():
    cell = of_kind(shade(1.0), "cell")[0]
    assert cell["pitch"] <= 20.0
    assert cell["pitch"] * cell["count"] == pytest.approx(cell["y1"] - cell["y0"])


def test_a_cell_grows_deeper_as_it_closes_because_its_sides_keep_their_length():
    open_cell, closed_cell = (of_kind(shade(lower), "cell")[0] for lower in (1.0, 0.0))

    def side(cell):
        return math.hypot(cell["pitch"] / 2, (cell["z1"] - cell["z0"]) / 2)

    assert closed_cell["z1"] - closed_cell["z0"] > open_cell["z1"] - open_cell["z0"]
    assert side(open_cell) == pytest.approx(side(closed_cell)) == pytest.approx(math.hypot(10, 8))


def test_the_upper_rail_comes_down_while_the_lower_stays():
    half, full = (shade(1.0, upper, upper_moves=1.0) for upper in (0.5, 1.0))
    for pieces in (half, full):
        assert of_kind(pieces, "bottom-rail")[0]["y0"] == size_of()["y0"]
    top, end = (of_kind(pieces, "upper-rail")[0] for pieces in (half, full))
    assert end["y1"] < top["y1"] < size_of()["y1"] - 30
    assert of_kind(full, "cell")[0]["y1"] == pytest.approx(end["y0"])
