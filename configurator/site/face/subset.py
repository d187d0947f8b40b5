"""A font with no more than the characters that a site uses, as WOFF2, through fonttools and brotli."""

from io import BytesIO

from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont

# Whose font it is and its license stay in it; the rest bears the name that the site gives it.
COPYRIGHT, LICENSE, LICENSE_ADDRESS = 0, 13, 14
FAMILY, FULL_NAME, POSTSCRIPT_NAME = 1, 4, 6
KEPT_NAMES = (COPYRIGHT, FAMILY, FULL_NAME, POSTSCRIPT_NAME, LICENSE, LICENSE_ADDRESS)


def subset(whole: bytes, characters: str, name: str, features: list[str]) -> bytes:
    """Return a font with some characters and layout features under another name; the same input, the same bytes."""
    # Lazy, since most pairs of letters that a font has kerned are of letters that go.
    font = TTFont(BytesIO(whole), recalcTimestamp=False, lazy=True)
    names = font["name"]
    # Taken out meanwhile: else all of the font would be searched for what refers to a name, which nothing kept does.
    del font["name"]
    options = Options()
    options.layout_features = features
    options.hinting = False
    options.notdef_outline = True
    shorter = Subsetter(options)
    shorter.populate(text=characters)
    shorter.subset(font)
    font["name"] = names
    names.names = [kept for kept in names.names if kept.nameID in KEPT_NAMES and kept.isUnicode()]
    for record in names.names:
        if record.nameID in (FAMILY, FULL_NAME, POSTSCRIPT_NAME):
            record.string = name.replace(" ", "") if record.nameID == POSTSCRIPT_NAME else name
    font.flavor = "woff2"
    out = BytesIO()
    font.save(out)
    return out.getvalue()
