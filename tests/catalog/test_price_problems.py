"""What a showroom is told when its prices are wrong: the place, the fault, and what to write."""

from pathlib import Path

import pytest

from configurator.catalog import load
from tests.catalog.test_problems import Fault, english_in, problems_of, spoil, told

BOOK = "prices/cells.yaml"
ROOM = "showroom.yaml"
PRICES = """\
source: invented
families: [cells]
size:
  grid:
    widths: [24 in, 36 in, 48 in]
    heights: [48 in, 72 in]
    prices:
      - [100, 120, 150.50]
      - [130, 160, 200]
additions:
  lift:
    motor: {each: 236}
  fabric:
    dusk: {share: 12.5 %}
"""
QUOTE = """\
quote:
  currency: USD
  rounding: {to: 0.01, at: line}
  discount: 5 %
  extras:
    remote: {name: Remote, price: 44, serves: 5, picks: {lift: [motor]}}
  tax: {name: Tax, rate: 6.25 %, on: [coverings]}
  valid_days: 30
  lead_weeks: {least: 4, most: 6}
theme:
"""
DECIMAL = "an amount such as 140 or 140.50 is expected, without a currency"
SHARE = "a share between 0 % and 100 % with at most two decimals, such as 12.5 %, is expected"
FAULTS = {
    "a row with a hole": Fault(
        BOOK,
        "[130, 160, 200]",
        "[130, 160]",
        "9:9: size.grid.prices.2 has 2; one for each of the 3 widths is expected",
    ),
    "a row that is missing": Fault(
        BOOK,
        "      - [130, 160, 200]\n",
        "",
        "8:7: size.grid.prices has 1; one for each of the 2 heights is expected",
    ),
    "a price left out": Fault(
        BOOK,
        "[130, 160, 200]",
        "[130, ~, 200]",
        "9:15: size.grid.prices.2.2 is empty; write a value or take the line out",
    ),
    "a wider size that is cheaper": Fault(
        BOOK,
        "[130, 160, 200]",
        "[130, 160, 159.99]",
        "9:20: size.grid.prices.2.3 is 159.99; it is less than 160, the price of a smaller size; a larger size costs "
        "at least as much",
    ),
    "a higher size that is cheaper": Fault(
        BOOK,
        "[130, 160, 200]",
        "[99, 160, 200]",
        "9:10: size.grid.prices.2.1 is 99; it is less than 100, the price of a smaller size; a larger size costs at "
        "least as much",
    ),
    "a step that overlaps": Fault(
        BOOK,
        "[24 in, 36 in, 48 in]",
        "[24 in, 36 in, 3 ft]",
        "5:28: size.grid.widths.3 is 3 ft; it overlaps the step before it, which is the same; keep one",
    ),
    "a step out of order": Fault(
        BOOK,
        "[48 in, 72 in]",
        "[72 in, 48 in]",
        "6:22: size.grid.heights.2 is 48 in; it comes after 72 in, which is larger; write the steps from small to "
        "large",
    ),
    "no steps": Fault(
        BOOK,
        "    widths: [24 in, 36 in, 48 in]\n    heights: [48 in, 72 in]\n    prices:\n      - [100, 120, 150.50]\n"
        "      - [130, 160, 200]\n",
        "    widths: [24 in]\n    heights: []\n    prices: []\n",
        "6:14: size.grid.heights is empty; at least one size is expected",
    ),
    "an unknown family": Fault(
        BOOK,
        "families: [cells]",
        "families: [cell]",
        "2:12: there is no family 'cell'; did you mean 'cells'?",
    ),
    "no family": Fault(
        BOOK,
        "families: [cells]",
        "families: []",
        "2:11: families is empty; at least one family is expected",
    ),
    "a family twice": Fault(
        BOOK,
        "families: [cells]",
        "families: [cells, cells]",
        "2:19: cells has its prices in content/prices/cells.yaml already; keep one",
    ),
    "an unknown choice": Fault(
        BOOK,
        "  lift:",
        "  lifts:",
        "11:3: no family of this book has a choice 'lifts'; did you mean 'lift'?",
    ),
    "an unknown option": Fault(
        BOOK,
        "    motor:",
        "    moter:",
        "12:5: no family of this book has an option 'moter' of its lift; did you mean 'motor'?",
    ),
    "a price with its currency": Fault(
        BOOK,
        "each: 236",
        "each: $236",
        f"12:19: additions.lift.motor.each is '$236'; {DECIMAL}",
    ),
    "a price with a decimal comma": Fault(
        BOOK,
        "each: 236",
        "each: '236,50'",
        f"12:19: additions.lift.motor.each is 236,50; {DECIMAL}",
    ),
    "a negative price": Fault(
        BOOK,
        "each: 236",
        "each: -236",
        f"12:19: additions.lift.motor.each is -236; it is negative; {DECIMAL}",
    ),
    "a price beyond all measure": Fault(
        BOOK,
        "each: 236",
        "each: 1000001",
        "12:19: additions.lift.motor.each is 1000001; an amount of at most 1000000 is expected",
    ),
    "a price finer than a cent": Fault(
        BOOK,
        "150.50",
        "150.505",
        "8:20: size.grid.prices.1.3 is 150.505; USD has at most 2 decimals",
    ),
    "a row that is no list": Fault(
        BOOK,
        "[130, 160, 200]",
        "130",
        "9:9: size.grid.prices.2 is 130; a list in [ ] is expected",
    ),
    "two ways at once": Fault(
        BOOK,
        "{each: 236}",
        "{each: 236, share: 5 %}",
        "12:12: additions.lift.motor has each, share; exactly one of grid, area, each, share is expected",
    ),
    "no way at all": Fault(
        BOOK,
        "{each: 236}",
        "{}",
        "12:12: additions.lift.motor says no price; exactly one of grid, area, each, share is expected",
    ),
    "a share of nothing": Fault(
        BOOK,
        "  grid:\n    widths: [24 in, 36 in, 48 in]\n    heights: [48 in, 72 in]\n    prices:\n"
        "      - [100, 120, 150.50]\n      - [130, 160, 200]\n",
        "  share: 10 %\n",
        "4:3: size has share; exactly one of grid, area, each is expected",
    ),
    "an area in no step": Fault(
        BOOK,
        "{each: 236}",
        "{area: {price: 10, per: sq ft, step: 0}}",
        "12:49: additions.lift.motor.area.step is 0; an area with at most two decimals, such as 10 or 0.25, is "
        "expected, without its unit",
    ),
    "a share without its sign": Fault(
        BOOK,
        "12.5 %",
        "12.5",
        f"14:19: additions.fabric.dusk.share is 12.5; {SHARE}",
    ),
    "a discount over all of it": Fault(
        ROOM,
        "discount: 5 %",
        "discount: 101 %",
        f"21:13: quote.discount is 101 %; {SHARE}",
    ),
    "a negative discount": Fault(ROOM, "discount: 5 %", "discount: -5 %", f"21:13: quote.discount is -5 %; {SHARE}"),
    "a currency that is none": Fault(
        ROOM,
        "currency: USD",
        "currency: ZZD",
        "19:13: quote.currency is 'ZZD'; a currency's code such as USD or EUR is expected",
    ),
    "rounding to nothing": Fault(
        ROOM,
        "to: 0.01",
        "to: 0",
        "20:18: quote.rounding.to is 0; more than nothing is expected, such as 0.01",
    ),
    "an extra for a pick that nobody has": Fault(
        ROOM,
        "picks: {lift: [motor]}",
        "picks: {lift: [engine]}",
        "23:65: no family has an option 'engine' of its lift; known here: cordless, motor",
    ),
    "an extra for a choice that nobody has": Fault(
        ROOM,
        "picks: {lift: [motor]}",
        "picks: {lft: [motor]}",
        "23:58: no family has a choice 'lft'; did you mean 'lift'?",
    ),
    "a tax on what is not on the bill": Fault(
        ROOM,
        "on: [coverings]",
        "on: [covering]",
        "24:39: quote.tax.on.1 is 'covering'; coverings, fitting or travel is expected; did you mean 'coverings'?",
    ),
    "a lead time that ends before it begins": Fault(
        ROOM,
        "most: 6",
        "most: 3",
        "26:32: quote.lead_weeks.most is 3; it is less than the least",
    ),
    "prices that are shown as nobody knows": Fault(
        ROOM,
        "currency: USD",
        "currency: USD\n  shown: all",
        "20:10: quote.shown is 'all'; level, from, full or no is expected",
    ),
}


