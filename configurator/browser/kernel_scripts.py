"""The kernel over several scripts: in each what its part of the page calls and no script before it has."""

import ast
from dataclasses import dataclass

from configurator.browser.dialect import defined
from configurator.browser.emit import Telling, script_of
from configurator.browser.reach import names_in, reached
from configurator.browser.squeeze import squeezed


@dataclass
class Share:
    """What of the kernel is in one script, and which names it gives to the page and to the scripts after it."""

    statements: list[ast.stmt]
    gives: set[str]


def kernel_scripts(
    calls: dict[str, set[str]], after: dict[str, list[str]], statements: list[ast.stmt], told: Telling
) -> dict[str, str]:
    """Return the kernel's part of each script, by name.

    ``calls`` are the functions that each script's modules call, in an order in which the scripts can
    run; ``after`` names those that have run before each. The first has none before it. ``statements`` are the
    kernel's, written as ``told`` writes them.
    """
    shares: dict[str, Share] = {}
    heads: dict[str, list[str]] = {}
    for name, called in calls.items():
        earlier = [shares[each] for each in after[name]]
        known = {made for share in earlier for node in share.statements if not is_short(node) for made in defined(node)}
        own = [node for node in reached(statements, sorted(called)) if not known.issuperset(defined(node))]
        made = {each for node in own for each in defined(node)}
        taken = {each for node in own for each in names_in(node)}.intersection(known)
        for share in earlier:
            share.gives |= (taken | called).intersection({each for node in share.statements for each in defined(node)})
        shares[name] = Share(own, called.intersection(made))
        heads[name] = sorted(taken)
    return {name: kernel_script(share, heads[name], told) for name, share in shares.items()}


def is_short(node: ast.stmt) -> bool:
    """Return whether a statement is a number or a word with a name, which each script has for itself: letting it out
    of an earlier script takes more bytes than saying it again."""
    return isinstance(node, ast.Assign | ast.AnnAssign) and isinstance(node.value, ast.Constant)


def kernel_script(share: Share, taken: list[str], told: Telling) -> str:
    """Return one script, which adds to what there is."""
    if len(share.statements) == 0:
        return ""
    return squeezed(script_of(share.statements, told, sorted(share.gives), taken))
