"""WebKit as GTK has it, driven by its own driver, on a screen that nobody sees."""

import os
import subprocess
import time
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from selenium import webdriver
from selenium.webdriver.webkitgtk.options import Options
from selenium.webdriver.webkitgtk.service import Service

from tests.browser.engines.engine import WINDOW, Point, key_actions, pointer_actions, until

DRIVER = "/usr/bin/WebKitWebDriver"
# A program for a desktop looks for a bus and for readers of its screen, and waits half a minute for them.
ALONE = {"NO_AT_BRIDGE": "1", "GTK_A11Y": "none", "DBUS_SESSION_BUS_ADDRESS": "disabled:"}


class WebKit:
    """One window."""

    name = "webkit"

    def __init__(self, driver: webdriver.WebKitGTK) -> None:
        self.driver = driver
        driver.set_window_rect(0, 0, *WINDOW)

    def open(self, address: str) -> None:
        self.driver.get("about:blank")
        self.driver.get(address)

    def ask(self, expression: str) -> Any:
        return self.driver.execute_script(f"return {expression};")

    def wait(self, expression: str) -> None:
        until(lambda: bool(self.ask(expression)), expression, time.monotonic, lambda: time.sleep(0.05))

    def press(self, key: str) -> None:
        self.driver.execute("actions", {"actions": [key_actions(key)]})

    def draw(self, kind: str, start: Point, end: Point) -> None:
        self.driver.execute("actions", {"actions": [pointer_actions(kind, start, end)]})


@contextmanager
def screen() -> Iterator[str]:
    """Run a screen that nobody sees, and give its name."""
    read, write = os.pipe()
    size = f"{WINDOW[0] + 100}x{WINDOW[1] + 100}x24"
    command = ["Xvfb", "-displayfd", str(write), "-screen", "0", size, "-nolisten", "tcp"]
    with subprocess.Popen(command, pass_fds=[write], stderr=subprocess.DEVNULL) as process, os.fdopen(read) as told:
        os.close(write)
        try:
            yield f":{told.readline().strip()}"
        finally:
            process.terminate()


@contextmanager
def webkit() -> Iterator[WebKit]:
    """Run a browser of its own."""
    with screen() as display:
        service = Service(executable_path=DRIVER, env={**os.environ, **ALONE, "DISPLAY": display})
        driver = webdriver.WebKitGTK(options=Options(), service=service)
        try:
            yield WebKit(driver)
        finally:
            driver.quit()
