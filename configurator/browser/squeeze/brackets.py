"""Which brackets, round and curly, a script can do without."""

from collections.abc import Iterator

from tree_sitter import Node

SIMPLE = {
    "identifier",
    "string",
    "template_string",
    "true",
    "false",
    "null",
    "undefined",
    "this",
    "array",
    "call_expression",
    "member_expression",
    "subscript_expression",
}
# Where any expression but one with a comma may stand as it is.
ROOMY = {
    "parenthesized_expression",
    "arguments",
    "array",
    "return_statement",
    "variable_declarator",
    "pair",
    "template_substitution",
}
# A statement that needs no braces, whatever comes after it.
CLOSED = {"expression_statement", "return_statement", "throw_statement", "break_statement", "continue_statement"}
BODIES = {"if_statement", "else_clause", "for_statement", "for_in_statement", "while_statement"}
CONDITIONS = {"if_statement", "while_statement", "do_statement", "switch_statement", "with_statement"}
STRENGTH = {
    "||": 1, "&&": 2, "|": 3, "^": 4, "&": 5, "==": 6, "!=": 6, "===": 6, "!==": 6,
    "<": 7, ">": 7, "<=": 7, ">=": 7, "in": 7, "instanceof": 7, "<<": 8, ">>": 8, ">>>": 8,
    "+": 9, "-": 9, "*": 10, "/": 10, "%": 10,
}  # fmt: skip


def needless(node: Node) -> bool:
    """Return whether a node is an expression in brackets that means the same without them."""
    if node.type != "parenthesized_expression" or node.parent is None:
        return False
    inner = innermost(node)
    parent = node.parent
    if parent.type == "parenthesized_expression":
        return True
    if inner.type == "sequence_expression" or parent.type in CONDITIONS or hides_in(node):
        return False
    if inner.type in SIMPLE and not chained(inner, parent):
        return not opens_statement(node)
    if inner.type == "number":
        return parent.type != "member_expression"
    if parent.type in ROOMY or (parent.type == "arrow_function" and is_body(inner)):
        return True
    if parent.type in ("assignment_expression", "augmented_assignment_expression", "subscript_expression"):
        return node in (parent.child_by_field_name("right"), parent.child_by_field_name("index"))
    if parent.type == "ternary_expression":
        return in_ternary(node, inner, parent)
    return parent.type == "binary_expression" and in_binary(node, inner, parent)


def is_body(inner: Node) -> bool:
    """Return whether an expression can be all that a function does: braces would begin a block."""
    return inner.type in ("binary_expression", "unary_expression") and not (inner.text or b"").startswith(b"{")


def innermost(node: Node) -> Node:
    """Return the expression within one or more pairs of brackets."""
    inner = next(child for child in node.named_children if child.type != "comment")
    return innermost(inner) if inner.type == "parenthesized_expression" else inner


def hides_in(node: Node) -> bool:
    """Return whether the brackets keep an ``in`` from being taken for that of a loop's head."""
    return opens_loop(node) and any(child.type == "in" for child in within(node))


def opens_loop(node: Node) -> bool:
    """Return whether a node stands where a loop's head begins."""
    inner, outer = node, node.parent
    while outer is not None and outer.type != "statement_block":
        if outer.type == "for_statement":
            return inner == outer.child_by_field_name("initializer")
        inner, outer = outer, outer.parent
    return False


def within(node: Node) -> Iterator[Node]:
    """Yield all that is in a node."""
    for child in node.children:
        yield child
        yield from within(child)


def chained(inner: Node, parent: Node) -> bool:
    """Return whether taking the brackets away would lengthen an optional chain or change what ``new`` makes."""
    return parent.type == "new_expression" or "?." in (inner.text or b"").decode()


def opens_statement(node: Node) -> bool:
    """Return whether a statement begins with the brackets, where a string would become a directive."""
    return node.parent is not None and node.parent.type == "expression_statement"


def in_ternary(node: Node, inner: Node, parent: Node) -> bool:
    """Return whether a part of a choice can stand without brackets."""
    if node == parent.child_by_field_name("condition"):
        return inner.type in ("binary_expression", "unary_expression")
    return True


def in_binary(node: Node, inner: Node, parent: Node) -> bool:
    """Return whether an operand binds more strongly than its operator, or is the first of equals."""
    if inner.type == "unary_expression":
        return operator(parent) != "**" or node == parent.child_by_field_name("right")
    if inner.type != "binary_expression":
        return False
    mine, outer = (STRENGTH.get(operator(each), 0) for each in (inner, parent))
    if mine == 0 or outer == 0:
        return False
    return mine > outer or (mine == outer and node == parent.child_by_field_name("left"))


def operator(node: Node) -> str:
    """Return a binary expression's operator."""
    sign = node.child_by_field_name("operator")
    return "" if sign is None else sign.type


def is_bare(node: Node) -> bool:
    """Return whether a node is a block around one simple statement, or brackets around one plain parameter."""
    if node.parent is None or len(node.named_children) != 1:
        return False
    only = node.named_children[0]
    if node.type == "formal_parameters":
        return node.parent.type == "arrow_function" and only.type == "identifier" and node.child_count == 3
    return node.type == "statement_block" and node.parent.type in BODIES and only.type in CLOSED
