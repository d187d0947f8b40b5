"""The commands: each says whom to call, and imports what it alone needs, so that none waits for what others use."""

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

import click

from configurator import asked
from configurator.cache.by_content import ByContent
from configurator.catalog import Wanted
from configurator.kernel.message import message, plain, several
from configurator.kernel.tongue import wording
from configurator.places import CONTENT, usual_content
from configurator.spoken import phrase, told, words
from configurator.spoken_help import (
    LANGUAGE,
    SHOW_VERSION,
    SpokenGroup,
    SpokenOption,
    SpokenPath,
    SpokenRange,
    take_language,
)

if TYPE_CHECKING:
    from datetime import datetime

    from configurator.catalog import Catalog

FOLDER = SpokenPath(path_type=Path, file_okay=False)
PRESENT = SpokenPath(path_type=Path, file_okay=False, exists=True)

with_door = click.option("--door", metavar="ID", default="", cls=SpokenOption, help=wording("A door of the content."))
with_family = click.option(
    "--family", metavar="ID", default="", cls=SpokenOption, help=wording("A family of the content.")
)
with_content = click.option(
    "--content",
    type=PRESENT,
    default=usual_content,
    cls=SpokenOption,
    help=wording("The content [this folder, or the starter content]."),
)
with_port = click.option(
    "--port",
    type=SpokenRange(0, 65535),
    default=8000,
    show_default=True,
    cls=SpokenOption,
    help=wording("0: any free."),
)
with_choices = click.option(
    "--choice", "choices", metavar="K=V", multiple=True, cls=SpokenOption, help=wording("A pick; may be repeated.")
)
with_units = click.option(
    "--units",
    type=click.Choice(["in", "mm"]),
    cls=SpokenOption,
    help=wording("Lengths in words [the showroom's units]."),
)

with_sheet = click.option(
    "--sheet",
    type=click.Choice(["letter", "a4"]),
    cls=SpokenOption,
    help=wording("The sheet of paper [letter where lengths are in inches, else a4]."),
)
paper_option = partial(
    click.option,
    "-o",
    "--out",
    type=SpokenPath(path_type=Path, dir_okay=False),
    cls=SpokenOption,
    help=wording(".pdf or .html"),
)
with_paper = paper_option(required=True)
with_paper_if_any = paper_option()

MAIN_HELP = wording("Coverings for glazed doors: from YAML to drawings, figures and a site.")
BUILD_HELP = wording("""\
Build the site of CONTENT [this folder, or the starter content] into OUT [./site].

Example: astragal build my-showroom public""")
PUBLISH_HELP = wording("""\
Build the site into OUT and tell which of its files are new, changed or gone; others' files there stay.

Example: astragal publish public --content my-showroom --dry-run""")
CHECK_HELP = wording("""\
Check CONTENT [this folder, or the starter content] and list every problem.

Example: astragal check my-showroom""")
SERVE_HELP = wording("""\
Build CONTENT [this folder, or the starter content], serve it on 127.0.0.1 and build again when it changes.

Example: astragal serve my-showroom --port 8080""")
DEMO_HELP = wording("""\
Build the demo showroom from the starter content into ./site_demo.

Example: astragal demo --open""")
FIT_HELP = wording("""\
Print every figure, verdict and caution for one family on one door, for all that a LINK holds, or a table of all.

\b
Examples: astragal fit --door garden-pair --family cellular-shade --choice lift=motor-wired
          astragal fit "2/in/garden-pair:cellular-shade/qqrm3"
          astragal fit --all --csv > fits.csv""")
DRAW_HELP = wording("""\
Draw one view of one family on one door.

\b
Example: astragal draw --door garden-pair --family cellular-shade --view section --at 0.35 -o section.svg""")
QUOTE_HELP = wording("""\
Price all that a LINK or a visit's FILE holds: every piece, what it comes to, and how; as text, a paper or a table.

\b
Examples: astragal quote "2/in/garden-pair:cellular-shade/qqrm3"
          astragal quote house.visit.json -o quote.pdf
          astragal quote house.visit.json --csv > quote.csv""")
