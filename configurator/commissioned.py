"""Papers from what a command is given: what is ordered, who writes it, and the file that it goes to."""

from dataclasses import dataclass
from datetime import date
from pathlib import Path

import click
from babel.dates import format_date

from configurator import linked
from configurator.asked import Configuration, Setting, plain_errors
from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import shapes as link_shapes
from configurator.browser.link.made_links import linked_order
from configurator.browser.link.visit_link import opening_link
from configurator.catalog import Catalog
from configurator.kernel.message import is_said, message, plain, say
from configurator.kernel.mount.hung import hung_with
from configurator.kernel.papers.blocks import Paper
from configurator.kernel.papers.install_paper import install_paper
from configurator.kernel.papers.making import Commission, Desk, hung_both, makings
from configurator.kernel.papers.measuring_paper import Sheet, measuring_paper
from configurator.kernel.papers.order_paper import order_paper
from configurator.kernel.papers.piece_codes import TRY_PAGE
from configurator.kernel.papers.visit_papers import blank_sheets, visit_sheets
from configurator.kernel.tongue import Words
from configurator.kernel.visit.visit_shapes import Visit
from configurator.papers.order_rows import order_csv, order_json
from configurator.papers.reader import SHEETS, Reader
from configurator.spoken import phrase, told
from configurator.tongues.speech import locale_of
from configurator.visit_file import read_file


def commission(asked: Configuration, catalog: Catalog) -> Commission:
    """Return what a link holds as something to be made.

    :raises click.ClickException: with the plain reason where the covering cannot go on the door
    """
    fit = hung_with(*asked)
    if is_said(fit["size"]["refusal"]):
        raise click.ClickException(say(fit["size"]["refusal"], catalog.words, catalog.showroom.units))
    return {
        "opening": "",
        "room": "",
        "socket": "",
        "controls": {},
        "links": {},
        "count": 1.0,
        "leaves": hung_both(fit),
        "note": "",
        "household": catalog.household,
    }


def commissions(catalog: Catalog, found: link_shapes.Opened) -> list[Commission]:
    """Return all that a link holds as something to be made."""
    here = linked.as_of(catalog, found)
    return [commission(linked.asked(here, one), here) for one in found["state"]["configurations"]]


def desk(catalog: Catalog, units: str, client: str, link: str) -> Desk:
    """Return where the papers are written: today, by the content's showroom, for a client and of a link, or of none."""
    return {
        "words": catalog.words,
        "units": units,
        "client": client,
        "showroom": catalog.showroom.name,
        "day": day_told(date.today(), catalog.words),
        "link": link,
        "home": public_home(catalog),
    }


def day_told(day: date, words: Words) -> str:
    """Return a day as a language writes it."""
    return format_date(day, "long", locale=locale_of(words["language"]))


def reader(catalog: Catalog, setting: Setting, own_units: str) -> Reader:
    """Return who reads a paper: in the units and on the sheet asked for, or in those of what it is about."""
    units = setting.units or own_units
    return Reader(catalog.words, units, setting.sheet or SHEETS[units])


def address(catalog: Catalog, written: str) -> str:
    """Return a link as it was written, or where the site's address is known, what follows its ``#`` under that."""
    home = public_home(catalog)
    return home + TRY_PAGE + written if home and "#" not in written else written


def public_home(catalog: Catalog) -> str:
    """Return where the site stands in public, with a closing slash, or nothing while that is not known."""
    public = catalog.showroom.public_address.rstrip("/")
    return f"{public}/" if public else ""


@dataclass
class Job:
    """What is to be made, who writes of it and who reads it."""

    commissions: list[Commission]
    desk: Desk
    reader: Reader

    def order(self) -> Paper:
        """Return the order to the workroom."""
        return order_paper(self.commissions, self.desk)

    def install(self) -> Paper:
        """Return the installer's sheet."""
        return install_paper(self.commissions, self.desk)

    def order_csv(self) -> str:
        """Return the order as a table."""
        return order_csv(makings(self.commissions), self.reader)

    def order_json(self) -> str:
        """Return the order as data."""
        return order_json(makings(self.commissions), self.desk, self.reader)


def is_visit(written: str) -> bool:
    """Return whether what was written names a visit's file rather than a link."""
    return written.endswith(".json") or Path(written).is_file()


def taken(catalog: Catalog, written: str, setting: Setting) -> Job:
    """Return what a link or a visit's file holds as a job, in the units and on the sheet asked for, or in its own.

    :raises click.ClickException: where a file cannot be read, or nothing of it can be made
    """
    if not is_visit(written):
        found = linked.opened(catalog, written)
        reads = reader(catalog, setting, found["state"]["units"])
        return Job(commissions(catalog, found), desk(catalog, reads.units, "", address(catalog, written)), reads)
    with plain_errors():
        visit = read_file(Path(written))
    held = visited(catalog, visit)
    if not held:
        raise click.ClickException(phrase(plain("nothing in this visit is decided")))
    reads = reader(catalog, setting, visit["units"])
    return Job(held, desk(catalog, reads.units, visit["client"], ""), reads)


def visited(catalog: Catalog, visit: Visit) -> list[Commission]:
    """Return what is decided in a visit as something to be made; what is left out is told on stderr."""
    ordered = linked_order(visit, page_catalog(catalog), opening_link)
    for note in ordered["notes"]:
        click.echo(told(note), err=True)
    return ordered["commissions"]


def measured_doors(catalog: Catalog, written: str) -> list[Sheet]:
    """Return the doors of a link or of a visit's file, to be measured; of neither, a blank sheet for any door."""
    if not written:
        return blank_sheets(page_catalog(catalog))
    if not is_visit(written):
        doors = [one["door"] for one in linked.opened(catalog, written)["state"]["configurations"]]
        return [{"room": "", "door": door, "blank": False, "household": catalog.household} for door in doors]
    with plain_errors():
        visit = read_file(Path(written))
    return visit_sheets(visit, page_catalog(catalog))


def measuring(catalog: Catalog, written: str, setting: Setting) -> tuple[Paper, Reader]:
    """Return the measuring sheets of a link, of a visit's file, or a blank one, and who reads them."""
    reads = reader(catalog, setting, catalog.showroom.units)
    return measuring_paper(measured_doors(catalog, written), desk(catalog, reads.units, "", "")), reads


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
