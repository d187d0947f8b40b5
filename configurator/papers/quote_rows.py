"""A quote as a table and as data: each amount in digits with a decimal point, its working in words."""

import csv
import io
import json
from collections.abc import Iterator
from typing import Any, cast

from configurator.kernel.message import is_said, plain
from configurator.kernel.prices.money_words import plain_money, price_rule, price_sum
from configurator.kernel.prices.price_shapes import Money, Offer, PriceLine, Quote
from configurator.kernel.prices.ranks import quote_ways
from configurator.kernel.shapes import Message
from configurator.papers.reader import Reader

QUOTE_COLUMNS = ("opening", "offer", "leaf", "line", "name", "amount", "currency", "rule", "sum")


def quote_json(quote: Quote, reader: Reader) -> str:
    """Return the quote as JSON, its amounts in minor units as the kernel has them, with the ways to take it."""
    whole: dict[str, Any] = {**quote, "ways": quote_ways(quote)}
    return json.dumps(in_words_too(whole, reader, quote["terms"]["money"]), indent=2, ensure_ascii=False)


def in_words_too(value: Any, reader: Reader, money: Money) -> Any:
    """Return data with each message said, and each line with its amount in digits."""
    if isinstance(value, list):
        return [in_words_too(part, reader, money) for part in value]
    if not isinstance(value, dict):
        return int(value) if isinstance(value, float) and value.is_integer() else value
    if set(value) == {"text", "terms"}:
        return reader.says(cast(Message, value))
    if "working" in value:
        return line_json(cast(PriceLine, value), reader, money)
    return {key: in_words_too(part, reader, money) for key, part in value.items()}


def line_json(line: PriceLine, reader: Reader, money: Money) -> dict[str, Any]:
    """Return a line: its amount in minor units and in digits, its working in words."""
    return {
        "id": line["id"],
        "name": reader.says(line["name"]),
        "amount": int(line["amount"]),
        "digits": plain_money(line["amount"], money),
        "rounded": line["rounded"],
        "rule": reader.says(price_rule(line, money)),
        "sum": reader.phrase(price_sum(line, money)),
    }


def quote_csv(quote: Quote, reader: Reader) -> str:
    """Return every line as a row; totals have no opening but the way that they are of."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(QUOTE_COLUMNS)
    writer.writerows(quote_rows(quote, reader))
    return out.getvalue()


def quote_rows(quote: Quote, reader: Reader) -> Iterator[list[str]]:
    """Yield the rows of a quote's table."""
    money = quote["terms"]["money"]
    for opening in quote["openings"]:
        for offer in opening["offers"]:
            yield from offer_rows(offer, [opening["name"], offer["name"]], reader, money)
    for way in quote_ways(quote):
        for line in way["bill"]["lines"]:
            yield ["", way["id"], "", *line_cells(line, reader, money)]
        total = plain_money(way["bill"]["total"], money)
        yield ["", way["id"], "", "total", reader.says(plain("Total")), total, money["currency"], "", ""]
        yield ["", way["id"], "", *line_cells(way["bill"]["deposit"], reader, money)]


def offer_rows(offer: Offer, named: list[str], reader: Reader, money: Money) -> Iterator[list[str]]:
    """Yield an offer's lines piece by piece, or the reason why a piece has no price; of a named price that alone."""
    if offer["named"] >= 0:
        amount = plain_money(offer["named"], money)
        yield [*named, "", "named", reader.says(plain("Named price")), amount, money["currency"], "", ""]
        return
    if not offer["prices"]:
        yield [*named, "", "refusal", "", "", "", reader.says(offer["refusal"]), ""]
    for price in offer["prices"]:
        if is_said(price["refusal"]):
            yield [*named, price["leaf"], "refusal", "", "", "", reader.says(price["refusal"]), ""]
        for line in price["lines"]:
            yield [*named, price["leaf"], *line_cells(line, reader, money)]


def line_cells(line: PriceLine, reader: Reader, money: Money) -> list[str]:
    """Return a line's cells from its id on."""
    said = line_json(line, reader, money)
    return [line["id"], said["name"], said["digits"], money["currency"], said["rule"], said["sum"]]
