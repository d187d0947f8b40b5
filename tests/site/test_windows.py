"""What a drawing's paper and a picture's frame hold: all that is drawn, and nothing cut off."""

import io
from collections.abc import Iterator

import pytest
from PIL import Image

from configurator.catalog import load
from configurator.kernel.shapes import Door, Drawing, Family, Mark
from configurator.kernel.views.marks import letters, make_mark, upright_letters
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.drawings.pictures import (
    Window,
    around,
    bare,
    bare_section,
    door_frame,
    family_window,
    share_position,
    tile_window,
    whole_door,
    window_of,
)
from configurator.site.drawings.rooms import BACKDROP, covering_room, shown_room
from configurator.site.drawings.subjects import first_single, fitting, own_door
from configurator.site.drawings.trim import bounds, trimmed
from configurator.site.house import House
from configurator.site.kinds.doors_page import centered

HOUSE = House(load(CONTENT), CONTENT, Answers())
SINGLE = first_single(HOUSE)
# The paper beside what is drawn on a page, at least and at most, mm.
ROOM, MOST = 15.0, 100.0
DRAWING = whole_door(HOUSE, SINGLE, window_of(door_frame(SINGLE)))
# The lines of a wall, which has no end, go on past the paper.
ENDLESS = ("wall", "floor")


def paper(drawing: Drawing) -> Window:
    """Return the window of a drawing as x0, y0, x1, y1."""
    return (drawing["x"], drawing["y"], drawing["x"] + drawing["width"], drawing["y"] + drawing["height"])


def drawn(drawing: Drawing) -> Window:
    """Return the window that just holds what ends in a drawing."""
    boxes = [bounds(mark) for mark in drawing["marks"] if not any(word in mark["role"] for word in ENDLESS)]
    x0, y0, x1, y1 = zip(*boxes, strict=True)
    return (min(x0), min(y0), max(x1), max(y1))


def beside(drawing: Drawing) -> tuple[float, float, float]:
    """Return how much paper is left of what is drawn, above it and right of it; none of it stands below the floor."""
    sheet, matter = paper(drawing), drawn(drawing)
    assert matter[3] <= sheet[3]
    return (matter[0] - sheet[0], matter[1] - sheet[1], sheet[2] - matter[2])


def fitting_pairings() -> Iterator[tuple[Door, Family]]:
    """Yield every covering on a door of every layout."""
    for door in {door["layout"]: door for door in HOUSE.doors}.values():
        yield from ((door, family) for family in fitting(HOUSE, door))


@pytest.mark.parametrize("share", [0.0, 1.0])
def test_nothing_of_a_covering_is_cut_off_from_the_front_or_from_the_side(share: float) -> None:
    for door, family in fitting_pairings():
        window, place = family_window(HOUSE, door, [family]), share_position(family, share)
        for drawing in (bare(HOUSE, door, family, place, window), bare_section(HOUSE, door, family, place, window)):
            rooms = beside(drawing)
            assert min(rooms) >= ROOM, (drawing["title"], rooms)
        front, side = paper(bare(HOUSE, door, family, place, window)), paper(drawing)
        assert (front[1], front[3]) == (side[1], side[3]), "both to one scale"


def test_a_window_round_several_holds_each_and_ends_where_they_do() -> None:
    wide, high, low = (-9.0, -5.0, 9.0, 0.0), (-2.0, -20.0, 3.0, -1.0), (-1.0, -3.0, 1.0, 4.0)
    assert around([wide, high, low]) == around([low, high, wide]) == (-9.0, -20.0, 9.0, 4.0)


def test_a_door_alone_has_the_same_paper_on_both_sides() -> None:
    for door in HOUSE.doors:
        left, above, right = beside(whole_door(HOUSE, door, window_of(door_frame(door))))
        assert left == pytest.approx(right), door["id"]
        assert ROOM <= min(left, above) <= max(left, above) <= MOST, door["id"]


