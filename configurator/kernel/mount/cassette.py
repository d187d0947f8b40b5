"""The smallest cassette that takes the full roll."""

from configurator.kernel.mechanisms.roll import full_roll
from configurator.kernel.shapes import Cassette

# Air that a turning roll keeps to its cassette, all round.
ROLL_AIR = 2.0


def no_cassette() -> Cassette:
    """Return the cassette of a covering that has none."""
    return {"name": "", "roll": 0.0, "height": 0.0, "depth": 0.0}


def cassette_for(cassettes: list[Cassette], numbers: dict[str, float], drop: float) -> Cassette:
    """Return the smallest cassette that takes the roll of a drop, or none when none does."""
    best = no_cassette()
    need = full_roll(numbers, drop) + ROLL_AIR
    for cassette in cassettes:
        if cassette["roll"] >= need and (best["roll"] == 0 or cassette["roll"] < best["roll"]):
            best = cassette
    return best


def has_roll(numbers: dict[str, float]) -> bool:
    """Return whether the mechanism rolls its cloth on a tube."""
    return numbers.get("tube", 0.0) > 0
