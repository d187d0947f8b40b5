"""A visit's file: what survives it, what is refused and in which words, and that its schema is of today."""

import json
import random
from pathlib import Path
from typing import Any, get_type_hints

import pytest

from configurator.catalog.clauses import Refusal
from configurator.kernel import shapes
from configurator.kernel.message import say
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.visit import visit_shapes
from configurator.kernel.visit.visit_parts import VISIT_PARTS, part_kinds
from configurator.visit_file import read_file, read_text
from configurator.visit_schema import FILE as SCHEMA
from configurator.visit_schema import schema_text
from configurator.visit_text import visit_text
from tests.weir_cottage import FILE, house

SCRIPT = '<script>alert("x")</script>\u2028"\'</textarea>'
LETTERS = ["a", "Ä", "é", "漢", "🚪", '"', "\\", "\n", "\u2028", "\x00", "\x7f", "<", "\ud800", "{", "]"]
# What these hold is of one kind, whatever it is called.
BY_NAME = {"words", "choices", "wishes"}


def slips(text: str) -> list[str]:
    """Return what is wrong with a text, in words."""
    return [say(slip["says"], ENGLISH, "in") for slip in read_text(text)["slips"]]


def changed(path: str, value: Any) -> str:
    """Return the house's file with one entry set to something else."""
    visit: Any = house()
    *way, last = [int(step) if step.isdigit() else step for step in path.split(".")]
    entry = visit
    for step in way:
        entry = entry[step]
    entry[last] = value
    return json.dumps(visit)


def random_text(chance: random.Random) -> str:
    return "".join(chance.choices(LETTERS, k=chance.randrange(12)))


def random_value(chance: random.Random, depth: int = 3) -> Any:
    """Return anything that JSON holds."""
    kind = chance.randrange(8 if depth else 6)
    if kind == 6:
        return [random_value(chance, depth - 1) for _ in range(chance.randrange(4))]
    if kind == 7:
        return {random_text(chance): random_value(chance, depth - 1) for _ in range(chance.randrange(4))}
    number = chance.choice([0.0, -1.5, 1e-9, 1e21, 5e-324, 2 / 3, chance.uniform(-9e9, 9e9)])
    return [None, True, False, chance.randrange(10**9), number, random_text(chance)][kind]


def with_unknown(value: Any, chance: random.Random) -> Any:
    """Return the same data, its texts anything, and with parts that nobody knows."""
    if isinstance(value, dict):
        grown = {name: part if name in BY_NAME else with_unknown(part, chance) for name, part in value.items()}
        if chance.random() < 0.3:
            grown[f"x-{random_text(chance)}"] = random_value(chance)
        return grown
    return [with_unknown(part, chance) for part in value] if isinstance(value, list) else value


def random_visit(chance: random.Random) -> Any:
    """Return a visit of some of the house's openings, every text that may be anything being so."""
    visit: Any = house()
    visit["openings"] = chance.sample(visit["openings"], chance.randrange(5))
    for entry in [visit, *visit["openings"], *(leaf for one in visit["openings"] for leaf in one["leaves"])]:
        entry["note"] = random_text(chance)
    for one in visit["openings"]:
        for leaf in one["leaves"]:
            for reading in leaf["readings"]:
                reading["mm"] = chance.choice([chance.uniform(0, 3000), float(chance.randrange(3000))])
    return with_unknown(visit, chance)


def test_the_house_is_written_as_it_was_read() -> None:
    assert visit_text(read_file(FILE)) == FILE.read_text(encoding="utf-8")


def test_two_hundred_visits_survive_byte_for_byte() -> None:
    for seed in range(200):
        text = visit_text(random_visit(random.Random(seed)))
        told = read_text(text)
        assert told["slips"] == [], seed
        assert visit_text(told["visit"]) == text, seed


def test_what_need_not_be_there_may_be_missing() -> None:
    visit: Any = house()
    least = {name: visit[name] for name in ("version", "id", "units", "household")}
    told = read_text(json.dumps(least | {"openings": [{"id": "one", "preset": "garden-door"}]}))
    assert told["slips"] == []
    assert told["visit"]["openings"][0]["leaves"] == []


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("", "The file is no JSON text, so no visit can be read from it"),
        ("x" * 1_000_000, "The file is no JSON text, so no visit can be read from it"),
        ('{"version": NaN}', "The file is no JSON text, so no visit can be read from it"),
        ("1" * 5000, "The file is no JSON text, so no visit can be read from it"),
        (" " * 4_000_001, "The file is larger than any visit"),
        ("[" * 100_000, "The file's entries lie deeper within each other than those of any visit"),
        ('{"a":' * 50 + "1" + "}" * 50, "The file's entries lie deeper within each other than those of any visit"),
        ("[]", "The file holds no visit"),
        ("{}", "The file holds no visit"),
        ('{"version": "1"}', "The file holds no visit"),
        ('{"version": 0}', "The file holds no visit"),
        ('{"version": true}', "The file holds no visit"),
        ('{"version": 2}', "The file was written by a newer version of Astragal; take the newest to read it"),
    ],
    ids=range(13),
)
def test_what_is_no_visit_is_refused_in_plain_words(text: str, said: str) -> None:
    assert slips(text) == [said]


