"""How what the kernel tells is put together: figures with their workings, verdicts, cautions, replies."""

from configurator.kernel.message import plain
from configurator.kernel.shapes import Answer, Caution, Figure, Message, Quantity, Reply, Verdict, Working
from configurator.kernel.verdict_words import verdict_word


def length(value: float) -> Quantity:
    """Return a length in millimeters."""
    return {"value": value, "unit": "mm"}


def share(value: float) -> Quantity:
    """Return a share, 0 to 1."""
    return {"value": value, "unit": "share"}


def count(value: float) -> Quantity:
    """Return a number of things."""
    return {"value": value, "unit": "count"}


def angle(value: float) -> Quantity:
    """Return an angle in degrees."""
    return {"value": value, "unit": "deg"}


def run(value: float) -> Quantity:
    """Return a length of cloth in millimeters, told in yards or meters."""
    return {"value": value, "unit": "run"}


def mass(value: float) -> Quantity:
    """Return a mass in kilograms."""
    return {"value": value, "unit": "kg"}


def working(rule: str, template: str, terms: dict[str, list[float | str]]) -> Working:
    """Return how a figure came about: the rule in words, and the template in which the terms are put."""
    return {"rule": rule, "template": template, "terms": terms}


def figure(key: str, name: str, quantity: Quantity, how: Working) -> Figure:
    """Return a figure with its plain name and its working."""
    return {"id": key, "name": name, "value": quantity["value"], "unit": quantity["unit"], "working": how}


def figure_value(figures: list[Figure], key: str) -> float:
    """Return the value of the figure with this id, or 0 where there is none."""
    for found in figures:
        if found["id"] == key:
            return found["value"]
    return 0.0


def figure_told(answer: Answer, key: str, missing: float) -> float:
    """Return the value of a figure of an answer, or ``missing`` where it is not told."""
    return answer["figures"][key]["value"] if key in answer["figures"] else missing


def verdict(key: str, name: str, state: str, why: Message) -> Verdict:
    """Return a verdict that holds wherever the covering stands; see :class:`configurator.kernel.shapes.Verdict`."""
    return {
        "id": key,
        "name": name,
        "state": state,
        "says": plain(verdict_word(key, state)),
        "moves": "",
        "start": 0.0,
        "end": 0.0,
        "why": why,
    }


def caution(key: str, text: str, source: str) -> Caution:
    """Return a caution, one or more whole sentences, with the rule that it names."""
    return caution_with(key, plain(text), source)


def caution_with(key: str, text: Message, source: str) -> Caution:
    """Return a caution whose sentences name terms, with the rule that it names."""
    return {"id": key, "text": text, "source": source, "general": False}


def guidance(key: str, text: Message, source: str) -> Caution:
    """Return a caution that is general guidance, the same for nearly every covering, with the rule that it names."""
    return {"id": key, "text": text, "source": source, "general": True}


def reply(figures: list[Figure], verdicts: list[Verdict], cautions: list[Caution]) -> Reply:
    """Return a question's answer."""
    return {"figures": figures, "verdicts": verdicts, "cautions": cautions}
