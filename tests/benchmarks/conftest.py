"""The browser of the journeys, for what is timed in it."""

import pytest
from playwright.sync_api import Page

from tests.browser.conftest import OpenContext, browser, contexts, open_context, origin

__all__ = ["browser", "contexts", "open_context", "origin"]


@pytest.fixture
def page(open_context: OpenContext) -> Page:
    """A page 1440 px wide of a browser that has read nothing yet."""
    return open_context(unused=True, viewport={"width": 1440, "height": 900}).new_page()
