"""Cloth and bars that the tests of the questions share: 54 in wide, plain, hanging flat, unless it is said."""

from typing import Any

from configurator.kernel.mechanisms.cuts import measured
from configurator.kernel.shapes import Bar, Cloth, Measured

INCH = 25.4


def just(value: float) -> Measured:
    """Return a length that stands for itself."""
    return measured(value, "as given", "{value}", {"value": [value, "mm"]})


def cloth_with(width: float = 1000.0, length: float = 2000.0, **changes: Any) -> Cloth:
    """Return cloth of a flat width and length in mm."""
    cloth: Cloth = {
        "key": "cloth",
        "panels": 1.0,
        "width": just(width),
        "length": just(length),
        "fullness": 1.0,
        "hem": 0.0,
        "leads": 0.0,
        "bolt": 54 * INCH,
        "repeat": 0.0,
        "railroads": 0.0,
        "mass": 0.3,
    }
    return cloth | changes


def bar_with(key: str, count: float, length: float, mass: float) -> Bar:
    """Return bars of one length in mm."""
    return {"key": key, "count": count, "length": just(length), "mass": mass}
