"""The site's two typefaces, with the letters that it uses, and what of the reader's own stands in for them.

They come within the style sheet, so that nothing more is fetched, over a wire or from a disk: there Chromium
bars fonts that a page asks for ahead, and Firefox those in a folder above the page's. `page.js` asks for them in the
head, for which Chromium holds the first paint; else it unpacks them while it paints. They are Source Sans and Source
Serif under the Open Font License, which has a changed font bear another name.
"""

from base64 import b64encode
from collections.abc import Iterable
from importlib.resources import files
from typing import NamedTuple

from configurator.catalog.schema.showroom import Typefaces

# What readers may type or a script may say beside what stands in the content: ASCII and Latin-1, spaces, dashes,
# quotes, fractions and the signs of measures.
ALWAYS = "".join(chr(code) for code in [*range(0x20, 0x7F), *range(0xA0, 0x100)]) + (
    "\u2009\u202f\u2010\u2011–—‘’“”„…′″⁄⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅟←↑→↓−∕≈≤≥€Œœ"
)
# What of their layout is of use here; words need none of their ligatures.
FEATURES = ["kern", "lnum", "tnum", "mark", "locl"]
# Regular, and all that is bold.
REGULAR, BOLD = "400", "600 900"


class StandIn(NamedTuple):
    """Faces of one measure that come with systems, and how wide their letters are on average, in parts of their size.

    Averages over this site's English, of Liberation Sans and Serif, which are as wide as the others.
    """

    names: tuple[str, ...]
    width: float


class WebFont(NamedTuple):
    """A font: its family's name and weights in CSS, its package and file, and its measures in parts of its size."""

    name: str
    family: str
    weights: str
    package: str
    file: str
    width: float
    ascent: float
    descent: float
    stand_in: StandIn

    def content(self) -> bytes:
        """Return the whole font, as its package has it."""
        return files(self.package).joinpath("files", self.file).read_bytes()


SANS, SERIF = "Astragal Sans", "Astragal Serif"
ARIAL = StandIn(("Arial", "Liberation Sans", "Helvetica"), 0.4498)
ARIAL_BOLD = StandIn(("Arial Bold", "Liberation Sans Bold", "Helvetica Bold"), 0.4819)
TIMES = StandIn(("Times New Roman", "Liberation Serif", "Times"), 0.4097)
TIMES_BOLD = StandIn(("Times New Roman Bold", "Liberation Serif Bold", "Times Bold"), 0.4341)
SANS_PACKAGE, SERIF_PACKAGE = "font_source_sans_pro", "font_source_serif_pro"
FONTS = [
    WebFont("sans", SANS, REGULAR, SANS_PACKAGE, "SourceSansPro-Regular.ttf", 0.4202, 0.984, 0.273, ARIAL),
    WebFont("sans-bold", SANS, BOLD, SANS_PACKAGE, "SourceSansPro-Semibold.ttf", 0.4325, 0.984, 0.273, ARIAL_BOLD),
    WebFont("serif", SERIF, REGULAR, SERIF_PACKAGE, "SourceSerifPro-Regular.ttf", 0.4504, 1.036, 0.335, TIMES),
    WebFont("serif-bold", SERIF, BOLD, SERIF_PACKAGE, "SourceSerifPro-Semibold.ttf", 0.4577, 1.036, 0.335, TIMES_BOLD),
]


def web_fonts(faces: Typefaces) -> list[WebFont]:
    """Return the fonts that a showroom's pages need; headings are never bold."""
    wanted = {faces.text, faces.headings, faces.figures, f"{faces.text}-bold", f"{faces.figures}-bold"}
    return [font for font in FONTS if font.name in wanted]


def characters(texts: Iterable[str]) -> str:
    """Return the characters that a site needs which says these texts, in order."""
    said = set(ALWAYS).union(*texts)
    return "".join(sorted(letter for letter in said if letter.isprintable() or letter in ALWAYS))


def font_rules(fonts: Iterable[tuple[WebFont, bytes]]) -> str:
    """Return the rules by which pages have fonts, given as WOFF2, and what stands in where a browser has none."""
    return "".join(own_rule(font, content) + stand_in_rule(font) for font, content in fonts)


def own_rule(font: WebFont, content: bytes) -> str:
    """Return the rule for a font; lines are as high as it says on every system."""
    source = f'url(data:font/woff2;base64,{b64encode(content).decode()}) format("woff2")'
    return face_rule(font.family, font.weights, source, 1.0, (font.ascent, font.descent))


def stand_in_rule(font: WebFont) -> str:
    """Return the rule for a system's own face made as wide and as high."""
    share = font.width / font.stand_in.width
    source = ",".join(f'local("{name}")' for name in font.stand_in.names)
    return face_rule(f"{font.family} Stand-In", font.weights, source, share, (font.ascent, font.descent))


def face_rule(family: str, weights: str, source: str, share: float, heights: tuple[float, float]) -> str:
    """Return a rule for a face made ``share`` as large, with its ascent and descent in parts of the size asked for.

    Letters that a browser makes ready while it paints are not seen in another face before.
    """
    ascent, descent = (f"{height / share:.2%}" for height in heights)
    size = "" if share == 1 else f"size-adjust:{share:.2%};"
    return (
        f'@font-face{{font-family:"{family}";font-weight:{weights};font-display:block;src:{source};{size}'
        f"ascent-override:{ascent};descent-override:{descent};line-gap-override:0%}}\n"
    )
