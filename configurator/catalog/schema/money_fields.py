"""What price books and the terms of a quote hold: decimal amounts, rates and areas, read from the text as it stands."""

import re
from dataclasses import dataclass
from decimal import Decimal

from configurator.catalog.clauses import Slip
from configurator.catalog.schema.base import Field
from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Message

# Major units: with three decimals it is a billion minor ones; see ``kernel/prices/price_shapes.py``.
MOST_AMOUNT = 1_000_000
NEGATIVE = plain("it is negative")
DECIMAL = re.compile(r"(?:[-−])?\d{1,12}(?:\.\d{1,6})?")


def decimal_of(text: str) -> Decimal | None:
    """Return a plain decimal number; None where the text is none."""
    return Decimal(text.replace("−", "-")) if DECIMAL.fullmatch(text) else None


@dataclass(frozen=True)
class Amount(Field):
    """An amount of money in major units, as a decimal number without the currency."""

    @property
    def expected(self) -> Message:
        return plain("an amount such as 140 or 140.50 is expected, without a currency")

    def read(self, text: str) -> Decimal:
        amount = decimal_of(text)
        if amount is None:
            raise Slip(self.expected)
        if amount < 0:
            raise Slip(NEGATIVE, self.expected)
        if amount > MOST_AMOUNT:
            raise Slip(message("an amount of at most {most} is expected", {"most": [MOST_AMOUNT, "count"]}))
        return amount


@dataclass(frozen=True)
class Rate(Field):
    """A share in per cent with up to two decimals, read as hundredths of a per cent."""

    @property
    def expected(self) -> Message:
        return plain("a share between 0 % and 100 % with at most two decimals, such as 12.5 %, is expected")

    def read(self, text: str) -> int:
        rate = decimal_of(text.removesuffix("%").rstrip()) if text.endswith("%") else None
        if rate is None:
            raise Slip(self.expected)
        hundredths = rate * 100
        if not 0 <= rate <= 100 or hundredths != int(hundredths):
            raise Slip(self.expected)
        return int(hundredths)


@dataclass(frozen=True)
class Hundredths(Field):
    """An area in the book's unit with up to two decimals, read as hundredths of it."""

    low: int

    @property
    def expected(self) -> Message:
        return plain("an area with at most two decimals, such as 10 or 0.25, is expected, without its unit")

    def read(self, text: str) -> int:
        area = decimal_of(text)
        if area is None or area * 100 != int(area * 100) or not self.low <= area * 100 <= 1_000_000:
            raise Slip(self.expected)
        return int(area * 100)


@dataclass(frozen=True)
class Currency(Field):
    """A currency's code (ISO 4217)."""

    @property
    def expected(self) -> Message:
        return plain("a currency's code such as USD or EUR is expected")

    def read(self, text: str) -> str:
        # What is known of currencies is slow to load, and content without prices names none.
        from configurator.tongues.currency import is_currency

        if not is_currency(text):
            raise Slip(self.expected)
        return text
