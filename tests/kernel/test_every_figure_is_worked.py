"""Every figure that anyone is told has an example worked by hand among the tests of the kernel and of the world."""

import ast
from collections.abc import Iterator
from pathlib import Path

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from tests.cases import seeded_case

TESTS = Path(__file__).resolve().parents[1]
# So many random cases meet every figure that there is; the starter families on the starter doors meet the rest.
CASES = 1000


def asserted_words(file: Path) -> Iterator[str]:
    """Yield every string in an assertion of a test file, or in what a test of it is given."""
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        told = [node] if isinstance(node, ast.Assert) else getattr(node, "decorator_list", [])
        for part in told:
            for word in ast.walk(part):
                if isinstance(word, ast.Constant) and isinstance(word.value, str):
                    yield word.value


def figures_told(catalog: Catalog) -> set[str]:
    """Return the id of every figure that comes up."""
    told: set[str] = set()
    for number in range(CASES):
        case = seeded_case(catalog, 7, number)
        told |= set(ask(case["door"], case["family"], case["choices"], case["household"])["figures"])
    for family in catalog.families.values():
        for door in catalog.doors.values():
            told |= set(ask(door, family, {}, catalog.household)["figures"])
    return told


def test_every_figure_has_an_example_worked_by_hand(catalog: Catalog) -> None:
    folders = (TESTS / "kernel", TESTS / "reference")
    worked = {word for folder in folders for file in folder.rglob("test_*.py") for word in asserted_words(file)}
    assert sorted(figures_told(catalog) - worked) == []
