"""How far a build has come, on stderr: a bar on a terminal, plain lines elsewhere."""

import sys
from collections.abc import Iterator

import click

from configurator.kernel.message import message, plain
from configurator.site.answers import Added
from configurator.spoken import told

AT_WORK = plain("Working out answers and drawings.")


class Progress:
    """Tells how far a build has come: ``quiet`` nothing at all, ``verbose`` each step by its name."""

    def __init__(self, quiet: bool = False, verbose: bool = False) -> None:
        self.quiet = quiet
        self.verbose = verbose

    def watch(self, steps: Iterator[tuple[str, Added]], count: int) -> Iterator[tuple[str, Added]]:
        """Yield steps, each with its name, as they are done; there are ``count`` in all."""
        if self.quiet:
            yield from steps
        elif sys.stderr.isatty() and not self.verbose:
            with click.progressbar(steps, count, told(AT_WORK), file=sys.stderr) as seen:
                yield from seen
        else:
            yield from self.in_lines(steps, count)

    def in_lines(self, steps: Iterator[tuple[str, Added]], count: int) -> Iterator[tuple[str, Added]]:
        """Yield steps, with a line at the beginning and, where each is told, for each that is done."""
        click.echo(told(AT_WORK), err=True)
        for done, step in enumerate(steps, 1):
            if self.verbose:
                terms: dict[str, list[float | str]] = {
                    "done": [done, "count"],
                    "all": [count, "count"],
                    "name": [step[0], "name"],
                }
                click.echo(told(message("{done} of {all}: {name}", terms)), err=True)
            yield step
