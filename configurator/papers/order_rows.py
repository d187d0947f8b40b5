"""The order as a table and as data: one line a piece, with every number that the paper tells."""

import csv
import io
import json

from configurator.kernel.papers.making import Desk, Making
from configurator.kernel.papers.order_facts import Fact, all_facts
from configurator.kernel.papers.order_table import fact_numbers, is_counted, order_table
from configurator.kernel.papers.order_totals import Total, cloth_totals, hardware_totals
from configurator.papers.reader import Reader


def number_of(told: Fact) -> float | None:
    """Return a fact's number, lengths in mm, or None where it is words."""
    numbers = fact_numbers(told)
    if not numbers:
        return None
    return int(numbers[0]) if is_counted(told) and numbers[0].is_integer() else numbers[0]


def order_csv(made: list[Making], reader: Reader) -> str:
    """Return a line for each piece, a column for each thing told of any: lengths in mm, words in the language."""
    text = io.StringIO()
    csv.writer(text, lineterminator="\n").writerows(order_table(made, reader.words, reader.units))
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
