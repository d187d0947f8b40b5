"""What a drawing is drawn from: the scene, the answer and the words for its title."""

from typing import TypedDict

from configurator.kernel.answer import ask_fit
from configurator.kernel.scene import scene_at
from configurator.kernel.shapes import Answer, Fit, Household, Position, Scene
from configurator.kernel.tongue import Words
from configurator.kernel.whereabouts import place_words


class Subject(TypedDict):
    """A scene with all that is known of it; ``names`` has words for ``family``, ``door`` and ``place``."""

    scene: Scene
    answer: Answer
    names: dict[str, str]


def subject(fit: Fit, place: Position, household: Household, words: Words) -> Subject:
    """Return what the drawings of a covering that is hung at a position are drawn from."""
    answer = ask_fit(fit, household)
    names = {
        "family": fit["family"]["name"],
        "door": fit["door"]["name"],
        "place": place_words(answer["legs"], place, words),
    }
    return {"scene": scene_at(fit, place), "answer": answer, "names": names}
