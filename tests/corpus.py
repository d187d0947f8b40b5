"""Links that must open for ever, with what they must tell: ``tests/browser_room/links.txt``.

``python -m tests.corpus LINK…`` prints entries to add. An entry is never changed for convenience:
a figure that has moved has moved in every link that a client keeps.
"""

import sys
from pathlib import Path
from typing import NamedTuple

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import decode
from configurator.browser.link.shapes import Configuration, State, Stock
from configurator.catalog import load
from configurator.kernel.answer import ask
from configurator.places import CONTENT

FILE = Path(__file__).parent / "browser_room" / "links.txt"
FIGURES = [
    "order_width",
    "order_height",
    "stack_height",
    "visible_glass_open",
    "visible_glass_closed",
    "projection_most",
]


class Entry(NamedTuple):
    """A link, and a line for each of its configurations."""

    link: str
    lines: list[str]


def entries() -> list[Entry]:
    """Return the committed links; lines that begin with spaces belong to the link above them."""
    found: list[Entry] = []
    for line in FILE.read_text(encoding="utf-8").splitlines():
        if line.startswith(" "):
            found[-1].lines.append(line.strip())
        elif line and not line.startswith("#"):
            found.append(Entry(line, []))
    return found


def told(configuration: Configuration, state: State, stock: Stock) -> str:
    """Return what is noted of a configuration."""
    family = stock["families"][configuration["family"]]
    answer = ask(configuration["door"], family, configuration["choices"], state["household"])
    where = f"{configuration['family']} on {configuration['door']['id']}, {configuration['door']['handle']['id']}"
    if answer["refusal"]:
        return f"{where}: {answer['refusal']}"
    figures = [f"{name} {answer['figures'][name]['value']:.6g}" for name in FIGURES]
    return f"{where}: {', '.join(figures)}, pass_through {answer['verdicts']['pass_through']['state']}"


def written(link: str, stock: Stock) -> str:
    """Return the entry of a link as it stands in the file."""
    state = decode(link, stock)["state"]
    return "\n".join([link, *(f"  {told(one, state, stock)}" for one in state["configurations"])])


if __name__ == "__main__":
    for each in sys.argv[1:]:
        print(written(each, page_catalog(load(CONTENT))))
