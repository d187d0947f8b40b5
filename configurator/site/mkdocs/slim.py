"""Pages and style sheets without the bytes that HTML and CSS themselves call optional."""

import re

# HTML Living Standard, 13.1.2.4: these end tags may go where what follows ends the element anyway.
PARTS = "li|dt|dd|tr|th|td|tbody|thead|option"
ENDS = re.compile(rf"</(?:{PARTS})>\s*(?=<(?:(?:{PARTS})[ >]|/(?:{PARTS}|ul|ol|dl|table|select)>))")
BLOCKS = "article|aside|div|dl|fieldset|figcaption|figure|footer|form|h[1-6]|header|main|menu|nav|ol|p|section|table|ul"
HOLDERS = "article|aside|dd|div|fieldset|figcaption|figure|footer|form|header|li|main|section|td"
PARAGRAPH_ENDS = re.compile(rf"</p>\s*(?=<(?:(?:{BLOCKS})[ >]|/(?:{HOLDERS})>))")
# Between blocks, white space is not shown.
BLANKS = re.compile(rf"\s+(?=</?(?:{BLOCKS})[ >])")


def slim(html: str) -> str:
    """Return a page without its optional end tags and the white space between blocks; it reads and renders the same."""
    # Drawings are most of a page and have neither, so nobody looks through them.
    before, *drawn = html.split("<svg")
    parted = [each.partition("</svg>") for each in drawn]
    return slim_text(before) + "".join(f"<svg{svg}{end}{slim_text(after)}" for svg, end, after in parted)


def slim_text(html: str) -> str:
    """Return what stands beside drawings without its optional end tags and white space."""
    return BLANKS.sub("", PARAGRAPH_ENDS.sub("", ENDS.sub("", html)))


# What CSS reads to the letter, and what stands round its marks without meaning; a space before a colon has one.
TO_THE_LETTER = re.compile(r"""("(?:[^"\\]|\\.)*"|'(?:[^'\\]|\\.)*'|url\([^)"']*\))""", re.DOTALL)
COMMENTS = re.compile(rf"{TO_THE_LETTER.pattern}|/\*.*?\*/", re.DOTALL)
ROOM = re.compile(r"(?<=[{};,:(]) | (?=[{};,)])|;(?= ?\})")


def slim_css(sheet: str) -> str:
    """Return a style sheet without comments and needless white space; it means the same."""
    spoken = COMMENTS.sub(lambda found: found[1] or " ", sheet)
    parts = TO_THE_LETTER.split(spoken)
    parts[::2] = [ROOM.sub("", re.sub(r"\s+", " ", part)) for part in parts[::2]]
    return "".join(parts).strip() + "\n"
