"""A fit and its size before anything is known of how it sits."""

from configurator.kernel.mechanisms import family_legs
from configurator.kernel.mechanisms.cassette import no_cassette
from configurator.kernel.message import silence
from configurator.kernel.resolve import full_choices, resolve
from configurator.kernel.shapes import Box, Door, Family, Fit, Piece, Size


def no_box() -> Box:
    """Return the box that there is not."""
    return {"x0": 0.0, "x1": 0.0, "y0": 0.0, "y1": 0.0}


def blank_size(mount: str) -> Size:
    """Return a size with nothing in it."""
    return {
        "refusal": silence(),
        "mount": mount,
        "x0": 0.0,
        "x1": 0.0,
        "y0": 0.0,
        "y1": 0.0,
        "z0": 0.0,
        "spacer": 0.0,
        "exact_spacer": 0.0,
        "exact_width": 0.0,
        "exact_height": 0.0,
        "limits": [],
        "cutout": no_box(),
        "cassette": no_cassette(),
    }


def blank_fit(door: Door, family: Family, choices: dict[str, str], handle: list[Piece]) -> Fit:
    """Return a covering with its picks, not yet hung."""
    numbers = resolve(family, choices)
    mount = "over-opening" if numbers["over_opening"] > 0 else "on-leaf"
    return {
        "door": door,
        "family": family,
        "choices": full_choices(family, choices),
        "numbers": numbers,
        "handle": handle,
        "size": blank_size(mount),
        "standing": blank_size(mount),
        "legs": family_legs(family, numbers),
        "fixings": [],
    }
