"""Hurt links open to the same in a browser as in Python: a sound state, a plain message, never an error."""

from playwright.sync_api import Browser

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import decode
from configurator.catalog import Catalog
from tests.browser.parity import condensed, kernel_page, unequal
from tests.corpus import entries
from tests.links import hurt_links

BATCH = 500


def test_ten_thousand_hurt_links_open_alike(browser: Browser, catalog: Catalog) -> None:
    page = kernel_page(browser, catalog)
    stock = page_catalog(catalog)
    links = [entry.link for entry in entries()] + hurt_links(catalog, 11, 10_000)
    for start in range(0, len(links), BATCH):
        batch = links[start : start + BATCH]
        mine = condensed([decode(link, stock) for link in batch])
        assert [batch[place] for place in unequal(mine, page.evaluate("openedAll", batch))] == []
    page.close()
