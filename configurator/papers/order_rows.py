"""The order as a table and as data: one line a piece, with every number that the paper tells."""

import csv
import io
import json

from configurator.kernel.papers.making import Desk, Making
from configurator.kernel.papers.order_facts import Fact, all_facts
from configurator.kernel.papers.order_totals import Total, cloth_totals, hardware_totals
from configurator.papers.reader import Reader

# What a sheet of cells takes for a formula where a text begins with it.
FORMULA_SIGNS = ("=", "+", "-", "@", "\t", "\r")
WORDS = ("name", "text")


def safe(text: str) -> str:
    """Return a text that no sheet of cells takes for a formula."""
    return f"'{text}" if text.startswith(FORMULA_SIGNS) else text


def number_of(told: Fact) -> float | None:
    """Return a fact's number, lengths in mm, or None where it is words."""
    terms = list(told["value"]["terms"].values())
    if told["value"]["text"] != "{value}" or len(terms) != 1 or terms[0][1] in WORDS:
        return None
    number = round(float(terms[0][0]), 3)
    return int(number) if terms[0][1] == "count" and number.is_integer() else number


def cell(told: Fact, reader: Reader) -> str | float:
    """Return a fact as a cell: a number as such, else its words."""
    number = number_of(told)
    return safe(reader.says(told["value"])) if number is None else number


def order_csv(made: list[Making], reader: Reader) -> str:
    """Return a line for each piece, a column for each thing told of any: lengths in mm, words in the language."""
    facts = [{told["id"]: told for told in all_facts(making)} for making in made]
    columns = list(dict.fromkeys(key for piece in facts for key in piece))
    text = io.StringIO()
    table = csv.writer(text, lineterminator="\n")
    table.writerow(columns)
    for piece in facts:
        table.writerow([cell(piece[key], reader) if key in piece else "" for key in columns])
    return text.getvalue()


def fact_data(told: Fact, reader: Reader) -> dict[str, object]:
    """Return a fact: its name, its words, its number (mm, kg, shares, counts) and how it came about."""
    data: dict[str, object] = {"name": reader.says(told["name"]), "text": reader.says(told["value"])}
    if (number := number_of(told)) is not None:
        data["value"] = number
    if told["worked"]["text"]:
        data["working"] = f"{reader.phrase(told['rule'])}: {reader.phrase(told['worked'])}"
    return data


def total_data(total: Total, reader: Reader) -> dict[str, object]:
    """Return a total: what of it, in which size (mm, 0 where it has none), how much (cloth in mm)."""
    return {"what": reader.says(total["what"]), "size": round(total["span"], 3), "amount": round(total["amount"], 3)}


def order_json(made: list[Making], desk: Desk, reader: Reader) -> str:
    """Return one JSON object: the pieces with all that is told of them, and the totals of cloth and hardware."""
    told = {
        "showroom": desk["showroom"],
        "date": desk["day"],
        "link": desk["link"],
        "pieces": [{fact["id"]: fact_data(fact, reader) for fact in all_facts(making)} for making in made],
        "cloth": [total_data(total, reader) for total in cloth_totals(made)],
        "hardware": [total_data(total, reader) for total in hardware_totals(made)],
    }
    return json.dumps(told, indent=2, ensure_ascii=False)
