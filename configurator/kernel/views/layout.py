"""What all views agree on: the outline of the opening, the covering's order and the letters."""

from typing import TypedDict

from configurator.kernel.door.leaf import glass_box, leaf_box, leaf_width, lites_across
from configurator.kernel.door.opening import CASING_BACK
from configurator.kernel.numbers import nearest
from configurator.kernel.shapes import Answer, Box, Door, Piece, Scene

# Letters are this high at least, mm in the model: 2.8 mm on paper at 1:20.
LETTERS_LEAST = 56.0
# A wider opening is shown smaller on a screen, so its letters grow with it.
LETTERS_ACROSS = 24.0
# The frame round the leaf and the wall behind the casing, as far as a drawing needs them.
JAMB = 20.0
WALL_DEPTH = 130.0


class Layout(TypedDict):
    """Measures of one drawing, in the model's millimeters, y up.

    ``x0`` to ``x1`` and ``head`` bound the opening within its frame; ``out0``, ``out1`` and ``top`` also hold the
    casing and the covering. ``order`` is the covering's ordered outline (all zero when there is
    none), ``glass`` the active leaf's glass, ``cut`` the x of the vertical section and ``front``
    the covering's greatest projection, ``turn`` how far the leaf opens, degrees: to a right angle where
    that is not told.
    """

    x0: float
    x1: float
    head: float
    out0: float
    out1: float
    top: float
    leaf0: float
    leaf1: float
    leaf_top: float
    order: Box
    glass: Box
    cut: float
    front: float
    turn: float


def turned_box(door: Door, place: Box) -> Box:
    """Return a box of a leaf hung on the left as it is on this door's hand."""
    if door["hinge_side"] == "left":
        return place
    width = leaf_width(door)
    return {"x0": width - place["x1"], "x1": width - place["x0"], "y0": place["y0"], "y1": place["y1"]}


def cut_line(door: Door) -> float:
    """Return the x of the vertical section: through the middle of the lite nearest the glass's middle."""
    lites = lites_across(door)
    lite = lites[int(nearest((len(lites) - 1) / 2))]
    middle = (lite[0] + lite[1]) / 2
    return middle if door["hinge_side"] == "left" else leaf_width(door) - middle


def is_over_opening(answer: Answer) -> bool:
    """Return whether the covering hangs above the opening instead of on the leaf."""
    return answer["size"]["mount"] == "over-opening"


def active_covering(scene: Scene, answer: Answer) -> list[Piece]:
    """Return the covering of the active leaf, or the one that spans the opening."""
    if is_over_opening(answer):
        return scene["covering"]
    span = scene["leaf_x"][0]
    pieces: list[Piece] = []
    for piece in scene["covering"]:
        middle = (piece["x0"] + piece["x1"]) / 2
        if middle > span[0] and middle < span[1]:
            pieces.append(piece)
    return pieces


def extent(pieces: list[Piece]) -> Box:
    """Return the outline of all pieces together; all zero when there are none."""
    if len(pieces) == 0:
        return {"x0": 0.0, "x1": 0.0, "y0": 0.0, "y1": 0.0}
    result: Box = {"x0": pieces[0]["x0"], "x1": pieces[0]["x1"], "y0": pieces[0]["y0"], "y1": pieces[0]["y1"]}
    for piece in pieces:
        result["x0"] = min(result["x0"], piece["x0"])
        result["x1"] = max(result["x1"], piece["x1"])
        result["y0"] = min(result["y0"], piece["y0"])
        result["y1"] = max(result["y1"], piece["y1"])
    return result


def figure_or(answer: Answer, name: str, other: float) -> float:
    """Return the value of a figure, or ``other`` when the answer has none of that name."""
    if name in answer["figures"]:
        return answer["figures"][name]["value"]
    return other


def order_outline(scene: Scene, door: Door, answer: Answer) -> Box:
    """Return the covering's ordered outline: the answer's, or else that of its pieces."""
    if "order_height" not in answer["figures"]:
        return extent(active_covering(scene, answer))
    size = answer["size"]
    return turned_box(door, {"x0": size["x0"], "x1": size["x1"], "y0": size["y0"], "y1": size["y1"]})


def front_most(pieces: list[Piece]) -> float:
    """Return how far the pieces reach into the room."""
    front = 0.0
    for piece in pieces:
        front = max(front, piece["z1"])
    return front


def casing_reach(door: Door) -> float:
    """Return how far the casing reaches from the frame's face, which its edge stands back from; 0 without one."""
    return CASING_BACK + door["casing_width"] if door["casing_width"] > 0 else 0.0


def layout(scene: Scene, door: Door, answer: Answer) -> Layout:
    """Return the measures that every view of the scene shares."""
    spans = scene["leaf_x"]
    x0 = spans[0][0]
    x1 = spans[0][1]
    for piece in scene["door"]:
        if piece["part"] == "door" and piece["kind"] == "stile":
            x0 = min(x0, piece["x0"])
            x1 = max(x1, piece["x1"])
    # The gap beside the leaves is taken to be that at the head, as around every leaf that turns.
    x0 = x0 - door["head_gap"]
    x1 = x1 + door["head_gap"]
    leaf = leaf_box(door)
    head = leaf["y1"] + door["head_gap"]
    order = order_outline(scene, door, answer)
    casing = casing_reach(door)
    out0 = x0 - casing
    out1 = x1 + casing
    top = head + casing
    if order["x1"] > order["x0"]:
        out0 = min(out0, order["x0"])
        out1 = max(out1, order["x1"])
        top = max(top, order["y1"])
    return {
        "x0": x0,
        "x1": x1,
        "head": head,
        "out0": out0,
        "out1": out1,
        "top": top,
        "leaf0": spans[0][0],
        "leaf1": spans[0][1],
        "leaf_top": leaf["y1"],
        "order": order,
        "glass": turned_box(door, glass_box(door)),
        "cut": cut_line(door),
        "front": figure_or(answer, "projection_most", front_most(scene["covering"])),
        "turn": figure_or(answer, "swing_covered", 90.0),
    }


def letter_size(frame: Layout) -> float:
    """Return the size of a drawing's letters, mm in the model."""
    return max(LETTERS_LEAST, (frame["out1"] - frame["out0"]) / LETTERS_ACROSS)


def latch_is_right(door: Door) -> bool:
    """Return whether the active leaf's latch edge is its right one."""
    return door["hinge_side"] == "left"
