"""How a figure and a verdict are put together."""

from configurator.kernel.shapes import Caution, Figure, Verdict


def figure(
    key: str,
    name: str,
    value: float,
    unit: str,
    rule: str,
    template: str,
    terms: dict[str, list[float | str]],
) -> Figure:
    """Return a figure whose working is the rule in words and the template with its terms put in."""
    return {
        "id": key,
        "name": name,
        "value": value,
        "unit": unit,
        "working": {"rule": rule, "template": template, "terms": terms},
    }


def verdict(
    key: str, name: str, state: str, moves: str, start: float, end: float, why: str, fixes: list[str]
) -> Verdict:
    """Return a verdict; see :class:`configurator.kernel.shapes.Verdict`."""
    return {
        "id": key,
        "name": name,
        "state": state,
        "moves": moves,
        "start": start,
        "end": end,
        "why": why,
        "fixes": fixes,
    }


def caution(key: str, text: str, source: str) -> Caution:
    """Return a caution with the rule that it names."""
    return {"id": key, "text": text, "source": source}
