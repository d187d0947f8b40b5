"""The commands' help in the language asked for: click's frame around it and our own words."""

from copy import copy
from typing import Any

import click

from configurator.kernel.message import message
from configurator.kernel.tongue import in_words, wording
from configurator.spoken import phrase, words, words_of

# What click itself writes above the parts of a help.
HEADINGS = (wording("Options"), wording("Commands"))
SHOW_HELP = wording("Show this message and exit.")
SHOW_VERSION = wording("Show the version and exit.")


class SpokenFormatter(click.HelpFormatter):
    """Writes the headings in the language asked for."""

    def write_usage(self, prog: str, args: str = "", prefix: str | None = None) -> None:
        """Write the line that shows how the command is called."""
        super().write_usage(prog, args, prefix or in_words(wording("Usage:"), words()) + " ")

    def write_heading(self, heading: str) -> None:
        """Write a heading."""
        super().write_heading(in_words(heading, words()))


class SpokenContext(click.Context):
    """A context whose help is spoken."""

    formatter_class = SpokenFormatter


class SpokenOption(click.Option):
    """An option whose help is spoken."""

    def get_help_record(self, ctx: click.Context) -> tuple[str, str] | None:
        """Return how the option is written and its help."""
        spoken = copy(self)
        spoken.help = in_words(self.help or "", words())
        return super(SpokenOption, spoken).get_help_record(ctx)


class SpokenCommand(click.Command):
    """A command whose help is spoken."""

    context_class = SpokenContext

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
    """A group of commands whose help is spoken."""

    command_class = SpokenCommand


def take_language(context: click.Context, option: click.Parameter, value: Any) -> None:
    """Have the command speak the language asked for; a wrong code is told with what to write."""
    if not value:
        return
    try:
        context.find_root().obj = words_of(value)
    except ValueError as wrong:
        told = message("{code} is no language's code; such as en, es or en-GB is expected", {"code": [value, "name"]})
        raise click.BadParameter(phrase(told), context, option) from wrong
