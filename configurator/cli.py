"""The commands: each says whom to call, and imports what it alone needs, so that none waits for what others use."""

from pathlib import Path

import click

from configurator import asked
from configurator.places import CONTENT

FOLDER = click.Path(path_type=Path, file_okay=False)
PRESENT = click.Path(path_type=Path, file_okay=False, exists=True)

with_door = click.option("--door", metavar="ID", default="", help="A door of the content.")
with_family = click.option("--family", metavar="ID", default="", help="A family of the content.")
with_content = click.option("--content", type=PRESENT, default=CONTENT, help="The content [the starter content].")
with_port = click.option("--port", type=click.IntRange(0, 65535), default=8000, show_default=True, help="0: any free.")
with_choices = click.option("--choice", "choices", metavar="K=V", multiple=True, help="A pick; may be repeated.")
with_units = click.option("--units", type=click.Choice(["in", "mm"]), help="Lengths in words [the showroom's units].")


@click.group(name="astragal", context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(package_name="astragal")
def main() -> None:
    """Coverings for glazed doors: from YAML to drawings, figures and a site."""


@main.command()
@click.argument("content", type=PRESENT, default=CONTENT)
@click.argument("out", type=FOLDER, default="site")
def build(content: Path, out: Path) -> None:
    """Build the site of CONTENT [the starter content] into OUT [./site].

    Example: astragal build my-showroom public
    """
    from configurator.site.mkdocs.build import build as build_site

    with asked.plain_errors():
        build_site(content, out)
    click.echo(f"Built {out}: open {out / 'index.html'}, or put the folder on any web space.")


@main.command()
@click.argument("content", type=PRESENT, default=CONTENT)
def check(content: Path) -> None:
    """Check CONTENT [the starter content] and list every problem.

    Example: astragal check my-showroom
    """
    found = asked.catalog(content)
    counts = f"{len(found.doors)} doors, {len(found.handles)} handles, {len(found.families)} families"
    click.echo(f"{content}: {counts}, {len(found.pages)} pages: no problem found.")
    if found.showroom.tongues[1:]:
        from configurator.translating import untranslated

        for note in untranslated.notes(found):
            click.echo(note)


@main.command()
@click.argument("content", type=PRESENT, default=CONTENT)
@with_port
def serve(content: Path, port: int) -> None:
    """Build CONTENT [the starter content], serve it on 127.0.0.1 and build again when it changes.

    Example: astragal serve my-showroom --port 8080
    """
    from configurator.local import HOST
    from configurator.site.mkdocs.serve import serve as serve_site

    with asked.plain_errors():
        serve_site(content, HOST, port)


@main.command()
@click.option("--open", "show", is_flag=True, help="Serve it and open a browser.")
@with_port
def demo(show: bool, port: int) -> None:
    """Build the demo showroom from the starter content into ./site_demo.

    Example: astragal demo --open
    """
    from configurator import local
    from configurator.site.mkdocs.build import build as build_site

    out = Path("site_demo")
    with asked.plain_errors():
        server = local.folder_server(out, port) if show else None
        build_site(CONTENT, out)
        click.echo(f"Built {out}: open {out / 'index.html'}.")
        if server:
            local.show(server)


@main.command()
@with_door
@with_family
@with_choices
@click.option("--at", type=asked.At(), help="One more position: open, closed or a share.")
@click.option("--json", "as_json", is_flag=True, help="One JSON object: lengths in mm, shares 0 to 1.")
@click.option("--all", "everything", is_flag=True, help="With --csv: every family on every door.")
@click.option("--csv", "as_csv", is_flag=True, help="With --all: a table.")
@with_units
@with_content
def fit(
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
    """Print every figure, verdict and caution for one family on one door, or a table of all of them.

    \b
    Examples: astragal fit --door garden-pair --family cellular-shade --choice lift=motor-wired
              astragal fit --all --csv > fits.csv
    """
    from configurator import report

    if everything != as_csv:
        raise click.UsageError("--all and --csv go together.")
    if everything and (door or family or choices or at or as_json):
        raise click.UsageError("--all is every family on every door, as it comes: only --content goes with it.")
    catalog = asked.catalog(content)
    if everything:
        click.echo(report.as_csv(catalog), nl=False)
        return
    wanted = asked.configuration(catalog, door, family, choices)
    tell = report.as_json if as_json else report.as_text
    click.echo(tell(catalog, wanted, at, units or catalog.showroom.units))


@main.command()
@with_door
@with_family
@with_choices
@click.option("--view", type=click.Choice(asked.VIEWS), default="elevation", show_default=True)
@click.option("--at", type=asked.At(), default="closed", show_default=True, help="open, closed or a share.")
@click.option("-o", "--out", type=click.Path(path_type=Path, dir_okay=False), required=True, help=".svg or .png")
@with_units
@with_content
def draw(
    door: str, family: str, choices: tuple[str, ...], view: str, at: str, out: Path, units: str | None, content: Path
) -> None:
    """Draw one view of one family on one door.

    \b
    Example: astragal draw --door garden-pair --family cellular-shade --view section --at 0.35 -o section.svg
    """
    from configurator import paper

    catalog = asked.catalog(content)
    wanted = asked.configuration(catalog, door, family, choices)
    with asked.plain_errors():
        paper.write(paper.drawn(catalog, wanted, view, at, units or catalog.showroom.units), out)
    click.echo(f"Drew {out}.")


@main.command()
@click.argument("folder", metavar="DIR", type=FOLDER)
def new(folder: Path) -> None:
    """Start a showroom of your own in DIR from the starter content.

    Example: astragal new my-showroom
    """
    from configurator.catalog.starter import copy_starter

    with asked.plain_errors():
        copy_starter(folder)
    click.echo(f"Started {folder}. Change its YAML files, then: astragal serve {folder}")


@main.command()
@click.argument("language")
@click.argument("content", type=PRESENT, default=CONTENT)
def words(language: str, content: Path) -> None:
    """Write what CONTENT [the starter content] says into its gettext catalog of LANGUAGE, to be translated there.

    Example: astragal words es my-showroom
    """
    from configurator.translating import untranslated

    with asked.plain_errors():
        click.echo(untranslated.renewed(asked.catalog(content), asked.language(language)))
