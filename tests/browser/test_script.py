"""The configurator's scripts: the kernel that its page calls, the catalog, and nothing else."""

import gzip
from pathlib import Path

from playwright.sync_api import Browser

from configurator.browser import catalog_js, configurator_js
from configurator.catalog import Catalog
from configurator.kernel.resolve import resolve
from configurator.places import THEMES

PAGE = {
    "b.js": "window.told = numbersOf('cellular-shade');",
    "a.js": "const { kernel, catalog } = Astragal, numbersOf = (id) => kernel.resolve(catalog.families[id], {});",
}


def test_the_page_script_runs_on_the_kernel_and_the_catalog(browser: Browser, catalog: Catalog, tmp_path: Path) -> None:
    for name, script in PAGE.items():
        (tmp_path / name).write_text(script, encoding="utf-8")
    page = browser.new_page()
    page.add_script_tag(content=catalog_js(catalog))
    page.add_script_tag(content=configurator_js(tmp_path))
    assert page.evaluate("told") == resolve(catalog.families["cellular-shade"], {})
    assert page.evaluate("Object.keys(Astragal.kernel)") == ["resolve"]
    page.close()


def test_the_same_content_gives_the_same_scripts(catalog: Catalog, tmp_path: Path) -> None:
    (tmp_path / "a.js").write_text("Astragal.kernel.legs({});", encoding="utf-8")
    assert configurator_js(tmp_path) == configurator_js(tmp_path)
    assert catalog_js(catalog) == catalog_js(catalog)


def test_the_script_is_under_sixty_kilobytes_on_the_wire() -> None:
    script = configurator_js(THEMES / "shared" / "js")
    assert len(gzip.compress(script.encode(), 9)) < 60_000
