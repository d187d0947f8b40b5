"""The order as a table for a sheet of cells: one line a piece, lengths in mm, words in the language."""

from configurator.kernel.message import say
from configurator.kernel.numbers import nearest
from configurator.kernel.papers.making import Making
from configurator.kernel.papers.order_facts import Fact, all_facts
from configurator.kernel.say import decimals
from configurator.kernel.tongue import Words

# What a sheet of cells takes for a formula where a text begins with it.
FORMULA_SIGNS = ["=", "+", "-", "@", "\t", "\r"]


def safe_text(text: str) -> str:
    """Return a text that no sheet of cells takes for a formula."""
    return "'" + text if text[:1] in FORMULA_SIGNS else text


def fact_numbers(told: Fact) -> list[float]:
    """Return a fact's number (mm, kg, shares, counts) to three decimals, or none where it is words."""
    if told["value"]["text"] != "{value}":
        return []
    term = told["value"]["terms"]["value"]
    if term[1] == "name" or term[1] == "text":
        return []
    return [nearest(float(term[0]) * 1000) / 1000]


def is_counted(told: Fact) -> bool:
    """Return whether a fact's number counts things, so that a whole one has no decimals."""
    return told["value"]["terms"]["value"][1] == "count"


def fact_cell(told: Fact, words: Words, units: str) -> str:
    """Return a fact as a cell: a number as such, in every language with a point, else its words."""
    numbers = fact_numbers(told)
    if len(numbers) == 0:
        return safe_text(say(told["value"], words, units))
    text = decimals(numbers[0], 3, {**words, "decimal": "."})
    return text if is_counted(told) or "." in text else text + ".0"


def order_table(made: list[Making], words: Words, units: str) -> list[list[str]]:
    """Return a line for each piece under a column for each thing told of any."""
    columns: list[str] = []
    pieces: list[dict[str, str]] = []
    for making in made:
        piece: dict[str, str] = {}
        for told in all_facts(making):
            piece[told["id"]] = fact_cell(told, words, units)
            if told["id"] not in columns:
                columns.append(told["id"])
        pieces.append(piece)
    table = [columns]
    for piece in pieces:
        table.append([piece.get(column, "") for column in columns])
    return table
