"""Expressions as JavaScript: one method for each kind of node."""

import ast
import json
import re

from configurator.browser.emit.spelling import CALLS, COPY, EACH, HAS, MATH, METHODS, OPERATORS
from configurator.kernel.tongue import FORMS, Words, in_words
from configurator.tongues.marked import marked_arguments, marked_as, written_out

# What stays one thing beside any operator.
WHOLE = (
    *(ast.Name, ast.Constant, ast.Call, ast.Subscript, ast.Attribute),
    *(ast.List, ast.Tuple, ast.ListComp, ast.JoinedStr),
)
KEY = re.compile(r"[A-Za-z_]\w*", re.ASCII)
WORDS = {None: "null", True: "true", False: "false"}

# What the expressions are that hold others: ``list``, ``dict`` or ``str``.
Holders = dict[ast.AST, str]


class Expressions(ast.NodeVisitor):
    """Writes expressions that keep to the dialect. Brackets are set freely: squeezing takes the needless ones away."""

    def __init__(self, holders: Holders, words: Words) -> None:
        self.holders = holders
        self.words = words
        self.said: dict[ast.Constant, str] = {}

    def generic_visit(self, node: ast.AST) -> None:
        """Refuse what no method writes; the dialect's check tells of it beforehand."""
        raise NotImplementedError(f"line {getattr(node, 'lineno', 0)}: {type(node).__name__}")

    def text(self, node: ast.AST) -> str:
        """Return a node as JavaScript."""
        return str(self.visit(node))

    def operand(self, node: ast.expr) -> str:
        """Return an expression that may stand beside an operator."""
        return self.text(node) if isinstance(node, WHOLE) else f"({self.text(node)})"

    def held(self, spellings: dict[str, str], node: ast.expr, *operands: str) -> str:
        """Return the spelling for what a holder is."""
        return spellings[self.holders[node]].format(*operands)

    def each(self, node: ast.expr) -> str:
        """Return an expression as what a loop over it meets."""
        return self.held(EACH, node, self.operand(node))

    def visit_Constant(self, node: ast.Constant) -> str:
        """Write a number, a text (in the page's language where it is words), a truth value or null."""
        if node.value is None or isinstance(node.value, bool):
            return WORDS[node.value]
        return json.dumps(self.said.get(node, node.value), ensure_ascii=False)

    def visit_Name(self, node: ast.Name) -> str:
        """Write a name."""
        return node.id

    def visit_List(self, node: ast.List | ast.Tuple) -> str:
        """Write a list."""
        return f"[{', '.join(self.text(each) for each in node.elts)}]"

    visit_Tuple = visit_List

    def visit_Dict(self, node: ast.Dict) -> str:
        """Write an object."""
        return f"{{{', '.join(map(self.pair, node.keys, node.values))}}}"

    def pair(self, key: ast.expr | None, value: ast.expr) -> str:
        """Return a key with its value, or another object's keys with theirs."""
        if key is None:
            return f"...{self.operand(value)}"
        if not isinstance(key, ast.Constant):
            return f"[{self.text(key)}]: {self.text(value)}"
        name = str(key.value)
        return f"{name if KEY.fullmatch(name) else self.text(key)}: {self.text(value)}"

    def visit_UnaryOp(self, node: ast.UnaryOp) -> str:
        """Write a minus or a not."""
        return OPERATORS[type(node.op)].format(self.operand(node.operand))

    def visit_BinOp(self, node: ast.BinOp) -> str:
        """Write arithmetic."""
        return OPERATORS[type(node.op)].format(self.operand(node.left), self.operand(node.right))

    def visit_BoolOp(self, node: ast.BoolOp) -> str:
        """Write and, or."""
        return OPERATORS[type(node.op)].join(self.operand(value) for value in node.values)

    def visit_Compare(self, node: ast.Compare) -> str:
        """Write one comparison."""
        spelling, right = OPERATORS[type(node.ops[0])], node.comparators[0]
        operands = [self.operand(node.left), self.operand(right)]
        has = self.held(HAS, right, *operands) if "{has}" in spelling else ""
        return spelling.format(*operands, has=has)

    def visit_IfExp(self, node: ast.IfExp) -> str:
        """Write a choice."""
        return f"{self.operand(node.test)} ? {self.operand(node.body)} : {self.operand(node.orelse)}"

    def visit_Subscript(self, node: ast.Subscript) -> str:
        """Write a part of a list, a text or a dict, or a stretch of a list or text."""
        whole, at = self.operand(node.value), node.slice
        if isinstance(at, ast.Slice):
            start = "0" if at.lower is None else self.text(at.lower)
            return f"{whole}.slice({start})" if at.upper is None else f"{whole}.slice({start}, {self.text(at.upper)})"
        if isinstance(at, ast.UnaryOp):
            return f"{whole}.at({self.text(at)})"
        if isinstance(at, ast.Constant) and isinstance(at.value, str) and KEY.fullmatch(at.value):
            return f"{whole}.{at.value}"
        return f"{whole}[{self.text(at)}]"

    def visit_Attribute(self, node: ast.Attribute) -> str:
        """Write a name of math."""
        return MATH[node.attr]

    def visit_Call(self, node: ast.Call) -> str:
        """Write a call of a function, a method, a built-in or an entry of a table."""
        arguments = [*node.args, *(keyword.value for keyword in node.keywords)]
        func = node.func
        self.said.update(said_in_call(node, self.words))
        if isinstance(func, ast.Name) and func.id == "wording":
            return self.text(node.args[0])
        if isinstance(func, ast.Attribute) and not is_math(func):
            return self.spelled(METHODS[func.attr, len(arguments)], [func.value, *arguments])
        if isinstance(func, ast.Name) and (func.id, len(arguments)) in CALLS:
            return self.spelled(CALLS[func.id, len(arguments)], arguments)
        return f"{self.operand(func)}({', '.join(self.text(each) for each in arguments)})"

    def spelled(self, spelling: str, operands: list[ast.expr]) -> str:
        """Return a spelling with its operands."""
        first = operands[0]
        texts = [self.operand(each) for each in operands]
        each = self.each(first) if "{each}" in spelling else ""
        copy = self.held(COPY, first, *texts) if "{copy}" in spelling else ""
        return spelling.format(*texts, each=each, copy=copy)

    def visit_Lambda(self, node: ast.Lambda) -> str:
        """Write a function of one expression."""
        return f"({', '.join(arg.arg for arg in node.args.args)}) => ({self.text(node.body)})"

    def visit_ListComp(self, node: ast.ListComp) -> str:
        """Write a comprehension over one or more lists, the names of each its own."""
        return self.built(node.elt, node.generators)

    def built(self, what: ast.expr, loops: list[ast.comprehension]) -> str:
        """Return the list of what the loops meet."""
        loop, *inner = loops
        name = f"({self.text(loop.target)})"
        source = self.each(loop.iter) + "".join(f".filter({name} => {self.text(test)})" for test in loop.ifs)
        if len(inner) > 0:
            return f"{source}.flatMap({name} => {self.built(what, inner)})"
        if len(loop.ifs) > 0 and ast.dump(what).replace("Load", "Store") == ast.dump(loop.target):
            # What is filtered is a list of its own already.
            return source
        return f"{source}.map({name} => {self.operand(what)})"

    def visit_JoinedStr(self, node: ast.JoinedStr) -> str:
        """Write a text with values in it."""
        return f"`{''.join(self.text(part) if is_value(part) else plain(part) for part in node.values)}`"

    def visit_FormattedValue(self, node: ast.FormattedValue) -> str:
        """Write a value in a text."""
        return f"${{{self.text(node.value)}}}"


def said_in_call(call: ast.Call, words: Words) -> dict[ast.Constant, str]:
    """Return what the words that a call tells are in a language."""
    texts = [text for argument in marked_arguments(call) for text in written_out(argument)]
    if marked_as(call.func) != "several":
        return {text: in_words(str(text.value), words) for text in texts}
    one, *others = in_words(FORMS.join(str(text.value) for text in texts), words).split(FORMS)
    return {texts[0]: one, texts[1]: FORMS.join(others or [one])}


def is_math(func: ast.Attribute) -> bool:
    """Return whether an attribute is one of math."""
    return isinstance(func.value, ast.Name) and func.value.id == "math"


def is_value(part: ast.expr) -> bool:
    """Return whether a part of a text is a value put in."""
    return isinstance(part, ast.FormattedValue)


def plain(part: ast.expr) -> str:
    """Return the words between values as a template string has them."""
    words = str(part.value) if isinstance(part, ast.Constant) else ""
    return re.sub(r"([\\`]|\$(?=\{))", r"\\\1", words)
