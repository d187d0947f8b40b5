"""Whether the showroom's colours can be read and its logo can be shown."""

from pathlib import Path

from configurator.catalog.contrast import (
    BLACK,
    TEXT_RATIO,
    WHITE,
    Colour,
    contrast,
    least_contrast,
    nearest_passing,
    read_colour,
    say_colour,
)
from configurator.catalog.grounds import grounds
from configurator.catalog.located import ContentFile, KeyPath, dotted
from configurator.catalog.schema.showroom import Colours, Showroom
from configurator.catalog.suggest import one_of

# What browsers show of what Pillow reads.
PICTURE_ENDINGS = (".png", ".jpg", ".jpeg", ".webp")
LOGO_ENDINGS = (".svg", *PICTURE_ENDINGS)


def check_theme(file: ContentFile, showroom: Showroom, folder: Path) -> None:
    """Note colours that cannot be read where they stand, and a logo that cannot be shown."""
    for name, colours in (("colours", showroom.theme.colours), ("dark", showroom.theme.dark)):
        check_colours(file, name, colours)
    if showroom.theme.logo:
        check_logo(file, showroom.theme.logo, folder)


def check_logo(file: ContentFile, logo: str, folder: Path) -> None:
    """Check that the logo is there and of a kind that browsers show."""
    if not (folder / logo).is_file():
        words = f"theme.logo is '{logo}', but there is no such file in the content folder"
        file.at_value(("theme", "logo"), words)
    elif Path(logo).suffix.lower() not in LOGO_ENDINGS:
        words = f"theme.logo is '{logo}'; a file that ends in {one_of(LOGO_ENDINGS)} is expected"
        file.at_value(("theme", "logo"), words)


def check_colours(file: ContentFile, name: str, colours: Colours) -> None:
    """Check ink and both accents, which also carry text, on all the grounds they stand on (WCAG 2.2, 1.4.3)."""
    sheets = grounds(read_colour(colours.paper))
    if max(least_contrast(end, sheets.values()) for end in (BLACK, WHITE)) < TEXT_RATIO:
        words = f"theme.{name}.paper is {colours.paper}, too near to mid grey for any colour to be read on it and on "
        file.at_value(("theme", name, "paper"), words + "the grounds mixed from it; write a lighter or a darker one")
        return
    for part, written in (("ink", colours.ink), ("warm", colours.warm), ("cool", colours.cool)):
        check_colour(file, ("theme", name, part), written, sheets)


def check_colour(file: ContentFile, path: KeyPath, written: str, sheets: dict[str, Colour]) -> None:
    """Check one colour on the ground on which it shows least."""
    colour = read_colour(written)
    place = min(sheets, key=lambda name: contrast(colour, sheets[name]))
    ratio = contrast(colour, sheets[place])
    if ratio < TEXT_RATIO:
        passing = say_colour(nearest_passing(colour, sheets.values(), TEXT_RATIO))
        origin = "" if place == "paper" else ", which is mixed from the paper"
        words = f"{dotted(path)} is {written}, with a contrast of {ratio:.2f} : 1 on the {place} "
        words += f"{say_colour(sheets[place])}{origin}; at least {TEXT_RATIO} : 1 is needed; "
        file.at_value(path, f"{words}the nearest colour that passes is '{passing}'")
