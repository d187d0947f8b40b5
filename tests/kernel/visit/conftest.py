"""What visits are read against: the starter catalog."""

import pytest

from configurator.browser.catalog_json import page_catalog
from configurator.catalog import Catalog
from configurator.kernel.visit.visit_shapes import VisitStock


@pytest.fixture(scope="session")
def stock(catalog: Catalog) -> VisitStock:
    """The part of the starter catalog that a visit refers to."""
    return page_catalog(catalog)
