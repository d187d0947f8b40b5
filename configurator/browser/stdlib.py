"""What Python gives and a browser lacks: PScript's helpers, leaner where the dialect allows it.

The dialect promises lists where lists are appended to and numbers or strings where things are
sought or sorted, so these need none of PScript's guessing. Looking into a dict by a name from
outside must not find what JavaScript hangs on every object.
"""

from pscript import stdlib

LEAN_FUNCTIONS = {
    "op_contains": (
        "function (a, b) {return (typeof b === 'string' || Array.isArray(b)) ? b.indexOf(a) >= 0"
        " : Object.prototype.hasOwnProperty.call(b, a);}"
    ),
    "int": "function (x) {return Math.trunc(x);}",
    "list": "function (a) {return _each(a).slice();}",
    "sorted": (
        "function (a, key) {var of = key || function (x) {return x;};"
        " return _each(a).slice().sort(function (p, q) {p = of(p); q = of(q); return p < q ? -1 : p > q ? 1 : 0;});}"
    ),
    "sum": "function (a) {var t = 0; for (var i = 0; i < a.length; i++) {t += a[i];} return t;}",
}
LEAN_METHODS = {
    "append": "function (x) {this.push(x);}",
    "extend": "function (a) {for (var i = 0; i < a.length; i++) {this.push(a[i]);}}",
    "get": (
        "function (k, d) {return Object.prototype.hasOwnProperty.call(this, k) ? this[k] : d === undefined ? null : d;}"
    ),
    "copy": "function () {return Array.isArray(this) ? this.slice() : Object.assign({}, this);}",
    "endswith": "function (x) {return this.endsWith(x);}",
    "find": "function (x) {return this.indexOf(x);}",
    "join": "function (a) {return a.join(this);}",
    "lower": "function () {return this.toLowerCase();}",
    "replace": "function (x, y) {return this.split(x).join(y);}",
    "split": "function (x) {return this.split(x);}",
    "startswith": "function (x) {return this.startsWith(x);}",
    "upper": "function () {return this.toUpperCase();}",
    "values": "function () {return Object.values(this);}",
}
# PScript asks for these along with the ones above, which no longer call them.
UNCALLED = ("op_equals",)

MOD = "function _mod(a, b) {var r = a % b; return r !== 0 && r < 0 !== b < 0 ? r + b : r;}"
EACH = 'function _each(a) {return Array.isArray(a) ? a : typeof a === "string" ? Array.from(a) : Object.keys(a);}'


def helpers(functions: set[str], methods: set[str]) -> str:
    """Return the JavaScript of the helpers of these names."""
    lean = [
        f"var {stdlib.FUNCTION_PREFIX}{name} = {code};" for name, code in LEAN_FUNCTIONS.items() if name in functions
    ]
    lean += [f"var {stdlib.METHOD_PREFIX}{name} = {code};" for name, code in LEAN_METHODS.items() if name in methods]
    rest = stdlib.get_partial_std_lib(
        functions.difference(LEAN_FUNCTIONS, UNCALLED),
        methods.difference(LEAN_METHODS),
    )
    return "\n".join([MOD, EACH, *lean, rest])
