"""A size before anything is known of it."""

from configurator.kernel.mount.cassette import no_cassette
from configurator.kernel.shapes import Size


def blank_size(mount: str) -> Size:
    """Return a size with nothing in it."""
    return {
        "refusal": "",
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
        "cutout": {"x0": 0.0, "x1": 0.0, "y0": 0.0, "y1": 0.0},
        "cassette": no_cassette(),
    }
