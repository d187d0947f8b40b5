"""A drawing (SVG) whose elements say how they look in attributes instead of a style of their own.

A page's policy lets no element bring a style; the attributes of the same names are none, and mean the same.
"""

import re
from html import escape, unescape

TAG = re.compile(r"""<[A-Za-z](?:[^<>"']|"[^"]*"|'[^']*')*>""")
STYLE = re.compile(r"""\sstyle\s*=\s*(?:"([^"]*)"|'([^']*)')""")
DECLARED = re.compile(r"(?:^|;)\s*([a-z][a-z-]*)\s*:\s*([^;]+)")
END = re.compile(r"\s*(/?>)$")


def without_own_styles(svg: str) -> str:
    """Return a sound drawing with an attribute for each declaration of a ``style``."""
    return TAG.sub(lambda tag: restyled(tag[0]), svg)


def restyled(tag: str) -> str:
    """Return an element's tag without its ``style``, whose declarations take the place of attributes of their names."""
    style = STYLE.search(tag)
    if not style:
        return tag
    declared = DECLARED.findall(unescape(style[1] or style[2] or ""))
    said = {name: value.replace("!important", "").strip() for name, value in declared}
    bare = STYLE.sub("", tag)
    for name in said:
        bare = re.sub(rf"""\s{name}\s*=\s*(?:"[^"]*"|'[^']*')""", "", bare)
    attributes = "".join(f' {name}="{escape(value)}"' for name, value in said.items())
    return END.sub(lambda end: attributes + end[1], bare)
