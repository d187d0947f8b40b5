"""Pieces cut down to a region, so that an enlarged detail holds nothing that it does not show."""

import math

from configurator.kernel.numbers import blend
from configurator.kernel.pieces import moved
from configurator.kernel.shapes import Box, Piece, Scene


def trimmed(piece: Piece) -> Piece:
    """Return a copy of a piece that may be changed."""
    return moved(piece, 0.0, 0.0, 0.0)


def trimmed_row(piece: Piece, left: float, right: float) -> Piece:
    """Return a run of units along x without those that lie beyond ``left`` or ``right``."""
    pitch = piece["pitch"]
    before = max(0, math.ceil((left - piece["x0"]) / pitch))
    after = max(0, math.ceil((piece["x1"] - right) / pitch))
    part = moved(piece, before * pitch, 0.0, 0.0)
    part["x1"] = piece["x1"] - after * pitch
    part["count"] = max(0, piece["count"] - before - after)
    return part


def trimmed_run(piece: Piece, low: float, high: float) -> Piece:
    """Return a run of units along y without those that lie beyond ``low`` or ``high``."""
    pitch = piece["pitch"]
    under = max(0, math.ceil((low - piece["y0"]) / pitch))
    over = max(0, math.ceil((piece["y1"] - high) / pitch))
    part = moved(piece, 0.0, under * pitch, 0.0)
    part["y1"] = piece["y1"] - over * pitch
    part["count"] = max(0, piece["count"] - under - over)
    return part


def kept_side(outline: list[list[float]], at: int, limit: float, side: float) -> list[list[float]]:
    """Return what of an outline lies above a limit along an axis, for a ``side`` of 1, or below it for -1."""
    points: list[list[float]] = []
    for i in range(len(outline)):
        point = outline[i]
        before = outline[i - 1] if i > 0 else outline[len(outline) - 1]
        here = (point[at] - limit) * side
        there = (before[at] - limit) * side
        if (here >= 0) != (there >= 0):
            share = there / (there - here)
            points.append([blend(before[0], point[0], share), blend(before[1], point[1], share)])
        if here >= 0:
            points.append(point)
    return points


def cut_outline(piece: Piece, region: Box) -> list[list[float]]:
    """Return what of a single part's outline lies within the region; a run's is that of its units, which stay whole."""
    if piece["count"] > 1 or len(piece["outline"]) == 0:
        return piece["outline"]
    if piece["axis"] == "x":
        return kept_side(kept_side(piece["outline"], 1, region["y0"], 1.0), 1, region["y1"], -1.0)
    return kept_side(kept_side(piece["outline"], 0, region["x0"], 1.0), 0, region["x1"], -1.0)


def trimmed_to(piece: Piece, region: Box) -> Piece:
    """Return the piece's part within the window; of runs the units that are whole in it."""
    if piece["count"] > 1 and piece["axis"] == "x":
        part = trimmed_run(piece, region["y0"], region["y1"])
    elif piece["count"] > 1:
        part = trimmed_row(piece, region["x0"], region["x1"])
    else:
        part = trimmed(piece)
    part["x0"] = max(part["x0"], region["x0"])
    part["x1"] = min(part["x1"], region["x1"])
    part["y0"] = max(part["y0"], region["y0"])
    part["y1"] = min(part["y1"], region["y1"])
    part["outline"] = cut_outline(part, region)
    return part


def edge_units(piece: Piece, region: Box) -> list[Piece]:
    """Return the units of a run that are only partly within the region, each by itself and cut down to it."""
    upright = piece["axis"] == "x"
    low = region["y0"] if upright else region["x0"]
    high = region["y1"] if upright else region["x1"]
    start = piece["y0"] if upright else piece["x0"]
    end = piece["y1"] if upright else piece["x1"]
    length = end - start - (piece["count"] - 1) * piece["pitch"]
    units: list[Piece] = []
    for i in range(piece["count"]):
        from_start = i * piece["pitch"]
        first = start + from_start
        last = first + length
        if (first < low and last > low) or (first < high and last > high):
            part = moved(piece, 0.0 if upright else from_start, from_start if upright else 0.0, 0.0)
            unit: Piece = {**part, "count": 1, "pitch": 0.0}
            unit["y1" if upright else "x1"] = last
            units.append(trimmed_to(unit, region))
    return units


def cropped(pieces: list[Piece], region: Box) -> list[Piece]:
    """Return the parts of the pieces within a window of the elevation."""
    parts: list[Piece] = []
    for piece in pieces:
        apart = piece["x1"] <= region["x0"] or piece["x0"] >= region["x1"]
        if apart or piece["y1"] <= region["y0"] or piece["y0"] >= region["y1"]:
            continue
        part = trimmed_to(piece, region)
        if part["count"] > 0:
            parts.append(part)
        if piece["count"] > 1:
            parts.extend(edge_units(piece, region))
    return parts


def cropped_scene(scene: Scene, region: Box) -> Scene:
    """Return the scene's part within a window of the elevation."""
    return {
        **scene,
        "door": cropped(scene["door"], region),
        "covering": cropped(scene["covering"], region),
    }
