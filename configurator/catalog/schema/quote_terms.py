"""The terms of a showroom's quotes: ``quote`` in ``showroom.yaml``.

``shown`` is how visitors see prices: their ``level``, the lowest price ``from`` the books on top of it, besides those
the ``full`` price on each door, or ``no``.
``discount`` is on coverings and ``extras``; tax is on what ``tax.on`` names.
"""

from decimal import Decimal
from typing import Annotated

from configurator.catalog.schema.base import Ident, Name, OneOf, Section, Whole
from configurator.catalog.schema.money_fields import Amount, Currency, Rate
from configurator.kernel.tongue import wording

SHOWN = ("level", "from", "full", "no")
TAXED = ("coverings", "fitting", "travel")
Price = Annotated[Decimal, Amount()]
Share = Annotated[int, Rate()]
Weeks = Annotated[int, Whole(0, 104, wording("a number of weeks"))]


class RoundingFile(Section):
    """To which step amounts are rounded, halves up, and where: at each ``line`` or in the ``total`` alone."""

    to: Price
    at: Annotated[str, OneOf(("line", "total"))] = "line"


class ExtraFile(Section):
    """What goes with coverings that have one of the ``picks``: one for every ``serves`` of them."""

    name: Name
    price: Price
    serves: Annotated[int, Whole(1, 1000, wording("a number of coverings"))] = 1
    picks: dict[str, list[Ident]]


class FittingFile(Section):
    """What fitting costs for each piece, and at least in all."""

    each: Price = Decimal(0)
    least: Price = Decimal(0)


class TaxFile(Section):
    """A tax by its name, added to what it is ``on``."""

    name: Name
    rate: Share
    on: list[Annotated[str, OneOf(TAXED)]]


class LeadFile(Section):
    """The least and the most weeks until the coverings hang."""

    least: Weeks
    most: Weeks


class QuoteTerms(Section):
    """The whole section."""

    currency: Annotated[str, Currency()]
    shown: Annotated[str, OneOf(SHOWN)] = "level"
    rounding: RoundingFile
    discount: Share = 0
    extras: dict[str, ExtraFile] = {}
    fitting: FittingFile = FittingFile()
    travel: Price = Decimal(0)
    tax: TaxFile | None = None
    deposit: Share = 0
    valid_days: Annotated[int, Whole(1, 366, wording("a number of days"))]
    lead_weeks: LeadFile
