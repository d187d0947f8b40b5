"""A price book in ``prices/``: what families cost by size, and what picks add.

``size`` is a ``grid`` (the next width and height that are not less), an ``area`` with the least that is charged, or one
price for ``each``. What an option adds is any of these, or a ``share`` of the price by size.
"""

from decimal import Decimal
from typing import Annotated

from configurator.catalog.schema.base import Ident, Number, OneOf, Section, SourceMark
from configurator.catalog.schema.money_fields import Amount, Hundredths, Rate
from configurator.kernel.prices.charges import PRICED_AREAS
from configurator.kernel.tongue import wording

Width = Annotated[float, Number("length", 100, 12000, wording("a width"))]
Height = Annotated[float, Number("length", 100, 6000, wording("a height"))]
AreaUnit = Annotated[str, OneOf(tuple(PRICED_AREAS))]


class GridFile(Section):
    """``prices`` has a row for each of ``heights``, and in it a price for each of ``widths``."""

    widths: list[Width]
    heights: list[Height]
    prices: list[list[Annotated[Decimal, Amount()]]]


class AreaFile(Section):
    """``price`` for each unit of area, which is rounded up in whole ``step``; ``least`` is charged at least."""

    price: Annotated[Decimal, Amount()]
    per: AreaUnit
    step: Annotated[int, Hundredths(1)] = 1
    least: Annotated[int, Hundredths(0)] = 0


class ChargeFile(Section):
    """One of these, and no more."""

    grid: GridFile | None = None
    area: AreaFile | None = None
    each: Annotated[Decimal | None, Amount()] = None
    share: Annotated[int | None, Rate()] = None


class PriceBookFile(Section):
    """The whole file."""

    source: SourceMark
    families: list[Ident]
    size: ChargeFile
    additions: dict[str, dict[str, ChargeFile]] = {}
