"""The configurator's scripts: the kernel that its page calls, the catalog, and nothing else."""

import gzip
from pathlib import Path

from playwright.sync_api import Browser

from configurator.browser import catalog_js, configurator_scripts
from configurator.catalog import Catalog
from configurator.kernel.resolve import resolve
from configurator.kernel.tongue import ENGLISH
from tests.site.pages import asset

PAGE = {
    "app.js": 'import { numbersOf } from "./b.js";\nwindow.told = numbersOf("cellular-shade");',
    "b.js": "export const numbersOf = (id) => Astragal.kernel.resolve(Astragal.catalog.families[id], {});",
}


def test_the_page_script_runs_on_the_kernel_and_the_catalog(browser: Browser, catalog: Catalog, tmp_path: Path) -> None:
    for name, script in PAGE.items():
        (tmp_path / name).write_text(script, encoding="utf-8")
    page = browser.new_page()
    page.add_script_tag(content=catalog_js(catalog))
    page.add_script_tag(content=configurator_scripts(tmp_path, ENGLISH)["astragal.js"])
    assert page.evaluate("told") == resolve(catalog.families["cellular-shade"], {})
    assert page.evaluate("Object.keys(Astragal.kernel)") == ["resolve"]
    page.close()


def test_the_first_script_is_under_sixty_kilobytes_on_the_wire(demo: Path) -> None:
    assert len(gzip.compress(asset(demo, "astragal.js").read_bytes(), 9)) < 60_000
