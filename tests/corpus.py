"""Links that must open for ever, with what they must tell: ``tests/browser_room/links.txt``.

``python -m tests.corpus LINK…`` prints entries to add. An entry is never changed for convenience:
a figure that has moved has moved in every link that a client keeps, and the file says why.
"""

import sys
from pathlib import Path
from typing import NamedTuple

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import decode
from configurator.browser.link.shapes import Configuration, State, Stock
from configurator.catalog import load
from configurator.kernel.answer import ask
from configurator.kernel.message import is_said, say
from configurator.kernel.tongue import ENGLISH
from configurator.places import CONTENT

FILE = Path(__file__).parent / "browser_room" / "links.txt"
FIGURES = [
    "order_width",
    "order_height",
    "stack_height",
    "visible_glass_open",
    "visible_glass_closed",
    "projection_most",
    "handle_gap",
    "spacer",
]
# Under a configuration: which figure was what when the link was added, and why it no longer is.
WAS = "was "


class Entry(NamedTuple):
    """A link, a line for each of its configurations, and the ids of the figures that have moved since."""

    link: str
    lines: list[str]
    moved: list[list[str]]


def entries() -> list[Entry]:
    """Return the committed links; lines that begin with spaces belong to the link above them."""
    found: list[Entry] = []
    for line in FILE.read_text(encoding="utf-8").splitlines():
        text = line.strip()
        if text.startswith(WAS):
            found[-1].moved[-1].append(text.split()[1])
        elif line.startswith(" "):
            found[-1].lines.append(text)
            found[-1].moved.append([])
        elif line and not line.startswith("#"):
            found.append(Entry(line, [], []))
    return found


def told(configuration: Configuration, state: State, stock: Stock) -> str:
    """Return what is noted of a configuration."""
    family = stock["families"][configuration["family"]]
    answer = ask(configuration["door"], family, configuration["choices"], state["household"])
    where = f"{configuration['family']} on {configuration['door']['id']}, {configuration['door']['handle']['id']}"
    if is_said(answer["refusal"]):
        return f"{where}: {say(answer['refusal'], ENGLISH, state['units'])}"
    figures = [f"{name} {answer['figures'][name]['value']:.6g}" for name in FIGURES]
    return f"{where}: {', '.join(figures)}, pass_through {answer['verdicts']['pass_through']['state']}"


def written(link: str, stock: Stock) -> str:
    """Return the entry of a link as it stands in the file."""
    state = decode(link, stock)["state"]
    return "\n".join([link, *(f"  {told(one, state, stock)}" for one in state["configurations"])])


if __name__ == "__main__":
    for each in sys.argv[1:]:
        print(written(each, page_catalog(load(CONTENT))))
