"""What price books and the terms of a quote must be beyond their schema: whole, in order, of what there is."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from decimal import Decimal

from pydantic import BaseModel

from configurator.catalog.clauses import Term
from configurator.catalog.located import ContentFile, KeyPath, dotted, what_is
from configurator.catalog.schema.price_book import ChargeFile, GridFile, PriceBookFile
from configurator.catalog.schema.quote_terms import QuoteTerms
from configurator.catalog.suggest import suggestion
from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Family, Message
from configurator.kernel.tongue import wording

WAYS = ("grid", "area", "each", "share")
ONE_WAY = wording("exactly one of {ways} is expected")
ONE_FOR_EACH = {
    "widths": wording("one for each of the {count} widths is expected"),
    "heights": wording("one for each of the {count} heights is expected"),
}


def cross_check_book(
    file: ContentFile, book: PriceBookFile, families: Mapping[str, Family], known: Sequence[str]
) -> None:
    """Note what does not fit together in a price book, and what it names that is not there.

    ``known`` are the ids of all families; those whose file is unsound are not among ``families``.
    """
    if not book.families:
        empty = message("{path} is empty", {"path": ["families", "name"]})
        file.at_value(("families",), empty, plain("at least one family is expected"))
    check_charge(file, book.size, ("size",), WAYS[:3])
    for choice, options in book.additions.items():
        for option, charge in options.items():
            check_charge(file, charge, ("additions", choice, option), WAYS)
    for index, ident in enumerate(book.families):
        if ident not in known:
            unknown = message("there is no family '{name}'", {"name": [ident, "name"]})
            file.at_value(("families", index), unknown, suggestion(ident, known))
    # What a family whose file is unsound has is not known.
    if book.families and all(ident in families for ident in book.families):
        check_additions(file, book, options_of([families[ident] for ident in book.families]))


def check_additions(file: ContentFile, book: PriceBookFile, known: Mapping[str, set[str]]) -> None:
    """Note additions for picks that no family of the book has."""
    for choice, options in book.additions.items():
        if choice not in known:
            no_choice = message("no family of this book has a choice '{name}'", {"name": [choice, "name"]})
            file.at_key(("additions", choice), no_choice, suggestion(choice, sorted(known)))
            continue
        for option in options:
            if option not in known[choice]:
                named: dict[str, Term] = {"choice": [choice, "name"], "name": [option, "name"]}
                no_option = message("no family of this book has an option '{name}' of its {choice}", named)
                file.at_key(("additions", choice, option), no_option, suggestion(option, sorted(known[choice])))


def options_of(families: Iterable[Family]) -> dict[str, set[str]]:
    """Return the options that any of the families has, by choice."""
    found: dict[str, set[str]] = {}
    for family in families:
        for choice in family["choices"]:
            found.setdefault(choice["id"], set()).update(option["id"] for option in choice["options"])
    return found


def check_charge(file: ContentFile, charge: ChargeFile, path: KeyPath, ways: Sequence[str]) -> None:
    """Note a charge that is none of the ways, or several, and a grid that is unsound."""
    given = [way for way in WAYS if getattr(charge, way) is not None]
    if len(given) != 1 or given[0] not in ways:
        has = message("{path} has {ways}", {"path": [dotted(path), "name"], "ways": [", ".join(given), "name"]})
        none = message("{path} says no price", {"path": [dotted(path), "name"]})
        expected = message(ONE_WAY, {"ways": [", ".join(ways), "name"]})
        file.at_value(path, has if given else none, expected)
    if charge.grid is not None:
        check_grid(file, charge.grid, (*path, "grid"))


def check_grid(file: ContentFile, grid: GridFile, path: KeyPath) -> None:
    """Note steps that are out of order, holes, and sizes that get cheaper as they grow."""
    check_steps(file, grid.widths, (*path, "widths"))
    check_steps(file, grid.heights, (*path, "heights"))
    check_count(file, len(grid.prices), len(grid.heights), (*path, "prices"), "heights")
    for row, prices in enumerate(grid.prices):
        check_count(file, len(prices), len(grid.widths), (*path, "prices", row), "widths")
    check_rising(file, grid.prices, (*path, "prices"))


def check_steps(file: ContentFile, steps: Sequence[float], path: KeyPath) -> None:
    """Note a list of sizes that is empty, and sizes that do not rise."""
    if not steps:
        empty = message("{path} is empty", {"path": [dotted(path), "name"]})
        file.at_value(path, empty, plain("at least one size is expected"))
    for index in range(1, len(steps)):
        here = (*path, index)
        if steps[index] == steps[index - 1]:
            overlap = plain("it overlaps the step before it, which is the same")
            file.at_value(here, what_is(here, file.written(here)), overlap, plain("keep one"))
        elif steps[index] < steps[index - 1]:
            before: dict[str, Term] = {"before": [file.written((*path, index - 1)), "name"]}
            order = message("it comes after {before}, which is larger", before)
            file.at_value(here, what_is(here, file.written(here)), order, plain("write the steps from small to large"))


def check_count(file: ContentFile, found: int, wanted: int, path: KeyPath, steps: str) -> None:
    """Note a list of prices that has more or fewer than there are steps."""
    if found != wanted:
        terms: dict[str, Term] = {"path": [dotted(path), "name"], "found": [found, "count"]}
        has = message("{path} has {found}", terms)
        file.at_value(path, has, message(ONE_FOR_EACH[steps], {"count": [wanted, "count"]}))


def check_rising(file: ContentFile, prices: Sequence[Sequence[Decimal]], path: KeyPath) -> None:
    """Note prices that are less than that of a smaller size."""
    for row, column, smaller in compared(prices):
        here = (*path, row, column)
        less: Message = message(
            "it is less than {other}, the price of a smaller size", {"other": [str(smaller), "name"]}
        )
        file.at_value(here, what_is(here, file.written(here)), less, plain("a larger size costs at least as much"))


def compared(prices: Sequence[Sequence[Decimal]]) -> Iterator[tuple[int, int, Decimal]]:
    """Yield row and column of each price that is less than the one before or above it, with that one."""
    for row, cells in enumerate(prices):
        for column, price in enumerate(cells):
            beside = [cells[column - 1]] if column else []
            above = [prices[row - 1][column]] if row and column < len(prices[row - 1]) else []
            smaller = max([*beside, *above], default=price)
            if price < smaller:
                yield row, column, smaller


def check_minor(file: ContentFile, section: object, path: KeyPath, currency: str, digits: int) -> None:
    """Note each amount in a section, however deep, that is finer than the currency's minor unit."""
    if isinstance(section, Decimal):
        exponent = section.normalize().as_tuple().exponent
        if isinstance(exponent, int) and -exponent > digits:
            terms: dict[str, Term] = {"currency": [currency, "name"], "digits": [digits, "count"]}
            finest = message("{currency} has at most {digits} decimals", terms)
            file.at_value(path, what_is(path, file.written(path)), finest)
        return
    for step, part in parts_of(section):
        check_minor(file, part, (*path, step), currency, digits)


