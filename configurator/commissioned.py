"""Papers from what a command is given: what is ordered, who writes it, and the file that it goes to."""

from dataclasses import dataclass
from datetime import date
from pathlib import Path

import click
from babel.dates import format_date

from configurator import linked
from configurator.asked import Configuration
from configurator.browser.link import shapes as link_shapes
from configurator.catalog import Catalog
from configurator.kernel.message import is_said, message, say
from configurator.kernel.mount.hung import hung_with
from configurator.kernel.papers.blocks import Paper
from configurator.kernel.papers.making import Commission, Desk, hung_both, makings
from configurator.kernel.papers.order_paper import order_paper
from configurator.papers.order_rows import order_csv, order_json
from configurator.papers.reader import SHEETS, Reader
from configurator.spoken import phrase, told
from configurator.tongues.speech import locale_of

TRY_PAGE = "try.html#"


def opened(catalog: Catalog, written: str) -> link_shapes.Opened:
    """Return what a link opens to; what of it could not be read is told on stderr."""
    found = linked.opened(catalog, written)
    for problem in found["problems"]:
        click.echo(told(problem), err=True)
    return found


def commission(asked: Configuration, catalog: Catalog) -> Commission:
    """Return what a link holds as something to be made.

    :raises click.ClickException: with the plain reason where the covering cannot go on the door
    """
    fit = hung_with(*asked)
    if is_said(fit["size"]["refusal"]):
        raise click.ClickException(say(fit["size"]["refusal"], catalog.words, catalog.showroom.units))
    return {
        "room": "",
        "socket": "",
        "count": 1.0,
        "leaves": hung_both(fit),
        "note": "",
        "household": catalog.household,
    }


def commissions(catalog: Catalog, found: link_shapes.Opened) -> list[Commission]:
    """Return all that a link holds as something to be made."""
    here = linked.as_of(catalog, found)
    return [commission(linked.asked(here, one), here) for one in found["state"]["configurations"]]


def desk(catalog: Catalog, units: str, written: str) -> Desk:
    """Return where the papers are written: today, by the content's showroom, of a link or of nothing."""
    fragment = written.rpartition("#")[2]
    address = catalog.showroom.public_address.rstrip("/")
    base = f"{address}/{TRY_PAGE}" if address else ""
    return {
        "words": catalog.words,
        "units": units,
        "client": "",
        "showroom": catalog.showroom.name,
        "day": format_date(date.today(), "long", locale=locale_of(catalog.words["language"])),
        "link": written if "#" in written else f"{base}{fragment}",
    }


@dataclass
class Job:
    """What is to be made, who writes of it and who reads it."""

    commissions: list[Commission]
    desk: Desk
    reader: Reader

    def order(self) -> Paper:
        """Return the order to the workroom."""
        return order_paper(self.commissions, self.desk)

    def order_csv(self) -> str:
        """Return the order as a table."""
        return order_csv(makings(self.commissions), self.reader)

    def order_json(self) -> str:
        """Return the order as data."""
        return order_json(makings(self.commissions), self.desk, self.reader)


def taken(catalog: Catalog, written: str, units: str | None, sheet: str | None) -> Job:
    """Return what a link holds as a job, in the units and on the sheet asked for, or else in its own."""
    found = opened(catalog, written)
    own = units or found["state"]["units"]
    here = desk(catalog, own, written)
    return Job(commissions(catalog, found), here, Reader(catalog.words, own, sheet or SHEETS[own]))


def write(paper: Paper, reader: Reader, out: Path) -> None:
    """Write a paper as PDF or HTML, by the file's name.

    :raises click.BadParameter: when the name ends otherwise, or names a folder that is not there
    """
    if not out.parent.is_dir():
        missing = message("there is no folder '{folder}'", {"folder": [str(out.parent), "name"]})
        raise click.BadParameter(phrase(missing), param_hint="--out")
    if out.suffix == ".pdf":
        # What writes PDF is slow to load, and nothing else needs it.
        from configurator.papers.paper_pdf import paper_pdf

        out.write_bytes(paper_pdf(paper, reader))
    elif out.suffix == ".html":
        from configurator.papers.paper_html import paper_html

        out.write_text(paper_html(paper, reader), encoding="utf-8")
    else:
        wrong = message("'{file}' ends neither in .pdf nor in .html", {"file": [str(out), "name"]})
        raise click.BadParameter(phrase(wrong), param_hint="--out")
