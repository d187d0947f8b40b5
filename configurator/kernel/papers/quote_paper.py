"""The quote: what is offered for each opening, what it costs and how that comes about, and the terms."""

from configurator.kernel.message import is_said, message, plain, several, silence
from configurator.kernel.papers.blocks import (
    Block,
    Column,
    Paper,
    Row,
    named_cell,
    number_column,
    paper_caution,
    paper_code,
    paper_list,
    paper_row,
    paper_table,
    paper_text,
    paper_title,
    signature_lines,
    sum_column,
    total_row,
    word_column,
)
from configurator.kernel.prices.money_words import money_cell, money_term, price_rule, price_sum, say_hundredths
from configurator.kernel.prices.price_shapes import (
    Bill,
    Money,
    Offer,
    Price,
    PriceLine,
    PriceTerms,
    Quote,
    Quoted,
    Rank,
)
from configurator.kernel.prices.ranks import RANK_WORDS, open_offers, quote_ways
from configurator.kernel.shapes import Message
from configurator.kernel.visit.proposal_names import offer_letter, offer_name
from configurator.kernel.visit.visit_fields import LEAF_NAMES


def quote_paper(quote: Quote) -> Paper:
    """Return the quote as a paper: what it comes to, every offer with its working, the terms."""
    ways = quote_ways(quote)
    blocks = [paper_title(plain("Quote"), 1.0), paper_text(quote_head(quote))]
    if quote["link"] != "":
        blocks.append(paper_code(plain("All of it again, to look at and to change:"), quote["link"]))
    blocks.extend(total_blocks(quote, ways))
    for opening in quote["openings"]:
        blocks.extend(opening_blocks(opening, quote["terms"]["money"]))
    if len(ways) > 1:
        blocks.extend(way_blocks(ways, quote["terms"]["money"]))
    blocks.extend(terms_blocks(quote["terms"]))
    blocks.append(signature_lines([plain("The client"), plain("The showroom")]))
    foot = message(
        "{showroom}: quote of {date}", {"showroom": [quote["showroom"], "name"], "date": [quote["on"], "name"]}
    )
    return {"id": "quote", "title": plain("Quote"), "foot": foot, "blocks": blocks}


def quote_head(quote: Quote) -> Message:
    """Return who offers, to whom and when."""
    terms: dict[str, list[float | str]] = {
        "showroom": [quote["showroom"], "name"],
        "client": [quote["client"], "name"],
        "date": [quote["on"], "name"],
    }
    if quote["client"] == "":
        return message("{showroom}, {date}.", terms)
    return message("{showroom} for {client}, {date}.", terms)


def opening_blocks(opening: Quoted, money: Money) -> list[Block]:
    """Return an opening's title and what is offered for it, each with the working of its price."""
    blocks = [paper_title(named_cell(opening["name"]), 2.0)]
    place = 0
    for offer in open_offers(opening):
        blocks.extend(offer_blocks(offer, offer_letter(place, len(open_offers(opening))), money))
        place = place + 1
    return blocks


def offer_blocks(offer: Offer, letter: str, money: Money) -> list[Block]:
    """Return an offer: its name and picks, what is said of it, and a table for each of its pieces."""
    blocks = [paper_title(offer_name(offer["name"], letter), 3.0)]
    if len(offer["picks"]) > 0:
        blocks.append(paper_text(picks_line(offer["picks"])))
    if offer["note"] != "":
        blocks.append(paper_text(named_cell(offer["note"])))
    for price in offer["prices"]:
        if offer["named"] >= 0:
            blocks.append(paper_text(piece_words(price)))
        elif is_said(price["refusal"]):
            blocks.append(paper_caution(price["refusal"]))
        else:
            blocks.append(piece_table(price, money))
    if len(offer["prices"]) == 0 and is_said(offer["refusal"]):
        blocks.append(paper_caution(offer["refusal"]))
    if offer["named"] >= 0:
        amount: dict[str, list[float | str]] = {"amount": money_term(offer["named"], money)}
        blocks.append(paper_text(message("The price that was named for it is {amount}.", amount)))
    return blocks


def picks_line(picks: list[list[str]]) -> Message:
    """Return picks, each by the names of its choice and its option, in one line."""
    terms: dict[str, list[float | str]] = {}
    parts: list[str] = []
    for pick in picks:
        number = str(len(parts) + 1)
        terms["choice" + number] = [pick[0], "name"]
        terms["option" + number] = [pick[1], "name"]
        parts.append("{choice" + number + "}: {option" + number + "}")
    return message(" · ".join(parts), terms)


def piece_table(price: Price, money: Money) -> Block:
    """Return the lines of a piece's price with their workings, and their sum."""
    rows = [line_row(line, money) for line in price["lines"]]
    rows.append(total_row([plain("This piece"), silence(), silence(), money_cell(price["amount"], money)]))
    return paper_table(piece_words(price), price_columns(), rows)


def piece_words(price: Price) -> Message:
    """Return which leaf a piece is for, and the size in which it is ordered."""
    terms: dict[str, list[float | str]] = {
        "leaf": [LEAF_NAMES.get(price["leaf"], price["leaf"]), "text"],
        "width": [price["width"], "mm"],
        "height": [price["height"], "mm"],
    }
    if price["leaf"] == "active":
        return message("{width} wide and {height} high as ordered", terms)
    return message("For {leaf}, {width} wide and {height} high as ordered", terms)


def price_columns() -> list[Column]:
    """Return the columns of a table of lines."""
    return [
        word_column(plain("What"), 1.2),
        word_column(plain("How it comes about"), 1.8),
        sum_column(plain("Worked out"), 1.4),
        number_column(plain("Amount"), 0.7),
    ]


