"""The pages' modules joined: one script for a first screen, and one for each part that comes when it is wanted.

A module that a running script asks for with ``import("./name.js")`` begins a later script. Whatever the first module
takes, however far round, is in the first script; what only a later one takes is in that. Each page that has scripts has
a first module of its own; what two of them take is in the scripts of both.
"""

from dataclasses import dataclass

from configurator.browser.page_module import PageModule, PageProblem, Wish

# The first module of each page: the configurator's, that of the visits, and that of proposals.
FIRST = "app"
PAGES = (FIRST, "visits", "proposals")
# Fetches a later script; it goes with the first of a page that has any.
FETCHER = "parts"
FETCH = "fetchPart"
# Where scripts find each other's names.
SHARED = "Astragal.page"
Modules = dict[str, PageModule]


@dataclass
class Script:
    """A script to be: its modules, each after those it takes from, the later scripts that must run before it, and
    whether it is the first of its page."""

    modules: list[PageModule]
    after: list[str]
    first: bool


Scripts = dict[str, Script]


def scripts_of(modules: Modules, first: str = FIRST) -> Scripts:
    """Return a page's scripts, each by the module it begins with, the first script first, each after those it needs.

    Raises :class:`PageProblem` where a module or name is missing or is there twice, where modules
    take from each other in a ring, or where two later scripts need a module that neither begins with.
    """
    check_names(modules)
    wishes = [wish for name in within(first, modules) for wish in modules[name].later]
    starts = [first, *sorted({wish.module for wish in wishes})]
    order = in_order(modules)
    homes = homes_of(modules, starts)
    scripts: Scripts = {}
    for start in starts:
        own = [modules[name] for name in order if homes.get(name) == start]
        taken = {wish.module for module in own for wish in module.takes}
        after = [name for name in order if name in taken and name in starts and name != start]
        scripts[start] = Script(own, after, start == first)
    runs = sorted(starts, key=lambda start: len(before(start, scripts)))
    return {start: scripts[start] for start in runs}


def within(first: str, modules: Modules) -> set[str]:
    """Return the modules of a page, at once and later, by their names."""
    found: set[str] = set()
    waiting = [first]
    while waiting:
        name = waiting.pop()
        if name not in found:
            found.add(name)
            waiting += [wish.module for wish in [*modules[name].takes, *modules[name].later]]
    return found


def check_names(modules: Modules) -> None:
    """Refuse a name that is declared twice, as all modules of a script have one scope, or that is not exported."""
    known: dict[str, str] = {}
    for module in modules.values():
        for name, place in module.declares.items():
            if name in known:
                raise PageProblem(f"{place}: {name} is also declared at {known[name]}; give one another name")
            known[name] = place
        for wish in [*module.takes, *module.later]:
            if wish.module not in modules:
                raise PageProblem(f"{wish.place}: there is no module {wish.module}.js")
            if wish.name not in ("", *modules[wish.module].gives):
                raise PageProblem(f"{wish.place}: {wish.module}.js does not export {wish.name}")


def in_order(modules: Modules) -> list[str]:
    """Return the modules' names, each after those that it takes from."""
    order: list[str] = []

    def place(name: str, asked: list[str]) -> None:
        if name in asked:
            raise PageProblem(f"{' imports '.join([*asked[asked.index(name) :], name])}: break the ring")
        if name not in order:
            for wish in modules[name].takes:
                place(wish.module, [*asked, name])
            if name not in order:
                order.append(name)

    for name in modules:
        place(name, [])
    return order


def homes_of(modules: Modules, starts: list[str]) -> dict[str, str]:
    """Return the script that each module belongs to, by the names of the module and of the script's first."""
    homes: dict[str, str] = {}
    first = starts[0]

    def settle(wish: Wish, start: str) -> None:
        home = homes.get(wish.module)
        if home in (first, start):
            return
        if wish.module in starts and wish.module != start:
            if start == first:
                raise PageProblem(
                    f"{wish.place}: {wish.module}.js is asked for later; import it here or there, not both"
                )
            return
        if home is not None:
            raise PageProblem(
                f"{wish.place}: {home}.js takes it too; import it from one of them, or in the first script"
            )
        homes[wish.module] = start
        for taken in modules[wish.module].takes:
            settle(taken, start)

    for start in starts:
        settle(Wish(start, "", start), start)
        if start == first and len(starts) > 1:
            settle(Wish(FETCHER, "", FETCHER), first)
    return homes


def text_of(start: str, scripts: Scripts) -> str:
    """Return a script: its modules in one scope, with the names it has from other scripts and those it gives them."""
    own = scripts[start].modules
    text = "\n".join(written(module, scripts) for module in own)
    here = {module.name for module in own}
    has = sorted(
        {wish.name for module in own for wish in module.takes if wish.module not in here} | fetching(scripts[start])
    )
    gives = sorted(given(start, scripts))
    head = f"const{{{','.join(has)}}}={SHARED};\n" if len(has) > 0 else ""
    foot = f"{SHARED}=Object.assign({SHARED}||{{}},{{{','.join(gives)}}});\n" if len(gives) > 0 else ""
    return f'(function(){{\n"use strict";\n{head}{text}\n{foot}}})();\n'


def fetching(script: Script) -> set[str]:
    """Return what a later script needs of the first where it asks for a later one itself."""
    return {FETCH} if not script.first and any(module.later for module in script.modules) else set()


def given(start: str, scripts: Scripts) -> set[str]:
    """Return the names that a script lets out: what others take, and all that a later script's first module exports."""
    own = {module.name: module for module in scripts[start].modules}
    others = [module for name, script in scripts.items() if name != start for module in script.modules]
    taken = {wish.name for module in others for wish in module.takes if wish.module in own}
    if scripts[start].first:
        return taken.union(*(fetching(script) for script in scripts.values()))
    return taken.union(own[start].gives)


def written(module: PageModule, scripts: Scripts) -> str:
    """Return a module's text, each request for a later script written as its fetching."""
    text = module.pieces[0]
    for wish, piece in zip(module.later, module.pieces[1:], strict=True):
        names = ",".join(f'"{name}"' for name in [*before(wish.module, scripts), wish.module])
        text += f"{FETCH}([{names}]){piece}"
    return text


def before(start: str, scripts: Scripts) -> list[str]:
    """Return the later scripts that must run before one, in order."""
    found: list[str] = []
    for name in scripts[start].after:
        found += [each for each in [*before(name, scripts), name] if each not in found]
    return found