@pytest.mark.parametrize(
    ("path", "value", "said"),
    [
        ("client", 5, "Client must be a text"),
        ("client", None, "Client must be a text"),
        ("client", "x" * 1_000_000, "Client is longer than any text of a visit"),
        ("units", "furlong", "Units must be in or mm"),
        ("version", 0.5, "The file holds no visit"),
        ("household", [], "Household must be an entry in braces"),
        ("household.person_height", 9e8, "Household.person_height is a number that cannot be"),
        ("openings", {}, "Openings must be a list"),
        ("openings", [[]] * 501, "Openings holds more than any list of a visit"),
        ("openings.0", "a", "Openings.0 must be an entry in braces"),
        ("openings.1.id", "study", "Openings.1.id is the id of another one too"),
        ("openings.1.id", "", "Openings.1.id must not be empty"),
        ("openings.0.leaves.1.id", "active", "Openings.0.leaves.1.id is the id of another one too"),
        ("openings.0.proposals.0.place.lower", 1.5, "Openings.0.proposals.0.place.lower is a number that cannot be"),
        ("openings.0.proposals.0.wishes", {"width_wanted": -1}, "Openings.0.proposals.0.wishes.width_wanted is a"),
        ("openings.0.proposals.0.wishes", {"x": "1"}, "Openings.0.proposals.0.wishes.x must be a number"),
        ("openings.0.proposals.0.choices", {"fabric": 1}, "Openings.0.proposals.0.choices.fabric must be a text"),
        ("openings.0.proposals.0.liked", 1, "Openings.0.proposals.0.liked must be true or false"),
        ("openings.0.leaves.0.readings.0.mm", "19", "Openings.0.leaves.0.readings.0.mm must be a number"),
        ("openings.0.leaves.0.readings.0.mm", 1e300, "Openings.0.leaves.0.readings.0.mm is larger than any number"),
        ("openings.0.leaves.0.readings.0.mm", True, "Openings.0.leaves.0.readings.0.mm must be a number"),
        ("openings.0.agreed", [{}], "Openings.0.agreed.0.covering is missing"),
    ],
)
def test_an_entry_that_cannot_be_is_told_where_it_stands(path: str, value: Any, said: str) -> None:
    told = slips(changed(path, value))
    assert told[0].startswith(said)


def test_numbers_that_no_float_holds_are_refused() -> None:
    text = changed("openings.0.leaves.0.readings.0.mm", 12345.5)
    assert slips(text.replace("12345.5", "1e999"))[0].endswith("is larger than any number of a visit")
    assert slips(text.replace("12345.5", "9" * 400))[0].endswith("is larger than any number of a visit")


def test_a_script_in_every_text_is_kept_as_text() -> None:
    visit: Any = house()
    for entry in [visit, *visit["openings"]]:
        entry |= {name: SCRIPT for name in ("client", "place", "note", "room", "socket") if name in entry}
    for opening in visit["openings"]:
        for leaf in opening["leaves"]:
            leaf["note"] = SCRIPT
            for reading in leaf["readings"]:
                reading |= {"typed": SCRIPT, "who": SCRIPT, "on": SCRIPT, "spot": SCRIPT, "how": SCRIPT}
    told = read_text(json.dumps(visit))
    assert told["slips"] == []
    assert told["visit"]["client"] == SCRIPT


def test_names_that_scripts_give_a_meaning_are_kept_as_they_are() -> None:
    text = json.dumps({**house(), "__proto__": {"polluted": 1}, "constructor": [2], "toString": "3"})
    told: Any = read_text(text)["visit"]
    assert (told["__proto__"], told["constructor"], told["toString"]) == ({"polluted": 1}, [2], "3")


def test_a_file_that_cannot_be_read_is_refused_with_its_name(tmp_path: Path) -> None:
    file = tmp_path / "hurt.visit.json"
    file.write_bytes(b"\xff\xfe\x00")
    with pytest.raises(Refusal, match=r"hurt\.visit\.json: the file is no JSON text"):
        read_file(file)


@pytest.mark.parametrize("part", [*VISIT_PARTS, "Door", "Handle", "Household"])
def test_the_table_of_a_file_s_parts_is_that_of_the_shapes(part: str) -> None:
    shape: Any = getattr(visit_shapes, part, None) or getattr(shapes, part)
    assert set(part_kinds(part)) == set(get_type_hints(shape))
    kinds = {"text": str, "flag": bool, "texts": dict[str, str], "numbers": dict[str, float]}
    for name, hint in get_type_hints(shape).items():
        kind = part_kinds(part)[name]
        assert kinds.get(kind, hint) == hint, name
        assert kind not in ("number", "whole") or hint in (int, float), name


def test_the_schema_is_that_of_today() -> None:
    # Renewed by: python -m configurator.visit_schema
    assert SCHEMA.read_text(encoding="utf-8") == schema_text()


def test_the_side_of_the_controls_is_kept_where_it_is_said_and_not_put_where_it_is_not() -> None:
    visit: Any = house()
    visit["openings"][0]["control"] = "right"
    told = read_text(json.dumps(visit))
    assert told["slips"] == []
    assert [opening.get("control") for opening in told["visit"]["openings"]] == ["right", None, None, None]
