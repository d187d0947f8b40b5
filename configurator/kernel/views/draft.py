"""What every view draws from: the scene with all that is known of it, its measures and its letters."""

from typing import TypedDict

from configurator.kernel.shapes import Answer, Box, Door, Drawing, Scene
from configurator.kernel.tongue import Words
from configurator.kernel.views.crop import cropped_scene
from configurator.kernel.views.layout import Layout, active_covering, extent, latch_is_right, layout, letter_size
from configurator.kernel.views.subject import Subject
from configurator.kernel.views.words import VIEW_WORDS, desc_words, title_words


class Draft(TypedDict):
    """A door with a covering at a position, ready to be drawn in any view.

    ``names`` has words for ``family``, ``door`` and ``place``; ``words`` is the language, ``units``
    is ``in`` or ``mm``. ``size`` is that of the letters, mm in the model; ``room`` what a sheet keeps free above and
    below the elevation for the marks of its section, 0 elsewhere.
    """

    scene: Scene
    door: Door
    answer: Answer
    names: dict[str, str]
    words: Words
    units: str
    frame: Layout
    size: float
    room: float


def drafted(door: Door, given: Subject, words: Words, units: str) -> Draft:
    """Return what all views of a subject are drawn from, lettered for a drawing by itself."""
    frame = layout(given["scene"], door, given["answer"])
    return {
        "scene": given["scene"],
        "door": door,
        "answer": given["answer"],
        "names": given["names"],
        "words": words,
        "units": units,
        "frame": frame,
        "size": letter_size(frame),
        "room": 0.0,
    }


def lettered(draft: Draft, size: float, room: float) -> Draft:
    """Return the same with letters of another size and another room for a section's marks."""
    return {**draft, "size": size, "room": room}


def cropped_draft(draft: Draft, region: Box) -> Draft:
    """Return the same with only what lies within a window of the elevation."""
    return {**draft, "scene": cropped_scene(draft["scene"], region)}


def covering_box(draft: Draft) -> Box:
    """Return the outline of the active leaf's covering, or of the one over the opening; all zero without one."""
    return extent(active_covering(draft["scene"], draft["answer"]))


def hinge_edge(draft: Draft) -> float:
    """Return the x of the active leaf's hinge edge."""
    return draft["frame"]["leaf0"] if latch_is_right(draft["door"]) else draft["frame"]["leaf1"]


def latch_edge(draft: Draft) -> float:
    """Return the x of the active leaf's latch edge."""
    return draft["frame"]["leaf1"] if latch_is_right(draft["door"]) else draft["frame"]["leaf0"]


def handle_axis_x(draft: Draft) -> float:
    """Return the x of the handle's axis."""
    backset = draft["door"]["backset"]
    return latch_edge(draft) - backset if latch_is_right(draft["door"]) else latch_edge(draft) + backset


def blank_drawing(view: str, draft: Draft) -> Drawing:
    """Return a drawing with its words and nothing on it."""
    return {
        "id": view,
        "title": title_words(VIEW_WORDS[view], draft["names"], draft["words"]),
        "desc": desc_words(view, draft["names"], draft["answer"], draft["words"], draft["units"]),
        "x": 0.0,
        "y": 0.0,
        "width": 0.0,
        "height": 0.0,
        "marks": [],
        "look": draft["scene"]["look"],
    }
