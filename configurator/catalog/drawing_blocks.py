"""What a drawing in a guide asks for: a fenced block that names door, family, view and position.

    ```drawing
    door: garden-pair
    family: cellular-shade
    view: elevation
    at: 0.5
    ```

``view`` is one of :data:`VIEW_NAMES`; ``at`` is ``open``, ``closed`` or a share of the way to closed.
"""

import re
from collections.abc import Iterable, Iterator, Mapping
from typing import NamedTuple

from configurator.catalog.clauses import Slip
from configurator.catalog.located import ContentFile, take_text
from configurator.catalog.suggest import suggestion
from configurator.kernel.message import is_said, message, plain
from configurator.kernel.mount.hung import hung
from configurator.kernel.position import closed_position, open_position, position_at
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Door, Family, Position
from configurator.kernel.tongue import wording

FENCE = re.compile(r"^```drawing\n(.*?)^```$", re.MULTILINE | re.DOTALL)
VIEW_NAMES = ("elevation", "section", "plan", "detail-head", "detail-handle", "detail-upright", "sheet")
KEYS = ("door", "family", "view", "at")
# What is said of a name that nothing has, under each key.
UNKNOWN = {
    "door": wording("there is no door '{written}'"),
    "family": wording("there is no family '{written}'"),
    "view": wording("there is no view '{written}'"),
}


class Asked(NamedTuple):
    """What a block asks for."""

    door: Door
    family: Family
    view: str
    at: Position


class Shop(NamedTuple):
    """What drawings can be made of, by id, and the units in which a refusal tells lengths."""

    doors: Mapping[str, Door]
    families: Mapping[str, Family]
    units: str


def asked(text: str, shop: Shop) -> Asked:
    """Return what a block asks for.

    :raises Slip: where it asks for something else, or is no YAML
    """
    written = read_block(text)
    door = shop.doors[known(shop.doors, written, "door")]
    family = shop.families[known(shop.families, written, "family")]
    view = known(VIEW_NAMES, written, "view")
    refusal = hung(door, family, {})["size"]["refusal"]
    if is_said(refusal):
        names: dict[str, list[float | str]] = {"family": [family["name"], "name"], "door": [door["name"], "name"]}
        raise Slip(message("{family} does not go on {door}", names), refusal, units=shop.units)
    return Asked(door, family, view, place(family, written["at"]))


def read_block(text: str) -> dict[str, str]:
    """Return the lines of a block by their keys.

    :raises Slip: where it has others, or is no YAML
    """
    file = ContentFile("")
    take_text(file, text)
    if file.problems:
        raise Slip(*file.problems[0].clauses)
    written = {key: value for key, value in file.data.items() if isinstance(value, str)}
    if sorted(file.data) != sorted(KEYS) or len(written) < len(KEYS):
        raise Slip(message("a drawing needs the lines {keys} and no others", {"keys": [", ".join(KEYS), "name"]}))
    return written


def known(things: Iterable[str], written: dict[str, str], key: str) -> str:
    """Return the name under a key, which must be one of those known."""
    if written[key] not in things:
        unknown = message(UNKNOWN[key], {"written": [written[key], "name"]})
        raise Slip(unknown, suggestion(written[key], things))
    return written[key]


def place(family: Family, at: str) -> Position:
    """Return the position that ``at`` names."""
    numbers = resolve(family, {})
    if at in ("open", "closed"):
        return open_position(numbers) if at == "open" else closed_position(numbers)
    if not re.fullmatch(r"0|1|0?\.\d+", at):
        expected = plain("open, closed or a share from 0 to 1 is expected")
        raise Slip(message("at is '{at}'", {"at": [at, "name"]}), expected)
    return position_at(numbers, float(at))


def unsound_blocks(markdown: str, shop: Shop) -> Iterator[tuple[int, Slip]]:
    """Yield each block of a page that cannot be drawn, by the line of its fence, from 1."""
    for block in FENCE.finditer(markdown):
        try:
            asked(block[1], shop)
        except Slip as slip:
            yield markdown.count("\n", 0, block.start()) + 1, slip
