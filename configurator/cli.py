"""The commands: each says whom to call, and imports what it alone needs, so that none waits for what others use."""

from pathlib import Path
from typing import TYPE_CHECKING

import click

from configurator import asked, options
from configurator.asked import Named, Setting
from configurator.cache.by_content import ByContent
from configurator.catalog import Wanted
from configurator.kernel.message import message, plain, several
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import wording
from configurator.options import FitForm, PaperForm, flag
from configurator.places import CONTENT, usual_content
from configurator.spoken import phrase, told, words
from configurator.spoken_help import LANGUAGE, SHOW_VERSION, SpokenGroup, SpokenOption, take_language

if TYPE_CHECKING:
    from datetime import datetime

    from configurator.catalog import Catalog


@click.group(
    name="astragal", cls=SpokenGroup, help=options.MAIN_HELP, context_settings={"help_option_names": ["-h", "--help"]}
)
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


@main.command(help=options.BUILD_HELP)
@click.argument("content", type=options.PRESENT, default=usual_content)
@click.argument("out", type=options.FOLDER, default="site")
@flag("-q", "--quiet", told=wording("Say nothing but what is wrong."))
@flag("-v", "--verbose", told=wording("Tell each step."))
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


@main.command(help=options.PUBLISH_HELP)
@click.argument("out", type=options.FOLDER)
@flag("--dry-run", told=wording("Tell it, and change nothing."))
@options.with_content
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


@main.command(help=options.CHECK_HELP)
@click.argument("content", type=options.PRESENT, default=usual_content)
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


@main.command(help=options.SERVE_HELP)
@click.argument("content", type=options.PRESENT, default=usual_content)
@options.with_port
def serve(content: Path, port: int) -> None:
    """Build CONTENT [this folder, or the starter content], serve it on 127.0.0.1 and build again when it changes."""
    from configurator.local import HOST
    from configurator.site.mkdocs.serve import serve as serve_site

    asked.take_content(content)
    with asked.plain_errors():
        serve_site(content, HOST, port, words())


@main.command(help=options.DEMO_HELP)
@flag("--open", "show", told=wording("Serve it and open a browser."))
@options.with_port
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


@main.command(help=options.FIT_HELP)
@click.argument("link", required=False, default="")
@options.with_named
@click.option("--at", type=asked.At(), cls=SpokenOption, help=wording("One more position: open, closed or a share."))
@options.with_fit_form
@options.with_setting
def fit(link: str, named: Named, at: str | None, form: FitForm, setting: Setting) -> None:
    """Print every figure, verdict and caution for one family on one door, for a link, or a table of all of them."""
    from configurator import report

    if link and (any(named) or form.everything):
        raise click.UsageError(told(plain("A link says which doors, families and picks; none are named beside it.")))
    if form.everything != form.as_csv:
        raise click.UsageError(told(plain("--all and --csv go together.")))
    if form.everything and (any(named) or at or form.as_json):
        raise click.UsageError(
            told(plain("--all is every family on every door, as it comes: only --content goes with it."))
        )
    if form.everything:
        click.echo(report.as_csv(asked.reading(setting.content)), nl=False)
        return
    if link:
        tell_link(asked.catalog(setting.content), link, at, form.as_json, setting.units)
        return
    found = asked.reading(setting.content, Wanted(named.door, named.family))
    tell = report.as_json if form.as_json else report.as_text
    click.echo(tell(found, asked.configuration(found, named), at, setting.units or found.units))


def tell_link(catalog: "Catalog", link: str, at: str | None, as_json: bool, units: str | None) -> None:
    """Print what a link holds, in its own units where no others are asked for."""
    from configurator import linked

    opened = linked.opened(catalog, link)
    tell = linked.as_json if as_json else linked.as_text
    click.echo(tell(catalog, opened, at, units or opened["state"]["units"]))


@main.command("visit", help=options.VISIT_HELP)
@click.argument("written", metavar="FILE|LINK", type=options.LinkOrFile(path_type=Path, dir_okay=False, exists=True))
@options.with_json
@options.with_setting
def tell_visit(written: str | Path, as_json: bool, setting: Setting) -> None:
    """Tell a visit's FILE, or a LINK of proposals to a client, of her answer or of a door."""
    from configurator import proposed, visited
    from configurator.visit_file import read_file

    catalog = asked.catalog(setting.content)
    if isinstance(written, str) and not proposed.is_proposed(written):
        tell_link(catalog, written, None, as_json, setting.units)
        return
    if isinstance(written, str):
        told = proposed.as_json if as_json else proposed.as_text
        click.echo(told(catalog, written, setting.units))
        return
    with asked.plain_errors():
        visit = read_file(written)
    tell = visited.as_json if as_json else visited.as_text
    click.echo(tell(catalog, visit, setting.units or visit["units"]))