def parts_of(section: object) -> Iterable[tuple[str | int, object]]:
    """Return what stands within a section, a mapping or a list, with its key or place."""
    if isinstance(section, BaseModel):
        return list(section)
    if isinstance(section, dict):
        return list(section.items())
    if isinstance(section, list):
        return list(enumerate(section))
    return []


def cross_check_terms(file: ContentFile, terms: QuoteTerms) -> None:
    """Note what does not fit together in the terms of a quote; they stand under ``quote``."""
    path: KeyPath = ("quote",)
    if terms.rounding.to == 0:
        here = (*path, "rounding", "to")
        file.at_value(here, what_is(here, file.written(here)), plain("more than nothing is expected, such as 0.01"))
    if terms.lead_weeks.most < terms.lead_weeks.least:
        here = (*path, "lead_weeks", "most")
        file.at_value(here, what_is(here, file.written(here)), plain("it is less than the least"))


def check_extras(file: ContentFile, terms: QuoteTerms, families: Iterable[Family]) -> None:
    """Note extras that go with what no family has."""
    known = options_of(families)
    for ident, extra in terms.extras.items():
        check_picks(file, extra.picks, ("quote", "extras", ident, "picks"), known)


def check_picks(file: ContentFile, picks: dict[str, list[str]], path: KeyPath, known: Mapping[str, set[str]]) -> None:
    """Note picks that no family has."""
    for choice, options in picks.items():
        if choice not in known:
            no_choice = message("no family has a choice '{name}'", {"name": [choice, "name"]})
            file.at_key((*path, choice), no_choice, suggestion(choice, sorted(known)))
            continue
        for index, option in enumerate(options):
            if option not in known[choice]:
                named: dict[str, Term] = {"choice": [choice, "name"], "name": [option, "name"]}
                no_option = message("no family has an option '{name}' of its {choice}", named)
                file.at_value((*path, choice, index), no_option, suggestion(option, sorted(known[choice])))
