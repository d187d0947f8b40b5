"""What one charge of a price book comes to for a size: an amount with its working, or the reason why there is none."""

import math

from configurator.kernel.message import message, silence
from configurator.kernel.numbers import STEP_SLACK
from configurator.kernel.prices.price_shapes import HUNDREDTHS, WHOLE_RATE, Charge, PriceLine, PriceTerms
from configurator.kernel.prices.rounding import half_up, rounded_to
from configurator.kernel.shapes import Message, Working
from configurator.kernel.telling import working
from configurator.kernel.tongue import wording

# Sizes that differ by less than this are one size on any tape, mm.
SAME_STEP = 0.01
# The unit of area in square millimeters.
PRICED_AREAS: dict[str, float] = {"sq ft": 304.8 * 304.8, "m2": 1000000.0}

GRID_RULE = wording(
    "the price book's price for the next width and height that are not less: {wide} by {high} for {width} by {height}"
)
EACH_RULE = wording("the price book's price for one")
SHARE_RULE = wording("a share of the price by size")
# By the unit of area: what is charged for each of it, and as much where the least is charged.
AREA_RULES: dict[str, list[str]] = {
    "sq ft": [
        wording("the price for each square foot, the area rounded up in steps of {step}"),
        wording("the price for each square foot, for the least area that is charged"),
    ],
    "m2": [
        wording("the price for each square meter, the area rounded up in steps of {step}"),
        wording("the price for each square meter, for the least area that is charged"),
    ],
}


def line_step(terms: PriceTerms) -> float:
    """Return the step, in minor units, in which a line is rounded."""
    return terms["to"] if terms["at"] == "line" else 1.0


def next_step(steps: list[float], size: float) -> int:
    """Return which of rising steps is the first that is not less than a size; as many as there are where none is."""
    for place in range(len(steps)):
        if steps[place] >= size - SAME_STEP:
            return place
    return len(steps)


def charge_refusal(charge: Charge, size: list[float]) -> Message:
    """Return why a charge gives no price for a size ``[width, height]``, mm; silent where it does."""
    if charge["how"] != "grid":
        return silence()
    wide = charge["widths"][len(charge["widths"]) - 1]
    high = charge["heights"][len(charge["heights"]) - 1]
    if size[0] <= wide + SAME_STEP and size[1] <= high + SAME_STEP:
        return silence()
    return message(
        "The price book ends at {wide} by {high}, and this is {width} by {height}: its price is asked for.",
        {"wide": [wide, "mm"], "high": [high, "mm"], "width": [size[0], "mm"], "height": [size[1], "mm"]},
    )


def lowest_amount(charge: Charge) -> float:
    """Return the least that a charge by grid, by area or for each comes to, in minor units."""
    if charge["how"] == "grid":
        return charge["prices"][0][0]
    if charge["how"] == "area":
        return half_up(charge["amount"] * max(charge["least"], charge["step"]), HUNDREDTHS)
    return charge["amount"]


def area_steps(charge: Charge, size: list[float]) -> float:
    """Return the area of a size in hundredths of the charge's unit, up to its step, before what is charged at least."""
    area = size[0] * size[1] / PRICED_AREAS[charge["unit"]] * HUNDREDTHS
    return math.ceil(area / charge["step"] - STEP_SLACK) * charge["step"]


def priced(key: str, name: Message, worth: list[float], to: float, how: Working) -> PriceLine:
    """Return a line of ``worth`` ``[above, below]``, a fraction of whole numbers that is not negative, rounded."""
    amount = rounded_to(worth[0], worth[1], to)
    rounded = amount * worth[1] != worth[0]
    return {"id": key, "name": name, "amount": amount, "rounded": rounded, "working": how}


def charge_line(charge: Charge, key: str, name: Message, size: list[float], terms: PriceTerms) -> PriceLine:
    """Return what a charge by grid, by area or for each comes to for a size ``[width, height]`` that it has."""
    to = line_step(terms)
    if charge["how"] == "grid":
        return grid_line(charge, key, name, size, to)
    if charge["how"] == "area":
        return area_line(charge, key, name, size, to)
    how = working(EACH_RULE, "{each}", {"each": [charge["amount"], "money"]})
    return priced(key, name, [charge["amount"], 1.0], to, how)


def grid_line(charge: Charge, key: str, name: Message, size: list[float], to: float) -> PriceLine:
    """Return the price of the next width and height."""
    column = next_step(charge["widths"], size[0])
    row = next_step(charge["heights"], size[1])
    amount = charge["prices"][row][column]
    inputs: dict[str, list[float | str]] = {
        "price": [amount, "money"],
        "wide": [charge["widths"][column], "mm"],
        "high": [charge["heights"][row], "mm"],
        "width": [size[0], "mm"],
        "height": [size[1], "mm"],
    }
    return priced(key, name, [amount, 1.0], to, working(GRID_RULE, "{price}", inputs))


def area_line(charge: Charge, key: str, name: Message, size: list[float], to: float) -> PriceLine:
    """Return the price by area, of the least area where the piece is smaller."""
    area = area_steps(charge, size)
    rules = AREA_RULES[charge["unit"]]
    rule = rules[1] if area < charge["least"] else rules[0]
    area = max(area, charge["least"])
    inputs: dict[str, list[float | str]] = {
        "price": [charge["amount"], "money"],
        "area": [area / HUNDREDTHS, "count"],
        "step": [charge["step"] / HUNDREDTHS, "count"],
    }
    how = working(rule, "{price} x {area}", inputs)
    return priced(key, name, [charge["amount"] * area, HUNDREDTHS], to, how)


def share_line(rate: float, key: str, name: Message, whole_amount: float, to: float) -> PriceLine:
    """Return a share, in hundredths of a per cent, of an amount."""
    inputs: dict[str, list[float | str]] = {"rate": [rate, "rate"], "whole": [whole_amount, "money"]}
    how = working(SHARE_RULE, "{rate} x {whole}", inputs)
    return priced(key, name, [rate * whole_amount, WHOLE_RATE], to, how)
