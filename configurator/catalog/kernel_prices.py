"""Price books and the terms of a quote in the kernel's shapes: amounts as whole minor units of the currency."""

from decimal import Decimal

from configurator.catalog.schema.price_book import AreaFile, ChargeFile, GridFile, PriceBookFile
from configurator.catalog.schema.quote_terms import QuoteTerms
from configurator.kernel.prices.price_shapes import Charge, Extra, Money, PriceBook, PriceTerms


def minor(amount: Decimal, money: Money) -> float:
    """Return an amount in minor units; what is finer than one has been noted as a problem."""
    return float(int(amount.scaleb(int(money["digits"]))))


def kernel_book(book: PriceBookFile, money: Money) -> PriceBook:
    """Return the kernel's price book."""
    additions = {
        choice: {option: kernel_charge(charge, money) for option, charge in options.items()}
        for choice, options in book.additions.items()
    }
    return {"size": kernel_charge(book.size, money), "additions": additions}


def blank_charge(how: str, amount: float) -> Charge:
    """Return a charge of a kind with its amount and nothing else."""
    return {
        "how": how,
        "amount": amount,
        "widths": [],
        "heights": [],
        "prices": [],
        "unit": "",
        "step": 0.0,
        "least": 0.0,
    }


def kernel_charge(charge: ChargeFile, money: Money) -> Charge:
    """Return the kernel's charge, of the one way that the file gives."""
    if charge.grid is not None:
        return grid_charge(charge.grid, money)
    if charge.area is not None:
        return area_charge(charge.area, money)
    if charge.share is not None:
        return blank_charge("share", float(charge.share))
    return blank_charge("each", minor(charge.each or Decimal(0), money))


def grid_charge(grid: GridFile, money: Money) -> Charge:
    """Return a charge by width and height."""
    prices = [[minor(price, money) for price in row] for row in grid.prices]
    return {**blank_charge("grid", 0.0), "widths": grid.widths, "heights": grid.heights, "prices": prices}


def area_charge(area: AreaFile, money: Money) -> Charge:
    """Return a charge by area."""
    charge = blank_charge("area", minor(area.price, money))
    return {**charge, "unit": area.per, "step": float(area.step), "least": float(area.least)}


def kernel_terms(terms: QuoteTerms, money: Money) -> PriceTerms:
    """Return the kernel's terms."""
    extras: list[Extra] = [
        {
            "id": ident,
            "name": extra.name,
            "each": minor(extra.price, money),
            "serves": float(extra.serves),
            "picks": extra.picks,
        }
        for ident, extra in terms.extras.items()
    ]
    return {
        "money": money,
        "to": minor(terms.rounding.to, money),
        "at": terms.rounding.at,
        "discount": float(terms.discount),
        "extras": extras,
        "fitting": minor(terms.fitting.each, money),
        "fitting_least": minor(terms.fitting.least, money),
        "travel": minor(terms.travel, money),
        "tax": float(terms.tax.rate) if terms.tax else 0.0,
        "tax_name": terms.tax.name if terms.tax else "",
        "taxed": terms.tax.on if terms.tax else [],
        "deposit": float(terms.deposit),
        "valid_days": float(terms.valid_days),
        "lead_weeks": [float(terms.lead_weeks.least), float(terms.lead_weeks.most)],
    }