def test_all_doors_are_drawn_to_one_scale_each_in_the_middle() -> None:
    windows = [window_of(door_frame(door)) for door in HOUSE.doors]
    tiles = [centered(windows, own) for own in windows]
    for own, tile in zip(windows, tiles, strict=True):
        assert own[0] - tile[0] == pytest.approx(tile[2] - own[2])
        assert min(own[0] - tile[0], own[1] - tile[1]) >= 0
    sizes = {(round(x1 - x0, 6), round(y1 - y0, 6)) for x0, y0, x1, y1 in tiles}
    assert len(sizes) == 1
    # As wide as the widest and as high as the highest, and no more.
    assert min(own[0] - tile[0] for own, tile in zip(windows, tiles, strict=True)) == pytest.approx(0)
    assert min(own[1] - tile[1] for own, tile in zip(windows, tiles, strict=True)) == pytest.approx(0)


def test_a_tile_has_the_door_and_every_covering_that_it_stands_for() -> None:
    tile = tile_window(HOUSE, SINGLE, HOUSE.families)
    for family in fitting(HOUSE, SINGLE):
        x0, y0, x1, _ = drawn(bare(HOUSE, SINGLE, family, share_position(family, 0.5), tile))
        assert min(x0 - tile[0], y0 - tile[1], tile[2] - x1) >= ROOM, family["id"]
    widest = family_window(HOUSE, SINGLE, HOUSE.families)
    assert widest[0] <= tile[0], "it is no larger than a page's own drawing"
    assert widest[2] >= tile[2]


TRIMMED = [
    # From the left, 4 wide letters of 0.57: 22.8 wide, 10 high, and a quarter of that below the line they stand on.
    (letters("", [100.0, 50.0], 10.0, "HAND", "start"), (100.0, 40.0, 122.8, 52.5)),
    (letters("", [100.0, 50.0], 10.0, "HAND", "middle"), (88.6, 40.0, 111.4, 52.5)),
    (letters("", [100.0, 50.0], 10.0, "HAND", "end"), (77.2, 40.0, 100.0, 52.5)),
    # Upwards from where they start, or to where they end.
    (upright_letters("", [100.0, 50.0], 10.0, "HAND", "start"), (90.0, 27.2, 102.5, 50.0)),
    (upright_letters("", [100.0, 50.0], 10.0, "HAND", "end"), (90.0, 50.0, 102.5, 72.8)),
    (make_mark("circle", "", [100.0, 50.0, 7.0]), (93.0, 43.0, 107.0, 57.0)),
    (make_mark("polyline", "", [100.0, 50.0, 80.0, 90.0, 130.0, 60.0]), (80.0, 50.0, 130.0, 90.0)),
    # What follows the places of bars are their sizes.
    (make_mark("bars", "", [100.0, 50.0, 130.0, 90.0, 500.0, 2.0, 600.0]), (100.0, 50.0, 130.0, 90.0)),
]


@pytest.mark.parametrize(("mark", "held"), TRIMMED)
def test_paper_is_trimmed_to_what_is_drawn(mark: Mark, held: Window) -> None:
    # Room on every side is 0.8 of the largest letters on the paper.
    room = 8.0 if mark["shape"] == "text" else 0.0
    sheet = paper(trimmed({**DRAWING, "marks": [mark]}))
    assert sheet == pytest.approx((held[0] - room, held[1] - room, held[2] + room, held[3] + room))


def test_a_page_tells_a_room_s_picture_as_it_is_painted() -> None:
    # A page that tells another size jumps as its picture comes.
    family = HOUSE.families[0]
    door, told = own_door(HOUSE, family), shown_room(HOUSE, family)
    assert door is not None
    assert told is not None
    painted = covering_room(HOUSE, door, family)
    widths = {}
    for end, content in painted.items():
        if end != BACKDROP:
            with Image.open(io.BytesIO(content)) as picture:
                widths[picture.width] = picture.height
    assert set(widths) == set(told["widths"])
    assert (told["width"], told["height"]) == (max(widths), widths[max(widths)])
