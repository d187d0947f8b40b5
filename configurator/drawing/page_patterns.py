"""The patterns of materials that a page's drawings are filled with."""

import re
from collections.abc import Iterable
from functools import cache

from svgwrite.container import SVG, Defs

from configurator.drawing.look_rules import LOOK_ATTRIBUTE, SMOOTH
from configurator.drawing.svg import UNCHECKED, markup, pattern
from configurator.kernel.looks import no_look
from configurator.kernel.shapes import Look
from configurator.kernel.views.paint import PAINT_PREFIX, paint_name

NAMED = re.compile(rf'{LOOK_ATTRIBUTE}="{PAINT_PREFIX}([0-9a-f]{{6}})-([a-z]+)"')


def patterns(looks: Iterable[Look]) -> str:
    """Return an SVG without size that holds the pattern of each look once; nothing where all are smooth."""
    each = {paint_name(look): look for look in looks if look["weave"] != SMOOTH}
    if not each:
        return ""
    paper = SVG(size=("0", "0"), factory=UNCHECKED, class_="patterns")
    paper.attribs["aria-hidden"] = "true"
    held = Defs(factory=UNCHECKED)
    for name in sorted(each):
        held.add(pattern(each[name]))
    paper.elements = [held]
    return markup(paper)


def page_patterns(html: str) -> str:
    """Return the patterns of the looks that the drawings of a page name."""
    return patterns_named(frozenset(NAMED.findall(html)))


@cache
def patterns_named(named: frozenset[tuple[str, str]]) -> str:
    """Return the patterns of looks by color and weave: those of a covering stand on its page for each door."""
    return patterns({**no_look(), "color": f"#{color}", "weave": weave} for color, weave in named)