ORDER_HELP = wording("""\
Write the order to the workroom for all that a LINK or a visit's FILE holds, as a PDF or HTML file or as a table.

\b
Examples: astragal order "2/in/garden-pair:cellular-shade/qqrm3" -o order.pdf
          astragal order weir-cottage.visit.json --csv > order.csv""")
INSTALL_HELP = wording("""\
Write the installer's sheet for all that a LINK or a visit's FILE holds.

Example: astragal install weir-cottage.visit.json -o install.pdf""")
MEASURE_HELP = wording("""\
Write a measuring sheet for each door of a LINK or of a visit's FILE, or a blank one for any door.

Example: astragal measure -o blank.pdf""")
FIELD_HELP = wording("""\
Write the configurator of CONTENT [this folder, or the starter content] into one file that works without a network.

Example: astragal field my-showroom -o field.html""")
NEW_HELP = wording("""\
Start a showroom of your own in DIR from the starter content.

Example: astragal new my-showroom""")
VISIT_HELP = wording("""\
Tell a visit's FILE: what was measured and found, what comes of each proposal, what was agreed beside today.

Example: astragal visit weir-cottage.visit.json --content my-showroom""")
WORDS_HELP = wording("""\
Write what CONTENT [this folder, or the starter content] says into its gettext catalog of LANGUAGE, to translate.

Example: astragal words es my-showroom""")


