"""Colors as three numbers, as Pillow takes them."""

Color = tuple[int, int, int]


def rgb(color: str) -> Color:
    """Return ``#rrggbb`` as three numbers."""
    return int(color[1:3], 16), int(color[3:5], 16), int(color[5:7], 16)
