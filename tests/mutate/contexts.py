"""A plugin of pytest that tells coverage for whom a line runs: a test, or a fixture that some tests are given."""

import json
from collections.abc import Generator, Iterable
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest
from coverage import Coverage

# Which fixtures each test is given, by ``file::function``; beside what coverage writes.
GIVEN = "given.json"
FIXTURE = "fixture "


def test_name(item: pytest.Item) -> str:
    """Return a test's file and function, whatever its parameters."""
    return item.nodeid.split("[")[0]


@contextmanager
def running_for(name: str) -> Generator[None]:
    """Have all lines that run meanwhile told for a name."""
    told = Coverage.current()
    assert told
    told.switch_context(name)
    try:
        yield
    finally:
        told.switch_context("")


@pytest.hookimpl(wrapper=True)
def pytest_fixture_setup(fixturedef: pytest.FixtureDef[Any]) -> Generator[None, object, object]:
    with running_for(FIXTURE + fixturedef.argname):
        return (yield)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_call(item: pytest.Item) -> Generator[None, object, object]:
    with running_for(test_name(item)):
        return (yield)


def pytest_collection_finish(session: pytest.Session) -> None:
    given: dict[str, Iterable[str]] = {}
    for item in session.items:
        given[test_name(item)] = sorted({*given.get(test_name(item), ()), *getattr(item, "fixturenames", ())})
    Path(GIVEN).write_text(json.dumps(given), encoding="utf-8")
