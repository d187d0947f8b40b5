"""Which name in a script belongs to which declaration."""

from collections.abc import Iterator
from dataclasses import dataclass, field

from tree_sitter import Node

FUNCTIONS = {
    "function_declaration",
    "function_expression",
    "generator_function",
    "generator_function_declaration",
    "arrow_function",
    "method_definition",
}
BLOCKS = {"statement_block", "for_statement", "for_in_statement", "catch_clause", "switch_body", "class_body"}
NAMES = {"identifier", "shorthand_property_identifier", "shorthand_property_identifier_pattern"}


@dataclass
class Scope:
    """A stretch of script with names of its own; ``uses`` are the nodes that name something, here or within."""

    outer: "Scope | None"
    whole: bool
    declared: dict[str, list[Node]] = field(default_factory=dict)
    uses: list[Node] = field(default_factory=list)
    inner: list["Scope"] = field(default_factory=list)

    def declare(self, node: Node) -> None:
        """Note a declaration in this scope."""
        self.declared.setdefault(text_of(node), [])

    def function(self) -> "Scope":
        """Return the function's scope, to which ``var`` belongs."""
        return self if self.whole or self.outer is None else self.outer.function()

    def owner(self, name: str) -> "Scope | None":
        """Return the scope that declares a name as seen from here; None where it is global."""
        if name in self.declared:
            return self
        return None if self.outer is None else self.outer.owner(name)


def text_of(node: Node) -> str:
    """Return a node's text."""
    return (node.text or b"").decode()


def scopes_of(root: Node) -> Scope:
    """Return the outermost scope, each declared name in each scope with the nodes that mean it."""
    top = Scope(None, True)
    declare_in(root, top)
    for scope in every(top):
        for node in scope.uses:
            owner = scope.owner(text_of(node))
            if owner is not None:
                owner.declared[text_of(node)].append(node)
    return top


def every(scope: Scope) -> Iterator[Scope]:
    """Yield a scope and all within it."""
    yield scope
    for inner in scope.inner:
        yield from every(inner)


def declare_in(node: Node, scope: Scope) -> None:
    """Note declarations, names and inner scopes below a node."""
    for child in node.named_children:
        kind = child.type
        if kind in NAMES:
            scope.uses.append(child)
        elif kind == "statement_block" and (node.type in FUNCTIONS or node.type == "catch_clause"):
            # A body may not declare anew what its head has declared.
            declare_in(child, scope)
        elif kind in FUNCTIONS or kind in BLOCKS:
            inner = Scope(scope, kind in FUNCTIONS)
            scope.inner.append(inner)
            head(child, scope, inner)
            declare_in(child, inner)
        else:
            declaration(child, scope)
            declare_in(child, scope)


def head(node: Node, outer: Scope, inner: Scope) -> None:
    """Note what a function, loop or handler declares in its head."""
    name = node.child_by_field_name("name")
    if name is not None and name.type == "identifier":
        (outer if "declaration" in node.type else inner).declare(name)
    for place in ("parameters", "parameter"):
        pattern(node.child_by_field_name(place), inner)
    kind = node.child_by_field_name("kind") if node.type == "for_in_statement" else None
    if kind is not None:
        pattern(node.child_by_field_name("left"), inner.function() if kind.type == "var" else inner)


def declaration(node: Node, scope: Scope) -> None:
    """Note what a declaration declares."""
    if node.type in ("lexical_declaration", "variable_declaration"):
        own = scope if node.type == "lexical_declaration" else scope.function()
        for child in node.named_children:
            pattern(child.child_by_field_name("name"), own)
    elif node.type == "class_declaration":
        pattern(node.child_by_field_name("name"), scope)


def pattern(node: Node | None, scope: Scope) -> None:
    """Declare every name in a pattern; defaults and keys are none."""
    if node is None:
        return
    if node.type in ("identifier", "shorthand_property_identifier_pattern"):
        scope.declare(node)
    elif node.type in ("assignment_pattern", "object_assignment_pattern"):
        pattern(node.child_by_field_name("left"), scope)
    elif node.type == "pair_pattern":
        pattern(node.child_by_field_name("value"), scope)
    elif node.type in ("object_pattern", "array_pattern", "rest_pattern", "formal_parameters"):
        for child in node.named_children:
            pattern(child, scope)
