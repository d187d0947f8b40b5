"""One of the page's modules: what it takes from others, what it gives, and its text without import and export."""

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from tree_sitter import Node

from configurator.browser.script_words import in_language
from configurator.browser.syntax_tree import PARSER, text_of, within
from configurator.kernel.tongue import Words

TAKEN = 'import { name } from "./module.js"'
GIVEN = "export before a function, class or const"


class PageProblem(Exception):
    """Something in the page's modules that no script can be made of; told with file and line."""


@dataclass(frozen=True)
class Wish:
    """A name that a module or the kernel has to have, and where it is wanted; empty for all of a module."""

    module: str
    name: str
    place: str


@dataclass(frozen=True)
class PageModule:
    """A module as read.

    ``gives`` are the names it exports, ``declares`` all at its top with where they stand; ``takes``
    are its imports, ``later`` the modules it asks for when it runs, ``asks`` what it calls of the kernel.
    ``pieces`` is its text, and between each two of them stands the request for the module of ``later`` in turn.
    """

    name: str
    pieces: list[str]
    gives: list[str]
    declares: dict[str, str]
    takes: list[Wish]
    later: list[Wish]
    asks: list[Wish]


def page_modules(folder: Path, words: Words) -> dict[str, PageModule]:
    """Return a folder's modules by name, in a language.

    Raises :class:`PageProblem` where one leaves the plain ways to import, or says what is not written out.
    """
    return {path.stem: Reading(path, words).module() for path in sorted(folder.glob("*.js"))}


class Reading:
    """Reads one file."""

    def __init__(self, path: Path, words: Words) -> None:
        self.path = path
        try:
            self.source = in_language(path.read_bytes(), words)
        except ValueError as slip:
            raise PageProblem(f"{path}:{slip}") from slip
        self.root = PARSER.parse(self.source).root_node

    def module(self) -> PageModule:
        """Return the module."""
        if self.root.has_error:
            wrong = next(node for node in within(self.root) if node.is_error or node.is_missing)
            raise self.problem(wrong, "this is no JavaScript")
        top = self.root.named_children
        takes = [wish for node in top if node.type == "import_statement" for wish in self.taken(node)]
        exports = [node for node in top if node.type == "export_statement"]
        given = [name for node in exports for name in names_declared(self.exported(node))]
        plain = [self.exported(node) if node in exports else node for node in top]
        requests = [node for node in within(self.root) if is_request(node)]
        return PageModule(
            name=self.path.stem,
            pieces=self.pieces(requests),
            gives=[text_of(name) for name in given],
            declares={text_of(name): self.place(name) for node in plain for name in names_declared(node)},
            takes=takes,
            later=[self.wanted(node) for node in requests],
            asks=[Wish("kernel", text_of(name), self.place(name)) for name in kernel_names(self.root)],
        )

    def taken(self, node: Node) -> list[Wish]:
        """Return the names that an import takes."""
        source = node.child_by_field_name("source")
        names = [each for each in within(node) if each.type == "import_specifier"]
        plain = all(each.child_by_field_name("alias") is None for each in names)
        listed = any(each.type == "named_imports" for each in within(node))
        if source is None or not plain or not listed:
            raise self.problem(node, f"write {TAKEN}")
        return [Wish(self.beside(source), text_of(each), self.place(each)) for each in names]

    def exported(self, node: Node) -> Node:
        """Return what an export declares."""
        declaration = node.child_by_field_name("declaration")
        if declaration is None or any(child.type == "default" for child in node.children):
            raise self.problem(node, f"write {GIVEN}")
        return declaration

    def wanted(self, request: Node) -> Wish:
        """Return the module that a running script asks for."""
        address = next((node for node in within(request) if node.type == "string"), None)
        if address is None:
            raise self.problem(request, 'write import("./module.js")')
        return Wish(self.beside(address), "", self.place(request))

    def beside(self, address: Node) -> str:
        """Return the name of a module of the same folder."""
        text = text_of(address)[1:-1]
        if not text.startswith("./") or not text.endswith(".js") or "/" in text[2:]:
            raise self.problem(address, f"{text} is no module of this folder; write {TAKEN}")
        return text[2:-3]

    def pieces(self, requests: list[Node]) -> list[str]:
        """Return the text without imports and the word export, cut where a request stands."""
        pieces, start = [""], 0
        for node in sorted(self.without(requests), key=lambda each: each.start_byte):
            pieces[-1] += self.source[start : node.start_byte].decode()
            start = node.end_byte
            if is_request(node):
                pieces.append("")
        pieces[-1] += self.source[start:].decode()
        return pieces

    def without(self, requests: list[Node]) -> list[Node]:
        """Return the nodes that the text goes without."""
        exports = [node.children[0] for node in self.root.named_children if node.type == "export_statement"]
        return [*requests, *exports, *(node for node in self.root.named_children if node.type == "import_statement")]

    def place(self, node: Node) -> str:
        """Return file and line of a node."""
        return f"{self.path}:{node.start_point.row + 1}"

    def problem(self, node: Node, words: str) -> PageProblem:
        """Return what is wrong, and where."""
        return PageProblem(f"{self.place(node)}: {words}")


def is_request(node: Node) -> bool:
    """Return whether a node asks for a module while the script runs."""
    called = node.child_by_field_name("function") if node.type == "call_expression" else None
    return called is not None and called.type == "import"


def names_declared(node: Node) -> list[Node]:
    """Return the names that a statement at the top declares."""
    holders = [node] if node.type.endswith("function_declaration") or node.type == "class_declaration" else []
    holders += [child for child in node.named_children if child.type == "variable_declarator"]
    names = [holder.child_by_field_name("name") for holder in holders]
    return [name for name in names if name is not None]


def kernel_names(root: Node) -> Iterator[Node]:
    """Yield each name asked of the kernel, as ``kernel.name`` or ``Astragal.kernel.name``."""
    for node in within(root):
        if node.type == "member_expression":
            whose, name = node.child_by_field_name("object"), node.child_by_field_name("property")
            if whose is not None and name is not None and text_of(whose) in ("kernel", "Astragal.kernel"):
                yield name
