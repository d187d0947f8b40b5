"""JSON as the kernel's reader of visits asks for it: of which kind each parsed value is, and nothing but JSON."""

import json
from typing import Any, NoReturn

KINDS: dict[type, str] = {
    str: "text",
    bool: "flag",
    int: "number",
    float: "number",
    list: "list",
    dict: "entry",
}


def kind_in_python(value: Any) -> str:
    """Return of which kind a parsed value is, as the kernel's reader asks it."""
    return KINDS.get(type(value), "nothing")


def no_constant(text: str) -> NoReturn:
    """Refuse what Python reads and JSON has not: NaN and the infinities."""
    raise ValueError(text)


def parsed(text: str) -> Any:
    """Return what a JSON text holds.

    :raises ValueError: where it is none, with line and column as :class:`json.JSONDecodeError` where they are known
    :raises RecursionError: where it is nested too deep
    """
    return json.loads(text.removeprefix("\ufeff"), parse_constant=no_constant)
