"""The lit room behind the glass and who stands in it, as an eye outside sees them.

Every height stands where the straight line from the observer's eye to it crosses the glass, as in the question of who
sees in; widths shrink as much. The observer stands straight before the middle of the active leaf's glass.
"""

from configurator.kernel.questions.sight import sight_crossing
from configurator.kernel.shapes import Household, Mark, Piece
from configurator.kernel.views.garden import oval, through_glass
from configurator.kernel.views.marks import make_mark
from configurator.kernel.views.people import EYE_SHARE, HEAD_RADIUS

# How far behind the glass the room ends at least, and how far behind the person, mm: common practice, no source.
ROOM_DEPTH = 3500.0
BEHIND_PERSON = 900.0
SKIRTING = 110.0
# Further to the side than any glass reaches, mm.
FAR_ASIDE = 9000.0
# A floor lamp by the far wall, mm: how far aside, how high, its shade's height and half widths, its stem's half width.
LAMP_ASIDE = 430.0
LAMP_TOP = 1650.0
LAMP_SHADE = [330.0, 190.0, 120.0]
LAMP_STEM = 8.0
# The right half of a standing body and its arm, as [aside, height] in parts of the person's height.
BODY_HALF = [
    [0.0, 0.46],
    [0.014, 0.0],
    [0.072, 0.0],
    [0.058, 0.045],
    [0.072, 0.27],
    [0.092, 0.45],
    [0.094, 0.52],
    [0.082, 0.62],
    [0.098, 0.73],
    [0.112, 0.79],
    [0.104, 0.818],
    [0.078, 0.836],
    [0.046, 0.848],
    [0.036, 0.86],
    [0.034, 0.9],
]
ARM_HALF = [
    [0.096, 0.822],
    [0.118, 0.81],
    [0.129, 0.78],
    [0.138, 0.63],
    [0.138, 0.5],
    [0.131, 0.435],
    [0.118, 0.435],
    [0.114, 0.5],
    [0.11, 0.63],
    [0.096, 0.74],
]
# How wide a head is for its height.
HEAD_SLENDER = 0.78


def eye_scale(household: Household, behind: float) -> float:
    """Return how large what stands ``behind`` the glass looks on it, in parts of its true size; 1 from right at it."""
    total = household["outside_distance"] + behind
    return household["outside_distance"] / total if total > 0 else 1.0


def on_glass(household: Household, behind: float, height: float) -> float:
    """Return the y on the paper at which a height ``behind`` the glass is seen through it."""
    return -sight_crossing({**household, "person_distance": behind}, height)


def seen_outline(household: Household, behind: float, middle: float, corners: list[list[float]]) -> list[float]:
    """Return the outline, on the glass, of corners ``[aside, height]`` that stand ``behind`` it."""
    scale = eye_scale(household, behind)
    points: list[float] = []
    for corner in corners:
        points.append(middle + corner[0] * scale)
        points.append(on_glass(household, behind, corner[1]))
    return points


def far_wall(household: Household) -> float:
    """Return how far behind the glass the room ends."""
    return max(ROOM_DEPTH, household["person_distance"] + BEHIND_PERSON)


def scaled(corners: list[list[float]], across: float, up: float) -> list[list[float]]:
    """Return corners in other measures."""
    return [[corner[0] * across, corner[1] * up] for corner in corners]


def person_front(household: Household, middle: float) -> list[Mark]:
    """Return the person in the room, seen from outside."""
    tall = household["person_height"]
    there = household["person_distance"]
    radius = HEAD_RADIUS * tall * eye_scale(household, there)
    head = oval(middle, on_glass(household, there, EYE_SHARE * tall), radius * HEAD_SLENDER, radius, 28)
    marks = [make_mark("polygon", "person", head)]
    for side in [-1.0, 1.0]:
        for half in [BODY_HALF, ARM_HALF]:
            outline = seen_outline(household, there, middle, scaled(half, side * tall, tall))
            marks.append(make_mark("polygon", "person", outline))
    neck = scaled([[-0.034, 0.9], [0.034, 0.9], [0.0, 0.46]], tall, tall)
    marks.append(make_mark("polygon", "person", seen_outline(household, there, middle, neck)))
    return marks


def outer_edges(points: list[float]) -> list[float]:
    """Return ``[x0, y0, x1, y1]`` of a flat list of points."""
    edges = [points[0], points[1], points[0], points[1]]
    for i in range(2, len(points)):
        edges[i % 2] = min(edges[i % 2], points[i])
        edges[i % 2 + 2] = max(edges[i % 2 + 2], points[i])
    return edges


def person_bounds(household: Household, middle: float) -> list[float]:
    """Return what the person takes up on the glass, ``[x0, y0, x1, y1]`` on the paper."""
    edges: list[float] = []
    for mark in person_front(household, middle):
        own = outer_edges(mark["points"])
        if len(edges) == 0:
            edges = own
        edges = [min(edges[0], own[0]), min(edges[1], own[1]), max(edges[2], own[2]), max(edges[3], own[3])]
    return edges


def lamp_front(household: Household, middle: float, behind: float) -> list[Mark]:
    """Return a lamp that stands on the floor by the far wall."""
    foot = LAMP_TOP - LAMP_SHADE[0]
    left = LAMP_ASIDE - LAMP_STEM
    right = LAMP_ASIDE + LAMP_STEM
    stem = [[left, 0.0], [right, 0.0], [right, foot], [left, foot]]
    shade = [
        [LAMP_ASIDE - LAMP_SHADE[1], foot],
        [LAMP_ASIDE + LAMP_SHADE[1], foot],
        [LAMP_ASIDE + LAMP_SHADE[2], LAMP_TOP],
        [LAMP_ASIDE - LAMP_SHADE[2], LAMP_TOP],
    ]
    return [
        make_mark("polygon", "room-floor", seen_outline(household, behind, middle, stem)),
        make_mark("polygon", "lamp", seen_outline(household, behind, middle, shade)),
    ]


def room_shapes(household: Household, middle: float) -> list[Mark]:
    """Return the room from far to near: wall, skirting, lamp, floor and the person."""
    behind = far_wall(household)
    foot = on_glass(household, behind, 0.0)
    top = on_glass(household, behind, SKIRTING)
    left = middle - FAR_ASIDE
    right = middle + FAR_ASIDE
    marks = [
        make_mark("polygon", "room-wall", [left, -FAR_ASIDE, right, -FAR_ASIDE, right, foot, left, foot]),
        make_mark("polygon", "skirting", [left, top, right, top, right, foot, left, foot]),
        make_mark("polygon", "room-floor", [left, foot, right, foot, right, 0.0, left, 0.0]),
    ]
    marks.extend(lamp_front(household, middle, behind))
    marks.extend(person_front(household, middle))
    return marks


def lit_room(household: Household, lites: list[Piece], middle: float) -> list[Mark]:
    """Return what is seen through the glass from outside at night."""
    marks: list[Mark] = []
    for shape in room_shapes(household, middle):
        marks.extend(through_glass(shape, lites))
    return marks
