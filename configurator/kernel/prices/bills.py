"""What offers come to together: extras, discount, fitting, travel, tax, rounding, and what is paid ahead."""

import math

from configurator.kernel.message import message, plain
from configurator.kernel.prices.charges import line_step, priced
from configurator.kernel.prices.piece_prices import lines_sum
from configurator.kernel.prices.price_shapes import WHOLE_RATE, Bill, Extra, Offer, Price, PriceLine, PriceTerms
from configurator.kernel.prices.rounding import half_up
from configurator.kernel.shapes import Message
from configurator.kernel.telling import working
from configurator.kernel.tongue import wording


def bill_of(offers: list[Offer], terms: PriceTerms) -> Bill:
    """Return the bill of offers that all have an amount.

    Discount is on coverings and extras; tax on what of the bill the showroom names, after the discount.
    """
    goods = goods_lines(offers, terms)
    lines = goods.copy()
    lines.extend(work_lines(pieces_of(offers), terms))
    if terms["tax"] > 0:
        lines.append(tax_line(goods, lines, terms))
    before = lines_sum(lines)
    if terms["at"] == "total":
        lines.extend(rounding_lines(before, terms["to"]))
    total = lines_sum(lines)
    return {"lines": lines, "total": total, "deposit": deposit_line(total, terms)}


def pieces_of(offers: list[Offer]) -> list[Price]:
    """Return the pieces of all offers."""
    prices: list[Price] = []
    for offer in offers:
        prices.extend(offer["prices"])
    return prices


def goods_lines(offers: list[Offer], terms: PriceTerms) -> list[PriceLine]:
    """Return the sum of the coverings, what is sold beside them, and the discount."""
    lines = [coverings_line(offers)]
    for extra in terms["extras"]:
        pieces = pieces_served(extra, pieces_of(offers))
        if pieces > 0:
            lines.append(extra_line(extra, pieces, line_step(terms)))
    if terms["discount"] > 0:
        lines.append(discount_line(lines_sum(lines), terms))
    return lines


def work_lines(prices: list[Price], terms: PriceTerms) -> list[PriceLine]:
    """Return fitting and travel, where the showroom charges them."""
    lines: list[PriceLine] = []
    if len(prices) > 0 and max(terms["fitting"], terms["fitting_least"]) > 0:
        lines.append(fitting_line(float(len(prices)), terms))
    if terms["travel"] > 0:
        how = working(wording("for the whole quote"), "{travel}", {"travel": [terms["travel"], "money"]})
        lines.append(priced("travel", plain("Travel"), [terms["travel"], 1.0], line_step(terms), how))
    return lines


def coverings_line(offers: list[Offer]) -> PriceLine:
    """Return the sum of all coverings."""
    inputs: dict[str, list[float | str]] = {}
    parts: list[str] = []
    amount = 0.0
    for offer in offers:
        key = "covering" + str(len(parts) + 1)
        inputs[key] = [offer["amount"], "money"]
        parts.append("{" + key + "}")
        amount = amount + offer["amount"]
    how = working(wording("the sum of all coverings"), " + ".join(parts), inputs)
    return priced("coverings", plain("Coverings"), [amount, 1.0], 1.0, how)


def pieces_served(extra: Extra, prices: list[Price]) -> float:
    """Return how many pieces have a pick that an extra goes with."""
    pieces = 0.0
    for price in prices:
        if goes_with(extra, price["choices"]):
            pieces = pieces + 1
    return pieces


def goes_with(extra: Extra, choices: dict[str, str]) -> bool:
    """Return whether an extra goes with picks."""
    for choice, options in extra["picks"].items():
        if choice in choices and choices[choice] in options:
            return True
    return False


def extra_line(extra: Extra, pieces: float, to: float) -> PriceLine:
    """Return one extra for every so many pieces."""
    number = math.ceil(pieces / extra["serves"])
    inputs: dict[str, list[float | str]] = {
        "each": [extra["each"], "money"],
        "pieces": [pieces, "count"],
        "serves": [extra["serves"], "count"],
    }
    rule = wording("one for every {serves} pieces that it goes with")
    how = working(rule, "{each} x ceil({pieces} / {serves})", inputs)
    name: Message = message("{extra}", {"extra": [extra["name"], "name"]})
    return priced(extra["id"], name, [extra["each"] * number, 1.0], to, how)


def discount_line(goods: float, terms: PriceTerms) -> PriceLine:
    """Return what is taken off coverings and extras, below nothing."""
    inputs: dict[str, list[float | str]] = {"rate": [terms["discount"], "rate"], "goods": [goods, "money"]}
    how = working(wording("off coverings and what goes with them"), "-{rate} x {goods}", inputs)
    line = priced("discount", plain("Discount"), [terms["discount"] * goods, WHOLE_RATE], line_step(terms), how)
    line["amount"] = -line["amount"]
    return line


def fitting_line(pieces: float, terms: PriceTerms) -> PriceLine:
    """Return the fitting of all pieces, at least what the showroom charges for coming."""
    each = terms["fitting"] * pieces
    least = terms["fitting_least"]
    how = working(wording("the least that fitting costs"), "{least}", {"least": [least, "money"]})
    if each >= least:
        inputs: dict[str, list[float | str]] = {"each": [terms["fitting"], "money"], "pieces": [pieces, "count"]}
        how = working(wording("for each piece"), "{each} x {pieces}", inputs)
    return priced("fitting", plain("Fitting"), [max(each, least), 1.0], line_step(terms), how)


def tax_line(goods: list[PriceLine], lines: list[PriceLine], terms: PriceTerms) -> PriceLine:
    """Return the tax on what of a bill's ``lines`` is taxed, the ``goods`` among them.

    To the minor unit whatever else is rounded to: common practice, no source.
    """
    base = lines_sum(goods) if "coverings" in terms["taxed"] else 0.0
    for line in lines:
        if line["id"] in ["fitting", "travel"] and line["id"] in terms["taxed"]:
            base = base + line["amount"]
    inputs: dict[str, list[float | str]] = {"rate": [terms["tax"], "rate"], "taxed": [base, "money"]}
    how = working(wording("on what of it is taxed"), "{rate} x {taxed}", inputs)
    name: Message = message("{tax}", {"tax": [terms["tax_name"], "name"]})
    return priced("tax", name, [terms["tax"] * base, WHOLE_RATE], 1.0, how)


def rounding_lines(before: float, to: float) -> list[PriceLine]:
    """Return what brings a total to whole steps of ``to`` minor units; nothing where it is one."""
    amount = half_up(before, to) * to - before
    if amount == 0:
        return []
    inputs: dict[str, list[float | str]] = {
        "before": [before, "money"],
        "rounded": [before + amount, "money"],
        "to": [to, "money"],
    }
    how = working(wording("the total to the nearest {to}, halves up"), "{rounded} - {before}", inputs)
    return [{"id": "rounding", "name": plain("Rounding"), "amount": amount, "rounded": False, "working": how}]


def deposit_line(total: float, terms: PriceTerms) -> PriceLine:
    """Return what is to be paid ahead."""
    inputs: dict[str, list[float | str]] = {"rate": [terms["deposit"], "rate"], "total": [total, "money"]}
    how = working(wording("a share of the total"), "{rate} x {total}", inputs)
    return priced("deposit", plain("Deposit"), [terms["deposit"] * total, WHOLE_RATE], 1.0, how)
