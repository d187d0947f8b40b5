"""Numbers other than lengths, as people write them.

Each reader takes the written text and raises :class:`Slip` with what to write instead.
"""

import re
from collections.abc import Callable

from configurator.catalog.clauses import Slip
from configurator.catalog.length_advice import EXPECTED as LENGTH_EXPECTED
from configurator.catalog.length_advice import read_length
from configurator.kernel.message import plain
from configurator.kernel.tongue import wording

PLAIN = r"[-−]?\d{0,6}(?:\.\d{1,9})?"

EXPECTED = {
    "length": LENGTH_EXPECTED,
    "share": wording("a share from 0 to 1, or one such as 35 %, is expected"),
    "count": wording("a number such as 3 or 2.5 is expected"),
    "degree": wording("an angle such as 45 deg is expected"),
    "switch": wording("yes or no is expected"),
    "mass": wording("a mass by area such as 0.3 kg/m2 is expected"),
    "run-mass": wording("a mass by length such as 0.4 kg/m is expected"),
    "weight": wording("a mass such as 0.8 kg is expected"),
    "u-value": wording("a U-value such as 1.1 W/m2K is expected"),
    "radius": wording("a radius such as 4 px is expected"),
}


def with_unit(text: str, unit: str, kind: str) -> float:
    """Return the number before a unit; ``unit`` is a pattern."""
    found = re.fullmatch(rf"({PLAIN})\s*(?:{unit})", text.strip(), re.IGNORECASE)
    if not found or not re.search(r"\d", found[1]):
        raise Slip(plain(EXPECTED[kind]))
    return float(found[1].replace("−", "-"))


def read_share(text: str) -> float:
    """Return ``0.35`` or ``35 %`` as a share."""
    if text.strip().endswith("%"):
        return with_unit(text, "%", "share") / 100
    return with_unit(text, "", "share")


def read_count(text: str) -> float:
    """Return a plain number, whole or decimal."""
    return with_unit(text, "", "count")


def read_degree(text: str) -> float:
    """Return ``45 deg``, ``45 degrees`` or ``45°`` in degrees."""
    return with_unit(text, "deg|degrees?|°", "degree")


def read_switch(text: str) -> float:
    """Return ``yes`` as 1 and ``no`` as 0."""
    switches = {"yes": 1.0, "no": 0.0}
    if text.strip().lower() not in switches:
        raise Slip(plain(EXPECTED["switch"]))
    return switches[text.strip().lower()]


def read_mass(text: str) -> float:
    """Return ``0.3 kg/m2`` in kilograms a square meter."""
    return with_unit(text, "kg/m2|kg/m²", "mass")


def read_run_mass(text: str) -> float:
    """Return ``0.4 kg/m`` in kilograms a meter."""
    return with_unit(text, "kg/m", "run-mass")


def read_weight(text: str) -> float:
    """Return ``0.8 kg`` in kilograms."""
    return with_unit(text, "kg", "weight")


def read_u_value(text: str) -> float:
    """Return ``1.1 W/m2K`` in watts a square meter and kelvin."""
    return with_unit(text, r"W/\(?(?:m2|m²) ?K\)?", "u-value")


def read_radius(text: str) -> float:
    """Return ``4 px`` in CSS pixels."""
    return with_unit(text, "px", "radius")


READERS: dict[str, Callable[[str], float]] = {
    "length": read_length,
    "share": read_share,
    "count": read_count,
    "degree": read_degree,
    "switch": read_switch,
    "mass": read_mass,
    "run-mass": read_run_mass,
    "weight": read_weight,
    "u-value": read_u_value,
    "radius": read_radius,
}

SPELLED = {
    "share": "",
    "count": "",
    "degree": " deg",
    "mass": " kg/m2",
    "run-mass": " kg/m",
    "weight": " kg",
    "u-value": " W/m2K",
    "radius": " px",
}
