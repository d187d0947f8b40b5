"""Firefox, spoken to in the W3C's WebDriver BiDi, which it answers by itself."""

import json
import re
import subprocess
import time
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from websocket import WebSocket, create_connection

from tests.browser.engines.engine import PATIENCE, WINDOW, Point, key_actions, pointer_actions, until

PROGRAM = "firefox-esr"
LISTENS = re.compile(r"BiDi listening on (ws://\S+)")
# A fresh profile asks the network for much that no test wants.
SETTINGS = {
    "app.normandy.enabled": False,
    "app.update.disabledForTesting": True,
    "browser.startup.homepage_override.mstone": "ignore",
    "datareporting.policy.dataSubmissionEnabled": False,
    "dom.w3c_touch_events.enabled": 1,
    "network.captive-portal-service.enabled": False,
    "network.connectivity-service.enabled": False,
    "services.settings.server": "data:,",
    "toolkit.telemetry.enabled": False,
}


class Firefox:
    """One session with its one tab."""

    name = "firefox"

    def __init__(self, socket: WebSocket) -> None:
        self.socket = socket
        self.sent = 0
        self.call("session.new", capabilities={})
        self.tab = self.call("browsingContext.getTree")["contexts"][0]["context"]
        viewport = {"width": WINDOW[0], "height": WINDOW[1]}
        self.call("browsingContext.setViewport", context=self.tab, viewport=viewport)

    def call(self, method: str, **params: Any) -> dict[str, Any]:
        """Return the result of a command."""
        self.sent += 1
        self.socket.send(json.dumps({"id": self.sent, "method": method, "params": params}))
        while True:
            told: dict[str, Any] = json.loads(self.socket.recv())
            if told.get("id") == self.sent:
                assert told["type"] == "success", told
                found: dict[str, Any] = told["result"]
                return found

    def open(self, address: str) -> None:
        self.call("browsingContext.navigate", context=self.tab, url="about:blank", wait="complete")
        self.call("browsingContext.navigate", context=self.tab, url=address, wait="complete")

    def ask(self, expression: str) -> Any:
        told = self.call(
            "script.evaluate",
            expression=f"Promise.resolve({expression}).then((value) => JSON.stringify(value ?? null))",
            target={"context": self.tab},
            awaitPromise=True,
        )
        assert told["type"] == "success", told
        return json.loads(told["result"]["value"])

    def wait(self, expression: str) -> None:
        until(lambda: bool(self.ask(expression)), expression, time.monotonic, lambda: time.sleep(0.05))

    def press(self, key: str) -> None:
        self.call("input.performActions", context=self.tab, actions=[key_actions(key)])

    def draw(self, kind: str, start: Point, end: Point) -> None:
        self.call("input.performActions", context=self.tab, actions=[pointer_actions(kind, start, end)])


def address(process: "subprocess.Popen[str]") -> str:
    """Return where a browser that has just been started listens."""
    assert process.stderr
    for line in process.stderr:
        found = LISTENS.search(line)
        if found:
            return found[1]
    raise AssertionError(f"{PROGRAM} ended before it listened")


@contextmanager
def firefox(profile: Path) -> Iterator[Firefox]:
    """Run a browser on a profile of its own."""
    profile.mkdir()
    lines = (f"user_pref({json.dumps(name)}, {json.dumps(value)});\n" for name, value in SETTINGS.items())
    (profile / "user.js").write_text("".join(lines))
    command = [PROGRAM, "--headless", "--no-remote", "--profile", str(profile), "--remote-debugging-port", "0"]
    with subprocess.Popen(command, stderr=subprocess.PIPE, stdout=subprocess.DEVNULL, text=True) as process:
        try:
            socket = create_connection(f"{address(process)}/session", suppress_origin=True, timeout=PATIENCE)
            yield Firefox(socket)
            socket.close()
        finally:
            process.terminate()
