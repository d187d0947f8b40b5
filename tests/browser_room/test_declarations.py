"""What page scripts are checked against says of the kernel what its own annotations say."""

import re

import pytest

from configurator.browser import kernel_declarations
from configurator.browser.declarations import declared
from configurator.browser.translate import NotPortableError
from configurator.kernel import answer, shapes

SHAPES = '''
class Piece(TypedDict):
    """A box."""

    x0: float
    count: int
    outline: list[list[float]]
    terms: dict[str, list[float | str]]
    note: NotRequired[str | None]
    draw: Callable[[Piece, dict[str, float]], list[str]]
    side: Literal["hinge", "latch"]


class Loose(Piece, total=False):
    at: tuple[float, "Piece"]
    sides: list[Literal["hinge", "latch"]]
    changes: list[Callable[[float], float] | None]


Question = Callable[[Piece], Piece]
LIMIT: float = 3.0
'''
INTERFACES = """\
interface Piece {
  x0: number;
  count: number;
  outline: number[][];
  terms: Record<string, (number | string)[]>;
  note?: string | null;
  draw: (a: Piece, b: Record<string, number>) => string[];
  side: "hinge" | "latch";
}
interface Loose extends Piece {
  at?: [number, Piece];
  sides?: ("hinge" | "latch")[];
  changes?: (((a: number) => number) | null)[];
}
type Question = (a: Piece) => Piece;
"""
FUNCTIONS = """
def ask(piece: Piece, count: int, by: float) -> dict[str, bool]:
    return {}


def note(words: list[Any]) -> None:
    pass


def _own(value: float) -> float:
    return value
"""


def test_shapes_become_interfaces() -> None:
    assert "\n".join(declared("a.py", SHAPES)[0]) + "\n" == INTERFACES


def test_public_functions_are_declared() -> None:
    assert declared("a.py", FUNCTIONS) == (
        [],
        ["ask(piece: Piece, count: number, by: number): Record<string, boolean>;", "note(words: any[]): void;"],
    )


@pytest.mark.parametrize(
    ("source", "words"),
    {
        "\ndef f(value) -> float:\n    return value\n": r"a\.py:2: a missing type",
        "\n\ndef f() -> set[str]:\n    return f()\n": r"a\.py:3: set in an annotation",
        "def f() -> decimal.Decimal:\n    return f()\n": r"a\.py:1: decimal\.Decimal in an annotation",
    }.items(),
)
def test_what_has_no_like_is_told_with_its_place(source: str, words: str) -> None:
    with pytest.raises(NotPortableError, match=words):
        declared("a.py", source)


def test_every_shape_and_function_of_the_kernel_is_there_and_no_name_is_left_open() -> None:
    text = kernel_declarations()
    for name in [name for name, one in vars(shapes).items() if hasattr(one, "__total__")]:
        assert f"interface {name} " in text
    assert re.search(rf"\b{answer.ask.__name__}\(door: Door, .*\): Answer;", text)
    named = set(re.findall(r"\b[A-Z]\w+", re.sub(r'"[^"]*"', "", text)))
    known = set(re.findall(r"(?:interface|type|namespace) (\w+)", text))
    assert named - known == {"Record"}
