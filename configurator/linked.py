"""What a link holds, as a terminal shows it: its own doors, picks, numbers set by hand and household."""

import json
from dataclasses import replace

import click

from configurator import report
from configurator.asked import Configuration
from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import decode
from configurator.browser.link import shapes as link_shapes
from configurator.browser.link.decode import CUT_SHORT, NEWER, NOT_A_LINK
from configurator.catalog import Catalog
from configurator.kernel.message import message, plain, say
from configurator.kernel.moment import moment
from configurator.kernel.mount.hung import hung_with
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import in_words, wording
from configurator.spoken import phrase
from configurator.spoken import told as spoken_told

UNREADABLE = {
    NOT_A_LINK: wording("this address holds no configuration that can be read"),
    NEWER: wording("this link was made by a newer version of Astragal"),
    CUT_SHORT: wording("this link has been cut short or changed on its way; ask for it again"),
}


def is_linked(written: str) -> bool:
    """Return whether what was written looks like a link of configurations: whole, or what follows its ``#``."""
    version, slash, _ = written.rpartition("#")[2].partition("/")
    return bool(slash) and version.isdigit()


def opened(catalog: Catalog, written: str) -> link_shapes.Opened:
    """Return what a link opens to: a whole address, or only what follows its ``#``; what of it could not be read is
    told on stderr.

    :raises click.BadParameter: where nothing of it can be shown; a page would show a fresh door, a command must not
    """
    fragment = written.rpartition("#")[2]
    if not fragment:
        raise click.BadParameter(phrase(plain(UNREADABLE[NOT_A_LINK])), param_hint="LINK")
    told = decode(fragment, page_catalog(catalog))
    for problem in told["problems"]:
        if problem["text"] in UNREADABLE:
            raise click.BadParameter(phrase(plain(UNREADABLE[problem["text"]])), param_hint="LINK")
        click.echo(spoken_told(problem), err=True)
    return told


def asked(catalog: Catalog, one: link_shapes.Configuration) -> Configuration:
    """Return a link's configuration as the commands have it."""
    return Configuration(one["door"], catalog.families[one["family"]], one["choices"], one["wishes"])


def as_of(catalog: Catalog, told: link_shapes.Opened) -> Catalog:
    """Return the catalog with the link's household in place of the showroom's."""
    return replace(catalog, household=told["state"]["household"])


def changes(told: link_shapes.Opened, number: int) -> list[link_shapes.Difference]:
    """Return what has moved since the link was made, of one of its configurations."""
    return [change for change in told["changes"] if change["configuration"] == number]


def change_line(change: link_shapes.Difference, catalog: Catalog, units: str) -> str:
    """Return what was and what is, with the figure's name."""
    was, now = (say(change[when], catalog.words, units) for when in ("then", "now"))
    then: Message = message("when the link was made: {was}; now: {now}", {"was": [was, "name"], "now": [now, "name"]})
    return f"  {in_words(change['name'], catalog.words)}: {phrase(then)}"


def as_text(catalog: Catalog, told: link_shapes.Opened, at: str | None, units: str) -> str:
    """Return every configuration of a link: its answer, how it stands there, and what has moved since."""
    here = as_of(catalog, told)
    parts: list[str] = []
    for number, one in enumerate(told["state"]["configurations"]):
        wanted = asked(here, one)
        parts.append(report.as_text(here, wanted, at, units))
        figures = moment(hung_with(*wanted), one["place"])
        if figures:
            lines = [report.figure_lines(figure, here.words, units) for figure in figures]
            parts.append(report.heading(in_words(wording("As it stands in the link"), here.words)) + "\n".join(lines))
        moved = [change_line(change, here, units) for change in changes(told, number)]
        if moved:
            title = in_words(wording("What is no longer as it was when the link was made"), here.words)
            parts.append(report.heading(title) + "\n".join(moved))
    return "\n\n".join(parts)


def as_json(catalog: Catalog, told: link_shapes.Opened, at: str | None, units: str) -> str:
    """Return one JSON object: what of the link could not be read, and its configurations, each with its answer.

    Lengths are in mm; ``wishes`` are the numbers set by hand, ``changes`` what has moved since the link was made.
    """
    here = as_of(catalog, told)
    held = []
    for number, one in enumerate(told["state"]["configurations"]):
        moved = [
            {"id": change["id"], "was": say(change["then"], here.words, units)} for change in changes(told, number)
        ]
        answer = report.answer_json(here, asked(here, one), at, units)
        held.append({**answer, "wishes": one["wishes"], "place": one["place"], "changes": moved})
    problems = [say(problem, here.words, units) for problem in told["problems"]]
    return json.dumps({"problems": problems, "configurations": held}, indent=2, ensure_ascii=False)
