"""One drawing on its way to a file."""

from collections.abc import Callable
from pathlib import Path

import click

from configurator.asked import Configuration, place
from configurator.catalog import Reading
from configurator.drawing.svg import to_svg
from configurator.kernel.answer import ask_fit
from configurator.kernel.message import is_said, message, say
from configurator.kernel.mount.hung import hung_with
from configurator.kernel.shapes import Drawing, Household
from configurator.kernel.views.draft import Draft, drafted
from configurator.kernel.views.elevation import elevation_alone, elevation_of
from configurator.kernel.views.evening import evening_of
from configurator.kernel.views.plan import plan_of
from configurator.kernel.views.section import section_of
from configurator.kernel.views.sheet import sheet_of
from configurator.kernel.views.street import street_of
from configurator.kernel.views.subject import subject
from configurator.spoken import phrase

View = Callable[[Draft, Household], Drawing]


def by_day(view: Callable[[Draft], Drawing]) -> View:
    """Return a view that does not ask how bright a house is."""
    return lambda draft, household: view(draft)


DRAW: dict[str, View] = {
    "elevation": by_day(elevation_of),
    "evening": by_day(evening_of),
    "street": street_of,
    "section": by_day(section_of),
    "plan": by_day(plan_of),
    "sheet": by_day(sheet_of),
    "room": by_day(elevation_alone),
}
PNG_WIDTH = 1600


def drawn(read: Reading, asked: Configuration, view: str, at: str, units: str) -> Drawing:
    """Return the drawing of a view at a position.

    :raises click.ClickException: with the plain reason where the family cannot go on the door
    """
    refusal = ask_fit(hung_with(*asked), read.household)["refusal"]
    if is_said(refusal):
        raise click.ClickException(say(refusal, read.words, units))
    given = subject(hung_with(*asked), place(asked, at), read.household, read.words)
    draft = drafted(asked.door, given, read.words, units)
    return DRAW[view](draft, read.household)


def write(drawing: Drawing, out: Path, painted: bool) -> None:
    """Write a drawing as SVG or PNG, by the file's name; ``painted`` into a room, always as PNG.

    :raises click.BadParameter: when the name ends otherwise, or names a folder that is not there
    """
    if not out.parent.is_dir():
        raise click.BadParameter(
            phrase(message("there is no folder '{folder}'", {"folder": [str(out.parent), "name"]})), param_hint="--out"
        )
    if painted and out.suffix != ".png":
        told = message("'{file}' does not end in .png; a painted room is a picture", {"file": [str(out), "name"]})
        raise click.BadParameter(phrase(told), param_hint="--out")
    if painted:
        from configurator.drawing.room import room_picture

        room_picture(drawing).save(out, optimize=True)
    elif out.suffix == ".svg":
        out.write_text(to_svg(drawing), encoding="utf-8")
    elif out.suffix == ".png":
        # Pillow is slow to load, and nothing but a bitmap needs it.
        from configurator.drawing.png import to_png

        out.write_bytes(to_png(drawing, PNG_WIDTH))
    else:
        raise click.BadParameter(
            phrase(message("'{file}' ends neither in .svg nor in .png", {"file": [str(out), "name"]})),
            param_hint="--out",
        )
