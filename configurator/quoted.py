"""A quote for what a link or a visit's file holds, and what it is told as."""

from datetime import date
from pathlib import Path

from configurator import commissioned, linked
from configurator.asked import Setting
from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import shapes as link_shapes
from configurator.catalog import Catalog
from configurator.catalog.clauses import Refusal
from configurator.catalog.pricing import Pricing
from configurator.kernel.message import plain
from configurator.kernel.mount.hung import hung_with
from configurator.kernel.papers.quote_paper import quote_paper
from configurator.kernel.papers.visit_quote import visit_quote
from configurator.kernel.prices.offers import offer_of
from configurator.kernel.prices.piece_prices import hung_pieces
from configurator.kernel.prices.price_shapes import Quote, Quoted
from configurator.kernel.visit.visit_shapes import Visit
from configurator.papers.paper_text import paper_text
from configurator.papers.reader import Reader
from configurator.visit_file import read_file


def taken(catalog: Catalog, written: str, on: date | None, setting: Setting) -> tuple[Quote, Reader]:
    """Return the quote for a link or a visit's file, and who reads it, in units of theirs unless others are asked for.

    :raises Refusal: where the showroom has no prices, or the file holds no visit
    """
    prices_of(catalog)
    day = commissioned.day_told(on or date.today(), catalog.words)
    if commissioned.is_visit(written):
        visit = read_file(Path(written))
        return of_visit(catalog, visit, day), commissioned.reader(catalog, setting, visit["units"])
    opened = linked.opened(catalog, written)
    quote: Quote = {**of_link(catalog, opened, day), "link": commissioned.address(catalog, written)}
    return quote, commissioned.reader(catalog, setting, opened["state"]["units"])


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
        "link": "",
        "on": on,
        "openings": openings,
        "terms": prices.terms,
    }


def of_visit(catalog: Catalog, visit: Visit, on: str) -> Quote:
    """Return the quote for a visit: what is proposed for each opening, or what was agreed or is liked alone."""
    return visit_quote(visit, page_catalog(catalog), prices_of(catalog).stock(), catalog.showroom.name, on)


def as_text(quote: Quote, reader: Reader) -> str:
    """Return the quote as a terminal shows it."""
    return paper_text(quote_paper(quote), reader)
