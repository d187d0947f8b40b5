"""A family's numbers against each other, whatever a client picks."""

from collections.abc import Iterator
from itertools import product

from configurator.catalog.clauses import Term
from configurator.catalog.length_advice import units_of
from configurator.catalog.located import ContentFile, KeyPath, dotted
from configurator.kernel.mechanisms.bounds import BOUNDS, is_over
from configurator.kernel.message import message
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Choice, Family
from configurator.kernel.tongue import wording

Row = list[str | float]


def check_bounds(file: ContentFile, family: Family) -> None:
    """Note each number that is too large beside another, at the place where the greater of the two is written."""
    if not all(choice["options"] for choice in family["choices"]):
        return
    given = family["numbers"].keys() | set(option_numbers(family["choices"]))
    for row in BOUNDS:
        if {str(row[0]), str(row[2])} <= given:
            check_row(file, family, row)


def option_numbers(choices: list[Choice]) -> Iterator[str]:
    """Yield the names of all numbers that options set."""
    for choice in choices:
        for option in choice["options"]:
            yield from option["numbers"]


def check_row(file: ContentFile, family: Family, row: Row) -> None:
    """Note the first picks with which a row is not kept."""
    for picks in picks_that_set(family["choices"], {str(row[0]), str(row[2])}):
        if is_over(row, resolve(family, picks)):
            note_over(file, family, row, picks)
            return


def picks_that_set(choices: list[Choice], names: set[str]) -> Iterator[dict[str, str]]:
    """Yield every combination of picks among the choices that set one of some numbers."""
    setting = [choice for choice in choices if names & set(option_numbers([choice]))]
    for options in product(*(choice["options"] for choice in setting)):
        yield {choice["id"]: option["id"] for choice, option in zip(setting, options, strict=True)}


def place_of(family: Family, name: str, picks: dict[str, str]) -> KeyPath:
    """Return where a number is written that holds with some picks: in the last option that sets it, or the family."""
    place: KeyPath = ("numbers", name)
    for choice in family["choices"]:
        for option in choice["options"]:
            if option["id"] == picks.get(choice["id"]) and name in option["numbers"]:
                place = ("choices", choice["id"], "options", option["id"], "numbers", name)
    return place


def as_written(file: ContentFile, place: KeyPath, length: float) -> Term:
    """Return a length as it stands in the file, or where it does not stand there as it is assumed."""
    written = file.written(place)
    return [written, "name"] if written else [length, "mm"]


def note_over(file: ContentFile, family: Family, row: Row, picks: dict[str, str]) -> None:
    """Note a row that is not kept, where one of its numbers is written."""
    numbers = resolve(family, picks)
    name, times, other = str(row[0]), float(row[1]), str(row[2])
    places = [place_of(family, each, picks) for each in (name, other)]
    written = next((place for place in places if file.written(place)), places[0])
    terms: dict[str, Term] = {
        "name": [dotted(places[0]), "name"],
        "value": as_written(file, places[0], numbers[name]),
        "other": [dotted(places[1]), "name"],
        "size": as_written(file, places[1], numbers[other]),
        "times": [times, "count"],
    }
    told = message("{name} is {value}, and {other} is {size}", terms)
    if times == 1:
        most = message(wording("{name} is at most {other}"), terms)
    else:
        most = message(wording("{name} is at most {times} times {other}"), terms)
    file.at_value(written, told, most, units=units_of(file.written(written)))
