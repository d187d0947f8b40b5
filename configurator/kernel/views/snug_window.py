"""What a drawing's marks fill, words included, so that a paper has room for nothing else."""

from configurator.kernel.shapes import Drawing, Mark
from configurator.kernel.views.marks import text_width

# How far letters reach above and below their base line, in parts of their size.
ASCENT = 0.8
DESCENT = 0.25


def words_box(mark: Mark) -> list[float]:
    """Return the rectangle that words fill, ``[x0, y0, x1, y1]``; upright ones run up the paper."""
    x = mark["points"][0]
    y = mark["points"][1]
    size = mark["points"][2]
    width = text_width(mark["text"], size)
    before = 0.0
    if mark["anchor"] == "middle":
        before = width / 2
    if mark["anchor"] == "end":
        before = width
    if mark["turn"] == 0:
        return [x - before, y - size * ASCENT, x - before + width, y + size * DESCENT]
    return [x - size * ASCENT, y + before - width, x + size * DESCENT, y + before]


def mark_box(mark: Mark) -> list[float]:
    """Return the rectangle that a mark fills, ``[x0, y0, x1, y1]``."""
    points = mark["points"]
    if mark["shape"] == "text":
        return words_box(mark)
    if mark["shape"] == "circle":
        return [points[0] - points[2], points[1] - points[2], points[0] + points[2], points[1] + points[2]]
    box = [points[0], points[1], points[0], points[1]]
    for i in range(0, len(points), 2):
        box = [min(box[0], points[i]), min(box[1], points[i + 1]), max(box[2], points[i]), max(box[3], points[i + 1])]
    return box


def trimmed_view(view: Drawing, edge: float) -> Drawing:
    """Return the drawing with the smallest window that shows all its marks, with an edge round them, mm."""
    box = mark_box(view["marks"][0])
    for mark in view["marks"]:
        # Bars lie on something larger.
        if mark["shape"] != "bars":
            own = mark_box(mark)
            box = [min(box[0], own[0]), min(box[1], own[1]), max(box[2], own[2]), max(box[3], own[3])]
    return {
        **view,
        "x": box[0] - edge,
        "y": box[1] - edge,
        "width": box[2] - box[0] + edge * 2,
        "height": box[3] - box[1] + edge * 2,
    }
