"""What a drawing is drawn from: the scene, the answer and the words for its title."""

from typing import TypedDict

from configurator.kernel.answer import ask_fit
from configurator.kernel.mount.hung import hung
from configurator.kernel.scene import scene_at
from configurator.kernel.shapes import Answer, Door, Family, Household, Position, Scene
from configurator.kernel.whereabouts import place_words


class Subject(TypedDict):
    """A scene with all that is known of it; ``names`` has words for ``family``, ``door`` and ``place``."""

    scene: Scene
    answer: Answer
    names: dict[str, str]


def subject(door: Door, family: Family, choices: dict[str, str], place: Position, household: Household) -> Subject:
    """Return what the drawings of a family with its choices on a door at a position are drawn from."""
    fit = hung(door, family, choices)
    answer = ask_fit(fit, household)
    names = {"family": family["name"], "door": door["name"], "place": place_words(answer["legs"], place)}
    return {"scene": scene_at(fit, place), "answer": answer, "names": names}
