"""The commands' help in the language asked for: click's frame around it and our own words."""

import sys
from collections.abc import Sequence
from contextlib import suppress
from copy import copy
from pathlib import Path
from typing import Any

import click

from configurator.kernel.message import message
from configurator.kernel.tongue import ENGLISH, in_words, wording
from configurator.remembered import words_of
from configurator.spoken import Voice, phrase, voice, words
from configurator.spoken_click import click_listens, give_click

LANGUAGE = "--language"

# What stands in a help for what is to be written.
PLACEHOLDERS = (
    wording("[OPTIONS]"),
    wording("COMMAND [ARGS]..."),
    wording("FILE"),
    wording("DIRECTORY"),
    wording("INTEGER RANGE"),
    wording("POSITION"),
    wording("CODE"),
)
# What click calls the kinds of value.
KINDS = (wording("file"), wording("directory"), wording("integer range"))
SHOW_HELP = wording("Show this message and exit.")
SHOW_VERSION = wording("Show the version and exit.")


class SpokenPath(click.Path):
    """A path whose faults are told."""

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> Any:
        """Return the path that was written."""
        spoken = copy(self)
        spoken.name = in_words(self.name, words())
        return super(SpokenPath, spoken).convert(value, param, ctx)


class SpokenRange(click.IntRange):
    """A whole number between two limits whose faults are told."""

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> int:
        """Return the number that was written."""
        spoken = copy(self)
        spoken.name = in_words(self.name, words())
        return super(SpokenRange, spoken).convert(value, param, ctx)


class SpokenOption(click.Option):
    """An option whose help is spoken."""

    def make_metavar(self, ctx: click.Context) -> str:
        """Return what stands for the option's value."""
        return in_words(super().make_metavar(ctx), words())

    def get_help_record(self, ctx: click.Context) -> tuple[str, str] | None:
        """Return how the option is written and its help."""
        spoken = copy(self)
        spoken.help = in_words(self.help or "", words())
        return super(SpokenOption, spoken).get_help_record(ctx)


class SpokenCommand(click.Command):
    """A command whose help is spoken."""

    def collect_usage_pieces(self, ctx: click.Context) -> list[str]:
        """Return what stands after the command's name where it is shown how to call it, by a slip too."""
        return [in_words(piece, words(ctx)) for piece in super().collect_usage_pieces(ctx)]

    def get_help_option(self, ctx: click.Context) -> click.Option | None:
        """Return the option that shows the help."""
        found = super().get_help_option(ctx)
        if found is None:
            return None
        spoken = copy(found)
        spoken.help = in_words(SHOW_HELP, words())
        return spoken

    def format_help_text(self, ctx: click.Context, formatter: click.HelpFormatter) -> None:
        """Write the command's help."""
        spoken = copy(self)
        spoken.help = in_words(self.help or "", words())
        super(SpokenCommand, spoken).format_help_text(ctx, formatter)

    def get_short_help_str(self, limit: int = 45) -> str:
        """Return the first sentence of the command's help."""
        spoken = copy(self)
        spoken.help = in_words(self.help or "", words())
        return super(SpokenCommand, spoken).get_short_help_str(limit)


class SpokenGroup(SpokenCommand, click.Group):
    """A group of commands whose help is spoken, in the language asked for wherever ``--language`` stands."""

    command_class = SpokenCommand

    def main(self, args: Sequence[str] | None = None, *more: Any, **extra: Any) -> Any:
        """Run the command that the arguments name."""
        given, code = language_first(list(sys.argv[1:] if args is None else args))
        with click_listens() as folder:
            extra["obj"] = heard(code, folder)
            return super().main(given, *more, **extra)


def language_first(given: list[str]) -> tuple[list[str], str]:
    """Return arguments with the language asked for in front, and its code; empty where none is asked for."""
    end = given.index("--") if "--" in given else len(given)
    rest: list[str] = []
    code = ""
    words_left = iter(given[:end])
    for word in words_left:
        if word == LANGUAGE:
            code = next(words_left, "")
        elif word.startswith(f"{LANGUAGE}="):
            code = word.partition("=")[2]
        else:
            rest.append(word)
    return ([LANGUAGE, code, *rest, *given[end:]], code) if code else (given, "")


def heard(code: str, folder: Path) -> Voice:
    """Return the voice of a command: of the language asked for, or English where there is none of that code."""
    with suppress(ValueError):
        if code:
            words_asked = words_of(code)
            give_click(words_asked, folder)
            return Voice(folder, words_asked, True)
    return Voice(folder, ENGLISH, False)


def take_language(context: click.Context, option: click.Parameter, value: Any) -> None:
    """Refuse a code of no language with what to write; the command speaks the language asked for from its start."""
    speaking = voice()
    if value and not (speaking and speaking.asked):
        told = message("{code} is no language's code; such as en, es or en-GB is expected", {"code": [value, "name"]})
        raise click.BadParameter(phrase(told), context, option)
