"""What the commands may be asked: each option once, those that go together handed over as one noun, and each help."""

from collections.abc import Callable
from functools import partial, wraps
from pathlib import Path
from typing import Any, NamedTuple

import click

from configurator.asked import Named, Setting
from configurator.kernel.tongue import wording
from configurator.places import usual_content
from configurator.spoken_help import SpokenOption, SpokenPath, SpokenRange

Command = Callable[..., Any]
Decorator = Callable[[Command], Command]

FOLDER = SpokenPath(path_type=Path, file_okay=False)
PRESENT = SpokenPath(path_type=Path, file_okay=False, exists=True)
A_FILE = SpokenPath(path_type=Path, dir_okay=False)
FILE_THERE = SpokenPath(path_type=Path, dir_okay=False, exists=True)


class LinkOrFile(SpokenPath):
    """A link of proposals, of an answer or of a door, as it was written, or else a file that is there."""

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> Any:
        """Return the link, or the file's path."""
        # Most commands are given no such thing, and do not wait for what knows it.
        from configurator.linked import is_linked
        from configurator.proposed import is_proposed

        is_link = is_proposed(str(value)) or (is_linked(str(value)) and not Path(value).exists())
        return value if is_link else super().convert(value, param, ctx)


class FitForm(NamedTuple):
    """As what fits are told: in words, as one JSON object, or all of them as a table."""

    as_json: bool
    everything: bool
    as_csv: bool


class PaperForm(NamedTuple):
    """As what a paper is given: a file, a table, data, or none of these."""

    out: Path | None
    as_csv: bool
    as_json: bool

    def asked(self) -> int:
        """Return how many of them are asked for."""
        return [bool(self.out), self.as_csv, self.as_json].count(True)


def as_one(name: str, noun: Callable[..., object], **options: Decorator) -> Decorator:
    """Return a decorator that gives a command several options, by the noun's names, and hands them over as the noun."""

    def decorate(command: Command) -> Command:
        @wraps(command)
        def called(**given: Any) -> Any:
            held = {part: given.pop(part) for part in options}
            return command(**given, **{name: noun(**held)})

        asking: Command = called
        for option in reversed(options.values()):
            asking = option(asking)
        return asking

    return decorate


def flag(*names: str, told: str) -> Decorator:
    """Return an option that is there or not."""
    return click.option(*names, is_flag=True, cls=SpokenOption, help=told)


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
with_json = flag("--json", "as_json", told=wording("One JSON object: lengths in mm, shares 0 to 1."))
paper_option = partial(click.option, "-o", "--out", type=A_FILE, cls=SpokenOption, help=wording(".pdf or .html"))
with_paper = paper_option(required=True)

with_named = as_one("named", Named, door=with_door, family=with_family, choices=with_choices)
with_setting = as_one("setting", Setting, units=with_units, content=with_content)
with_paper_setting = as_one("setting", Setting, sheet=with_sheet, units=with_units, content=with_content)
with_fit_form = as_one(
    "form",
    FitForm,
    as_json=with_json,
    everything=flag("--all", "everything", told=wording("With --csv: every family on every door.")),
    as_csv=flag("--csv", "as_csv", told=wording("With --all: a table.")),
)
with_order_form = as_one(
    "form",
    PaperForm,
    out=paper_option(),
    as_csv=flag("--csv", "as_csv", told=wording("A table: a line for each piece.")),
    as_json=with_json,
)
with_quote_form = as_one(
    "form",
    PaperForm,
    out=paper_option(),
    as_csv=flag("--csv", "as_csv", told=wording("A table: a line for each amount.")),
    as_json=flag("--json", "as_json", told=wording("One JSON object: amounts in minor units.")),
)

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
Tell a visit's FILE: what was measured and found, what comes of each proposal, what was agreed beside today; or a LINK
of proposals to a client, of the answer, or of one door, as fit tells it.

Example: astragal visit weir-cottage.visit.json --content my-showroom""")
WORDS_HELP = wording("""\
Write what CONTENT [this folder, or the starter content] says into its gettext catalog of LANGUAGE, to translate.

Example: astragal words es my-showroom""")
