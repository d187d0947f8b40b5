"""The themes: their templates, their design tokens and their style sheet in one file."""

from pathlib import Path

import yaml

from configurator.catalog.schema.showroom import Colors, Theme
from configurator.drawing.drawing_palette import colors
from configurator.places import THEMES
from configurator.site.face.site_palette import Tokens, own_tokens, readable

SHARED = THEMES / "shared"
SHEETS = ("base.css", "frame.css", "parts.css", "kinds.css")
DRAWING_SHEET = Path(__file__).resolve().parents[2] / "drawing" / "drawing.css"
VERDICTS = ("clears", "guided", "blocked")


def template_folders(theme: str) -> list[Path]:
    """Return the template folders in the order of precedence: the theme's own partials first."""
    return [THEMES / theme / "templates", SHARED / "templates"]


def theme_tokens(theme: str) -> dict[str, Tokens]:
    """Return a theme's design tokens: ``common``, ``faces``, ``light`` and ``dark``, each by name."""
    written = yaml.safe_load((THEMES / theme / "tokens.yaml").read_text(encoding="utf-8"))
    return {part: tokens for part, tokens in written.items() if isinstance(tokens, dict)}


def shaded(tokens: Tokens, colors: Colors) -> Tokens:
    """Return a theme's colors with the showroom's own over them."""
    own = own_tokens(colors.paper, colors.ink, colors.warm, colors.cool)
    return tokens | own | readable(tokens, VERDICTS, colors.paper)


def all_tokens(theme: Theme) -> dict[str, Tokens]:
    """Return every custom property of the site: ``common``, ``light`` and ``dark``."""
    tokens = theme_tokens(theme.name)
    faces = {
        "face-text": tokens["faces"][theme.typefaces.text],
        "face-display": tokens["faces"][theme.typefaces.headings],
        "face-figures": tokens["faces"][theme.typefaces.figures],
    }
    return {
        "common": tokens["common"] | faces | {"radius": f"{theme.corner_radius:g}px"},
        "light": shaded(tokens["light"], theme.colors),
        "dark": shaded(tokens["dark"], theme.dark),
    }


def day_colors(theme: Theme) -> Tokens:
    """Return every color of a site by day, as ``#rrggbb`` by name."""
    own = all_tokens(theme)["light"]
    return colors() | {name: value for name, value in own.items() if name in colors()}


def rule(selector: str, tokens: Tokens, scheme: str) -> str:
    """Return one rule that sets custom properties and the color scheme."""
    lines = "".join(f"--{name}:{value};" for name, value in tokens.items())
    return f"{selector}{{color-scheme:{scheme};{lines}}}"


def token_sheet(tokens: dict[str, Tokens]) -> str:
    """Return the rules for day, evening and print.

    Paper is always day, so the evening's rules hold on screens only.
    """
    dark = tokens["dark"]
    return "\n".join(
        [
            rule(":root", tokens["common"] | tokens["light"], "light"),
            f"@media screen and (prefers-color-scheme:dark){{{rule(':root:not([data-shade=light])', dark, 'dark')}}}",
            f"@media screen{{{rule(':root[data-shade=dark]', dark, 'dark')}}}",
        ]
    )


def style_sheet(theme: Theme) -> str:
    """Return the whole style sheet of a site: the drawings', tokens, the shared ones, the theme's own, print."""
    sheets = [SHARED / "css" / name for name in SHEETS]
    sheets += [THEMES / theme.name / "theme.css", SHARED / "css" / "print.css"]
    texts = [sheet.read_text(encoding="utf-8") for sheet in sheets]
    # The drawings' sheet has colors of its own, which the tokens come after and so replace.
    return "\n".join([DRAWING_SHEET.read_text(encoding="utf-8"), token_sheet(all_tokens(theme)), *texts])
