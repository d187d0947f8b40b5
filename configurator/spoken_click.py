"""Click's own words in the language of a command: click looks them up with gettext, so gettext is given ours."""

import gettext
import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from tempfile import TemporaryDirectory

from configurator.kernel.message import several
from configurator.kernel.tongue import FORMS, Words, wording

DOMAIN = "astragal"
# As they stand in click, with its terms: what our commands may come to say.
CLICK_SAYS = (
    wording("Usage:"),
    wording("Options"),
    wording("Commands"),
    wording("required"),
    wording("default: {default}"),
    wording("Aborted!"),
    wording("Error: {message}"),
    wording("Try '{command} {option}' for help."),
    wording("Invalid value: {message}"),
    wording("Invalid value for {param_hint}: {message}"),
    wording("Missing command."),
    wording("Missing argument"),
    wording("Missing option"),
    wording("No such option {name!r}."),
    wording("No such command {name!r}."),
    wording("Option {name!r} does not take a value."),
    wording("{value!r} is not a valid {number_type}."),
    wording("{value} is not in the range {range}."),
    wording("{name} {filename!r} does not exist."),
    wording("{name} {filename!r} is a file."),
    wording("{name} {filename!r} is a directory."),
    wording("{name} {filename!r} is not readable."),
    several("Did you mean {possibility}?", "(Did you mean one of: {possibilities}?)", {})["text"],
    several("Got unexpected extra argument ({args})", "Got unexpected extra arguments ({args})", {})["text"],
    several("Option {name!r} requires an argument.", "Option {name!r} requires {nargs} arguments.", {})["text"],
    several("{value!r} is not {choice}.", "{value!r} is not one of {choices}.", {})["text"],
)


@contextmanager
def click_listens() -> Iterator[Path]:
    """Have click look up its words in the folder given, while a command runs; afterwards all is as before."""
    domain, language = gettext.textdomain(), os.environ.get("LANGUAGE", "")
    with TemporaryDirectory(prefix="astragal-") as folder:
        gettext.bindtextdomain(DOMAIN, folder)
        gettext.textdomain(DOMAIN)
        try:
            yield Path(folder)
        finally:
            gettext.textdomain(domain)
            os.environ["LANGUAGE"] = language


def give_click(words: Words, folder: Path) -> None:
    """Write a language's words for click into the folder in which it looks them up; its own are English."""
    code = words["language"].replace("-", "_")
    os.environ["LANGUAGE"] = code
    if not words["said"]:
        return
    # What is known of languages is slow to load, and English needs none of it.
    from babel.messages.catalog import Catalog
    from babel.messages.mofile import write_mo

    catalog = Catalog(locale=code)
    for key in CLICK_SAYS:
        forms, said = key.split(FORMS), words["said"].get(key, key).split(FORMS)
        if len(forms) > 1:
            # Catalogs have a form for millions of things too, where a language has one.
            catalog.add(tuple(forms), tuple(said + said[-1:] * (catalog.num_plurals - len(said))))
        else:
            catalog.add(key, said[0])
    place = folder / code / "LC_MESSAGES"
    place.mkdir(parents=True, exist_ok=True)
    with (place / f"{DOMAIN}.mo").open("wb") as file:
        write_mo(file, catalog)
