"""Chromium, as the other browser tests have it."""

from typing import Any

from playwright.sync_api import Page

from tests.browser.engines.engine import Point, between


class Chromium:
    """One page of the browser that is running."""

    name = "chromium"

    def __init__(self, page: Page) -> None:
        self.page = page
        self.session = page.context.new_cdp_session(page)

    def open(self, address: str) -> None:
        self.page.goto("about:blank")
        self.page.goto(address)

    def ask(self, expression: str) -> Any:
        return self.page.evaluate(expression)

    def wait(self, expression: str) -> None:
        self.page.wait_for_function(expression)

    def press(self, key: str) -> None:
        self.page.keyboard.press(key)

    def touch(self, kind: str, *points: Point) -> None:
        """Send one touch event."""
        fingers = [{"x": x, "y": y} for x, y in points]
        self.session.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": fingers})

    def draw(self, kind: str, start: Point, end: Point) -> None:
        if kind == "touch":
            self.touch("touchStart", start)
            for point in between(start, end):
                self.touch("touchMove", point)
            self.touch("touchEnd")
            return
        self.page.mouse.move(*start)
        self.page.mouse.down()
        for point in between(start, end):
            self.page.mouse.move(*point)
        self.page.mouse.up()
