"""A showroom's prices: the price books of ``prices/`` and the terms of its quotes, in the kernel's shapes."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from configurator.catalog.cross_prices import check_extras, check_minor, cross_check_book, cross_check_terms
from configurator.catalog.files import shown, yaml_files
from configurator.catalog.kernel_prices import kernel_book, kernel_terms
from configurator.catalog.located import ContentFile
from configurator.catalog.problem import Problem
from configurator.catalog.schema.price_book import PriceBookFile
from configurator.catalog.schema.quote_terms import QuoteTerms
from configurator.catalog.sources import Source
from configurator.kernel.message import message, plain
from configurator.kernel.prices.price_shapes import PriceBook, PriceStock, PriceTerms
from configurator.kernel.shapes import Family
from configurator.kernel.tongue import Words

PRICES = "prices"
SCATTERED = message("{file} has no quote, which says the currency and the terms", {"file": ["showroom.yaml", "name"]})


@dataclass(frozen=True)
class Pricing:
    """Everything that a quote is made of; ``books`` by family, and where they come from. ``shown`` is how visitors see
    prices."""

    terms: PriceTerms
    books: dict[str, PriceBook]
    sources: dict[str, Source]
    shown: str

    def stock(self) -> PriceStock:
        """Return what the kernel works prices out from."""
        return {"shown": self.shown, "books": self.books, "terms": self.terms}


ReadBook = tuple[ContentFile, PriceBookFile | None]


def book_paths(folder: Path, problems: list[Problem]) -> dict[str, Path]:
    """Return the price books of a content folder by name: none where it has no such folder."""
    return yaml_files(folder, PRICES, problems) if (folder / PRICES).is_dir() else {}


def note_unpriced(folder: Path, problems: list[Problem]) -> None:
    """Note price books that nothing says the currency of."""
    problems.append(Problem(shown(folder / PRICES), 0, 0, (SCATTERED, plain("write it, or take the folder out"))))


def check_books(books: Iterable[ReadBook], families: Mapping[str, Family], known: Sequence[str]) -> None:
    """Note what is wrong with price books by themselves and between them; ``known`` are the ids of all families."""
    taken: dict[str, str] = {}
    for file, book in books:
        if book is None:
            continue
        cross_check_book(file, book, families, known)
        for index, ident in enumerate(book.families):
            if ident in taken:
                twice = message(
                    "{family} has its prices in {file} already",
                    {"family": [ident, "name"], "file": [taken[ident], "name"]},
                )
                file.at_value(("families", index), twice, plain("keep one"))
            taken.setdefault(ident, file.name)


def check_terms(file: ContentFile, terms: QuoteTerms, families: Mapping[str, Family], known: Sequence[str]) -> None:
    """Note what is wrong with the terms of a quote; ``known`` are the ids of all families."""
    cross_check_terms(file, terms)
    if len(families) == len(known):
        check_extras(file, terms, families.values())


def check_decimals(file: ContentFile, terms: QuoteTerms, books: Iterable[ReadBook]) -> None:
    """Note amounts that are finer than the currency's minor unit; ``file`` is the showroom's."""
    # What is known of currencies is slow to load, and content without prices names none.
    from configurator.tongues.currency import minor_digits

    digits = minor_digits(terms.currency)
    check_minor(file, terms, ("quote",), terms.currency, digits)
    for book_file, book in books:
        check_minor(book_file, book, (), terms.currency, digits)


def pricing(terms: QuoteTerms, books: Iterable[ReadBook], words: Words) -> Pricing:
    """Return the prices of sound books in the kernel's shapes, amounts written as a language has them."""
    from configurator.tongues.currency import money_in

    money = money_in(terms.currency, words)
    priced = {ident: kernel_book(book, money) for _, book in books if book for ident in book.families}
    sources = {ident: book.source for _, book in books if book for ident in book.families}
    return Pricing(kernel_terms(terms, money), priced, sources, terms.shown)
