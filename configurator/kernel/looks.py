"""The look of a covering: its color, weave and luster, resolved with the picks as its numbers are."""

from configurator.kernel.resolve import find_option
from configurator.kernel.shapes import Family, Look

# How a surface returns the light, each with how strongly its lit sides gleam.
LUSTERS: dict[str, float] = {"matte": 0.6, "satin": 1.0, "glossy": 1.6}
# What is hard is one with the rails and frames about it.
HARD_WEAVES = ["grain", "paint", "brushed"]


def no_look() -> Look:
    """Return the look of what has none of its own: it is drawn in the theme's color."""
    return {"color": "", "line": "", "rim": "", "weave": "plain", "luster": "matte"}


def look_of(family: Family, choices: dict[str, str]) -> Look:
    """Return the family's look with those of the chosen options set over it, in order."""
    look = family["look"]
    for choice in family["choices"]:
        part = find_option(choice, choices.get(choice["id"], ""))["look"]
        look = {
            "color": part.get("color", look["color"]),
            "line": part.get("line", look["line"]),
            "rim": part.get("rim", look["rim"]),
            "weave": part.get("weave", look["weave"]),
            "luster": part.get("luster", look["luster"]),
        }
    return look


def is_dyed(look: Look) -> bool:
    """Return whether a look has a color of its own."""
    return look["color"] != ""


def is_hard(look: Look) -> bool:
    """Return whether what is seen is wood, paint or metal."""
    return look["weave"] in HARD_WEAVES
