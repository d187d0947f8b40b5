"""Light and shade on what is seen from the room, from each piece's own cut.

The room's light falls from above and from the left: a side of a cut that leans that way is lit, one that leans away
lies in shade. Tones come in a few steps, as a printmaker lays them, so that equal parts of a run are one mark.
"""

import math

from configurator.kernel.shapes import Mark, Piece
from configurator.kernel.views.marks import wash
from configurator.kernel.views.parts import is_gathered
from configurator.kernel.views.tones import GLEAM, SHADE

# Steps of light and of shade each way from the material's own color, and how strong one of them is.
TONE_STEPS = 3
SHADE_STEP = 0.085
GLEAM_STEP = 0.13
# Light from the side models less than light from above.
SIDELONG = 0.8
# Units narrower than this, in parts of the letter size, melt into one tone.
MODELED_FROM = 0.1
# Units from so wide on, in letters, are modeled in full; finer ones would darken the whole, down to this strength.
FULL_FROM = 0.8
FINE_STRENGTH = 0.3
# Cloth that falls in waves is modeled in so many strips a wave.
WAVE_STRIPS = 8
# Bands of a fold that is tucked up, rounded over at its foot: low and high in shares of its height, and their tone.
TUCKED = [[0.0, 0.08, -0.9], [0.08, 0.2, -0.5], [0.2, 0.34, -0.25], [0.6, 0.92, 0.4]]
# The band at each crease of cloth that hangs flat, likewise, from the crease up.
CREASED = [[0.0, 0.06, -0.9]]
# A pinch of a pleated heading, mm, and how far from the middle of a pleat it stands, in shares of that; a hem, mm.
PINCH_WIDE = 4.0
PINCH_HIGH = 90.0
PINCH_SPREAD = 0.14
HEM_HIGH = 100.0
# How wide a gather is at least, in letters, and how far one may differ from the next.
GATHER_WIDE = 0.65
GATHER_DRIFT = 0.35


def signed_area(outline: list[list[float]]) -> float:
    """Return twice the area of an outline, negative where it runs clockwise."""
    area = 0.0
    last = outline[len(outline) - 1]
    for point in outline:
        area += last[0] * point[1] - point[0] * last[1]
        last = point
    return area


def tone_step(tone: float) -> int:
    """Return a tone, -1 in shade to 1 in the light, in steps."""
    return math.floor(tone * TONE_STEPS + 0.5)


def cut_tones(piece: Piece) -> list[list[float]]:
    """Return the bands ``[low, high, tone]`` of one unit that face the room, along its run from its low or left end."""
    outline = piece["outline"]
    level = piece["axis"] == "x"
    start = piece["y0"] if level else piece["x0"]
    turn = 1.0 if signed_area(outline) > 0 else -1.0
    bands: list[list[float]] = []
    last = outline[len(outline) - 1]
    for point in outline:
        da = (point[0] - last[0]) * turn
        db = (point[1] - last[1]) * turn
        length = max(math.hypot(da, db), 1e-9)
        # Outlines are (z, y) or (x, z): the side faces the room where its outward normal points along z.
        ahead = db if level else -da
        if ahead > 1e-6:
            tone = -da / length if level else -db / length * SIDELONG
            at = 1 if level else 0
            bands.append([min(last[at], point[at]) - start, max(last[at], point[at]) - start, tone])
        last = point
    return bands


def wave_tones(pitch: float) -> list[list[float]]:
    """Return the bands of one fold of falling cloth: its left side lit, its right in shade, its valleys dark."""
    bands: list[list[float]] = []
    for i in range(WAVE_STRIPS):
        middle = (i + 0.5) / WAVE_STRIPS
        hollow = 1 - math.sin(math.pi * middle)
        tone = math.cos(math.pi * middle) * 0.75 - hollow * hollow * 0.7
        bands.append([pitch * i / WAVE_STRIPS, pitch * (i + 1) / WAVE_STRIPS, tone])
    return bands


def heading_tones(piece: Piece) -> list[Mark]:
    """Return the shade between the pinches of a pleated heading, and the line of the hem."""
    marks: list[Mark] = []
    top = -piece["y1"]
    for side in [-1.0, 1.0]:
        for unit in range(piece["count"]):
            x = piece["x0"] + (unit + 0.5 + side * PINCH_SPREAD) * piece["pitch"]
            marks.append(wash(SHADE, [x - PINCH_WIDE / 2, top, x + PINCH_WIDE / 2, top + PINCH_HIGH], SHADE_STEP * 3.5))
    hem = -piece["y0"] - HEM_HIGH
    marks.append(wash(SHADE, [piece["x0"], hem, piece["x1"], hem + PINCH_WIDE], SHADE_STEP * 2.5))
    return marks