def line_row(line: PriceLine, money: Money) -> Row:
    """Return a line with its working."""
    return paper_row([line["name"], price_rule(line, money), price_sum(line, money), money_cell(line["amount"], money)])


def total_blocks(quote: Quote, ways: list[Rank]) -> list[Block]:
    """Return what it comes to: one bill, or the ways to take it side by side; nothing where nothing has a price."""
    if len(ways) == 0:
        return []
    title = paper_title(plain("What it comes to"), 2.0)
    if len(ways) > 1:
        return [title, ways_table(quote, ways)]
    return [title, bill_table(ways[0]["bill"], quote["terms"]["money"])]


def way_blocks(ways: list[Rank], money: Money) -> list[Block]:
    """Return the bill of each of several ways."""
    blocks = [paper_title(plain("How it comes about"), 2.0)]
    for way in ways:
        blocks.append(paper_title(plain(RANK_WORDS[way["id"]]), 3.0))
        blocks.append(bill_table(way["bill"], money))
    return blocks


def bill_table(bill: Bill, money: Money) -> Block:
    """Return a bill with the working of each of its lines."""
    rows = [line_row(line, money) for line in bill["lines"]]
    rows.append(total_row([plain("Total"), silence(), silence(), money_cell(bill["total"], money)]))
    if bill["deposit"]["amount"] > 0:
        rows.append(line_row(bill["deposit"], money))
    return paper_table(silence(), price_columns(), rows)


def ways_table(quote: Quote, ways: list[Rank]) -> Block:
    """Return the ways to take a quote side by side: the offer of each opening, then the lines of each bill."""
    money = quote["terms"]["money"]
    columns = [word_column(plain("Opening"), 1.2)]
    for way in ways:
        columns.append(number_column(plain(RANK_WORDS[way["id"]]), 1.0))
    rows: list[Row] = []
    for place in range(len(quote["openings"])):
        rows.append(paper_row(offer_cells(quote["openings"][place], place, ways, money)))
    for key in bill_keys(ways):
        rows.append(paper_row(bill_cells(key, ways, money)))
    totals = [plain("Total")]
    for way in ways:
        totals.append(money_cell(way["bill"]["total"], money))
    rows.append(total_row(totals))
    return paper_table(silence(), columns, rows)


def offer_cells(opening: Quoted, place: int, ways: list[Rank], money: Money) -> list[Message]:
    """Return an opening's name and the offer that each way takes for it."""
    cells = [named_cell(opening["name"])]
    offers = open_offers(opening)
    for way in ways:
        pick = way["picks"][place]
        if pick < 0:
            cells.append(plain("on request"))
        else:
            terms: dict[str, list[float | str]] = {
                "name": [offers[pick]["name"], "name"],
                "amount": money_term(offers[pick]["amount"], money),
            }
            cells.append(message("{name}: {amount}", terms))
    return cells


def bill_keys(ways: list[Rank]) -> list[str]:
    """Return the ids of the lines that any of the bills has, in the order of bills."""
    keys: list[str] = []
    for way in ways:
        for line in way["bill"]["lines"]:
            if line["id"] not in keys:
                keys.append(line["id"])
    # What comes last in every bill does so here, too.
    last = ["fitting", "travel", "tax", "rounding"]
    ordered = [key for key in keys if key not in last]
    ordered.extend([key for key in last if key in keys])
    return ordered


def bill_cells(key: str, ways: list[Rank], money: Money) -> list[Message]:
    """Return a line's name and its amount in each of the bills."""
    cells = [silence()]
    for way in ways:
        cell = money_cell(0.0, money)
        for line in way["bill"]["lines"]:
            if line["id"] == key:
                cells[0] = line["name"]
                cell = money_cell(line["amount"], money)
        cells.append(cell)
    return cells


def terms_blocks(terms: PriceTerms) -> list[Block]:
    """Return on which terms it is offered."""
    money = terms["money"]
    days: dict[str, list[float | str]] = {"count": [terms["valid_days"], "count"]}
    items = [
        several("This quote holds for {count} day.", "This quote holds for {count} days.", days),
        lead_words(terms["lead_weeks"]),
    ]
    if terms["deposit"] > 0:
        rate: dict[str, list[float | str]] = {"rate": [say_hundredths(terms["deposit"], money), "name"]}
        items.append(message("With the order, {rate} of the total is to be paid.", rate))
    items.append(rounding_words(terms))
    items.append(plain("Prices are for the sizes as measured; what is measured anew is priced anew."))
    return [paper_title(plain("Terms"), 2.0), paper_list(items)]


def lead_words(weeks: list[float]) -> Message:
    """Return how long it takes until it hangs, the least and the most weeks."""
    most: dict[str, list[float | str]] = {"least": [weeks[0], "count"], "count": [weeks[1], "count"]}
    if weeks[0] == weeks[1]:
        return several(
            "The coverings hang {count} week after the order.",
            "The coverings hang {count} weeks after the order.",
            most,
        )
    return several(
        "The coverings hang {least} to {count} week after the order.",
        "The coverings hang {least} to {count} weeks after the order.",
        most,
    )


def rounding_words(terms: PriceTerms) -> Message:
    """Return how amounts are rounded."""
    step: dict[str, list[float | str]] = {"to": money_term(terms["to"], terms["money"])}
    if terms["at"] == "line":
        return message("Each line is rounded to the nearest {to}, halves up.", step)
    return message("The total is rounded to the nearest {to}, halves up.", step)
