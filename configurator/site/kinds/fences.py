"""Live drawings in a guide: a fenced block names door, family, view and position.

    ```drawing
    door: garden-pair
    family: cellular-shade
    view: elevation
    at: 0.5
    ```

``view`` is one of :data:`VIEWS`; ``at`` is ``open``, ``closed`` or a share of the way to closed.
"""

import re
from html import escape
from pathlib import Path

import yaml

from configurator.catalog import ContentProblems, Problem
from configurator.catalog.clauses import Slip
from configurator.catalog.suggest import suggestion
from configurator.catalog.syntax import syntax_problem
from configurator.kernel.message import is_said, message, plain
from configurator.kernel.position import closed_position, open_position, position_at
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Door, Family, Position
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

FENCE = re.compile(r"^```drawing\n(.*?)^```$", re.MULTILINE | re.DOTALL)
VIEWS: dict[str, View] = {
    "elevation": elevation_of,
    "section": section_of,
    "plan": plan_of,
    "detail-head": detail_head_of,
    "detail-handle": detail_handle_of,
    "detail-upright": detail_upright_of,
    "sheet": sheet_of,
}
KEYS = ("door", "family", "view", "at")


# What is said of a name that nothing has, under each key.
UNKNOWN = {
    "door": wording("there is no door '{written}'"),
    "family": wording("there is no family '{written}'"),
    "view": wording("there is no view '{written}'"),
}


def read_block(text: str) -> dict[str, str]:
    """Return what a block asks for.

    :raises Slip: where it asks for something else, or is no YAML
    """
    try:
        written = yaml.safe_load(text)
    except yaml.YAMLError as unsound:
        raise Slip(*syntax_problem("", text, unsound).clauses) from unsound
    asked = {str(key): str(value) for key, value in written.items()} if isinstance(written, dict) else {}
    if sorted(asked) != sorted(KEYS):
        raise Slip(message("a drawing needs the lines {keys} and no others", {"keys": [", ".join(KEYS), "name"]}))
    return asked


def known(things: dict[str, object], asked: dict[str, str], key: str) -> str:
    """Return the name under a key, which must be one of those known."""
    if asked[key] not in things:
        unknown = message(UNKNOWN[key], {"written": [asked[key], "name"]})
        raise Slip(unknown, suggestion(asked[key], things))
    return asked[key]


def place(family: Family, at: str) -> Position:
    """Return the position that ``at`` names."""
    numbers = resolve(family, {})
    if at in ("open", "closed"):
        return open_position(numbers) if at == "open" else closed_position(numbers)
    if not re.fullmatch(r"0|1|0?\.\d+", at):
        expected = plain("open, closed or a share from 0 to 1 is expected")
        raise Slip(message("at is '{at}'", {"at": [at, "name"]}), expected)
    return position_at(numbers, float(at))


def figure(asked: dict[str, str], number: int, house: House) -> str:
    """Return the figure element of a block."""
    catalog = house.catalog
    door: Door = catalog.doors[known(dict(catalog.doors), asked, "door")]
    family: Family = catalog.families[known(dict(catalog.families), asked, "family")]
    view = VIEWS[known(dict(VIEWS), asked, "view")]
    answer = house.answer(door, family)
    if is_said(answer["refusal"]):
        names: dict[str, list[float | str]] = {"family": [family["name"], "name"], "door": [door["name"], "name"]}
        refused = message("{family} does not go on {door}", names)
        raise Slip(refused, answer["refusal"], units=house.units)
    at = place(family, asked["at"])
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
    number = 0

    def drawn(block: re.Match[str]) -> str:
        nonlocal number
        number += 1
        try:
            return figure(read_block(block[1]), number, house)
        except Slip as slip:
            line = above + markdown.count("\n", 0, block.start()) + 1
            problems.append(Problem(file.as_posix(), line, 1, slip.clauses, slip.units))
            return ""

    result = FENCE.sub(drawn, markdown)
    if problems:
        raise ContentProblems(problems, house.words)
    return result
