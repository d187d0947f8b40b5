"""The wall about the opening, cut by the section over the head and by the plan beside the leaf."""

from configurator.kernel.door.leaf import leaf_width
from configurator.kernel.door.obstacles import STOP_DEPTH
from configurator.kernel.door.opening import CASING_BACK
from configurator.kernel.shapes import Door, Mark
from configurator.kernel.views.draft import Draft
from configurator.kernel.views.layout import JAMB, WALL_DEPTH, casing_reach
from configurator.kernel.views.marks import make_mark, rectangle

# How much of the wall shows above the casing, in letters.
WALL_ABOVE = 0.5
# A side wall shows when it stands within the room for the elevation's dimensions, in letters.
SIDE_ROOM = 3.4


def wall_back(door: Door) -> float:
    """Return the depth of the wall's outer face, which is at least behind the stop."""
    return min(door["reveal"] - WALL_DEPTH, -door["leaf_thickness"] - STOP_DEPTH)


def break_line(x0: float, x1: float, y: float, size: float) -> list[float]:
    """Return the line that tells that something goes on: straight with a zigzag in the middle."""
    over = size * 0.35
    middle = (x0 + x1) / 2
    kink = size * 0.3
    return [
        x0 - over,
        y,
        middle - kink / 2,
        y,
        middle - kink / 4,
        y - kink,
        middle + kink / 4,
        y + kink,
        middle + kink / 2,
        y,
        x1 + over,
        y,
    ]


def turned_break(z0: float, z1: float, x: float, size: float) -> list[float]:
    """Return a break line that stands upright at ``x``."""
    level = break_line(z0, z1, x, size)
    points: list[float] = []
    for i in range(0, len(level), 2):
        points.append(level[i + 1])
        points.append(level[i])
    return points


def wall_break(draft: Draft) -> float:
    """Return the height at which the wall over the head is broken off."""
    return draft["frame"]["top"] + draft["size"] * WALL_ABOVE


def wall_side(draft: Draft) -> list[Mark]:
    """Return the cut wall over the head with its frame, stop and casing."""
    door = draft["door"]
    face = door["reveal"]
    back = wall_back(door)
    head = -draft["frame"]["head"]
    break_off = -wall_break(draft)
    soffit = head - JAMB
    marks = [rectangle("wall", [back, break_off, face, soffit])]
    marks.append(make_mark("polyline", "cut", [back, break_off, back, soffit, face, soffit, face, break_off]))
    marks.append(make_mark("polyline", "hair", break_line(back, face, break_off, draft["size"])))
    marks.append(rectangle("leaf seen", [back, soffit, face, head]))
    marks.append(stop_side(draft))
    if door["casing_width"] > 0:
        front = face + door["casing_projection"]
        marks.append(rectangle("leaf seen", [face, head - casing_reach(door), front, head - CASING_BACK]))
    return marks


def stop_side(draft: Draft) -> Mark:
    """Return the head's stop, on the side to which the leaf does not open."""
    door = draft["door"]
    head = -draft["frame"]["head"]
    low = -draft["frame"]["leaf_top"]
    if door["swing"] == "out":
        return rectangle("leaf seen", [0.0, head, STOP_DEPTH, low + door["stop_lap"]])
    rear = -door["leaf_thickness"]
    return rectangle("leaf seen", [rear - STOP_DEPTH, head, rear, low + STOP_DEPTH])


def side_wall_shows(draft: Draft, left: bool) -> bool:
    """Return whether a wall stands beside the hinges so near that it may stop the leaf, within the drawing."""
    door = draft["door"]
    has_hinges = door["layout"] == "pair" or left == (door["hinge_side"] == "left")
    room = draft["size"] * SIDE_ROOM + door["casing_width"]
    return door["swing"] == "in" and has_hinges and door["layout"] != "sidelights" and door["wall_gap"] < room


def wall_edge(draft: Draft, left: bool) -> float:
    """Return the x of the opening's left or right edge."""
    return draft["frame"]["x0"] if left else draft["frame"]["x1"]


def wall_end(draft: Draft, left: bool) -> float:
    """Return the x where the wall beside the opening meets a side wall, or else is broken off."""
    side = -1.0 if left else 1.0
    if side_wall_shows(draft, left):
        return wall_edge(draft, left) + side * (draft["door"]["wall_gap"] - draft["door"]["head_gap"])
    return wall_edge(draft, left) + side * (casing_reach(draft["door"]) + draft["size"] * 0.9)


def span_rect(role: str, ends: list[float], z0: float, z1: float) -> Mark:
    """Return a rectangle in plan between two x in either order."""
    return rectangle(role, [min(ends[0], ends[1]), z0, max(ends[0], ends[1]), z1])


def wall_top(draft: Draft, left: bool) -> list[Mark]:
    """Return the cut wall on one side of the opening, with its frame, stop, casing and a near side wall."""
    door = draft["door"]
    size = draft["size"]
    side = -1.0 if left else 1.0
    face = door["reveal"]
    back = wall_back(door)
    end = wall_end(draft, left)
    jamb = wall_edge(draft, left) + side * JAMB
    marks = [span_rect("wall", [jamb, end], back, face)]
    if side_wall_shows(draft, left):
        away = end + side * size * 0.6
        low = face + leaf_width(door) * 0.35
        marks.append(span_rect("wall", [end, away], back, low))
        marks.append(make_mark("polyline", "cut", [away, back, jamb, back, jamb, face, end, face, end, low]))
        marks.append(make_mark("polyline", "hair", break_line(min(end, away), max(end, away), low, size)))
    else:
        marks.append(make_mark("polyline", "cut", [end, back, jamb, back, jamb, face, end, face]))
        marks.append(make_mark("polyline", "hair", turned_break(back, face, end, size)))
    marks.extend(jamb_top(draft, left))
    return marks


def jamb_top(draft: Draft, left: bool) -> list[Mark]:
    """Return the frame on one side of the opening, with its stop and casing."""
    door = draft["door"]
    side = -1.0 if left else 1.0
    edge = wall_edge(draft, left)
    face = door["reveal"]
    inward = -side * door["head_gap"]
    marks = [span_rect("leaf seen", [edge, edge + side * JAMB], wall_back(door), face)]
    if door["swing"] == "out":
        marks.append(span_rect("leaf seen", [edge, edge + inward - side * door["stop_lap"]], 0.0, STOP_DEPTH))
    else:
        rear = -door["leaf_thickness"]
        marks.append(span_rect("leaf seen", [edge, edge + inward - side * STOP_DEPTH], rear - STOP_DEPTH, rear))
    if door["casing_width"] > 0:
        across = [edge + side * CASING_BACK, edge + side * casing_reach(door)]
        marks.append(span_rect("leaf seen", across, face, face + door["casing_projection"]))
    return marks
