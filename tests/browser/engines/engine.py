"""What a journey asks of a browser, whatever drives it."""

from collections.abc import Callable
from typing import Any, Protocol

Point = tuple[float, float]
# The window, in CSS pixels.
WINDOW = (1280, 900)


class Engine(Protocol):
    """A browser with one page open."""

    name: str

    def open(self, address: str) -> None:
        """Open an address anew, and return once the page has loaded."""

    def ask(self, expression: str) -> Any:
        """Return what a JavaScript expression gives, as JSON tells it."""

    def wait(self, expression: str) -> None:
        """Wait until an expression is true.

        :raises TimeoutError: with the expression, where it never is
        """

    def press(self, key: str) -> None:
        """Press and release a key, named as the DOM names it, or a character."""

    def draw(self, kind: str, start: Point, end: Point) -> None:
        """Press a ``mouse`` or a ``touch`` at a point of the window, draw it to another in steps, and lift it."""


# In how many steps a pointer is drawn, and how long an engine may take until something is true.
DRAWN = 8
PATIENCE = 60.0

# What the keys are called in the WebDriver standard's actions, section "Keyboard actions".
KEYS = {"ArrowRight": "\ue014", "Enter": "\ue007"}


def between(start: Point, end: Point) -> list[Point]:
    """Return the points of a straight way, its end included."""
    return [
        (start[0] + (end[0] - start[0]) * step / DRAWN, start[1] + (end[1] - start[1]) * step / DRAWN)
        for step in range(1, DRAWN + 1)
    ]


def pointer_actions(kind: str, start: Point, end: Point) -> dict[str, Any]:
    """Return a pointer's way as the WebDriver standard writes it (section "Pointer actions")."""
    moves = [
        {"type": "pointerMove", "x": round(x), "y": round(y), "duration": 20, "origin": "viewport"}
        for x, y in [start, *between(start, end)]
    ]
    down, up = {"type": "pointerDown", "button": 0}, {"type": "pointerUp", "button": 0}
    return {
        "type": "pointer",
        "id": kind,
        "parameters": {"pointerType": kind},
        "actions": [moves[0], down, *moves[1:], up],
    }


def key_actions(key: str) -> dict[str, Any]:
    """Return a key's press as the WebDriver standard writes it."""
    value = KEYS.get(key, key)
    return {"type": "key", "id": "keys", "actions": [{"type": kind, "value": value} for kind in ("keyDown", "keyUp")]}


def until(true: Callable[[], bool], told: str, now: Callable[[], float], rest: Callable[[], None]) -> None:
    """Ask again and again until something is true.

    :raises TimeoutError: with what was waited for
    """
    begun = now()
    while not true():
        if now() - begun > PATIENCE:
            raise TimeoutError(told)
        rest()
