"""The version of a catalog changes with whatever figures come of, and with nothing else."""

from copy import deepcopy
from typing import Any

import pytest

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link.catalog_version import catalog_version
from configurator.catalog import Catalog


@pytest.fixture
def changed(catalog: Catalog) -> Any:
    """The page's catalog, to be changed."""
    return deepcopy(page_catalog(catalog))


def test_a_number_changes_it(catalog: Catalog, changed: Any) -> None:
    before = catalog_version(page_catalog(catalog))
    assert (len(before), catalog_version(changed)) == (5, before)
    seen = {before}
    for shape in (
        changed["families"]["roller-shade"]["numbers"],
        changed["families"]["roller-shade"]["choices"][0]["options"][1]["numbers"],
        changed["families"]["roller-shade"]["cassettes"][0],
        changed["doors"]["tall-door"],
        changed["handles"]["slim-lever"],
    ):
        name = next(key for key, value in shape.items() if isinstance(value, float))
        shape[name] += 0.1
        seen.add(catalog_version(changed))
    assert len(seen) == 6


def test_a_name_does_not(catalog: Catalog, changed: Any) -> None:
    changed["families"]["roller-shade"]["name"] = "Another name"
    assert catalog_version(changed) == catalog_version(page_catalog(catalog))
