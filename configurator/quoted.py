"""A quote for what a link or a visit holds, as text, JSON and a table."""

import csv
import io
import json
from collections.abc import Iterator
from datetime import date
from typing import Any, cast

from configurator import linked, report
from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import shapes as link_shapes
from configurator.catalog import Catalog
from configurator.catalog.clauses import Refusal
from configurator.catalog.pricing import Pricing
from configurator.kernel.message import is_said, plain, say, say_phrase
from configurator.kernel.mount.hung import hung_with
from configurator.kernel.papers import blocks
from configurator.kernel.papers.quote_paper import quote_paper
from configurator.kernel.prices.money_words import plain_money, price_rule, price_sum
from configurator.kernel.prices.offers import named_offer, no_offer, offer_of
from configurator.kernel.prices.pieces import hung_pieces
from configurator.kernel.prices.price_shapes import Offer, PriceLine, Quote, Quoted
from configurator.kernel.prices.ranks import quote_ways
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import Words
from configurator.kernel.visit.hung_leaves import hung_leaves, is_offered
from configurator.kernel.visit.visit_shapes import Opening, Proposal, Visit, VisitStock

COLUMNS = ("opening", "offer", "leaf", "line", "name", "amount", "currency", "rule", "sum")


def prices_of(catalog: Catalog) -> Pricing:
    """Return the showroom's prices.

    :raises Refusal: where it has none
    """
    if catalog.prices is None:
        none = plain("this showroom writes no quotes")
        raise Refusal(none, plain("say its terms under quote in showroom.yaml, and its prices in prices/"))
    return catalog.prices


def of_link(catalog: Catalog, told: link_shapes.Opened, on: str) -> Quote:
    """Return the quote for a link's configurations: those of one and the same door are offers for one opening."""
    prices = prices_of(catalog)
    openings: list[Quoted] = []
    doors: list[object] = []
    for one in told["state"]["configurations"]:
        fit = hung_with(*linked.asked(catalog, one))
        offer = offer_of(hung_pieces(fit), prices.books, prices.terms)
        if one["door"] in doors:
            openings[doors.index(one["door"])]["offers"].append(offer)
        else:
            doors.append(one["door"])
            openings.append({"name": one["door"]["name"], "offers": [offer], "taken": -1})
    return {
        "showroom": catalog.showroom.name,
        "client": "",
        "on": on,
        "openings": openings,
        "terms": prices.terms,
    }


def of_visit(catalog: Catalog, visit: Visit, on: str) -> Quote:
    """Return the quote for a visit: what is proposed for each opening, or what was agreed or is liked alone."""
    prices = prices_of(catalog)
    stock = page_catalog(catalog)
    openings: list[Quoted] = [
        {
            "name": opening["room"],
            "offers": [proposed(opening, one, stock, prices) for one in opening["proposals"]],
            "taken": taken(opening),
        }
        for opening in visit["openings"]
        if opening["proposals"]
    ]
    return {
        "showroom": catalog.showroom.name,
        "client": visit["client"],
        "on": on,
        "openings": openings,
        "terms": prices.terms,
    }


def proposed(opening: Opening, proposal: Proposal, stock: VisitStock, prices: Pricing) -> Offer:
    """Return a proposal as an offer: for the price that was named for it, or by the books."""
    if is_offered(proposal, stock):
        offer = offer_of(hung_leaves(opening, proposal, stock), prices.books, prices.terms)
    else:
        offer = no_offer(proposal["family"], plain("This covering is no longer offered."))
    agreed = [one["price"] for one in opening["agreed"] if one["proposal"] == proposal["id"]]
    written = agreed[-1] if agreed else proposal["price"]
    return named_offer({**offer, "note": proposal["note"]}, written, prices.terms["money"])


def taken(opening: Opening) -> int:
    """Return the place of the proposal that was agreed last, or else of the one that alone is liked; -1 for none."""
    names = [proposal["id"] for proposal in opening["proposals"]]
    agreed = [names.index(one["proposal"]) for one in opening["agreed"] if one["proposal"] in names]
    liked = [place for place, proposal in enumerate(opening["proposals"]) if proposal["liked"]]
    if agreed:
        return agreed[-1]
    return liked[0] if len(liked) == 1 else -1


def day(asked: date | None, words: Words) -> str:
    """Return a day, or today, as a language writes it."""
    # What is known of languages is slow to load.
    from babel.dates import format_date

    return format_date(asked or date.today(), "long", words["language"].replace("-", "_"))


def as_json(catalog: Catalog, quote: Quote, units: str) -> str:
    """Return the quote as JSON: amounts in minor units as the kernel has them, with the ways to take it.

    Each line has its working in words beside its terms.
    """
    whole: dict[str, Any] = {**quote, "ways": quote_ways(quote)}
    return json.dumps(in_words_too(whole, catalog.words, units, quote), indent=2, ensure_ascii=False)


def in_words_too(value: Any, words: Words, units: str, quote: Quote) -> Any:
    """Return data with each message said and each line's amount in digits."""
    if isinstance(value, list):
        return [in_words_too(part, words, units, quote) for part in value]
    if not isinstance(value, dict):
        return int(value) if isinstance(value, float) and value.is_integer() else value
    if set(value) == {"text", "terms"}:
        return say(cast(Message, value), words, units)
    if "working" in value:
        return line_json(cast(PriceLine, value), words, units, quote)
    return {key: in_words_too(part, words, units, quote) for key, part in value.items()}


