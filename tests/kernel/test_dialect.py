"""The kernel keeps to the portable dialect, and the check of that finds every way out of it."""

import pytest

from configurator.browser.dialect import slips
from configurator.browser.translate import NotPortableError, kernel_sources, translate

HEAD = """
import math
from typing import cast
from configurator.kernel.shapes import Door, Piece


def ask_nicely(door: Door, pieces: list[Piece], numbers: dict[str, float], count: int, name: str) -> None:
"""
SHAPES = """
class Piece(TypedDict):
    x0: float
    kind: str


class Door(TypedDict):
    width: float
    names: list[str]
"""
INSIDE = {
    "round(numbers['a'])": "round()",
    "x = {1, 2}": "a set",
    "x = {n for n in pieces}": "a set",
    "x = {n: 1 for n in numbers}": "a dict comprehension",
    "x = sum(n for n in [1.0])": "a generator",
    "x = dict(**numbers)": "** unpacking",
    "x = math.hypot(*pieces)": "a star",
    "x = 0 < count < 3": "a chained comparison",
    "x = pieces + pieces": "arithmetic on a list",
    "x = [1] * count": "arithmetic on a list",
    "pieces += pieces": "arithmetic on a list",
    "x = name * 3": "a repeated string",
    "x = '%s' % name": "% on a text",
    "x = f'{numbers[name]}'": "as text",
    "x = f'{count / 2}'": "as text",
    "x = f'{count:03d}'": "a format spec",
    "x = str(math.sqrt(2))": "as text",
    "x = str(door['width'])": "as text",
    "if pieces:\n        pass": "as a condition",
    "while numbers:\n        pass": "as a condition",
    "x = 1 if door['names'] else 2": "as a condition",
    "x = not pieces": "as a condition",
    "x = pieces or [1]": "as a condition",
    "x = pieces == []": "comparing lists or dicts",
    "x = pieces[0] != pieces[1]": "comparing lists or dicts",
    "x = count == (count > 3)": "a truth value compared",
    "x = name is 'a'": "is, other than with None",
    "x = pieces[::2]": "a slice with a step",
    "try:\n        pass\n    except ValueError:\n        pass": "try/except",
    "raise ValueError": "raise",
    "assert count": "assert",
    "global x": "global",
    "x = (y := 3)": "the walrus",
    "x = lambda n=1: n": "a default",
    "del numbers[name]": "del",
    "with name:\n        pass": "with",
    "new = 1": "the name new",
    "list = 1": "the name list",
    "for default in pieces:\n        pass": "the name default",
    "x = isinstance(name, str)": "isinstance()",
    "x = name.title()": ".title()",
    "x = name.split()": "split() without a separator",
    "x = name.find('a', 2)": "find() of 2; the dialect has find() of 1",
    "x = name.replace('a', 'b', 1)": "replace() of 3; the dialect has replace() of 2",
    "x = door.width": "the attribute width",
    "x = math.gcd(1, 2)": "math.gcd",
    "x = len(numbers)": "len() of a dict",
    "x = max(pieces, key=len)": "the keyword argument key",
    "x = sorted(pieces, reverse=True)": "the keyword argument reverse",
    "x = sorted(pieces, key=lambda p: (p['x0'], 1))": "a list as a sort key",
    "for n in range(count):\n        n = 3": "changing what the range counts",
    "for n in pieces:\n        pass\n    else:\n        pass": "for/else",
    "x = y = 3": "two assignments in one",
    "x = {1: 2}": "a key that is not a string",
    "def add(*more: float) -> None:\n        pass": "star arguments",
    "x = (lambda n: n)(1)": "calling a result",
    "x = 5 | 3": "BitOr",
    "match count:\n        case 1:\n            pass": "Match",
    "x = +count": "UAdd",
    "count @= 2": "an unportable operator",
    "count //= 2": "an unportable operator",
    "x, y = pieces[0], 1": "unpacking",
    "for x, y in pieces:\n        pass": "unpacking",
    "for n in range(3):\n        pass\n    x = n": "n beside the range that it counts",
    "n = 1\n    for n in range(3):\n        pass": "n beside the range that it counts",
    "for n in range(0, 9, count):\n        pass": "a range whose step is worked out",
    "for pieces[0] in range(3):\n        pass": "a range that counts something else",
    "for n in unheard(name):\n        pass": "nobody sees that it is a list or a dict or a str",
    "x = name in unheard(name)": "nobody sees that it is a list or a dict or a str",
    "x = list(unheard(name))": "nobody sees that it is a list or a dict or a str",
    "x = unheard(name).copy()": "nobody sees that it is a list or a dict",
    "x = sorted(['a'], key=len)": "len as a value",
    "x = cast(Door, name)": "cast outside an annotation",
    "x = max(1, 2, 3, 4)": "max() of 4; the dialect has max() of 1 or 2 or 3",
    "x = max('a', name)": "max() of texts",
    "x = name.upper(1)": ".upper() of 1; the dialect has upper() of 0",
    "x = sum([count])": "sum(); the dialect has only abs, chr, float",
    "pieces.extend(numbers)": "extend() by something else than a list",
    "x = f'{pieces}'": "as text",
    "x = math.log(8, 2)": "math.log with a base",
    "pieces[-1] = pieces[0]": "setting a slice, or a place from the end",
    "pieces[1:] = pieces": "setting a slice, or a place from the end",
    "def inner(by: float = 1) -> None:\n        pass": "a default",
    "import math": "the dialect has no Import",
    "class Inner(TypedDict):\n        pass": "the dialect has no ClassDef",
}
OUTSIDE = {
    "import json": "import json",
    "import math as m": "import math",
    "from json import loads": "import from json",
    "from configurator.catalog import load": "import from configurator.catalog",
    "from configurator.kernel.pieces import box as b": "import by another name",
    "class Thing:\n    pass": "class Thing",
    "@cache\ndef f() -> None:\n    pass": "a decorator",
    "if True:\n    pass": "If at the top of a file",
    "def Make() -> None:\n    pass": "begin with a small letter",
    "def box() -> None:\n    pass": "box is defined in configurator/kernel/other.py too",
}
GOOD = '''
    """Say it."""
    total = 0.0
    for piece in pieces:
        total += piece["x0"] % 3
    for key, value in numbers.items():
        total = max(total, value) if key != "a" and value > 0 else -total
    kinds = [piece["kind"] for piece in sorted(pieces, key=lambda one: one["x0"]) if piece["kind"] in door["names"]]
    kinds.extend(door["names"][1:])
    if len(kinds) > 0 and door["names"][0].startswith("a"):
        total = math.floor(total / 2) * 2
    text = f"{name} {{{count}}} {len(kinds)}" + ", ".join(kinds)
    for n in range(len(pieces)):
        pieces.append(pieces[n])
    for pair in numbers.items():
        total += pair[1]
    for n in range(9, 0, -2):
        total += n
    for word in [name]:
        for letter in word:
            text = text + letter
    squares = [n * n for n in range(3)]
    places = {"first": pieces[-1]["x0"], name: max(squares)}
    more = {**places, "second": total}
    if "first" in more and "first" in kinds:
        total = max([place for place in places.values()])
'''


