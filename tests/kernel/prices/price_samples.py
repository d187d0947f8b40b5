"""A small price book and terms, and what a piece of any size costs by them."""

from fractions import Fraction

from configurator.catalog.kernel_prices import blank_charge as charge
from configurator.kernel.message import silence
from configurator.kernel.prices.piece_prices import book_lines, book_refusal, lines_sum
from configurator.kernel.prices.price_shapes import Charge, Money, Offer, Price, PriceBook, PriceLine, PriceTerms
from configurator.kernel.shapes import Fit

INCH = 25.4
DOLLARS: Money = {
    "currency": "USD",
    "digits": 2.0,
    "pattern": "${amount}",
    "group": ",",
    "decimal": ".",
    "percent": "{share}%",
}


def grid(widths: list[float], heights: list[float], prices: list[list[float]]) -> Charge:
    """Return a grid of steps in inches, prices in minor units."""
    steps = [[one * INCH for one in side] for side in (widths, heights)]
    return {**charge("grid", 0.0), "widths": steps[0], "heights": steps[1], "prices": prices}


def area(price: float, unit: str, step: float, least: float) -> Charge:
    """Return a charge by area; step and least in hundredths of the unit."""
    return {**charge("area", price), "unit": unit, "step": step, "least": least}


GRID = grid([24, 36, 48], [48, 72], [[10000.0, 12000.0, 15050.0], [13000.0, 16000.0, 20000.0]])


def terms(to: float = 1.0, at: str = "line") -> PriceTerms:
    """Return terms without discount, extras, fitting, travel or tax."""
    return {
        "money": DOLLARS,
        "to": to,
        "at": at,
        "discount": 0.0,
        "extras": [],
        "fitting": 0.0,
        "fitting_least": 0.0,
        "travel": 0.0,
        "tax": 0.0,
        "tax_name": "",
        "taxed": [],
        "deposit": 0.0,
        "valid_days": 30.0,
        "lead_weeks": [4.0, 6.0],
    }


def priced_piece(amount: float, choices: dict[str, str]) -> Price:
    """Return a piece that costs so much."""
    return {
        "family": "cells",
        "choices": choices,
        "leaf": "active",
        "width": 600.0,
        "height": 1800.0,
        "refusal": silence(),
        "lines": [],
        "amount": amount,
    }


def offered(prices: list[Price]) -> Offer:
    """Return an offer of priced pieces."""
    return {
        "name": "Cells",
        "note": "",
        "picks": [],
        "prices": prices,
        "named": -1.0,
        "amount": sum(price["amount"] for price in prices),
        "refusal": silence(),
    }


def cost(book: PriceBook, fit: Fit, size: list[float], given: PriceTerms) -> float | None:
    """Return what a fit would cost in a size ``[width, height]``, mm; None where the book has no price."""
    if book_refusal(book, fit, size)["text"]:
        return None
    return lines_sum(book_lines(book, fit, size, given))


def worked_amount(line: PriceLine) -> Fraction:
    """Return what the arithmetic of a line's working comes to, exactly, in minor units."""
    text = line["working"]["template"].replace(" x ", " * ")
    values: dict[str, object] = {"ceil": lambda number: Fraction(-(-number // 1)), "max": max}
    for name, (value, unit) in line["working"]["terms"].items():
        exact = Fraction(str(value)) if unit in ("money", "rate", "count") else Fraction(0)
        values[name] = exact / 10000 if unit == "rate" else exact
        text = text.replace("{" + name + "}", name)
    return Fraction(eval(text, {"__builtins__": {}}, values))
