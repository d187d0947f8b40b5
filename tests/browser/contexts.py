"""Browser contexts, watched. One that a test has left as it found it serves the next test that asks for its like."""

import json
from typing import Any

from playwright.sync_api import Browser, BrowserContext, Page

# So long is waited before something is held to come never, on a machine with much else to do too.
TIMEOUT_MS = 30_000
# What Playwright itself says in a page where it blocks them.
BLOCKED = "Service Worker registration blocked by Playwright"
# How pages look and are touched: it is the same for every test on a context, and nothing of it is kept.
OUTWARD = {"viewport", "has_touch", "is_mobile", "reduced_motion", "color_scheme", "forced_colors"}
# Of those that wait for their like, the one that has waited longest goes first: each takes memory.
MOST_WAITING = 4
# A page of the site on which nothing happens.
STILL = "sw.js"
FORGET = """async () => {
    localStorage.clear();
    for (const name of await caches.keys()) await caches.delete(name);
    for (const { name } of await indexedDB.databases()) {
        await new Promise((done, failed) => {
            Object.assign(indexedDB.deleteDatabase(name), { onsuccess: done, onerror: failed });
        });
    }
}"""


class Watched:
    """A context, and everything in it that a calm page does not do."""

    def __init__(self, browser: Browser, home: str, options: dict[str, Any]) -> None:
        self.home = home
        self.kind = json.dumps(options, sort_keys=True)
        self.complaints: list[str] = []
        self.stayed = True
        self.still: Page | None = None
        # What is kept on the device would come between a test and the site; test_without_signal.py tries it.
        self.context = browser.new_context(base_url=home, **{"service_workers": "block", **options})
        self.context.set_default_timeout(TIMEOUT_MS)
        self.context.on("request", lambda request: self.note_request(request.url))
        self.context.on("console", lambda message: self.note_console(message.type, message.text))
        self.context.on("weberror", lambda error: self.complaints.append(f"uncaught: {error.error}"))

    def note_request(self, url: str) -> None:
        """Note where a request goes."""
        if not url.startswith((self.home, "file://", "data:", "blob:", "about:")):
            self.complaints.append(f"request leaves the origin: {url}")
        if not url.startswith((self.home, "data:", "blob:", "about:")):
            self.stayed = False

    def note_console(self, kind: str, text: str) -> None:
        """Note what a page says that nobody has asked."""
        if text != BLOCKED:
            self.complaints.append(f"console {kind}: {text}")

    def forget(self) -> None:
        """Close the pages, and forget all that they have kept."""
        for page in self.context.pages:
            if page is not self.still:
                page.close()
        if not self.still:
            self.still = self.context.new_page()
            self.still.goto(STILL)
        self.still.evaluate(FORGET)
        self.context.clear_cookies()


class Contexts:
    """The contexts of a run: those that a test has open, and those that wait for the next."""

    def __init__(self, browser: Browser, origin: str) -> None:
        self.browser = browser
        self.origin = origin
        self.opened: list[tuple[Watched, bool]] = []
        self.waiting: list[Watched] = []

    def open(self, *, unused: bool = False, **options: Any) -> BrowserContext:
        """Return a context with Playwright's options; an ``unused`` one has no test before it and none after.

        One with any option that is more than outward is unused, too.
        """
        home = options.pop("base_url", self.origin)
        serves_again = not unused and home == self.origin and options.keys() <= OUTWARD
        watched = (self.taken(options) if serves_again else None) or Watched(self.browser, home, options)
        self.opened.append((watched, serves_again))
        return watched.context

    def taken(self, options: dict[str, Any]) -> Watched | None:
        """Take one that waits for its like, if there is any."""
        kind = json.dumps(options, sort_keys=True)
        place = next((place for place, one in enumerate(self.waiting) if one.kind == kind), None)
        return None if place is None else self.waiting.pop(place)

    def end_test(self) -> list[str]:
        """Close what the test has opened, and return what its pages did that calm ones do not."""
        complaints: list[str] = []
        opened, self.opened = self.opened, []
        for watched, serves_again in opened:
            if serves_again and watched.stayed:
                watched.forget()
                self.waiting.append(watched)
            else:
                watched.context.close()
            complaints += watched.complaints
            watched.complaints = []
        while len(self.waiting) > MOST_WAITING:
            self.waiting.pop(0).context.close()
        return complaints
