"""The smallest cassette that takes a roll."""

from configurator.kernel.shapes import Cassette


def no_cassette() -> Cassette:
    """Return the cassette of a covering that has none."""
    return {"name": "", "roll": 0.0, "height": 0.0, "depth": 0.0}


def cassette_for(cassettes: list[Cassette], need: float) -> Cassette:
    """Return the smallest cassette that takes a roll of the diameter ``need``, or none when none does."""
    best = no_cassette()
    for cassette in cassettes:
        if cassette["roll"] >= need and (best["roll"] == 0 or cassette["roll"] < best["roll"]):
            best = cassette
    return best
