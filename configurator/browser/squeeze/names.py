"""Short names for what a script declares, none of them meaning two things in one place."""

import string
from collections.abc import Iterator
from itertools import product

from configurator.browser.dialect.words import RESERVED
from configurator.browser.squeeze.scopes import Scope, every, text_of

KEYWORDS = RESERVED | {"as", "do", "for", "if", "in", "is", "not", "of", "or", "try", "get", "set"}


def short_names_of(top: Scope) -> dict[int, str]:
    """Return the short name of every node that names something declared below the top, by the node's id."""
    free = {text_of(node) for scope in every(top) for node in scope.uses if scope.owner(text_of(node)) in (None, top)}
    short: dict[int, str] = {}
    for scope in top.inner:
        shorten_scope(scope, free, {}, short)
    return short


def shorten_scope(scope: Scope, free: set[str], outer: dict[int, str], short: dict[int, str]) -> None:
    """Name what a scope declares, clear of the globals and of what its own script uses from further out."""
    taken = free | {outer[node.id] for each in every(scope) for node in each.uses if node.id in outer}
    fresh = fresh_names(taken)
    own = dict(outer)
    for nodes in scope.declared.values():
        name = next(fresh)
        for node in nodes:
            own[node.id] = short[node.id] = name
    for inner in scope.inner:
        shorten_scope(inner, free, own, short)


def fresh_names(taken: set[str]) -> Iterator[str]:
    """Yield a, b, c … aa, ab … but for names that are taken or that a language keeps for itself."""
    for length in (1, 2, 3):
        for letters in product(string.ascii_letters, repeat=length):
            name = "".join(letters)
            if name not in taken and name not in KEYWORDS:
                yield name
