"""The shapes of prices.

Money is whole minor units of the currency (cents, where it has them), never a fraction: an amount is at most
``MOST_MONEY``, a share at most ``WHOLE_RATE`` hundredths of a per cent, so that twice their product, the largest number
that is worked with, stays below 2 to the power of 53, up to which Python and a browser hold every whole number.
"""

from typing import TypedDict

from configurator.kernel.shapes import Message, Working

# The most that a price or all of a quote may come to, in minor units.
MOST_MONEY = 400000000000.0
# A whole, in hundredths of a per cent.
WHOLE_RATE = 10000.0
# Of each unit of area.
HUNDREDTHS = 100.0


class Money(TypedDict):
    """How amounts are written: the currency (ISO 4217), how many decimals its minor unit takes, and a language's signs.

    ``pattern`` has the number in place of ``{amount}``; ``group`` parts thousands, ``decimal`` is the decimal sign.
    ``percent`` writes a share, as in :class:`configurator.kernel.tongue.Words`.
    """

    currency: str
    digits: float
    pattern: str
    group: str
    decimal: str
    percent: str


class Charge(TypedDict):
    """One way to come to an amount; ``how`` says which.

    ========= =======================================================================================================
    ``grid``  ``prices[row][column]`` of the next of ``heights`` and of ``widths`` (mm, rising) that is not less
    ``area``  ``amount`` for each ``unit`` (``sq ft`` or ``m2``), of an area that is rounded up to whole ``step`` and is
              at least ``least`` (both in hundredths of the unit)
    ``each``  ``amount``
    ``share`` ``amount`` hundredths of a per cent of the price by size
    ========= =======================================================================================================
    """

    how: str
    amount: float
    widths: list[float]
    heights: list[float]
    prices: list[list[float]]
    unit: str
    step: float
    least: float


class PriceBook(TypedDict):
    """What a family costs: by its ``size``, and what an option adds, by choice and option."""

    size: Charge
    additions: dict[str, dict[str, Charge]]


class Extra(TypedDict):
    """What is sold beside coverings, one for every ``serves`` of them that have one of the ``picks`` (by choice)."""

    id: str
    name: str
    each: float
    serves: float
    picks: dict[str, list[str]]


class PriceTerms(TypedDict):
    """What holds for every quote of a showroom.

    Amounts are rounded to whole ``to`` minor units, halves up, where ``at`` says: each ``line``, or the ``total``
    alone. ``discount``, ``tax`` and ``deposit`` are hundredths of a per cent. ``fitting`` is for each piece, at least
    ``fitting_least`` in all; ``travel`` for the quote. ``taxed`` names what tax is on: ``coverings``, ``fitting``,
    ``travel``. ``valid_days`` is how long the quote holds, ``lead_weeks`` the least and the most weeks until it hangs.
    """

    money: Money
    to: float
    at: str
    discount: float
    extras: list[Extra]
    fitting: float
    fitting_least: float
    travel: float
    tax: float
    tax_name: str
    taxed: list[str]
    deposit: float
    valid_days: float
    lead_weeks: list[float]


class PriceStock(TypedDict):
    """What prices are worked out from: the ``books`` by family, and the ``terms``.

    ``shown`` is how visitors of the site see prices: ``level``, ``from``, ``full`` or ``no``.
    """

    shown: str
    books: dict[str, PriceBook]
    terms: PriceTerms


class PriceLine(TypedDict):
    """One amount with its name and its working, whose terms may be ``money`` (minor units) and ``rate`` (hundredths of
    a per cent); whether the amount is rounded from what the working comes to."""

    id: str
    name: Message
    amount: float
    rounded: bool
    working: Working


class Price(TypedDict):
    """What one piece costs: its lines and their sum, or the plain reason why there is no price.

    ``width`` and ``height`` are those it is ordered in, mm; ``leaf`` is the id of the leaf that it is for, as in
    :class:`configurator.kernel.visit.visit_shapes.HungLeaf`.
    """

    family: str
    choices: dict[str, str]
    leaf: str
    width: float
    height: float
    refusal: Message
    lines: list[PriceLine]
    amount: float


class Bill(TypedDict):
    """What offers come to together: lines from their sum to the tax, the total and what is to be paid ahead."""

    lines: list[PriceLine]
    total: float
    deposit: PriceLine


class Offer(TypedDict):
    """A covering that is offered for an opening: its name, the prices of its pieces, its amount.

    The amount is what was ``named`` for it (minor units), or the sum of its pieces where ``named`` is negative;
    ``refusal`` says why there is none, being the first piece's. ``note`` is what is said of it, ``picks`` are the names
    of each choice and of the option that was picked.
    """

    name: str
    note: str
    picks: list[list[str]]
    prices: list[Price]
    named: float
    amount: float
    refusal: Message


class Quoted(TypedDict):
    """An opening with what is offered for it; ``taken`` is the place of the offer that was agreed or is liked, -1 for
    none."""

    name: str
    offers: list[Offer]
    taken: int


class Quote(TypedDict):
    """What a showroom offers whom on which day, and on which terms. ``on`` is told as it stands; ``link`` is the
    address that it came of, or empty."""

    showroom: str
    client: str
    link: str
    on: str
    openings: list[Quoted]
    terms: PriceTerms


class Rank(TypedDict):
    """One of several ways to take a quote: ``good``, ``better`` or ``best``; which offer of each opening, its bill."""

    id: str
    picks: list[int]
    bill: Bill
