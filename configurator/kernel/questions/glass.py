"""How much glass stays visible, and how much view and light come through."""

from typing import TypedDict

from configurator.kernel.door.opening import covered_rows, covered_spans, length_within
from configurator.kernel.questions.figure import figure
from configurator.kernel.shapes import Door, Figure, Piece


class Shares(TypedDict):
    """Shares of the glass area, 0 to 1: uncovered glass, view and light; ``area`` in mm2."""

    visible: float
    view: float
    light: float
    area: float


def edges_of(pieces: list[Piece], low: str, high: str, start: float, end: float) -> list[float]:
    """Return the sorted edges of the pieces along one axis, between ``start`` and ``end``, both included."""
    edges = [start, end]
    for piece in pieces:
        for edge in [float_of(piece, low), float_of(piece, high)]:
            if edge > start and edge < end:
                edges.append(edge)
    ordered = sorted(edges)
    distinct = [ordered[0]]
    for edge in ordered:
        if edge > distinct[len(distinct) - 1]:
            distinct.append(edge)
    return distinct


def float_of(piece: Piece, edge: str) -> float:
    """Return one edge of a piece by its name."""
    if edge == "x0":
        return piece["x0"]
    if edge == "x1":
        return piece["x1"]
    if edge == "y0":
        return piece["y0"]
    return piece["y1"]


def strip_shares(pieces: list[Piece], rows: list[list[float]]) -> list[float]:
    """Return the heights of uncovered glass, view and light in a strip that all the pieces span."""
    bottom = rows[0][0]
    top = rows[len(rows) - 1][1]
    edges = edges_of(pieces, "y0", "y1", bottom, top)
    waiting = sorted(pieces, key=lambda piece: piece["y0"])
    following = 0
    present: list[Piece] = []
    sums = [0.0, 0.0, 0.0]
    for i in range(len(edges) - 1):
        low = edges[i]
        high = edges[i + 1]
        while following < len(waiting) and waiting[following]["y0"] <= low:
            present.append(waiting[following])
            following += 1
        present = [piece for piece in present if piece["y1"] > low]
        clear = length_within(rows, low, high)
        view = 1.0
        light = 1.0
        for piece in present:
            view = view * piece["view"]
            light = light * piece["light"]
        if len(present) == 0:
            sums[0] += clear
        sums[1] += clear * view
        sums[2] += clear * light
    return sums


def glass_shares(door: Door, whole: bool, pieces: list[Piece]) -> Shares:
    """Return the three shares for the covering's pieces over the active leaf's glass, or the ``whole`` opening's.

    Muntins and beads are the door's own and count neither for nor against the covering.
    """
    spans = covered_spans(door, whole)
    rows = covered_rows(door)
    left = spans[0][0]
    right = spans[0][1]
    for span in spans:
        left = min(left, span[0])
        right = max(right, span[1])
    height = length_within(rows, rows[0][0], rows[len(rows) - 1][1])
    area = length_within(spans, left, right) * height
    edges = edges_of(pieces, "x0", "x1", left, right)
    sums = [0.0, 0.0, 0.0]
    for i in range(len(edges) - 1):
        middle = (edges[i] + edges[i + 1]) / 2
        width = length_within(spans, edges[i], edges[i + 1])
        if width > 0:
            within = [piece for piece in pieces if piece["x0"] < middle and piece["x1"] > middle]
            strip = strip_shares(within, rows)
            for k in range(3):
                sums[k] += strip[k] * width
    return {"visible": sums[0] / area, "view": sums[1] / area, "light": sums[2] / area, "area": area}


def share_figure(key: str, name: str, rule: str, share: float, area: float) -> Figure:
    """Return one share of the glass with its working."""
    return figure(
        key,
        name,
        share,
        "share",
        rule,
        "{part} of {area} of glass",
        {"part": [share * area, "mm2"], "area": [area, "mm2"]},
    )


def glass_figures(door: Door, whole: bool, raised: list[Piece], down: list[Piece]) -> list[Figure]:
    """Return visible glass, view and light when open and when closed."""
    figures: list[Figure] = []
    for state in ["open", "closed"]:
        shares = glass_shares(door, whole, raised if state == "open" else down)
        area = shares["area"]
        figures.append(
            share_figure(
                "visible_glass_" + state,
                "visible glass, " + state,
                "the glass with no piece of the covering in front of it",
                shares["visible"],
                area,
            )
        )
        figures.append(
            share_figure(
                "view_" + state,
                "view, " + state,
                "the glass, each part by what of the view comes through",
                shares["view"],
                area,
            )
        )
        figures.append(
            share_figure(
                "light_" + state,
                "light, " + state,
                "the glass, each part by what of the light comes through",
                shares["light"],
                area,
            )
        )
    return figures
