"""A script made small: no comments or spaces, short names for all that is not global, no needless brackets.

The grammar is tree-sitter's, so a script is read as a browser reads it. What comes out means
the same: names are resolved by JavaScript's own scopes before any is shortened.
"""

from functools import lru_cache

import tree_sitter_javascript
from tree_sitter import Language, Parser

from configurator.browser.squeeze.emit import emitted
from configurator.browser.squeeze.names import short_names_of
from configurator.browser.squeeze.scopes import scopes_of

JAVASCRIPT = Language(tree_sitter_javascript.language())


@lru_cache(maxsize=8)
def squeezed(script: str) -> str:
    """Return a script, made small and ended so that another may follow; raises ValueError where it is no JavaScript."""
    root = Parser(JAVASCRIPT).parse(script.encode()).root_node
    if root.has_error:
        raise ValueError("not JavaScript")
    return emitted(root, short_names_of(scopes_of(root))) + ";\n"