def line_json(line: PriceLine, words: Words, units: str, quote: Quote) -> dict[str, Any]:
    """Return a line: its amount in minor units and in digits, its working in words."""
    money = quote["terms"]["money"]
    return {
        "id": line["id"],
        "name": say(line["name"], words, units),
        "amount": int(line["amount"]),
        "digits": plain_money(line["amount"], money),
        "rounded": line["rounded"],
        "rule": say(price_rule(line, money), words, units),
        "sum": say_phrase(price_sum(line, money), words, units),
    }


def as_csv(catalog: Catalog, quote: Quote, units: str) -> str:
    """Return every line as a row; totals have no opening but the way that they are of."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    writer.writerows(rows(catalog, quote, units))
    return out.getvalue()


def rows(catalog: Catalog, quote: Quote, units: str) -> Iterator[list[str]]:
    """Yield the rows of a quote's table."""
    for opening in quote["openings"]:
        for offer in opening["offers"]:
            yield from offer_rows(catalog, quote, offer, [opening["name"], offer["name"]], units)
    money = quote["terms"]["money"]
    for way in quote_ways(quote):
        for line in way["bill"]["lines"]:
            yield ["", way["id"], "", *line_cells(catalog, quote, line, units)]
        total = plain_money(way["bill"]["total"], money)
        name = say(plain("Total"), catalog.words, units)
        yield ["", way["id"], "", "total", name, total, money["currency"], "", ""]
        yield ["", way["id"], "", *line_cells(catalog, quote, way["bill"]["deposit"], units)]


def offer_rows(catalog: Catalog, quote: Quote, offer: Offer, named: list[str], units: str) -> Iterator[list[str]]:
    """Yield an offer's lines piece by piece, or the reason why a piece has no price; of a named price that alone."""
    money = quote["terms"]["money"]
    if offer["named"] >= 0:
        name = say(plain("Named price"), catalog.words, units)
        yield [*named, "", "named", name, plain_money(offer["named"], money), money["currency"], "", ""]
        return
    for price in offer["prices"]:
        if is_said(price["refusal"]):
            yield [*named, price["leaf"], "refusal", "", "", "", say(price["refusal"], catalog.words, units), ""]
        for line in price["lines"]:
            yield [*named, price["leaf"], *line_cells(catalog, quote, line, units)]


def line_cells(catalog: Catalog, quote: Quote, line: PriceLine, units: str) -> list[str]:
    """Return a line's cells from its id on."""
    money = quote["terms"]["money"]
    said = line_json(line, catalog.words, units, quote)
    return [line["id"], said["name"], said["digits"], money["currency"], said["rule"], said["sum"]]


def as_text(catalog: Catalog, quote: Quote, units: str) -> str:
    """Return the quote as a terminal shows it: the paper's titles, points and tables in order."""
    parts = [block_text(block, catalog.words, units) for block in quote_paper(quote)["blocks"]]
    return "\n".join(part for part in parts if part)


def block_text(block: blocks.Block, words: Words, units: str) -> str:
    """Return a block of the quote as lines; what is only for a pen is left out."""
    text = say(block["text"], words, units)
    if block["kind"] == blocks.TITLE:
        return ("\n" if block["size"] > 1 else "") + report.wrapped(text, int(block["size"] - 1) * 2)
    if block["kind"] in (blocks.TEXT, blocks.CAUTION):
        return report.wrapped(text, 4)
    if block["kind"] == blocks.LIST:
        return "\n".join(report.wrapped(say(item, words, units), 4) for item in block["items"])
    if block["kind"] == blocks.TABLE:
        caption = [report.wrapped(text, 4)] if text else []
        return "\n".join([*caption, *table_lines(block, words, units)])
    return ""


def table_lines(block: blocks.Block, words: Words, units: str) -> list[str]:
    """Return a table's rows: one of numbers alone side by side under its names, another with its workings below."""
    names = [say(column["name"], words, units) for column in block["columns"]]
    if all(column["side"] == "end" for column in block["columns"][1:]):
        rows = [[say(cell, words, units) for cell in row["cells"]] for row in block["rows"]]
        return ["    " + beside(row).rstrip() for row in [names, *rows]]
    return [row_text(row, words, units) for row in block["rows"]]


def beside(cells: list[str]) -> str:
    """Return cells in columns."""
    return f"{cells[0]:<24}" + "".join(f" {cell:>26}" for cell in cells[1:])


def row_text(row: blocks.Row, words: Words, units: str) -> str:
    """Return a row: its name and amount on one line, what lies between below it."""
    cells = [say(cell, words, units) for cell in row["cells"]]
    first = f"    {cells[0]:<{report.NAME_WIDTH}} {cells[-1]:>14}"
    between = ": ".join(say_phrase(cell, words, units) for cell in row["cells"][1:-1] if cell["text"])
    return f"{first}\n{report.wrapped(between, 8)}" if between else first