@click.group(name="astragal", cls=SpokenGroup, help=MAIN_HELP, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(package_name="astragal", message="%(prog)s %(version)s", cls=SpokenOption, help=SHOW_VERSION)
@click.option(
    LANGUAGE,
    metavar="CODE",
    is_eager=True,
    expose_value=False,
    callback=take_language,
    cls=SpokenOption,
    help=wording("The language to speak, such as en or es [the content's]."),
)
def main() -> None:
    """Coverings for glazed doors: from YAML to drawings, figures and a site."""


@main.command(help=BUILD_HELP)
@click.argument("content", type=PRESENT, default=usual_content)
@click.argument("out", type=FOLDER, default="site")
@click.option("-q", "--quiet", is_flag=True, cls=SpokenOption, help=wording("Say nothing but what is wrong."))
@click.option("-v", "--verbose", is_flag=True, cls=SpokenOption, help=wording("Tell each step."))
def build(content: Path, out: Path, quiet: bool, verbose: bool) -> None:
    """Build the site of CONTENT [this folder, or the starter content] into OUT [./site]."""
    memory = asked.take_content(content)
    with asked.plain_errors():
        build_again(memory, out, quiet, verbose)
    if quiet:
        return
    built = message(
        "Built {folder}: open {file}, or put the folder on any web space.",
        {"folder": [str(out), "name"], "file": [str(out / "index.html"), "name"]},
    )
    click.echo(told(built))
    asked.tell_lack_of_address(asked.is_addressed(memory))


def build_again(memory: ByContent, out: Path, quiet: bool = False, verbose: bool = False) -> None:
    """Build a site, unless it lies there already as the build would leave it."""
    from configurator.site.mkdocs import unchanged

    if not unchanged.stands(memory, out):
        # MkDocs is slow to load, and only a site that is built needs it.
        from configurator.progress import Progress
        from configurator.site.mkdocs.build import build_remembering

        build_remembering(memory, out, Progress(quiet, verbose).watch)


@main.command(help=PUBLISH_HELP)
@click.argument("out", type=FOLDER)
@click.option("--dry-run", is_flag=True, cls=SpokenOption, help=wording("Tell it, and change nothing."))
@with_content
def publish(out: Path, dry_run: bool, content: Path) -> None:
    """Build the site into OUT and tell which of its files are new, changed or gone; others' files there stay."""
    from configurator.progress import Progress
    from configurator.site.mkdocs.publish import publish as publish_site

    memory = asked.take_content(content)
    with asked.plain_errors():
        changes = publish_site(memory, out, dry_run, Progress().watch)
    kinds = {
        wording("new: {file}"): changes.new,
        wording("changed: {file}"): changes.changed,
        wording("gone: {file}"): changes.gone,
    }
    for text, names in kinds.items():
        for name in names:
            click.echo(phrase(message(text, {"file": [name, "name"]})))
    count: dict[str, list[float | str]] = {"count": [len(changes.same), "count"]}
    click.echo(told(several("{count} file stays as it is.", "{count} files stay as they are.", count)))
    asked.tell_lack_of_address(asked.is_addressed(memory))


@main.command(help=CHECK_HELP)
@click.argument("content", type=PRESENT, default=usual_content)
def check(content: Path) -> None:
    """Check CONTENT [this folder, or the starter content] and list every problem."""
    found = asked.checked(content)
    doors, handles, families, pages = found["counts"]
    counts = [
        several("{count} door", "{count} doors", {"count": [doors, "count"]}),
        several("{count} handle", "{count} handles", {"count": [handles, "count"]}),
        several("{count} family", "{count} families", {"count": [families, "count"]}),
        several("{count} page", "{count} pages", {"count": [pages, "count"]}),
    ]
    counted = ", ".join(phrase(count) for count in counts)
    click.echo(f"{content}: {counted}: {phrase(plain('no problem found.'))}")
    for note in found["notes"]:
        click.echo("; ".join([told(note[0]), *(phrase(part) for part in note[1:])]))
    asked.tell_lack_of_address(found["addressed"])


@main.command(help=SERVE_HELP)
@click.argument("content", type=PRESENT, default=usual_content)
@with_port
def serve(content: Path, port: int) -> None:
    """Build CONTENT [this folder, or the starter content], serve it on 127.0.0.1 and build again when it changes."""
    from configurator.local import HOST
    from configurator.site.mkdocs.serve import serve as serve_site

    asked.take_content(content)
    with asked.plain_errors():
        serve_site(content, HOST, port, words())


@main.command(help=DEMO_HELP)
@click.option("--open", "show", is_flag=True, cls=SpokenOption, help=wording("Serve it and open a browser."))
@with_port
def demo(show: bool, port: int) -> None:
    """Build the demo showroom from the starter content into ./site_demo."""
    from configurator import local

    out = Path("site_demo")
    with asked.plain_errors():
        server = local.folder_server(out, port) if show else None
        build_again(ByContent(CONTENT), out)
        named: dict[str, list[float | str]] = {"folder": [str(out), "name"], "file": [str(out / "index.html"), "name"]}
        click.echo(told(message("Built {folder}: open {file}.", named)))
        if server:
            local.show(server)


@main.command(help=FIT_HELP)
@click.argument("link", required=False, default="")
@with_door
@with_family
@with_choices
@click.option("--at", type=asked.At(), cls=SpokenOption, help=wording("One more position: open, closed or a share."))
@click.option(
    "--json", "as_json", is_flag=True, cls=SpokenOption, help=wording("One JSON object: lengths in mm, shares 0 to 1.")
)
@click.option(
    "--all", "everything", is_flag=True, cls=SpokenOption, help=wording("With --csv: every family on every door.")
)
@click.option("--csv", "as_csv", is_flag=True, cls=SpokenOption, help=wording("With --all: a table."))
@with_units
@with_content
def fit(
    link: str,
    door: str,
    family: str,
    choices: tuple[str, ...],
    at: str | None,
    as_json: bool,
    everything: bool,
    as_csv: bool,
    units: str | None,
    content: Path,
) -> None:
    """Print every figure, verdict and caution for one family on one door, for a link, or a table of all of them."""
    from configurator import report

    if link and (door or family or choices or everything):
        raise click.UsageError(told(plain("A link says which doors, families and picks; none are named beside it.")))
    if everything != as_csv:
        raise click.UsageError(told(plain("--all and --csv go together.")))
    if everything and (door or family or choices or at or as_json):
        raise click.UsageError(
            told(plain("--all is every family on every door, as it comes: only --content goes with it."))
        )
    if everything:
        click.echo(report.as_csv(asked.reading(content)), nl=False)
        return
    if link:
        tell_link(asked.catalog(content), link, at, as_json, units)
        return
    found = asked.reading(content, Wanted(door, family))
    wanted = asked.configuration(found, door, family, choices)
    tell = report.as_json if as_json else report.as_text
    click.echo(tell(found, wanted, at, units or found.units))


def tell_link(catalog: "Catalog", link: str, at: str | None, as_json: bool, units: str | None) -> None:
    """Print what a link holds in its own units; what of it could not be read is told on stderr."""
    from configurator import linked

    opened = linked.opened(catalog, link)
    for problem in opened["problems"]:
        click.echo(told(problem), err=True)
    tell = linked.as_json if as_json else linked.as_text
    click.echo(tell(catalog, opened, at, units or opened["state"]["units"]))


@main.command("visit", help=VISIT_HELP)
@click.argument("file", type=SpokenPath(path_type=Path, dir_okay=False, exists=True))
@click.option(
    "--json", "as_json", is_flag=True, cls=SpokenOption, help=wording("One JSON object: lengths in mm, shares 0 to 1.")
)
@with_units
@with_content
def tell_visit(file: Path, as_json: bool, units: str | None, content: Path) -> None:
    """Tell a visit's FILE: what was measured and found, what comes of each proposal, what was agreed beside today."""
    from configurator import visited
    from configurator.visit_file import read_file

    catalog = asked.catalog(content)
    with asked.plain_errors():
        visit = read_file(file)
    tell = visited.as_json if as_json else visited.as_text
    click.echo(tell(catalog, visit, units or visit["units"]))


@main.command(help=DRAW_HELP)
@with_door
@with_family
@with_choices
@click.option("--view", type=click.Choice(asked.VIEWS), default="elevation", show_default=True, cls=SpokenOption)
@click.option(
    "--at",
    type=asked.At(),
    default="closed",
    show_default=True,
    cls=SpokenOption,
    help=wording("open, closed or a share."),
)
@click.option(
    "-o",
    "--out",
    type=SpokenPath(path_type=Path, dir_okay=False),
    required=True,
    cls=SpokenOption,
    help=wording(".svg or .png"),
)
@with_units
@with_content
def draw(
    door: str, family: str, choices: tuple[str, ...], view: str, at: str, out: Path, units: str | None, content: Path
) -> None:
    """Draw one view of one family on one door."""
    from configurator import paper

    found = asked.reading(content, Wanted(door, family))
    wanted = asked.configuration(found, door, family, choices)
    with asked.plain_errors():
        drawing = paper.drawn(found, wanted, view, at, units or found.units)
        paper.write(drawing, out, painted=view == "room")
    click.echo(told(message("Drew {file}.", {"file": [str(out), "name"]})))


@main.command(help=QUOTE_HELP)
@click.argument("job", metavar="FILE|LINK")
@with_paper_if_any
@click.option("--csv", "as_csv", is_flag=True, cls=SpokenOption, help=wording("A table: a line for each amount."))
@click.option(
    "--json", "as_json", is_flag=True, cls=SpokenOption, help=wording("One JSON object: amounts in minor units.")
)
@click.option(
    "--on", "day", type=click.DateTime(["%Y-%m-%d"]), cls=SpokenOption, help=wording("The day of the quote [today].")
)
@with_sheet
@with_units
@with_content
def quote(
    job: str,
    out: Path | None,
    as_csv: bool,
    as_json: bool,
    day: "datetime | None",
    sheet: str | None,
    units: str | None,
    content: Path,
) -> None:
    """Price all that a LINK or a visit's FILE holds: every piece, what it comes to, and how."""
    from configurator import commissioned, quoted
    from configurator.kernel.papers.quote_paper import quote_paper
    from configurator.papers.quote_rows import quote_csv, quote_json

    if [bool(out), as_csv, as_json].count(True) > 1:
        raise click.UsageError(told(plain("Only one of --out, --csv and --json is possible.")))
    catalog = asked.catalog(content)
    with asked.plain_errors():
        made, reader = quoted.taken(catalog, job, day, units, sheet)
    if out:
        commissioned.write(quote_paper(made), reader, out)
        click.echo(told(message("Wrote {file}.", {"file": [str(out), "name"]})))
        return
    tell = quote_json if as_json else quote_csv if as_csv else quoted.as_text
    click.echo(tell(made, reader), nl=not as_csv)


@main.command(help=ORDER_HELP)
@click.argument("link", metavar="FILE|LINK")
@with_paper_if_any
@click.option("--csv", "as_csv", is_flag=True, cls=SpokenOption, help=wording("A table: a line for each piece."))
@click.option(
    "--json", "as_json", is_flag=True, cls=SpokenOption, help=wording("One JSON object: lengths in mm, shares 0 to 1.")
)
@with_sheet
@with_units
@with_content
def order(
    link: str, out: Path | None, as_csv: bool, as_json: bool, sheet: str | None, units: str | None, content: Path
) -> None:
    """Write the order to the workroom for all that a LINK or a visit's FILE holds, as a file or as a table."""
    from configurator import commissioned

    if [bool(out), as_csv, as_json].count(True) != 1:
        raise click.UsageError(told(plain("One of --out, --csv and --json is needed.")))
    job = commissioned.taken(asked.catalog(content), link, units, sheet)
    if out:
        commissioned.write(job.order(), job.reader, out)
        click.echo(told(message("Wrote {file}.", {"file": [str(out), "name"]})))
    else:
        click.echo(job.order_csv() if as_csv else job.order_json(), nl=not as_csv)


@main.command(help=INSTALL_HELP)
@click.argument("link", metavar="FILE|LINK")
@with_paper
@with_sheet
@with_units
@with_content
def install(link: str, out: Path, sheet: str | None, units: str | None, content: Path) -> None:
    """Write the installer's sheet for all that a LINK or a visit's FILE holds."""
    from configurator import commissioned

    job = commissioned.taken(asked.catalog(content), link, units, sheet)
    commissioned.write(job.install(), job.reader, out)
    click.echo(told(message("Wrote {file}.", {"file": [str(out), "name"]})))


@main.command(help=MEASURE_HELP)
@click.argument("link", metavar="[FILE|LINK]", required=False, default="")
@with_paper
@with_sheet
@with_units
@with_content
def measure(link: str, out: Path, sheet: str | None, units: str | None, content: Path) -> None:
    """Write a measuring sheet for each door of a LINK or of a visit's FILE, or a blank one for any door."""
    from configurator import commissioned

    commissioned.write(*commissioned.measuring(asked.catalog(content), link, units, sheet), out)
    click.echo(told(message("Wrote {file}.", {"file": [str(out), "name"]})))


@main.command(help=FIELD_HELP)
@click.argument("content", type=PRESENT, default=usual_content)
@click.option(
    "-o",
    "--out",
    type=SpokenPath(path_type=Path, dir_okay=False),
    default="field.html",
    show_default=True,
    cls=SpokenOption,
    help=wording("The file."),
)
def field(content: Path, out: Path) -> None:
    """Write the configurator of CONTENT [this folder, or the starter content] into one file."""
    from configurator.site.mkdocs.field_file import field_file

    asked.take_content(content)
    with asked.plain_errors():
        out.write_text(field_file(content), encoding="utf-8")
    click.echo(told(message("Wrote {file}.", {"file": [str(out), "name"]})))


@main.command(help=NEW_HELP)
@click.argument("folder", metavar="DIR", type=FOLDER)
def new(folder: Path) -> None:
    """Start a showroom of your own in DIR from the starter content."""
    from configurator.catalog.starter import copy_starter

    with asked.plain_errors():
        copy_starter(folder)
    started = message(
        "Started {folder}. Change its YAML files, then: astragal serve {folder}", {"folder": [str(folder), "name"]}
    )
    click.echo(told(started))


@main.command("words", help=WORDS_HELP)
@click.argument("language")
@click.argument("content", type=PRESENT, default=usual_content)
def write_words(language: str, content: Path) -> None:
    """Write what CONTENT [this folder, or the starter content] says into its gettext catalog of LANGUAGE."""
    from configurator.translating import untranslated

    found = asked.catalog(content)
    with asked.plain_errors():
        click.echo(told(untranslated.renewed(found, asked.language(language))))
