"""What Chromium shows, Firefox and WebKit show: the same figures, words and drawings, over a wire and from a disk."""

from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager
from pathlib import Path

import pytest
from playwright.sync_api import Page

from configurator.catalog import Catalog
from tests.browser.engines.chromium import Chromium
from tests.browser.engines.engine import Engine
from tests.browser.engines.firefox import firefox
from tests.browser.engines.journey import PULL, STOPS, Journey, Stop
from tests.browser.engines.webkit import webkit

# An engine and its reading of a stop are compared within one test, so that every engine starts once.
pytestmark = [
    pytest.mark.xdist_group("engines"),
    # What WebKit's driver gives its own base class.
    pytest.mark.filterwarnings("ignore:setting remote_server_addr:DeprecationWarning"),
]
STARTED: dict[str, Callable[[Path], AbstractContextManager[Engine]]] = {
    "firefox": lambda folder: firefox(folder / "profile"),
    "webkit": lambda _: webkit(),
}


@pytest.fixture(scope="module", params=STARTED)
def engine(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Engine]:
    """One of the engines that are not Chromium."""
    with STARTED[request.param](tmp_path_factory.mktemp(request.param)) as started:
        yield started


@pytest.fixture
def both(page: Page, engine: Engine, origin: str, catalog: Catalog) -> tuple[Journey, Journey]:
    """The same way for Chromium and for the other engine."""
    page.set_viewport_size({"width": 1280, "height": 862})
    return Journey(Chromium(page), origin, catalog), Journey(engine, origin, catalog)


@pytest.mark.parametrize("stop", STOPS, ids=lambda stop: stop.family)
def test_figures_words_and_shapes_are_the_same(both: tuple[Journey, Journey], stop: Stop) -> None:
    chromium, other = both
    expected = chromium.shown(stop)
    assert all(expected.values())
    assert other.shown(stop) == expected


def test_they_are_the_same_after_a_key_has_moved_the_covering(both: tuple[Journey, Journey]) -> None:
    chromium, other = both
    assert other.pressed(STOPS[0]) == chromium.pressed(STOPS[0])


def test_what_is_typed_comes_to_the_same_link(both: tuple[Journey, Journey]) -> None:
    chromium, other = both
    expected = chromium.typed(STOPS[0], "21 3/8")
    assert other.typed(STOPS[0], "21 3/8") == expected


def test_the_shelf_has_the_same_order_and_words(both: tuple[Journey, Journey]) -> None:
    chromium, other = both
    expected = chromium.ranked(STOPS[0])
    assert len(expected) > 10
    assert other.ranked(STOPS[0]) == expected


@pytest.mark.parametrize("kind", ["mouse", "touch"])
def test_a_pull_moves_the_covering_up_and_down(engine: Engine, origin: str, catalog: Catalog, kind: str) -> None:
    way = Journey(engine, origin, catalog)
    way.open(STOPS[0], "details")
    # The way back and as far again.
    assert way.drawn(kind, -PULL) < 50 < way.drawn(kind, 2 * PULL)


def test_the_site_is_the_same_from_a_disk(engine: Engine, demo: Path, origin: str, catalog: Catalog) -> None:
    served = Journey(engine, origin, catalog).shown(STOPS[0])
    assert Journey(engine, f"{demo.as_uri()}/", catalog).shown(STOPS[0]) == served
