"""What a browser has no short spelling for."""

# Each after those that call it. Quotients and rests follow the divisor's sign, as in Python.
HELPERS = {
    "$whole": "function $whole(a, b) {return Math.round((a - $mod(a, b)) / b);}",
    "$mod": "function $mod(a, b) {var r = a % b; return r !== 0 && r < 0 !== b < 0 ? r + b : r;}",
    # A name from outside must not find what JavaScript hangs on every object.
    "$get": "function $get(dict, key, other) {return Object.hasOwn(dict, key) ? dict[key] : other;}",
    "$sorted": (
        "function $sorted(list, key) {return list.slice().sort(function (a, b) {"
        "a = key(a); b = key(b); return a < b ? -1 : a > b ? 1 : 0;});}"
    ),
    "$range": (
        "function $range(at, end, step) {var list = [];"
        " for (; step > 0 ? at < end : at > end; at += step) {list.push(at);} return list;}"
    ),
}


def helpers_for(script: str) -> str:
    """Return the helpers that a script calls."""
    found = ""
    for name, code in HELPERS.items():
        if f"{name}(" in script + found:
            found += code + "\n"
    return found
