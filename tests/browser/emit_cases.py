"""What of the portable dialect is tried in Python and in a browser: expressions, bodies of functions, what they share.

Each is a function's, of ``numbers``, ``words``, ``table``, ``text`` and ``count``.
"""

# One a line.
EXPRESSIONS = r"""
[7 // 2, -7 // 2, 7 // -2, -7 // -2, 0 // 5]
[7.5 // 2, -7.5 // 2, 1 // 0.1, 0.3 // 0.1, -0.3 // 0.1]
[7 % 3, -7 % 3, 7 % -3, -7 % -3, 6 % 3, -6 % 3]
[7.5 % 2, -7.5 % 2, 7.5 % -2, 1 % 0.1, -1e-17 % 1]
[7 / 2, -7 / 2, count / 4, 2 ** 10, 2 ** -2, 2 ** 3 ** 2, (-2) ** 2, -2 ** 2]
-count ** 2 - -count
[int(2.9), int(-2.9), int(-0.5), int('12'), int(text == 'a')]
[float('2.50'), float(3), float('-1e3')]
[math.floor(-2.5), math.ceil(-2.5), math.floor(2.5), math.ceil(2.5)]
[abs(-3), abs(-2.5), abs(4)]
1 - (2 - 3) - 4 + 5 * (6 - 7) / (8 / 9)
-(1 + 2) * 3
(1 + 2) % 3 * 4
2 * (7 // 2)
(2 * 7) // 2
not count > 3 and count < 9 or count == 7
not (count > 3 and (count < 9 or count == 7))
1 if count > 3 else 2 if count > 1 else 3
(1 if count > 3 else 2) + 1
[1, (2 if count > 3 else 3)]
(count > 3) == (count > 4)
not (count == 3)
(text or 'none') + '!'
'' or text
0 or 0.5
1 and 2
[count == 7, count != 7, count < 7, count <= 7, count > 7, count >= 7, 'a' < 'b', 'a' == 'a']
table is None
table.get('none') is None
table.get('none') is not None
['' == text, None is None, (count > 3) != (count > 9)]
['rail' in words, 'none' in words, 'rail' not in words]
['stile' in text, 'none' in text, '' in text]
['rail_top' in table, 'none' in table, 'constructor' in table, 'toString' in table]
2.25 in numbers
len(numbers) + len(text)
[numbers[0], numbers[-1], words[count - 7], words[-2], text[0], text[-1]]
[numbers[1:], numbers[:2], numbers[1:3], numbers[-2:], numbers[:-1], numbers[9:], numbers[3:1], numbers[:]]
[text[1:], text[:4], text[1:3], text[-3:], text[:-1], text[99:], text[5:2]]
numbers.copy()
list(numbers)
[max(1, 2), max(3.5, -1, 2), max(numbers), min(1, 2), min(3, 1, 2), min(numbers)]
sorted(numbers)
sorted(words)
sorted(table)
sorted(words, key=lambda word: word[1])
list(text)
sorted(words, key=lambda word: -ord(word[0]))
list(range(4))
list(range(0))
list(range(2, 5))
list(range(5, 2))
list(range(9, 0, -3))
list(range(0, 9, 4))
[number * 2 for number in numbers]
[number for number in numbers if number > 0 if number < 3]
[i * k for i in range(3) for k in range(i) if k > 0]
[[word, letter] for word in words for letter in word]
[key for key in table]
[[key, value] for key, value in table.items()]
[i for i in range(2, 8, 3)]
[{'word': word} for word in words]
[[], [[1], []]]
[[words for words in words], [count for count in [1, 2]], count]
[text.upper(), text.lower(), text.split(', '), ', '.join(words), text.find('stile')]
[text.replace('i', '$&'), text.startswith('Rail'), text.endswith('x'), text.find('none'), 'a'.split('a')]
[str(count), str(-3), str(text), ord('A')]
[chr(65), chr(233), chr(8232), chr(128274), chr(ord('é') + 1) + text, len(list(chr(128274) + 'a'))]
'it''s "so"\n\t\\ é ≈ \u2028'
'a' + text + 'b'
f'{count} of {text}, {{{count + 1}}} `$` ${{x}} \\ {len(words)}'
f''
f'{words[0]}' + f'{count}'
[table['stile'], table['rail' + '_top'], table.get('stile'), table.get('none', 2), table.get('constructor', 1)]
[table.keys(), table.values()]
list(table)
table.copy()
{'a': 1, 'b c': {'d': []}, text: count}
{}
[{**table, 'stile': 1, 'new': 2}, {'new': 2, **table}, {**dict_of(1), **dict_of(2), 'one': 3}]
[dict_of(1)['one'], TABLE['twice'](count), TABLE['once'](count), FACTOR, LIMITS[1]]
[math.pi, math.sqrt(2), math.hypot(3, 4), math.atan2(-1, -1), math.sin(1), math.cos(1), math.tan(1)]
[math.asin(0.5), math.acos(0.5), math.atan(0.5), math.exp(1), math.log(2), math.pow(2, 0.5)]
[math.isfinite(math.inf), math.isnan(math.inf - math.inf), math.isfinite(1)]
[None, True, False, 1e-9, 1e16]
""".strip().splitlines()
BODIES = {
    "a range keeps the end that it began with": """
        found = [1.0]
        for i in range(len(found) + 2):
            found.append(i)
        return found
    """,
    "ranges within ranges": """
        found = []
        for i in range(1, count, 2):
            for k in range(i, 0, -1):
                if k == 2:
                    continue
                if k > 4:
                    break
                found.append([i, k])
        return found
    """,
    "a loop meets what is added to its list": """
        waiting = [1.0, 2.0]
        for number in waiting:
            if number < 20:
                waiting.append(number * 3)
        return waiting
    """,
    "a loop's name lasts": """
        for word in words:
            pass
        for key in table:
            if key == "rail_top":
                break
        return [word, key]
    """,
    "loops over texts, dicts and pairs": """
        found: list[object] = []
        for letter in text:
            found.append(letter)
        for key, value in table.items():
            found.extend([key, value])
        for pair in table.items():
            found.append(pair[0])
        for value in table.values():
            found.append(value)
        return found
    """,
    "while, with its ways out": """
        left = count
        met = 0
        while True:
            left -= 1
            if left % 2 == 0:
                continue
            met += left
            if left < 0:
                break
        while left < 3 and met > 0:
            left += 2
        return [left, met]
    """,
    "choices in a row": """
        said = []
        for number in numbers:
            if number > 2.5:
                said.append("more")
            elif number < 0:
                if number < -1:
                    said.append("less")
            elif number == 0:
                pass
            else:
                said.append("some")
        return said
    """,
    "assignments that change what was there": """
        total = 1.0
        total += 2
        total *= 3
        total -= 0.5
        total /= 4
        said = "a"
        said += "b"
        kept = [1.0, 2.0]
        kept[1] += 5
        held = {"a": 1.0}
        held["a"] -= 3
        held["b"] = total
        return [total, said, kept, held]
    """,
    "what lists do": """
        kept = words.copy()
        last = kept[-1]
        kept[0] = "changed"
        kept.extend(words[1:2])
        same = kept
        same.append("end")
        return [kept, last, words]
    """,
    "functions within, and what they see": """
        step = 2

        def grown(value: float, by: float) -> float:
            more = value + by * step
            return more

        before = grown(1, 1.5)
        step = 10
        twice = lambda value: grown(value, 1) * 2
        return [before, grown(1, 1.5), twice(1)]
    """,
    "a comprehension's names are its own": """
        word = "outside"
        i = 5
        found = [word for word in words if word != "rail"]
        squares = [i * i for i in range(3)]
        return [word, i, found, squares]
    """,
    "nothing returned is none": """
        found = []

        def noted(word: str) -> None:
            if word == "rail":
                return
            found.append(word)

        return [noted("rail"), found]
    """,
    "a type without a value": """
        '''Said to readers.'''
        found: list[float]
        if count > 3:
            found = [1.0]
        else:
            found = []
        "Said to readers as well."
        return found
    """,
}
SHARED = '''
"""Shared by all cases."""

import math
from collections.abc import Callable
from typing import NotRequired, TypedDict


class Pair(TypedDict):
    """Two numbers."""

    one: float
    two: NotRequired[float]


Change = Callable[[float], float]
FACTOR = 2
LIMITS: list[float] = [0.0, FACTOR * 1.5]


def dict_of(one: float) -> Pair:
    """Return one of two."""
    return {"one": one}


def twice(value: float) -> float:
    return value * FACTOR


TABLE: dict[str, Change] = {"twice": twice, "once": lambda value: value}
'''
