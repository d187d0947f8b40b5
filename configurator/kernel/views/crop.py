"""Pieces cut down to a region, so that an enlarged detail holds nothing that it does not show."""

import math

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


def trimmed_to(piece: Piece, region: Box) -> Piece:
    """Return the piece's part within the window; runs keep whole units."""
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
    return part


def sticks_out(piece: Piece, region: Box) -> bool:
    """Return whether a single part with an outline of its own is only partly in the region."""
    if piece["count"] > 1 or len(piece["outline"]) == 0:
        return False
    if piece["axis"] == "x":
        return piece["y0"] < region["y0"] or piece["y1"] > region["y1"]
    return piece["x0"] < region["x0"] or piece["x1"] > region["x1"]


def cropped(pieces: list[Piece], region: Box) -> list[Piece]:
    """Return the parts of the pieces within a window of the elevation."""
    parts: list[Piece] = []
    for piece in pieces:
        apart = piece["x1"] <= region["x0"] or piece["x0"] >= region["x1"]
        if apart or piece["y1"] <= region["y0"] or piece["y0"] >= region["y1"]:
            continue
        if sticks_out(piece, region):
            continue
        part = trimmed_to(piece, region)
        if part["count"] > 0:
            parts.append(part)
    return parts


def cropped_scene(scene: Scene, region: Box) -> Scene:
    """Return the scene's part within a window of the elevation."""
    return {
        **scene,
        "door": cropped(scene["door"], region),
        "covering": cropped(scene["covering"], region),
    }
