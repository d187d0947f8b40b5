"""The covering and the handles as seen from the room, modeled by light and shade."""

from configurator.kernel.looks import LUSTERS
from configurator.kernel.piece_kinds import is_cloth
from configurator.kernel.pieces import both_through
from configurator.kernel.shapes import Door, Mark, Piece
from configurator.kernel.views.bar_rows import barred
from configurator.kernel.views.blade_form import as_lapped, blade_tones, edge_face, is_edge_on
from configurator.kernel.views.draft import Draft
from configurator.kernel.views.form import form_marks
from configurator.kernel.views.glow import glow_marks
from configurator.kernel.views.marks import make_mark, rectangle, rounded, wash
from configurator.kernel.views.parts import front_bounds, front_lines
from configurator.kernel.views.roles import held, hides, material
from configurator.kernel.views.row_outline import row_outlines


def front_rect(piece: Piece, role: str) -> Mark:
    """Return a piece's face."""
    return rectangle(role, front_bounds(piece))


def handle_front(door: Door, piece: Piece) -> Mark:
    """Return a part of the handle as seen from the room: knobs and roses round, levers rounded."""
    width = piece["x1"] - piece["x0"]
    height = piece["y1"] - piece["y0"]
    square = abs(width - height) < 0.5
    round_grip = piece["kind"] == "grip" and door["handle"]["kind"] == "knob"
    if round_grip or (square and (piece["kind"] == "plate" or piece["kind"] == "thumb-turn")):
        center_x = (piece["x0"] + piece["x1"]) / 2
        center_y = -(piece["y0"] + piece["y1"]) / 2
        return make_mark("circle", "handle seen", [center_x, center_y, width / 2])
    if piece["kind"] == "grip":
        return make_mark("polygon", "handle seen", rounded(front_bounds(piece)))
    return front_rect(piece, "handle seen")


def is_blade(piece: Piece) -> bool:
    """Return whether a piece is one of many narrow ones, which heavier outlines would turn black."""
    return piece["kind"] == "louver" or piece["kind"] == "slat" or piece["kind"] == "vane"


def is_many(piece: Piece) -> bool:
    """Return whether a piece is one of many that lie in a row, so that they are drawn together."""
    return is_blade(piece) or piece["kind"] == "band" or piece["kind"] == "sheer"


def by_front(pieces: list[Piece]) -> list[Piece]:
    """Return the pieces from the glass towards the room, as a painter lays them down."""
    return sorted(pieces, key=lambda piece: piece["z1"])


def is_behind(piece: Piece, other: Piece) -> bool:
    """Return whether a piece of cloth is wholly covered by another one of its kind: a layer tucked behind it."""
    same = piece["kind"] == other["kind"] and len(piece["outline"]) == 0 and len(other["outline"]) == 0
    level = abs(piece["y0"] - other["y0"]) < 1e-6 and abs(piece["y1"] - other["y1"]) < 1e-6
    return same and level and abs(piece["x0"] - other["x0"]) < 1e-6 and abs(piece["x1"] - other["x1"]) < 1e-6


def as_one_layer(rows: list[list[Piece]]) -> list[list[Piece]]:
    """Return rows with layers that are tucked behind each other as the foremost alone, which hides what all do."""
    result: list[list[Piece]] = []
    for row in rows:
        last = result[len(result) - 1] if len(result) > 0 else []
        if len(row) == 1 and len(last) == 1 and is_cloth(row[0]["kind"]) and is_behind(last[0], row[0]):
            result[len(result) - 1] = [{**row[0], "optics": both_through(last[0]["optics"], row[0]["optics"])}]
        else:
            result.append(row)
    return result


def row_for(piece: Piece, rows: list[list[Piece]]) -> int:
    """Return which of the last rows a piece goes with, being one of many at its depth; -1 for none."""
    if is_many(piece):
        for at in range(max(0, len(rows) - 2), len(rows)):
            first = rows[at][0]
            if first["kind"] == piece["kind"] and abs(first["z1"] - piece["z1"]) < 1e-6:
                return at
    return -1


def front_rows(pieces: list[Piece]) -> list[list[Piece]]:
    """Return the pieces, glass first, with those together that lie in one row at one depth."""
    rows: list[list[Piece]] = []
    for piece in by_front(pieces):
        row = row_for(piece, rows)
        if row < 0:
            rows.append([piece])
        else:
            rows[row].append(piece)
    return [as_lapped(row) for row in rows]


