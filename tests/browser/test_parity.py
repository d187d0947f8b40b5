"""The kernel in Python and the kernel in a browser tell the same, to 1e-9."""

import json
import random
from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link.shapes import Stock
from configurator.catalog import Catalog
from tests.browser.parity import VIEWS, Condensed, asked, condensed, kernel_page, sent, told_apart, unequal, views_of
from tests.cases import seeded_case

SEED = 20
BATCH = 50
FRESH_SEED = random.SystemRandom().randrange(10**6)


@pytest.fixture(scope="module")
def kernel(browser: Browser, catalog: Catalog) -> Iterator[Page]:
    """A page with the translated kernel."""
    page = kernel_page(browser, catalog)
    yield page
    page.close()


def python_side(catalog: Catalog, stock: Stock, seed: int, numbers: range, thorough: bool) -> tuple[str, Condensed]:
    """Return a batch of cases as the browser is given them, and what Python tells of them."""
    batch = [seeded_case(catalog, seed, number) for number in numbers]
    drawn = [views_of(number, thorough) for number in numbers]
    told = condensed([asked(case, stock, views, thorough) for case, views in zip(batch, drawn, strict=True)])
    return json.dumps([sent(case, views, thorough) for case, views in zip(batch, drawn, strict=True)]), told


def compare(kernel: Page, catalog: Catalog, seed: int, count: int, thorough: bool) -> None:
    """Ask ``count`` cases of a seed on both sides; fail with the first that differs."""
    stock = page_catalog(catalog)
    for start in range(0, count, BATCH):
        numbers = range(start, min(start + BATCH, count))
        text, mine = python_side(catalog, stock, seed, numbers, thorough)
        for place in unequal(mine, kernel.evaluate("askedAll", text)):
            report(kernel, catalog, seed, numbers[place])


def report(kernel: Page, catalog: Catalog, seed: int, number: int) -> None:
    """Fail with a case, where its two sides part, and the command that repeats it."""
    case = seeded_case(catalog, seed, number)
    found = told_apart(kernel, case, catalog)
    again = f"python -m tests.browser.parity {seed} {number}"
    pytest.fail("\n".join([again, *found[:20], json.dumps(sent(case, list(VIEWS), True))]), pytrace=False)


def test_two_hundred_configurations_agree_in_everything(kernel: Page, catalog: Catalog) -> None:
    compare(kernel, catalog, SEED, 200, thorough=True)


@pytest.mark.parametrize(("seed", "count"), [(SEED + 1, 1500), (FRESH_SEED, 500)], ids=["fixed seed", "fresh seed"])
def test_two_thousand_configurations_agree(kernel: Page, catalog: Catalog, seed: int, count: int) -> None:
    print("seed", seed)
    compare(kernel, catalog, seed, count, thorough=False)
