"""The covering and the handles as seen from the room, modeled by light and shade."""

from configurator.kernel.looks import LUSTERS
from configurator.kernel.piece_kinds import is_cloth
from configurator.kernel.pieces import both_through
from configurator.kernel.shapes import Door, Mark, Piece
from configurator.kernel.views.bar_rows import barred
from configurator.kernel.views.blade_form import as_lapped, blade_tones, is_edge_on
from configurator.kernel.views.draft import Draft
from configurator.kernel.views.form import form_marks
from configurator.kernel.views.glow import glow_marks
from configurator.kernel.views.marks import make_mark, rectangle, rounded, wash
from configurator.kernel.views.parts import front_bounds, front_lines
from configurator.kernel.views.roles import held, hides, material
from configurator.kernel.views.row_outline import row_outlines

# Eyes are never straight before all blades of a row: on either side of one edge-on they see so much of its depth.
OBLIQUE = 0.05


def front_rect(piece: Piece, role: str) -> Mark:
    """Return a piece's face."""
    return rectangle(role, front_bounds(piece))


def handle_front(door: Door, piece: Piece) -> Mark:
    """Return a part of the handle as seen from the room: knobs and roses round, levers rounded."""
    edges = front_bounds(piece)
    width = edges[2] - edges[0]
    square = abs(width - edges[3] + edges[1]) < 0.5
    grip = piece["kind"] == "grip"
    if (grip and door["handle"]["kind"] == "knob") or (square and piece["kind"] in ["plate", "thumb-turn"]):
        return make_mark("circle", "handle seen", [edges[0] + width / 2, (edges[1] + edges[3]) / 2, width / 2])
    return make_mark("polygon", "handle seen", rounded(edges)) if grip else rectangle("handle seen", edges)


def is_blade(piece: Piece) -> bool:
    """Return whether a piece is one of many narrow ones, which heavier outlines would turn black."""
    return piece["kind"] in ["louver", "slat", "vane"]


def is_many(piece: Piece) -> bool:
    """Return whether a piece is one of many that lie in a row, so that they are drawn together."""
    return is_blade(piece) or piece["kind"] in ["band", "sheer"]


def by_front(pieces: list[Piece]) -> list[Piece]:
    """Return the pieces from the glass towards the room, as a painter lays them down."""
    return sorted(pieces, key=lambda piece: piece["z1"])


def is_behind(piece: Piece, other: Piece) -> bool:
    """Return whether a piece of cloth is wholly covered by another one of its kind: a layer tucked behind it."""
    here = front_bounds(piece)
    there = front_bounds(other)
    for i in range(4):
        if abs(here[i] - there[i]) >= 1e-6:
            return False
    return piece["kind"] == other["kind"] and len(piece["outline"]) == 0 and len(other["outline"]) == 0


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


def face_edges(piece: Piece, size: float) -> list[float]:
    """Return the edges of a piece's face on the paper; of an upright blade edge-on so much of its depth shows."""
    edges = front_bounds(piece)
    if is_blade(piece) and piece["axis"] == "y" and is_edge_on(piece, size):
        more = (piece["z1"] - piece["z0"]) * OBLIQUE
        edges[0] -= more
        edges[2] += more
    return edges


def row_marks(row: list[Piece], draft: Draft) -> list[Mark]:
    """Return a row of pieces: their faces, then the light and shade on them, their joints, and what shines through."""
    role = front_role(row, draft)
    marks = [wash(role, face_edges(piece, draft["size"]), hides(piece)) for piece in row]
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


def covering_front(draft: Draft) -> list[Mark]:
    """Return the covering and the handles, those nearer the room in front of the others."""
    pieces: list[Piece] = []
    pieces.extend(draft["scene"]["covering"])
    for piece in draft["scene"]["door"]:
        if piece["part"] == "handle" and piece["kind"] != "neck":
            pieces.append(piece)
    # Louvers have a frame about them.
    many = [piece for piece in pieces if is_many(piece) and piece["kind"] != "louver"]
    left = len(many)
    marks: list[Mark] = []
    for row in as_one_layer(front_rows(pieces)):
        if row[0]["part"] == "handle":
            marks.append(handle_front(draft["door"], row[0]))
        else:
            marks.extend(row_marks(row, draft))
        if is_many(row[0]):
            left -= len(row)
            # What stands foremost alone has its own outline.
            if left == 0 and len(row) + row[0]["count"] > 2:
                marks.extend(row_outlines(many))
    return marks
