"""The drawings of the pages: bare ones to compare at a glance, and finished sheets to read."""

from collections.abc import Callable
from typing import NamedTuple

from configurator.drawing.drawing_palette import paper_scale
from configurator.drawing.page_svg import base_svg, layered_svg, screen_svg, twin_svgs
from configurator.kernel.door.leaf import leaf_box
from configurator.kernel.message import is_said
from configurator.kernel.position import main_position, position_at
from configurator.kernel.resolve import resolve
from configurator.kernel.scene import scene_at
from configurator.kernel.shapes import Door, Drawing, Family, Position
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.bare import bare_draft
from configurator.kernel.views.covering_front import covering_front
from configurator.kernel.views.draft import Draft, blank_drawing, drafted
from configurator.kernel.views.elevation import door_front
from configurator.kernel.views.layout import WALL_DEPTH, Layout
from configurator.kernel.views.section import covering_side, section_still
from configurator.kernel.views.sheet import sheet_of
from configurator.kernel.whereabouts import place_words
from configurator.site.house import House

View = Callable[[Draft], Drawing]
MARGIN = 90.0
# Round what stands out of the door in a small picture, mm.
TILE_EDGE = 20.0
HALF = 0.5
Window = tuple[float, float, float, float]


def placed(house: House, door: Door, family: Family, place: Position) -> Draft:
    """Return what a door with a covering at a position is drawn from."""

    def made() -> Draft:
        answer = house.answer(door, family)
        names = {
            "family": family["name"],
            "door": door["name"],
            "place": place_words(answer["legs"], place, house.words),
        }
        scene = scene_at(house.hung(door, family), place)
        return drafted(door, {"scene": scene, "answer": answer, "names": names}, house.words, house.units)

    return house.here(made, "placed", door, family, place)


def unplaced(house: House, door: Door, family: Family, place: Position) -> Draft:
    """Return the same without words for the position, for drawings of which several stand for one covering."""
    draft = placed(house, door, family, place)
    return {**draft, "names": {**draft["names"], "place": ""}}


def finished(house: House, view: View, door: Door, family: Family, place: Position) -> Drawing:
    """Return a finished view with all its notes."""
    return view(placed(house, door, family, place))


class Shown(NamedTuple):
    """A family on a door at a position."""

    door: Door
    family: Family
    place: Position


def finished_svg(house: House, view: View, shown: Shown, prefix: str) -> str:
    """Return a finished view as an SVG for a page."""

    def made() -> str:
        return screen_svg(finished(house, view, *shown), prefix)

    return house.once(made, view.__name__, *shown, house.units, prefix)


def sheet_svgs(house: House, door: Door, family: Family, places: list[Position]) -> list[tuple[str, float]]:
    """Return the drawing sheets of one or two positions for a page, each with its width on paper in mm."""

    def made() -> list[tuple[str, float]]:
        sheets = [finished(house, sheet_of, door, family, place) for place in places]
        widths = [sheet["width"] / paper_scale(sheet) for sheet in sheets]
        if len(sheets) == 1:
            return [(screen_svg(sheets[0], "sheet-"), widths[0])]
        return list(zip(twin_svgs(sheets[0], sheets[1], ("open-", "closed-")), widths, strict=True))

    return house.once(made, "sheets", door, family, places, house.units)


def door_frame(door: Door) -> Layout:
    """Return the layout of a door without a covering."""
    return bare_draft(door, ENGLISH, "mm")["frame"]


def window_of(frame: Layout) -> Window:
    """Return the window that just holds an opening and its covering."""
    return (frame["out0"] - MARGIN, -frame["top"] - MARGIN, frame["out1"] + MARGIN, 0.0)


def around(windows: list[Window]) -> Window:
    """Return the window that holds them all."""
    x0, y0, x1, y1 = zip(*windows, strict=True)
    return (min(x0), min(y0), max(x1), max(y1))


def set_window(view: Drawing, window: Window) -> Drawing:
    """Set what a drawing shows."""
    x0, y0, x1, y1 = window
    view["x"], view["y"], view["width"], view["height"] = x0, y0, x1 - x0, y1 - y0
    return view


def family_window(house: House, door: Door, families: list[Family]) -> Window:
    """Return the window that holds a door with any of the families."""
    return around([window_of(door_frame(door)), *(covered_window(house, door, family) for family in families)])