@pytest.fixture
def priced(content: Path) -> Path:
    """A sound content folder with a price book and the terms of quotes."""
    (content / "prices").mkdir()
    (content / BOOK).write_text(PRICES, encoding="utf-8")
    spoil(content, ROOM, "theme:\n", QUOTE)
    return content


@pytest.mark.parametrize("fault", FAULTS.values(), ids=FAULTS.keys())
def test_a_fault_of_prices_is_reported_once_at_its_place(priced: Path, fault: Fault) -> None:
    spoil(priced, fault.file, fault.sound, fault.put)
    assert told(priced) == [f"content/{fault.file}:{fault.report}"]


@pytest.mark.parametrize("fault", FAULTS.values(), ids=FAULTS.keys())
def test_a_fault_of_prices_is_told_in_spanish(priced: Path, fault: Fault) -> None:
    spoil(priced, fault.file, fault.sound, fault.put)
    assert [english_in(problem) for problem in problems_of(priced)] == [[]]


def test_prices_are_read_to_the_cent(priced: Path) -> None:
    # 0.07 x 100 is 7.000000000000001 where it floats.
    spoil(priced, BOOK, "each: 236", "each: 0.07")
    prices = load(priced).prices
    assert prices is not None
    book = prices.books["cells"]
    assert book["size"]["prices"] == [[10000, 12000, 15050], [13000, 16000, 20000]]
    assert (book["additions"]["lift"]["motor"]["amount"], book["additions"]["fabric"]["dusk"]["amount"]) == (7, 1250)
    assert (prices.terms["to"], prices.terms["discount"], prices.terms["tax"]) == (1, 500, 625)


def test_books_without_terms_are_told(priced: Path) -> None:
    spoil(priced, ROOM, QUOTE, "theme:\n")
    (only,) = told(priced)
    assert only.startswith(
        "content/prices: showroom.yaml has no quote, which says the currency and the terms; write it"
    )


def test_a_folder_that_is_nearly_that_of_the_prices_is_told(priced: Path) -> None:
    (priced / "prices").rename(priced / "price")
    assert told(priced) == ["content/price: the folder is not read; did you mean 'prices'?"]


def test_a_family_with_a_faulty_file_is_not_unknown_to_its_price_book(priced: Path) -> None:
    spoil(priced, "families/cells.yaml", "mechanism: accordion", "mechanism: acordion")
    assert len(told(priced)) == 1


def test_a_showroom_that_shows_no_prices_has_no_level_either(priced: Path) -> None:
    spoil(priced, "families/cells.yaml", "mechanism: accordion", "price_level: 2\nmechanism: accordion")
    assert load(priced).families["cells"]["price_level"] == 2
    spoil(priced, ROOM, "currency: USD", "currency: USD\n  shown: no")
    assert load(priced).families["cells"]["price_level"] == 0