def found_in(source: str) -> list[str]:
    sources = {
        "configurator/kernel/shapes.py": SHAPES,
        "configurator/kernel/other.py": "def box() -> int:\n    return 1\n",
        "configurator/kernel/this.py": source,
    }
    return [str(slip) for slip in slips(sources)]


def test_the_kernel_keeps_to_the_dialect() -> None:
    assert [str(slip) for slip in slips(kernel_sources())] == []


@pytest.mark.parametrize(("snippet", "words"), INSIDE.items())
def test_a_way_out_within_a_function_is_found(snippet: str, words: str) -> None:
    found = found_in(f"{HEAD}    {snippet}\n")
    assert any(words in line for line in found)
    first = HEAD.count("\n") + 1
    assert all(line.startswith(tuple(f"configurator/kernel/this.py:{first + n}:" for n in range(3))) for line in found)


@pytest.mark.parametrize(("snippet", "words"), OUTSIDE.items())
def test_a_way_out_at_the_top_of_a_file_is_found(snippet: str, words: str) -> None:
    assert any(words in line for line in found_in(snippet))


def test_what_the_dialect_has_is_let_through() -> None:
    assert found_in(HEAD + GOOD) == []


def test_numbers_with_decimals_may_be_written_in_the_file_that_says_them() -> None:
    source = "def whole(value: float) -> str:\n    return str(value)\n"
    assert found_in(source) != []
    assert slips({"configurator/kernel/say.py": source}) == []


def test_the_translator_refuses_with_the_place_and_the_remedy() -> None:
    with pytest.raises(NotPortableError, match=r"configurator/kernel/a\.py:2: round\(\); use nearest\(\)"):
        translate((("configurator/kernel/a.py", "def f(x: float) -> float:\n    return round(x)\n"),))