def tile_window(house: House, door: Door, families: list[Family]) -> Window:
    """Return the window of small pictures: the door with room round it, and what stands out of it just within."""
    x0, y0, x1, y1 = family_window(house, door, families)
    room = MARGIN - TILE_EDGE
    return around([window_of(door_frame(door)), (x0 + room, y0 + room, x1 - room, y1)])


def covered_window(house: House, door: Door, family: Family) -> Window:
    """Return the window that holds a door with a family."""

    def made() -> Window:
        answer = house.answer(door, family)
        if is_said(answer["refusal"]):
            return window_of(door_frame(door))
        return window_of(placed(house, door, family, answer["closed"])["frame"])

    return house.once(made, "window", door, family)


def bare_door(door: Door, window: Window) -> Drawing:
    """Return what stands still on a door: all but coverings, handles and notes."""
    draft = bare_draft(door, ENGLISH, "mm")
    view = blank_drawing("elevation", draft)
    # The floor line ends with the opening here, because the page draws its own.
    view["marks"].extend(mark for mark in door_front(draft) if "floor" not in mark["role"])
    return set_window(view, window)


def bare_covering(house: House, door: Door, family: Family, place: Position, window: Window) -> Drawing:
    """Return a covering at a position with the handles, and nothing of the door behind them."""
    draft = unplaced(house, door, family, place)
    view = blank_drawing("elevation", draft)
    view["marks"].extend(house.here(lambda: covering_front(draft), "front", door, family, place))
    return set_window(view, window)


def bare_section(house: House, door: Door, family: Family, place: Position, window: Window) -> Drawing:
    """Return the vertical section at a position without dimensions, as high as the elevation's window."""
    draft = unplaced(house, door, family, place)
    view = blank_drawing("section", draft)
    view["marks"].extend(section_still(draft))
    view["marks"].extend(covering_side(draft))
    front = max(draft["frame"]["front"], door["handle"]["projection"])
    return set_window(view, (-WALL_DEPTH - MARGIN, window[1], front + MARGIN, window[3]))


def with_door(view: Drawing, behind: Drawing) -> Drawing:
    """Return a covering's drawing with the door's laid behind it."""
    return {**view, "marks": [*behind["marks"], *view["marks"]]}


def bare(house: House, door: Door, family: Family, place: Position, window: Window) -> Drawing:
    """Return a door with a covering, without dimensions."""
    return with_door(bare_covering(house, door, family, place, window), bare_door(door, window))


def share_position(family: Family, share: float) -> Position:
    """Return the position a share of the way from open to closed, with the preset choices."""
    return position_at(resolve(family, {}), share)


def half_position(family: Family) -> Position:
    """Return the position half way down or across, with the preset choices: at one height for all coverings."""
    return main_position(resolve(family, {}), HALF)


def open_and_closed(house: House, door: Door, family: Family, window: Window, base: str) -> str:
    """Return a door with a covering open and closed in one SVG, for a page with the door under ``base``."""

    def made() -> str:
        answer = house.answer(door, family)
        places = (answer["open"], answer["closed"])
        drawings = [bare_covering(house, door, family, place, window) for place in places]
        return layered_svg(drawings, ["when-open", "when-closed"], f"{family['id']}-", base)

    return house.once(made, "open and closed", door, family, window, base, house.units)


def door_base(door: Door, window: Window, base: str) -> str:
    """Return the door for all drawings of a page to use."""
    return base_svg(bare_door(door, window), base)


def half_svg(house: House, door: Door, family: Family, window: Window, prefix: str) -> str:
    """Return a door with a covering half closed, without dimensions."""

    def made() -> str:
        return screen_svg(bare(house, door, family, half_position(family), window), prefix)

    return house.once(made, "half", door, family, window, prefix, house.units)


def leaf_size(door: Door) -> tuple[float, float]:
    """Return a leaf's width and height."""
    box = leaf_box(door)
    return box["x1"] - box["x0"], box["y1"] - box["y0"]


def whole_door(house: House, door: Door, window: Window) -> Drawing:
    """Return a door with its handle and without a covering."""
    view = bare_door(door, window)
    view["marks"].extend(covering_front(bare_draft(door, ENGLISH, "mm")))
    view["title"] = door["name"]
    view["desc"] = house.catalog.door_notes[door["id"]].summary
    return view