def joined_bands(bands: list[list[float]]) -> list[list[float]]:
    """Return bands in steps of tone, those of one step that meet as one, and none without a tone."""
    joined: list[list[float]] = []
    for band in sorted(bands, key=lambda one: one[0]):
        step = tone_step(band[2])
        last = joined[len(joined) - 1] if len(joined) > 0 else [0.0, 0.0, 0.0]
        if last[2] == step and band[0] - last[1] < 1e-6:
            last[1] = max(last[1], band[1])
        else:
            joined.append([band[0], band[1], step])
    return [band for band in joined if band[2] != 0]


def tone_mark(piece: Piece, span: list[float], step: float, luster: float) -> Mark:
    """Return a band of light or shade that spans so much of a piece's run, across the whole of it.

    Less ``luster`` than 1 softens the lights only.
    """
    edges = [piece["x0"] + span[0], -piece["y1"], piece["x0"] + span[1], -piece["y0"]]
    if piece["axis"] == "x":
        edges = [piece["x0"], -piece["y0"] - span[1], piece["x1"], -piece["y0"] - span[0]]
    return wash(SHADE, edges, -step * SHADE_STEP) if step < 0 else wash(GLEAM, edges, step * GLEAM_STEP * luster)


def run_tones(piece: Piece, bands: list[list[float]], luster: float) -> list[Mark]:
    """Return the tones of a whole run: for each band of a unit that band of every unit."""
    marks: list[Mark] = []
    for band in joined_bands(bands):
        for unit in range(piece["count"]):
            along = unit * piece["pitch"]
            marks.append(tone_mark(piece, [band[0] + along, band[1] + along], band[2], luster))
    return marks


def gather_edges(piece: Piece, size: float) -> list[float]:
    """Return where gathers part, from the left edge on: no two of them alike."""
    whole = piece["x1"] - piece["x0"]
    count = max(3, math.floor(whole / (size * GATHER_WIDE)))
    edges = [0.0]
    for i in range(1, count):
        edges.append(whole * (i + GATHER_DRIFT * math.sin(i * 2.4)) / count)
    edges.append(whole)
    return edges


def gathered_tones(piece: Piece, size: float, luster: float) -> list[Mark]:
    """Return the tones of cloth gathered between rods."""
    edges = gather_edges(piece, size)
    upright: Piece = {**piece, "axis": "y"}
    marks: list[Mark] = []
    for strip in joined_bands(wave_tones(1.0)):
        for i in range(len(edges) - 1):
            wide = edges[i + 1] - edges[i]
            span = [edges[i] + strip[0] * wide, edges[i] + strip[1] * wide]
            marks.append(tone_mark(upright, span, strip[2], luster))
    return marks


def flat_tones(piece: Piece, luster: float) -> list[Mark]:
    """Return the tones of flat cloth: of a fold tucked up, or at creases, a pitch apart from its head down."""
    tucked = piece["kind"] == "fold"
    height = piece["y1"] - piece["y0"]
    pitch = height if tucked else piece["pitch"]
    if pitch == 0:
        return []
    rest = height % pitch
    run: Piece = {**piece, "count": math.floor(height / pitch)}
    bands = TUCKED if tucked else CREASED
    return run_tones(run, [[rest + pitch * part[0], rest + pitch * part[1], part[2]] for part in bands], luster)


def form_marks(piece: Piece, size: float, luster: float) -> list[Mark]:
    """Return the light and shade on a piece as seen from the room; none where it is flat or too small to tell."""
    if is_gathered(piece):
        return gathered_tones(piece, size, luster)
    if len(piece["outline"]) == 0:
        return flat_tones(piece, luster)
    if piece["count"] > 1 and piece["pitch"] < size * MODELED_FROM:
        return []
    if piece["kind"] == "pleat":
        marks = run_tones(piece, wave_tones(piece["pitch"]), luster)
        marks.extend(heading_tones(piece))
        return marks
    strength = min(1.0, max(FINE_STRENGTH, piece["pitch"] / (size * FULL_FROM))) if piece["count"] > 1 else 1.0
    return run_tones(piece, [[band[0], band[1], band[2] * strength] for band in cut_tones(piece)], luster)
