"""Links are the same in a browser as in Python, and hurt ones open to the same: a sound state, a plain message."""

import json
import random

from playwright.sync_api import Browser

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import decode, encode
from configurator.catalog import Catalog
from tests.browser.parity import condensed, kernel_page, unequal
from tests.corpus import entries
from tests.links import hurt_links, random_state

BATCH = 500


def test_three_thousand_hurt_links_open_alike(browser: Browser, catalog: Catalog) -> None:
    page = kernel_page(browser, catalog)
    stock = page_catalog(catalog)
    links = [entry.link for entry in entries()] + hurt_links(catalog, 11, 3_000)
    for start in range(0, len(links), BATCH):
        batch = links[start : start + BATCH]
        mine = condensed([decode(link, stock) for link in batch])
        assert [batch[place] for place in unequal(mine, page.evaluate("openedAll", batch))] == []
    page.close()


def test_random_states_have_the_same_link_and_survive_in_a_browser(browser: Browser, catalog: Catalog) -> None:
    page = kernel_page(browser, catalog)
    stock = page_catalog(catalog)
    rng = random.Random(21)
    states = [random_state(rng, catalog) for _ in range(300)]
    mine = [encode(state, stock) for state in states]
    assert page.evaluate("linkedAll", json.dumps(states)) == [mine, mine]
    page.close()
