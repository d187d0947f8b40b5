"""The door alone, without a covering."""

from configurator.kernel.looks import no_look
from configurator.kernel.message import message, say, silence
from configurator.kernel.mount.blank import blank_size
from configurator.kernel.position import position
from configurator.kernel.scene import door_scene, leaf_spans
from configurator.kernel.shapes import Answer, Door, Drawing, Scene
from configurator.kernel.tongue import Words, in_words
from configurator.kernel.views.draft import Draft, drafted


def bare_answer() -> Answer:
    """Return an answer with nothing in it, for a door without a covering."""
    return {
        "door": "",
        "family": "",
        "choices": {},
        "refusal": silence(),
        "size": blank_size("on-leaf"),
        "figures": {},
        "verdicts": {},
        "cautions": [],
        "legs": [],
        "open": position(0.0, 0.0, 0.0),
        "closed": position(0.0, 0.0, 0.0),
    }


def bare_scene(door: Door) -> Scene:
    """Return the opening without a covering."""
    return {"door": door_scene(door), "covering": [], "leaf_x": leaf_spans(door), "legs": [], "look": no_look()}


def bare_draft(door: Door, words: Words, units: str) -> Draft:
    """Return what the views of a door without a covering are drawn from."""
    names = {"family": in_words("Door", words), "door": door["name"], "place": ""}
    return drafted(door, {"scene": bare_scene(door), "answer": bare_answer(), "names": names}, words, units)


def measured_drawing(name: str, draft: Draft, parts: str) -> Drawing:
    """Return a drawing of measures with its words, of which ``parts`` name what it shows, and nothing on it."""
    words = draft["words"]
    terms: dict[str, list[float | str]] = {"door": [draft["door"]["name"], "name"], "parts": [parts, "text"]}
    return {
        "id": name,
        "title": say(message("What to measure on {door}: {parts}", terms), words, draft["units"]),
        "desc": in_words("The door without a covering, with a dimension for each measure to take.", words),
        "x": 0.0,
        "y": 0.0,
        "width": 0.0,
        "height": 0.0,
        "marks": [],
        "look": no_look(),
    }
