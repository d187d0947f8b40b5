"""No kind of page has a barrier that axe-core finds: in both themes, by day and by evening, on phone and desk."""

from pathlib import Path

import pytest

from tests.browser.accessibility import COLOR_RULES, violations
from tests.browser.conftest import OpenContext
from tests.browser.trying import viewport
from tests.site.kinds import KINDS


@pytest.mark.parametrize("size", ["phone", "desk"])
@pytest.mark.parametrize("theme", ["demo", "other_theme"])
def test_no_kind_of_page_has_a_barrier(
    open_context: OpenContext, request: pytest.FixtureRequest, theme: str, size: str
) -> None:
    site: Path = request.getfixturevalue(theme)
    # Reduced motion, so that no color is caught on its way from day to evening.
    page = open_context(viewport=viewport(size), reduced_motion="reduce").new_page()
    found = []
    for kind, address in KINDS.items():
        page.goto((site / address).as_uri())
        page.emulate_media(color_scheme="light")
        found += [f"{kind}: {violation}" for violation in violations(page)]
        # Colors are the same on every screen.
        if size == "desk":
            page.emulate_media(color_scheme="dark")
            found += [f"{kind}, in the evening: {violation}" for violation in violations(page, COLOR_RULES)]
    assert found == []
