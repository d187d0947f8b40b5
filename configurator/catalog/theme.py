"""Whether the showroom's colors can be read and its logo can be shown."""

from pathlib import Path

from configurator.catalog.contrast import (
    BLACK,
    TEXT_RATIO,
    WHITE,
    Color,
    contrast,
    least_contrast,
    nearest_passing,
    read_color,
    say_color,
)
from configurator.catalog.grounds import grounds
from configurator.catalog.located import ContentFile, KeyPath, dotted
from configurator.catalog.schema.showroom import Colors, Showroom
from configurator.catalog.suggest import one_of

# What browsers show of what Pillow reads.
PICTURE_ENDINGS = (".png", ".jpg", ".jpeg", ".webp")
LOGO_ENDINGS = (".svg", *PICTURE_ENDINGS)


def check_theme(file: ContentFile, showroom: Showroom, folder: Path) -> None:
    """Note colors that cannot be read where they stand, and a logo that cannot be shown."""
    for name, colors in (("colors", showroom.theme.colors), ("dark", showroom.theme.dark)):
        check_colors(file, name, colors)
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


def check_colors(file: ContentFile, name: str, colors: Colors) -> None:
    """Check ink and both accents, which also carry text, on all the grounds they stand on (WCAG 2.2, 1.4.3)."""
    sheets = grounds(read_color(colors.paper))
    if max(least_contrast(end, sheets.values()) for end in (BLACK, WHITE)) < TEXT_RATIO:
        words = f"theme.{name}.paper is {colors.paper}, too near to mid gray for any color to be read on it and on "
        file.at_value(("theme", name, "paper"), words + "the grounds mixed from it; write a lighter or a darker one")
        return
    for part, written in (("ink", colors.ink), ("warm", colors.warm), ("cool", colors.cool)):
        check_color(file, ("theme", name, part), written, sheets)


def check_color(file: ContentFile, path: KeyPath, written: str, sheets: dict[str, Color]) -> None:
    """Check one color on the ground on which it shows least."""
    color = read_color(written)
    place = min(sheets, key=lambda name: contrast(color, sheets[name]))
    ratio = contrast(color, sheets[place])
    if ratio < TEXT_RATIO:
        passing = say_color(nearest_passing(color, sheets.values(), TEXT_RATIO))
        origin = "" if place == "paper" else ", which is mixed from the paper"
        words = f"{dotted(path)} is {written}, with a contrast of {ratio:.2f} : 1 on the {place} "
        words += f"{say_color(sheets[place])}{origin}; at least {TEXT_RATIO} : 1 is needed; "
        file.at_value(path, f"{words}the nearest color that passes is '{passing}'")
