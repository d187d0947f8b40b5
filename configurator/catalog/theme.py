"""Whether the showroom's colours can be read and its logo is there."""

from pathlib import Path

from configurator.catalog.contrast import TEXT_RATIO, contrast, nearest_passing, read_colour, say_colour
from configurator.catalog.located import ContentFile
from configurator.catalog.schema.showroom import Colours, Showroom


def check_theme(file: ContentFile, showroom: Showroom, folder: Path) -> None:
    """Note colours that cannot be read on the paper, and a logo that is not there."""
    for name, colours in (("colours", showroom.theme.colours), ("dark", showroom.theme.dark)):
        check_colours(file, name, colours)
    logo = showroom.theme.logo
    if logo and not (folder / logo).is_file():
        file.at_value(("theme", "logo"), f"theme.logo is '{logo}', but there is no such file in the content folder")


def check_colours(file: ContentFile, name: str, colours: Colours) -> None:
    """Check ink and both accents, which also carry text, against the paper (WCAG 2.2, 1.4.3)."""
    paper = read_colour(colours.paper)
    for part, written in (("ink", colours.ink), ("warm", colours.warm), ("cool", colours.cool)):
        colour = read_colour(written)
        ratio = contrast(colour, paper)
        if ratio < TEXT_RATIO:
            passing = say_colour(nearest_passing(colour, paper, TEXT_RATIO))
            words = f"theme.{name}.{part} is {written}, with a contrast of {ratio:.2f} : 1 on the paper {colours.paper}"
            words += f"; at least {TEXT_RATIO} : 1 is needed; the nearest colour that passes is '{passing}'"
            file.at_value(("theme", name, part), words)
