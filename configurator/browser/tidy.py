"""PScript's output without what it adds for Python in general but plain functions on lists do without.

Each rule knows one shape that PScript writes; where a shape is missing the script stays right,
only longer.
"""

import re
from itertools import count

# A loop over what may be a list or a dict, and the same within a comprehension.
LOOP = re.compile(
    r"(?P<seq>stub\d+_seq) = (?P<over>.*);\n *if \(\(typeof (?P=seq) .*Object\.keys\((?P=seq)\);\}\n"
    r" *for \((?P<i>stub\d+_itr) = 0; (?P=i) < (?P=seq)\.length; (?P=i) \+= 1\) \{\n"
    r" *(?P<each>\w+) = (?P=seq)\[(?P=i)\];"
)
PART = re.compile(
    r"(?P<seq>\w*iter\d) = (?P<over>[^;\n]*);if \(\(typeof (?P=seq) [^;\n]*Object\.keys\((?P=seq)\);\}"
    r"for \((?P<i>\w*i\d)=0; (?P=i)<(?P=seq)\.length; (?P=i)\+\+\) \{(?P<each>\w+) = (?P=seq)\[(?P=i)\];"
)
# A comprehension over one list, none within it.
LIST = re.compile(
    r"\(function list_comprehension \(iter0\) \{var res = \[\];var (?P<each>\w+), i0;if \(\(typeof iter0 [^;\n]*\);\}"
    r"for \(i0=0; i0<iter0\.length; i0\+\+\) \{(?P=each) = iter0\[i0\];"
    r"(?:if \(!\((?P<only>(?:(?!iter0).)*?)\)\) \{continue;\})?"
    r"\{res\.push\((?P<what>(?:(?!iter0).)*?)\);\}\}return res;\}\)\.call\(this, "
)
LAMBDA = re.compile(r"\(function \(([\w, ]*)\) \{return ((?:(?!function).)*?);\}\)\.bind\(this\)")
KEY = re.compile(r'(?<=[\w\)\]])\["([A-Za-z_]\w*)"\]')
APPEND = re.compile(r"_pymeth_append\.call\(([A-Za-z]\w*), ")
DECLARED = re.compile(r"var ([\w, ]+);")
OUTER_HEAD = re.compile(r"^(\w+) = function \(", re.MULTILINE)
OUTER_FUNCTION = re.compile(r"(?=^\w+ = function )", re.MULTILINE)


def tidied(script: str) -> str:
    """Return the script, shorter and meaning the same."""
    script = LOOP.sub(r"for (\g<each> of _each(\g<over>)) {", script)
    script = PART.sub(r"for (\g<each> of _each(\g<over>)) {", script)
    script = LIST.sub(list_built, script)
    script = LAMBDA.sub(r"((\1) => (\2))", script)
    script = re.sub(r"function flx_\w+ \(", "function (", script).replace(").bind(this);", ");")
    script = KEY.sub(r".\1", script)
    script = APPEND.sub(r"\1.push(", script)
    parts = [own_stubs(part) for part in OUTER_FUNCTION.split(script)]
    functions = {part.split(" ", 1)[0] for part in parts[1:]}
    constants = set(re.findall(r"\w+", parts[0])) - functions
    parts[0] = DECLARED.sub(lambda found: declared(found[1], constants), parts[0])
    return OUTER_HEAD.sub(r"function \1(", "".join(parts))


def list_built(found: re.Match[str]) -> str:
    """Return a comprehension as JavaScript has it, up to its list."""
    only = f".filter(({found['each']}) => ({found['only']}))" if found["only"] else ""
    return f"((list) => _each(list){only}.map(({found['each']}) => ({found['what']})))("


def own_stubs(function: str) -> str:
    """Return a function whose helping variables are numbered anew, those no longer used taken out."""
    used = {name for name in re.findall(r"\w+", function) if function.count(name) > 1 or not is_stub(name)}
    function = DECLARED.sub(lambda found: declared(found[1], used), function)
    numbers = count(1)
    short: dict[str, str] = {}
    for name in re.findall(r"\bstub\d+_\w*", function):
        if name not in short:
            short[name] = f"${next(numbers)}"
    return re.sub(r"\bstub\d+_\w*", lambda found: short[found[0]], function)


def is_stub(name: str) -> bool:
    """Return whether PScript made up a name."""
    return re.fullmatch(r"stub\d+_\w*|i\d", name) is not None


def declared(names: str, used: set[str]) -> str:
    """Return a declaration of those names that are used."""
    kept = [name for name in names.split(", ") if name in used]
    return f"var {', '.join(kept)};" if len(kept) > 0 else ""
