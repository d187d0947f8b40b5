"""Live drawings in a guide, each in place of the block that asks for it (``catalog/drawing_blocks.py``)."""

import re
from html import escape
from pathlib import Path

from configurator.catalog import ContentProblems, Problem
from configurator.catalog.clauses import Slip
from configurator.catalog.drawing_blocks import FENCE, Asked, Shop, asked
from configurator.kernel.tongue import wording
from configurator.kernel.views.detail import detail_handle_of, detail_head_of
from configurator.kernel.views.detail_upright import detail_upright_of
from configurator.kernel.views.elevation import elevation_of
from configurator.kernel.views.plan import plan_of
from configurator.kernel.views.section import section_of
from configurator.kernel.views.sheet import sheet_of
from configurator.kernel.whereabouts import place_words
from configurator.site.drawings.pictures import Shown, View, finished_svg
from configurator.site.house import House
from configurator.site.kinds.compare import fitted_url

VIEWS: dict[str, View] = {
    "elevation": elevation_of,
    "section": section_of,
    "plan": plan_of,
    "detail-head": detail_head_of,
    "detail-handle": detail_handle_of,
    "detail-upright": detail_upright_of,
    "sheet": sheet_of,
}


def figure(wanted: Asked, number: int, house: House) -> str:
    """Return the figure element of a block."""
    door, family, at = wanted.door, wanted.family, wanted.at
    view = VIEWS[wanted.view]
    answer = house.answer(door, family)
    svg = finished_svg(house, view, Shown(door, family, at), f"g{number}-")
    words = escape(f"{house.on_door(door, family)}: {place_words(answer['legs'], at, house.words)}.")
    link = f'<a href="../{fitted_url(door, family)}">{escape(house.named(wording("All its figures")))}</a>'
    return f'<figure class="drawing">{svg}<figcaption>{words} {link}</figcaption></figure>'


def draw_fences(markdown: str, file: Path, above: int, house: House) -> str:
    """Return a guide's Markdown with its drawing blocks drawn.

    ``file`` is where it was read, ``above`` how many lines of the file stand before it.

    :raises ContentProblems: with file and line of every block that cannot be drawn
    """
    problems: list[Problem] = []
    shop = Shop(house.catalog.doors, house.catalog.families, house.units)
    number = 0

    def drawn(block: re.Match[str]) -> str:
        nonlocal number
        number += 1
        try:
            return figure(asked(block[1], shop), number, house)
        except Slip as slip:
            line = above + markdown.count("\n", 0, block.start()) + 1
            problems.append(Problem(file.as_posix(), line, 1, slip.clauses, slip.units))
            return ""

    result = FENCE.sub(drawn, markdown)
    if problems:
        raise ContentProblems(problems, house.words)
    return result
