"""Each kind of node of the portable dialect comes to the same in Python and in a browser."""

import ast
from typing import Any

import pytest
from playwright.sync_api import Browser

from configurator.browser.emit import Statements
from configurator.browser.emit.spelling import CALLS, MATH, METHODS, OPERATORS
from configurator.browser.translate import translate
from tests.browser.emit_cases import BODIES, EXPRESSIONS, SHARED
from tests.browser.parity import differences

HEAD = "(numbers: list[float], words: list[str], table: dict[str, float], text: str, count: int) -> object:\n"
GIVEN: list[Any] = [
    [3.0, -1.5, 2.25, 2.25, 0.0],
    ["sill", "rail", "lite", "rail"],
    {"stile": 114.0, "rail_top": 0.5, "toString": -3.0},
    "Rail, stile, muntin",
    7,
]
CASES = {**{text: f"    return {text}\n" for text in EXPRESSIONS}, **BODIES}


def written() -> str:
    """Return every case as a function."""
    functions = [f"def case_{n}{HEAD}{body}" for n, body in enumerate(CASES.values())]
    return SHARED + "\n\n" + "\n\n".join(functions)


@pytest.fixture(scope="module")
def in_browser(browser: Browser) -> list[Any]:
    """What every case comes to in a browser."""
    page = browser.new_page()
    page.add_script_tag(content=translate((("configurator/kernel/cases.py", written()),)))
    calls = ", ".join(f"Astragal.kernel.case_{n}(...structuredClone(given))" for n in range(len(CASES)))
    found: list[Any] = page.evaluate(f"given => [{calls}]", GIVEN)
    page.close()
    return found


@pytest.fixture(scope="module")
def in_python() -> dict[str, Any]:
    """The cases in Python."""
    names: dict[str, Any] = {}
    exec(compile(written(), "cases.py", "exec"), names)
    return names


@pytest.mark.parametrize("case", CASES)
def test_a_case_comes_to_the_same(case: str, in_browser: list[Any], in_python: dict[str, Any]) -> None:
    number = list(CASES).index(case)
    given = [part.copy() if isinstance(part, list | dict) else part for part in GIVEN]
    mine = in_python[f"case_{number}"](*given)
    assert list(differences(plain(mine), in_browser[number])) == []


def plain(value: Any) -> Any:
    """Return a value with lists for all that Python counts through."""
    if isinstance(value, dict):
        return {name: plain(part) for name, part in value.items()}
    return value if isinstance(value, str) or not hasattr(value, "__iter__") else [plain(part) for part in value]


def test_every_spelling_is_tried() -> None:
    nodes = list(ast.walk(ast.parse(written())))
    calls = [node for node in nodes if isinstance(node, ast.Call)]
    counted = {(ast.unparse(call.func).split(".")[-1], len(call.args) + len(call.keywords)) for call in calls}
    assert sorted({*CALLS, *METHODS} - counted) == []
    assert sorted(MATH.keys() - {node.attr for node in nodes if isinstance(node, ast.Attribute)}) == []
    kinds = {type(node).__name__ for node in nodes}
    assert [kind.__name__ for kind in OPERATORS if kind.__name__ not in kinds] == []
    assert [name for name in dir(Statements) if name.startswith("visit_") and name[6:] not in kinds] == []