@main.command(help=options.DRAW_HELP)
@options.with_named
@click.option("--view", type=click.Choice(asked.VIEWS), default="elevation", show_default=True, cls=SpokenOption)
@click.option(
    "--at",
    type=asked.At(),
    default="closed",
    show_default=True,
    cls=SpokenOption,
    help=wording("open, closed or a share."),
)
@click.option("-o", "--out", type=options.A_FILE, required=True, cls=SpokenOption, help=wording(".svg or .png"))
@options.with_setting
def draw(named: Named, view: str, at: str, out: Path, setting: Setting) -> None:
    """Draw one view of one family on one door."""
    from configurator import paper

    found = asked.reading(setting.content, Wanted(named.door, named.family))
    wanted = asked.configuration(found, named)
    with asked.plain_errors():
        drawing = paper.drawn(found, wanted, view, at, setting.units or found.units)
        paper.write(drawing, out, painted=view == "room")
    click.echo(told(message("Drew {file}.", {"file": [str(out), "name"]})))


def wrote(out: Path) -> Message:
    """Return that a file has been written."""
    return message("Wrote {file}.", {"file": [str(out), "name"]})


@main.command(help=options.QUOTE_HELP)
@click.argument("job", metavar="FILE|LINK")
@options.with_quote_form
@click.option(
    "--on", "day", type=click.DateTime(["%Y-%m-%d"]), cls=SpokenOption, help=wording("The day of the quote [today].")
)
@options.with_paper_setting
def quote(job: str, form: PaperForm, day: "datetime | None", setting: Setting) -> None:
    """Price all that a LINK or a visit's FILE holds: every piece, what it comes to, and how."""
    from configurator import commissioned, quoted
    from configurator.kernel.papers.quote_paper import quote_paper
    from configurator.papers.quote_rows import quote_csv, quote_json

    if form.asked() > 1:
        raise click.UsageError(told(plain("Only one of --out, --csv and --json is possible.")))
    catalog = asked.catalog(setting.content)
    with asked.plain_errors():
        made, reader = quoted.taken(catalog, job, day, setting)
    if form.out:
        commissioned.write(quote_paper(made), reader, form.out)
        click.echo(told(wrote(form.out)))
        return
    tell = quote_json if form.as_json else quote_csv if form.as_csv else quoted.as_text
    click.echo(tell(made, reader), nl=not form.as_csv)


@main.command(help=options.ORDER_HELP)
@click.argument("link", metavar="FILE|LINK")
@options.with_order_form
@options.with_paper_setting
def order(link: str, form: PaperForm, setting: Setting) -> None:
    """Write the order to the workroom for all that a LINK or a visit's FILE holds, as a file or as a table."""
    from configurator import commissioned

    if form.asked() != 1:
        raise click.UsageError(told(plain("One of --out, --csv and --json is needed.")))
    job = commissioned.taken(asked.catalog(setting.content), link, setting)
    if form.out:
        commissioned.write(job.order(), job.reader, form.out)
        click.echo(told(wrote(form.out)))
    else:
        click.echo(job.order_csv() if form.as_csv else job.order_json(), nl=not form.as_csv)


@main.command(help=options.INSTALL_HELP)
@click.argument("link", metavar="FILE|LINK")
@options.with_paper
@options.with_paper_setting
def install(link: str, out: Path, setting: Setting) -> None:
    """Write the installer's sheet for all that a LINK or a visit's FILE holds."""
    from configurator import commissioned

    job = commissioned.taken(asked.catalog(setting.content), link, setting)
    commissioned.write(job.install(), job.reader, out)
    click.echo(told(wrote(out)))


@main.command(help=options.MEASURE_HELP)
@click.argument("link", metavar="[FILE|LINK]", required=False, default="")
@options.with_paper
@options.with_paper_setting
def measure(link: str, out: Path, setting: Setting) -> None:
    """Write a measuring sheet for each door of a LINK or of a visit's FILE, or a blank one for any door."""
    from configurator import commissioned

    commissioned.write(*commissioned.measuring(asked.catalog(setting.content), link, setting), out)
    click.echo(told(wrote(out)))


@main.command(help=options.FIELD_HELP)
@click.argument("content", type=options.PRESENT, default=usual_content)
@click.option(
    "-o",
    "--out",
    type=options.A_FILE,
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
    click.echo(told(wrote(out)))


@main.command(help=options.NEW_HELP)
@click.argument("folder", metavar="DIR", type=options.FOLDER)
def new(folder: Path) -> None:
    """Start a showroom of your own in DIR from the starter content."""
    from configurator.catalog.starter import copy_starter

    with asked.plain_errors():
        copy_starter(folder)
    started = message(
        "Started {folder}. Change its YAML files, then: astragal serve {folder}", {"folder": [str(folder), "name"]}
    )
    click.echo(told(started))


@main.command("words", help=options.WORDS_HELP)
@click.argument("language")
@click.argument("content", type=options.PRESENT, default=usual_content)
def write_words(language: str, content: Path) -> None:
    """Write what CONTENT [this folder, or the starter content] says into its gettext catalog of LANGUAGE."""
    from configurator.translating import untranslated

    found = asked.catalog(content)
    with asked.plain_errors():
        click.echo(told(untranslated.renewed(found, asked.language(language))))
