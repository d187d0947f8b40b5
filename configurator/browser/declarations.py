"""What the kernel's functions take and give, as TypeScript declares it, so that page scripts can be checked."""

import ast
import json
from pathlib import Path

from configurator.browser.dialect import Slip
from configurator.browser.dialect.guess import is_alias
from configurator.browser.translate import NotPortableError, kernel_sources

CATALOG = Path(__file__).with_name("catalog_json.py")
NAMED = {
    "float": "number",
    "int": "number",
    "str": "string",
    "bool": "boolean",
    "None": "null",
    "Any": "any",
    "object": "unknown",
}
LISTS = ("list", "Sequence", "Iterable")
DICTS = ("dict", "Mapping")
MAY_BE_MISSING = "NotRequired"


def kernel_declarations() -> str:
    """Return the text of a ``.d.ts`` file: ``Astragal.kernel``, ``Astragal.catalog`` and every shape of theirs.

    Raises :class:`NotPortableError` with file and line where an annotation has no like in TypeScript.
    """
    catalog = declared(f"configurator/browser/{CATALOG.name}", CATALOG.read_text(encoding="utf-8"))
    parts = [declared(path, source) for path, source in kernel_sources().items()]
    shapes = [shape for part in [*parts, catalog] for shape in part[0]]
    functions = [function for part in parts for function in part[1]]
    kernel = block("interface Kernel", functions)
    inside = "\n".join([*shapes, kernel, "const kernel: Kernel;", "const catalog: PageCatalog;"])
    return block("declare namespace Astragal", [inside]) + "\n"


def declared(path: str, source: str) -> tuple[list[str], list[str]]:
    """Return the declarations of a file's shapes and named types, and those of its public functions."""
    shapes, functions = [], []
    for node in ast.parse(source).body:
        spell = Spelling(path, node.lineno)
        if isinstance(node, ast.ClassDef):
            shapes.append(spell.shape(node))
        elif isinstance(node, ast.Assign) and is_alias(node):
            shapes.append(f"type {ast.unparse(node.targets[0])} = {spell.type(node.value)};")
        elif isinstance(node, ast.FunctionDef) and not node.name.startswith("_"):
            functions.append(spell.function(node))
    return shapes, functions


def block(head: str, lines: list[str]) -> str:
    """Return lines in braces."""
    inside = "".join(f"  {line}\n" for text in lines for line in text.splitlines())
    return f"{head} {{\n{inside}}}"


class Spelling:
    """Spells the annotations of one statement, whose path and line it tells where it cannot."""

    def __init__(self, path: str, line: int) -> None:
        self.path = path
        self.line = line

    def shape(self, node: ast.ClassDef) -> str:
        """Return a TypedDict as an interface."""
        bases = [ast.unparse(base) for base in node.bases if ast.unparse(base) != "TypedDict"]
        heirs = f" extends {', '.join(bases)}" if len(bases) > 0 else ""
        partial = any(word.arg == "total" and ast.unparse(word.value) == "False" for word in node.keywords)
        fields = [self.field(field, partial) for field in node.body if isinstance(field, ast.AnnAssign)]
        return block(f"interface {node.name}{heirs}", fields)

    def field(self, field: ast.AnnAssign, partial: bool) -> str:
        """Return one entry of a shape."""
        kind = field.annotation
        missing = isinstance(kind, ast.Subscript) and ast.unparse(kind.value) == MAY_BE_MISSING
        if isinstance(kind, ast.Subscript) and ast.unparse(kind.value) in (MAY_BE_MISSING, "Required"):
            return f"{ast.unparse(field.target)}{'?' if missing else ''}: {self.type(kind.slice)};"
        return f"{ast.unparse(field.target)}{'?' if partial else ''}: {self.type(kind)};"

    def function(self, node: ast.FunctionDef) -> str:
        """Return a function's head."""
        heads = [f"{arg.arg}: {self.type(arg.annotation)}" for arg in node.args.args]
        nothing = isinstance(node.returns, ast.Constant) and node.returns.value is None
        return f"{node.name}({', '.join(heads)}): {'void' if nothing else self.type(node.returns)};"

    def type(self, node: ast.expr | None) -> str:
        """Return an annotation as TypeScript spells it."""
        match node:
            case ast.Constant(str(text)):
                return self.type(ast.parse(text, mode="eval").body)
            case ast.Constant(None) | ast.Name():
                name = ast.unparse(node)
                return NAMED.get(name, name)
            case ast.BinOp(left, ast.BitOr(), right):
                return f"{self.member(left)} | {self.member(right)}"
            case ast.Subscript(ast.Name(name), inner):
                return self.made_of(name, list(inner.elts) if isinstance(inner, ast.Tuple) else [inner])
        return self.unknown(node)

    def member(self, node: ast.expr) -> str:
        """Return a type that may stand beside another, or before brackets."""
        spelled = self.type(node)
        return f"({spelled})" if "=>" in spelled else spelled

    def made_of(self, name: str, parts: list[ast.expr]) -> str:
        """Return a type that is made of others."""
        if name in LISTS and len(parts) == 1:
            one = self.type(parts[0])
            loose = isinstance(parts[0], ast.BinOp) or "=>" in one or one.startswith('"')
            return f"({one})[]" if loose else f"{one}[]"
        if name in DICTS and len(parts) == 2:
            return f"Record<{self.type(parts[0])}, {self.type(parts[1])}>"
        if name == "tuple":
            return f"[{', '.join(self.type(part) for part in parts)}]"
        if name == "Literal":
            return " | ".join(json.dumps(ast.literal_eval(part)) for part in parts)
        if name == "Callable" and len(parts) == 2 and isinstance(parts[0], ast.List):
            takes = ", ".join(f"{chr(97 + place)}: {self.type(part)}" for place, part in enumerate(parts[0].elts))
            return f"({takes}) => {self.type(parts[1])}"
        return self.unknown(ast.Name(name))

    def unknown(self, node: ast.expr | None) -> str:
        """Refuse what TypeScript has nothing for, or what is not annotated at all."""
        what = "a missing type" if node is None else f"{ast.unparse(node)} in an annotation"
        raise NotPortableError([Slip(self.path, self.line, f"{what}; write numbers, texts, lists, dicts or shapes")])
