"""What a command was asked for, found in the catalog, or a plain word about what to write instead."""

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from errno import EADDRINUSE
from pathlib import Path
from typing import NamedTuple, TypeVar

import click

from configurator import remembered
from configurator.cache.by_content import ByContent
from configurator.catalog import Catalog, ContentProblems, Reading, Wanted, load
from configurator.catalog.clauses import Refusal, Slip
from configurator.catalog.os_words import os_words
from configurator.catalog.suggest import suggestion
from configurator.kernel.message import message, plain
from configurator.kernel.position import closed_position, open_position, position_at
from configurator.kernel.resolve import full_choices, resolve
from configurator.kernel.shapes import Door, Family, Message, Position
from configurator.remembered import Checked
from configurator.spoken import asked_for, clauses, phrase, speak, speak_as, told, words

Thing = TypeVar("Thing")
VIEWS = ("elevation", "evening", "street", "section", "plan", "sheet", "room")


class Configuration(NamedTuple):
    """One family on one door with a pick for each of its choices, and the numbers that are set by hand.

    ``wishes`` are of :data:`configurator.kernel.mount.wishes.WISHES`, in mm.
    """

    door: Door
    family: Family
    choices: dict[str, str]
    wishes: dict[str, float]


class Named(NamedTuple):
    """One family on one door as the options of a command name them; ``choices`` are written ``choice=option``."""

    door: str
    family: str
    choices: tuple[str, ...]


class Setting(NamedTuple):
    """The content that a command is about, and in which units and on which sheet it is told: its own, or those asked
    for."""

    content: Path
    units: str | None
    sheet: str | None = None


@contextmanager
def plain_errors() -> Iterator[None]:
    """Turn what may be wrong with content, folders, files and ports into plain lines on stderr and exit code 1."""
    try:
        yield
    except ContentProblems as found:
        for line in found.lines(words()):
            click.echo(line, err=True)
        raise click.exceptions.Exit(1) from None
    except Refusal as refused:
        raise click.ClickException(clauses(refused.clauses)) from None
    except OSError as error:
        raise click.ClickException(phrase(denied(error))) from None


def denied(error: OSError) -> Message:
    """Return what an operating system denies, and why."""
    if error.errno == EADDRINUSE:
        return plain("that port is taken; name another with --port")
    if error.filename is None:
        return message("{why}", {"why": os_words(error)})
    return message("{file}: {why}", {"file": [str(error.filename), "name"], "why": os_words(error)})


def take_content(content: Path) -> ByContent:
    """Speak a content's language, say which content it is where nobody has named it, and return what is remembered."""
    memory = ByContent(content)
    speak_as(memory)
    if content == Path():
        click.echo(told(plain("The content is that of the folder you are in.")), err=True)
    return memory


def is_addressed(memory: ByContent) -> bool:
    """Return whether a content folder says where its site will stand."""

    def read() -> list[str]:
        # Who remembers it does not wait for what reads YAML.
        from configurator.catalog.own_address import public_address

        return [public_address(memory.folder)]

    return bool(memory.once(read, "address")[0])


def tell_lack_of_address(addressed: bool) -> None:
    """Say what a site does without where its content does not tell its public address."""
    if not addressed:
        lack = plain(
            "No public_address stands in showroom.yaml: the site has no site map, no full addresses for search engines "
            "and link previews, and a page for lost addresses that is whole at its top only."
        )
        click.echo(told(lack))


def catalog(content: Path) -> Catalog:
    """Return the catalog of a content folder, or end with its problems."""
    take_content(content)
    with plain_errors():
        found = load(content, asked_for())
    # What the content itself translates is known from here on.
    speak(found.words)
    return found


def reading(content: Path, wanted: Wanted | None = None) -> Reading:
    """Return what a content folder says, or what is wanted of it, or end with its problems."""
    memory = take_content(content)
    with plain_errors():
        found = remembered.reading(memory, asked_for(), wanted)
    speak(found.words)
    return found


def checked(content: Path) -> Checked:
    """Return what a check of a content folder finds, or end with its problems."""
    memory = take_content(content)
    with plain_errors():
        found = remembered.checked(memory, asked_for())
    speak(found["words"])
    return found


def language(written: str) -> str:
    """Return a language's code.

    :raises click.BadParameter: where there is no such language
    """
    # The readers of content are slow to load, and few commands need one.
    from configurator.catalog.fields import Code

    try:
        return Code().read(written)
    except Slip as slip:
        unknown = message("'{written}' is not known", {"written": [written, "name"]})
        raise click.BadParameter(clauses((unknown, *slip.clauses)), param_hint="LANGUAGE") from None


def known(hint: str, written: str, things: dict[str, Thing]) -> Thing:
    """Return the thing of that id.

    :raises click.BadParameter: with the nearest id, or with those that are known
    """
    if not written:
        missing = message("{option} is missing", {"option": [hint, "name"]})
        raise click.UsageError(clauses((missing, suggestion("", things))))
    if written not in things:
        unknown = message("there is no '{written}'", {"written": [written, "name"]})
        raise click.BadParameter(clauses((unknown, suggestion(written, things))), param_hint=hint)
    return things[written]


def picked(family: Family, written: Sequence[str]) -> dict[str, str]:
    """Return a pick for every choice of the family: those written as ``choice=option``, else the preset."""
    choices = {choice["id"]: {option["id"]: option for option in choice["options"]} for choice in family["choices"]}
    picks: dict[str, str] = {}
    for text in written:
        name, equals, option = text.partition("=")
        if not equals:
            wrong = message("'{written}' is not of the form choice=option", {"written": [text, "name"]})
            raise click.BadParameter(phrase(wrong), param_hint="--choice")
        options = known("--choice", name.strip(), choices)
        picks[name.strip()] = known(f"--choice {name.strip()}", option.strip(), options)["id"]
    return full_choices(family, picks)


def configuration(found: Reading, named: Named) -> Configuration:
    """Return the configuration that the options of a command name."""
    wanted = known("--family", named.family, found.families)
    return Configuration(known("--door", named.door, found.doors), wanted, picked(wanted, named.choices), {})


def place(asked: Configuration, at: str) -> Position:
    """Return the position ``open``, ``closed`` or a share of the way from open to closed."""
    numbers = resolve(asked.family, asked.choices)
    if at == "open":
        return open_position(numbers)
    if at == "closed":
        return closed_position(numbers)
    return position_at(numbers, float(at))


class At(click.ParamType[str]):
    """``open``, ``closed`` or a share from 0 to 1, kept as text."""

    name = "position"

    def convert(self, value: str, param: click.Parameter | None, ctx: click.Context | None) -> str:
        """Return the text unchanged when it names a position."""
        if value in ("open", "closed"):
            return value
        try:
            share = float(value)
        except ValueError:
            share = -1.0
        if not 0 <= share <= 1:
            wrong = message(
                "'{written}' is not a position; open, closed or a share such as 0.35 is expected",
                {"written": [value, "name"]},
            )
            self.fail(phrase(wrong), param, ctx)
        return value
