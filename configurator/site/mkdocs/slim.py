"""Pages without the bytes that HTML itself calls optional."""

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
    return BLANKS.sub("", PARAGRAPH_ENDS.sub("", ENDS.sub("", html)))
