"""What the starter's coverings answer, kept in ``answers/``, a file for each family.

``python -m tests.kernel.starter_answers`` writes them anew. A figure, a verdict or a caution that moves there has moved
for everyone who was told it, so the commit says why.
"""

from pathlib import Path

from configurator.catalog import Catalog, load
from configurator.kernel.answer import ask_fit
from configurator.kernel.message import is_said, say
from configurator.kernel.mount.hung import hung
from configurator.kernel.shapes import Family
from configurator.kernel.tongue import ENGLISH
from configurator.places import CONTENT

FOLDER = Path(__file__).resolve().parent / "answers"


def last_picks(family: Family) -> dict[str, str]:
    """Return the last option of every choice, which is seldom the preset one."""
    return {choice["id"]: choice["options"][-1]["id"] for choice in family["choices"]}


def told(catalog: Catalog, door: str, family: Family, picks: dict[str, str]) -> list[str]:
    """Return all that a covering answers on a door, a line for each thing."""
    answer = ask_fit(hung(catalog.doors[door], family, picks), catalog.household)
    if is_said(answer["refusal"]):
        return [f"refused: {say(answer['refusal'], ENGLISH, 'mm')}"]
    figures = [f"{name}: {one['value']:.6g} {one['unit']}" for name, one in answer["figures"].items()]
    verdicts = [f"{name}: {one['state']}. {say(one['why'], ENGLISH, 'mm')}" for name, one in answer["verdicts"].items()]
    cautions = [f"caution: {say(one['text'], ENGLISH, 'mm')}" for one in answer["cautions"] if not one["general"]]
    return [*figures, *verdicts, *cautions]


def answers_of(catalog: Catalog, number: int, family: Family) -> str:
    """Return what is kept of a family: on the plain door, and with its last options on one of the others in turn."""
    others = [door for door in catalog.doors if door != "garden-door"]
    lines: list[str] = []
    for door, picks in (
        ("garden-door", {}),
        *((others[(number + step) % len(others)], last_picks(family)) for step in (0, 5)),
    ):
        lines += [f"# on {door}, {', '.join(picks.values()) or 'as preset'}", *told(catalog, door, family, picks), ""]
    return "\n".join(lines)


def kept_answers(catalog: Catalog) -> dict[str, str]:
    """Return all that is kept, by the file's name."""
    return {
        f"{name}.txt": answers_of(catalog, number, family)
        for number, (name, family) in enumerate(catalog.families.items())
    }


if __name__ == "__main__":
    FOLDER.mkdir(exist_ok=True)
    for name, text in kept_answers(load(CONTENT)).items():
        (FOLDER / name).write_text(text, encoding="utf-8")
