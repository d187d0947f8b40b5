"""How a style sheet has a drawing's cloth, wood or metal take the paint of its look."""

from collections.abc import Iterable

from configurator.kernel.looks import is_dyed, is_hard
from configurator.kernel.shapes import Look
from configurator.kernel.views.paint import paint_name

# The attribute by which a drawing says its look: a page's policy lets no drawing bring a style of its own.
LOOK_ATTRIBUTE = "data-look"
# The weave of which nothing but its color is seen.
SMOOTH = "paint"


def look_properties(look: Look) -> dict[str, str]:
    """Return the custom properties that a drawing needs for a look, by name; none where the theme's colors serve.

    Where the pattern is not at hand, the plain color stands for it.
    """
    if not is_dyed(look):
        return {}
    paint = look["color"] if look["weave"] == SMOOTH else f"url(#{paint_name(look)}) {look['color']}"
    properties = {"cloth": paint, "plain": look["color"], "crease": look["line"], "rim": look["rim"]}
    # What is hard goes with its rails and frames.
    return properties | {"louver": paint} if is_hard(look) else properties


def look_rules(looks: Iterable[Look]) -> str:
    """Return a style sheet with one rule for each look that has colors of its own."""
    rules = {paint_name(look): look_properties(look) for look in looks if is_dyed(look)}
    return "".join(
        f"[{LOOK_ATTRIBUTE}={name}]{{{';'.join(f'--{key}:{value}' for key, value in rules[name].items())}}}\n"
        for name in sorted(rules)
    )
