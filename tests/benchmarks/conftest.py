"""The browser of the journeys, for what is timed in it."""

from tests.browser.conftest import browser, open_context, origin, page

__all__ = ["browser", "open_context", "origin", "page"]
