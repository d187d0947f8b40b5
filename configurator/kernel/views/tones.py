"""The roles of light and shade: fills without an outline, laid over what is lit."""

SHADE = "dusk"
GLEAM = "gleam"
GLOW = "glow"
# Marks of one of these roles and of one strength lie beside each other, never over each other.
TONES = [SHADE, GLEAM, GLOW]


def is_tone(role: str) -> bool:
    """Return whether marks of a role are light or shade."""
    return role in TONES
