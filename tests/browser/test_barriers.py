"""No kind of page has a barrier that axe-core finds: in both themes, by day and by evening, on phone and desk."""

from pathlib import Path

import pytest

from tests.browser.accessibility import barriers_day_and_evening
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
        found += [f"{kind}: {violation}" for violation in barriers_day_and_evening(page, size)]
    assert found == []