def front_role(row: list[Piece], draft: Draft) -> str:
    """Return the classes of the faces of a row: the more there are of them, the finer their outlines.

    Those of a covering's few large parts are the heaviest of what is not cut: they are what the drawing is about. A
    blade that is no more than a line has its own color; one that has a face has a line that shows on it.
    """
    weight = " seen" if row[0]["kind"] == "fold" else " main"
    if is_blade(row[0]):
        weight = " rim" if is_edge_on(row[0], draft["size"]) else " crease"
    elif row[0]["kind"] == "band":
        weight = " crease"
    elif len(row) > 1:
        weight = ""
    return material(row[0]) + weight + held(row[0], draft["scene"]["legs"])


def row_tones(row: list[Piece], draft: Draft) -> list[Mark]:
    """Return the light and shade on a row, the areas of one strength together."""
    luster = LUSTERS[draft["scene"]["look"]["luster"]]
    marks: list[Mark] = []
    if len(row) > 1 and len(row[0]["outline"]) > 0:
        marks.extend(blade_tones(row, draft["size"], luster))
    else:
        for piece in row:
            marks.extend(form_marks(piece, draft["size"], luster))
    return barred(sorted(marks, key=lambda mark: mark["fade"]))


def face_bounds(piece: Piece, size: float) -> list[float]:
    """Return a piece's face on the paper, a blade's that is edge-on as wide as eyes see it."""
    return front_bounds(edge_face(piece) if is_blade(piece) and is_edge_on(piece, size) else piece)


def row_marks(row: list[Piece], draft: Draft) -> list[Mark]:
    """Return a row of pieces: their faces, then the light and shade on them, their joints, and what shines through."""
    role = front_role(row, draft)
    marks = [wash(role, face_bounds(piece, draft["size"]), hides(piece)) for piece in row]
    if row[0]["kind"] == "sheer":
        marks = barred(marks)
    tones = row_tones(row, draft)
    marks.extend(tones)
    if len(tones) == 0:
        for piece in row:
            marks.extend(front_lines(piece, draft["size"]))
    if is_cloth(row[0]["kind"]):
        marks.extend(barred(glow_marks(row, draft["scene"])))
    return marks


def covers(front: Piece, piece: Piece) -> bool:
    """Return whether a face reaches as far as another one on every side."""
    across = front["x0"] <= piece["x0"] and front["x1"] >= piece["x1"]
    return across and front["y0"] <= piece["y0"] and front["y1"] >= piece["y1"]


def is_hidden(row: list[Piece], before: list[list[Piece]]) -> bool:
    """Return whether a piece stands behind one that hides all of it, as a roll does in its cassette."""
    if len(row) > 1:
        return False
    for other in before:
        front = other[0]
        if len(other) == 1 and front["optics"]["view"] == 0 and front["count"] == 1 and covers(front, row[0]):
            return True
    return False


def unframed(rows: list[list[Piece]]) -> list[Piece]:
    """Return the narrow pieces that nothing else gives an outline: louvers have a frame, vanes their sheers."""
    found: list[Piece] = []
    for row in rows:
        if not is_many(row[0]) or row[0]["kind"] == "louver":
            continue
        if len(row) == 1 and row[0]["count"] == 1 and row[0]["kind"] == "sheer":
            return []
        found.extend(row)
    return found


def last_of_many(rows: list[list[Piece]]) -> int:
    """Return which row of narrow pieces is the foremost; -1 for none."""
    last = -1
    for at in range(len(rows)):
        if is_many(rows[at][0]):
            last = at
    return last


def covering_front(draft: Draft) -> list[Mark]:
    """Return the covering and the handles, those nearer the room in front of the others."""
    pieces: list[Piece] = []
    pieces.extend(draft["scene"]["covering"])
    for piece in draft["scene"]["door"]:
        if piece["part"] == "handle" and piece["kind"] != "neck":
            pieces.append(piece)
    rows = as_one_layer(front_rows(pieces))
    foremost = last_of_many(rows)
    marks: list[Mark] = []
    for at in range(len(rows)):
        row = rows[at]
        if row[0]["part"] == "handle":
            marks.append(handle_front(draft["door"], row[0]))
        elif not is_hidden(row, rows[at + 1 :]):
            marks.extend(row_marks(row, draft))
        if at == foremost:
            marks.extend(row_outlines(unframed(rows)))
    return marks
