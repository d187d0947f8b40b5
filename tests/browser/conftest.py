"""A real browser on the built demo, which fails a test that logs, throws or calls out."""

import shutil
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from http.server import ThreadingHTTPServer
from pathlib import Path
from threading import Thread
from typing import Any

import pytest
from playwright.sync_api import Browser, BrowserContext, Error, Page, expect, sync_playwright

from configurator.local import address_of, folder_server

FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    # Letters stand where they do in a browser with windows.
    "--font-render-hinting=none",
]
# Debian's without windows takes a third less of the processor; where there is none, the one Playwright installed.
CHROMIUM = shutil.which("chromium-headless-shell")
# So long is waited before something is held to come never, on a machine with much else to do too.
TIMEOUT_MS = 30_000
expect.set_options(timeout=TIMEOUT_MS)
# What Playwright itself says in a page where it blocks them.
BLOCKED = "Service Worker registration blocked by Playwright"
RUNNING: list[Browser] = []

OpenContext = Callable[..., BrowserContext]
FRAMES = 2_000
# Through so many pages one leads on to another at most.
PAGES = 10
# Looked at within the page: a question from outside for each frame would take a core from the page. One that is not
# looked at paints none.
LOOK = """async (arg) => {
    const look = () => { const found = (EXPRESSION); return typeof found === "function" ? found(arg) : found; };
    for (let frame = 0; frame < FRAMES; frame++) {
        if (await look()) return true;
        await new Promise((done) => { requestAnimationFrame(done); setTimeout(done, 100); });
    }
    return false;
}"""


def wait_until(page: Page, expression: str, *, arg: Any = None) -> None:
    """Wait until something is true of a page, looked at once a frame, also while the page leads on to another.

    Playwright's own looks by ``eval`` within the page, which a page's policy bars.

    :raises AssertionError: where it has not come true within two thousand frames
    """
    look = LOOK.replace("EXPRESSION", expression).replace("FRAMES", str(FRAMES))
    for _ in range(PAGES):
        try:
            if page.evaluate(look, arg):
                return
            break
        except Error as gone:
            if "because of a navigation" not in gone.message:
                raise
    raise AssertionError(f"{expression} has not come true")


setattr(Page, "wait_for_function", wait_until)  # noqa: B010 - a method of its class to whoever checks types


@contextmanager
def serving(server: ThreadingHTTPServer) -> Iterator[str]:
    """Let a server run, and give its address, ending in a slash."""
    thread = Thread(target=server.serve_forever, daemon=True)
    thread.start()
    yield address_of(server)
    server.shutdown()
    server.server_close()
    thread.join()


@pytest.fixture(scope="session")
def origin(demo: Path) -> Iterator[str]:
    """The address, ending in a slash, at which the built demo is served."""
    with serving(folder_server(demo, 0)) as address:
        yield address


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    """The browser of this run."""
    # The benchmarks have this fixture too, and Playwright starts only once in a process.
    if RUNNING:
        yield RUNNING[0]
        return
    with sync_playwright() as playwright:
        running = playwright.chromium.launch(executable_path=CHROMIUM, args=FLAGS)
        RUNNING.append(running)
        yield running
        RUNNING.clear()
        running.close()


def watch(context: BrowserContext, origin: str, complaints: list[str]) -> None:
    """Note everything that a calm page does not do."""
    homes = (origin, "file://", "data:", "blob:", "about:")

    def note_request(url: str) -> None:
        if not url.startswith(homes):
            complaints.append(f"request leaves the origin: {url}")

    def note_console(kind: str, text: str) -> None:
        if text != BLOCKED:
            complaints.append(f"console {kind}: {text}")

    context.on("request", lambda request: note_request(request.url))
    context.on("console", lambda message: note_console(message.type, message.text))
    context.on("weberror", lambda error: complaints.append(f"uncaught: {error.error}"))


@pytest.fixture
def open_context(browser: Browser, origin: str) -> Iterator[OpenContext]:
    """A function that opens a browser context with Playwright's options, watched until the test ends."""
    complaints: list[str] = []
    opened: list[BrowserContext] = []

    def open_one(**options: Any) -> BrowserContext:
        home = options.pop("base_url", origin)
        # What is kept on the device would come between a test and the site; test_without_signal.py tries it.
        context = browser.new_context(base_url=home, **{"service_workers": "block", **options})
        context.set_default_timeout(TIMEOUT_MS)
        watch(context, home, complaints)
        opened.append(context)
        return context

    yield open_one
    for context in opened:
        context.close()
    assert complaints == []


@pytest.fixture
def page(open_context: OpenContext) -> Page:
    """A page 1440 px wide; ``page.goto("try.html")`` opens the built demo."""
    return open_context(viewport={"width": 1440, "height": 900}).new_page()
