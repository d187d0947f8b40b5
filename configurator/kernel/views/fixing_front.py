"""Where an installer drills: the door from the room with the covering's outline, and each fixing by its number."""

from configurator.kernel.door.leaf import glass_box, leaf_box, leaf_pieces, leaf_width
from configurator.kernel.door.opening import opening_box, opening_hardware, opening_pieces
from configurator.kernel.fit import over_opening
from configurator.kernel.looks import no_look
from configurator.kernel.scene import turned
from configurator.kernel.shapes import Box, Drawing, Fit, Mark, Piece
from configurator.kernel.tongue import Words, in_words
from configurator.kernel.views.covering_front import front_rect, handle_front
from configurator.kernel.views.dimensions import (
    FIRST_TIER,
    TIER,
    Notes,
    blank_notes,
    dim_across,
    dim_upright,
    noted,
    said,
    tier,
)
from configurator.kernel.views.layout import turned_box
from configurator.kernel.views.marks import letters, make_mark, stroke
from configurator.kernel.views.roles import material

# Letters on the paper, and half the arm of the cross that marks a screw, mm of paper.
FIXING_LETTERS = 2.85
CROSS_ARM = 1.3
# In letters: what is kept free beyond what is drawn, for the dimensions and their words.
FIXING_EDGE = 2.4
# Heights that lie nearer than this, mm, are told once.
ONE_LINE = 0.5


def fixed_area(fit: Fit) -> Box:
    """Return what fixings are told from: the glass, or for what hangs over the opening the opening itself."""
    return opening_box(fit["door"]) if over_opening(fit) else glass_box(fit["door"])


def installed_on(fit: Fit) -> list[Piece]:
    """Return the leaf, or all of the opening, with its handles, in the active leaf's space."""
    door = fit["door"]
    pieces: list[Piece] = []
    if over_opening(fit):
        pieces.extend(opening_pieces(door))
        pieces.extend(opening_hardware(door))
    else:
        pieces.extend(leaf_pieces(door))
        pieces.extend(fit["handle"])
    return pieces


def door_outline(fit: Fit) -> list[Mark]:
    """Return the door as it stands: wood, glass and handle without any color behind."""
    marks: list[Mark] = []
    pieces = turned(fit["door"], installed_on(fit))
    for kind in ["stile", "rail", "bead", "muntin", "astragal", "glass"]:
        for piece in pieces:
            if piece["kind"] == kind and piece["part"] == "door":
                marks.append(front_rect(piece, "wall hair" if kind == "glass" else material(piece) + " hair"))
    for piece in pieces:
        if piece["part"] == "handle" and piece["kind"] != "neck":
            marks.append(handle_front(fit["door"], piece))
    return marks


def x_on_hand(fit: Fit, x: float) -> float:
    """Return an x of a leaf hung on the left as it is on this door's hand."""
    return x if fit["door"]["hinge_side"] == "left" else leaf_width(fit["door"]) - x


def fixing_marks(fit: Fit, size: float, scale: float) -> list[Mark]:
    """Return each fixing with its number and a cross for each screw; those in a ceiling at the covering's top."""
    marks: list[Mark] = []
    arm = CROSS_ARM * scale / 2
    for at in range(len(fit["fixings"])):
        fixing = fit["fixings"][at]
        piece = turned(fit["door"], [fixing["piece"]])[0]
        marks.append(front_rect(piece, "headrail hair"))
        for spot in fixing["spots"]:
            x = x_on_hand(fit, spot[0])
            y = -fit["size"]["y1"] if fixing["plane"] == "ceiling" else -spot[1]
            marks.append(stroke("tick", x - arm, y, x + arm, y))
            marks.append(stroke("tick", x, y - arm, x, y + arm))
        words = [(piece["x0"] + piece["x1"]) / 2 + size * 0.5, -piece["y1"] - size * 0.35]
        marks.append(letters("title", words, size, str(at + 1), "start"))
    return marks


def fixing_middles(fit: Fit) -> list[float]:
    """Return the heights of the fixings' middles, each once, the highest first."""
    found: list[float] = []
    for fixing in fit["fixings"]:
        middle = (fixing["piece"]["y0"] + fixing["piece"]["y1"]) / 2
        if len([height for height in found if abs(height - middle) < ONE_LINE]) == 0:
            found.append(middle)
    return sorted(found, key=lambda height: -height)


def fixing_heights(notes: Notes, fit: Fit, left: float) -> None:
    """Add how high above the floor the highest and the lowest fixings lie, the lower dimension nearer to the leaf."""
    heights = fixing_middles(fit)
    told = heights if len(heights) < 3 else [heights[0], heights[len(heights) - 1]]
    for at in range(len(told)):
        place = left - notes["size"] * (FIRST_TIER + TIER * (len(told) - 1 - at))
        dim_upright(notes, [-told[at], 0.0], tier(place, left), said(notes, told[at], "above", ""))


def fixing_spans(notes: Notes, fit: Fit, top: float) -> None:
    """Add how far the first and the last fixing lie from the edges of what they are told from."""
    area = fixed_area(fit)
    middles = [(fixing["piece"]["x0"] + fixing["piece"]["x1"]) / 2 for fixing in fit["fixings"]]
    on = tier(-top - notes["size"] * FIRST_TIER, -top)
    ends = [[min(middles), area["x0"]], [max(middles), area["x1"]]]
    for pair in ends:
        across = [x_on_hand(fit, pair[0]), x_on_hand(fit, pair[1])]
        side = "before" if min(across) < x_on_hand(fit, (area["x0"] + area["x1"]) / 2) else "after"
        dim_across(notes, across, on, said(notes, abs(pair[0] - pair[1]), side, ""))


def fixing_front(fit: Fit, words: Words, units: str, scale: float) -> Drawing:
    """Return the installer's drawing of a covering on its leaf or over its opening, lettered for paper at a scale."""
    size = FIXING_LETTERS * scale
    leaf = opening_box(fit["door"]) if over_opening(fit) else leaf_box(fit["door"])
    own = fit["size"]
    whole: Box = {
        "x0": min(leaf["x0"], own["x0"]),
        "x1": max(leaf["x1"], own["x1"]),
        "y0": 0.0,
        "y1": max(leaf["y1"], own["y1"]),
    }
    seen = turned_box(fit["door"], whole)
    hung = turned_box(fit["door"], {"x0": own["x0"], "x1": own["x1"], "y0": own["y0"], "y1": own["y1"]})
    notes = blank_notes(size, words, units)
    fixing_heights(notes, fit, seen["x0"])
    fixing_spans(notes, fit, seen["y1"])
    marks = door_outline(fit)
    outline = [hung["x0"], -hung["y1"], hung["x1"], -hung["y1"], hung["x1"], -hung["y0"], hung["x0"], -hung["y0"]]
    marks.append(make_mark("polygon", "hidden", outline))
    marks.extend(fixing_marks(fit, size, scale))
    marks.append(stroke("floor cut", seen["x0"] - size, 0.0, seen["x1"] + size, 0.0))
    marks.extend(noted(notes))
    x0 = seen["x0"] - size * (FIRST_TIER + TIER * 2 + FIXING_EDGE)
    y0 = -seen["y1"] - size * (FIRST_TIER + FIXING_EDGE)
    return {
        "id": "fixing",
        "title": in_words("Where it is fixed", words),
        "desc": in_words("The door from the room with each fixing by its number.", words),
        "x": x0,
        "y": y0,
        "width": seen["x1"] + size * (FIRST_TIER + TIER + FIXING_EDGE) - x0,
        "height": size - y0,
        "marks": marks,
        "look": no_look(),
    }
