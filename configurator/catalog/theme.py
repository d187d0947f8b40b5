"""Whether the showroom's colors can be read and its logo can be shown."""

from pathlib import Path

from configurator.catalog.clauses import Term, listed
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
from configurator.catalog.files import SHOWN_ENDINGS
from configurator.catalog.grounds import grounds
from configurator.catalog.located import ContentFile, KeyPath, dotted, what_is
from configurator.catalog.schema.showroom import Colors, Showroom
from configurator.kernel.message import message, plain
from configurator.kernel.tongue import wording

# What is told of a color on each ground.
FAINT = {
    "paper": wording("{path} is {color}, with a contrast of {ratio} : 1 on the paper {ground}"),
    "ground": wording(
        "{path} is {color}, with a contrast of {ratio} : 1 on the ground {ground}, which is mixed from the paper"
    ),
    "well": wording(
        "{path} is {color}, with a contrast of {ratio} : 1 on the well {ground}, which is mixed from the paper"
    ),
}


def check_theme(file: ContentFile, showroom: Showroom, folder: Path) -> None:
    """Note colors that cannot be read where they stand, and a logo that cannot be shown."""
    for name, colors in (("colors", showroom.theme.colors), ("dark", showroom.theme.dark)):
        check_colors(file, name, colors)
    if showroom.theme.logo:
        check_logo(file, showroom.theme.logo, folder)


def check_logo(file: ContentFile, logo: str, folder: Path) -> None:
    """Check that the logo is there and of a kind that browsers show."""
    if not (folder / logo).resolve().is_relative_to(folder.resolve()):
        out = message("theme.logo is '{file}', which lies outside the content folder", {"file": [logo, "name"]})
        file.at_value(("theme", "logo"), out, plain("put the file itself into the content folder"))
    elif any(part.startswith(".") for part in Path(logo).parts):
        hidden = message("theme.logo is '{file}', but what is hidden is not read", {"file": [logo, "name"]})
        file.at_value(("theme", "logo"), hidden, plain("put the file itself into the content folder"))
    elif not (folder / logo).is_file():
        lost = message(
            "theme.logo is '{file}', but there is no such file in the content folder", {"file": [logo, "name"]}
        )
        file.at_value(("theme", "logo"), lost)
    elif Path(logo).suffix.lower() not in SHOWN_ENDINGS:
        path = ("theme", "logo")
        advice = message("a file that ends in {endings} is expected", {"endings": listed(SHOWN_ENDINGS, "or")})
        file.at_value(path, what_is(path, logo), advice)


def check_colors(file: ContentFile, name: str, colors: Colors) -> None:
    """Check ink and both accents, which also carry text, on all the grounds they stand on (WCAG 2.2, 1.4.3)."""
    sheets = grounds(read_color(colors.paper))
    if max(least_contrast(end, sheets.values()) for end in (BLACK, WHITE)) < TEXT_RATIO:
        path = ("theme", name, "paper")
        text = wording(
            "{path} is {color}, too near to mid gray for any color to be read on it and on the grounds mixed from it"
        )
        gray = message(text, {"path": [dotted(path), "name"], "color": [colors.paper, "name"]})
        file.at_value(path, gray, plain("write a lighter or a darker one"))
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
        terms: dict[str, Term] = {
            "path": [dotted(path), "name"],
            "color": [written, "name"],
            "ratio": [round(ratio, 2), "count"],
            "ground": [say_color(sheets[place]), "name"],
        }
        needed = message("at least {ratio} : 1 is needed", {"ratio": [TEXT_RATIO, "count"]})
        nearest = message("the nearest color that passes is '{color}'", {"color": [passing, "name"]})
        file.at_value(path, message(FAINT[place], terms), needed, nearest)
