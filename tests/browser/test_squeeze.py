"""A script made small means the same."""

import json

import pytest
from playwright.sync_api import Browser
from tree_sitter import Node

from configurator.browser.squeeze import squeezed
from configurator.browser.squeeze.brackets import STRENGTH
from configurator.browser.syntax_tree import PARSER, text_of

# What goes in, and what must come out to the letter.
WRITTEN = {
    "(function () { var long = 1; return long + long; })();": "(function(){var a=1;return a+a})();",
    "f(function (one, two) {\n  // why\n  return { one, two: [two] };\n});": "f(function(a,b){return{one:a,two:[b]}});",
    "if ((a > 1)) { b(); } else { if (c) { d(); } }": "if(a>1)b();else{if(c)d()};",
    "if (a) { if (b) c(); } else d();": "if(a){if(b)c()}else d();",
    "x.map((a) => { return a; }, (b) => (b), ({ c }) => c)": "x.map(a=>{return a},a=>a,({c:a})=>a);",
    "x = (a + b) * c - (d * e) - (f - g);": "x=(a+b)*c-d*e-(f-g);",
    "x = !((a > b)) && -(a) - -b + +c;": "x=!(a>b)&&-a- -b+ +c;",
    "x = (-a) - b + (!a === b) + (-a) * b - ((-a) - b);": "x=-a-b+(!a===b)+-a*b-(-a-b);",
    "f((a) => (a > 1), (b) => ({ b }), (c) => ({ c }.c > 1));": "f(a=>a>1,a=>({b:a}),a=>({c:a}.c>1));",
    "x = (a) ? (b) : (c ? d : e);": "x=a?b:c?d:e;",
    "x = (a, b);": "x=(a,b);",
    "x = (a?.b).c;": "x=(a?.b).c;",
    "new (a())();": "new(a())();",
    "x = 0.50 + 2.0 + 10 + (1.0).toFixed(2);": "x=.5+2+10+(1).toFixed(2);",
    "x = 1e-09 + 0xe - 0;": "x=1e-9+0xe-0;",
    "x = 1.0.toFixed(2) + 1.50.toFixed(2);": "x=1.0.toFixed(2)+1.50.toFixed(2);",
    "for (let a = ('b' in c) ? 1 : 2; ('b' in c); a++) f();": "for(let a=('b'in c)?1:2;('b'in c);a++)f();",
    "for (let a = [(b + 1), (b in c)]; ; ) f(('b' in c));": "for(let a=[b+1,(b in c)];;)f('b'in c);",
    "for (const a of ('b' in c) ? d : e) f(a);": "for(const a of'b'in c?d:e)f(a);",
    "x = `a  ${ b + 1 }  c`;": "x=`a  ${b+1}  c`;",
    "x = /a b/.test(' a  b ')": "x=/a b/.test(' a  b ');",
    "for (const long of longs) g(long);": "for(const a of longs)g(a);",
    "while (f());": "while(f());;",
}
# Scripts whose last line tells what they come to.
MEANINGS = [
    "(() => { const a = 1; return (b => { const c = 2; { const a = 3; return [a, b, c]; } })(a); })()",
    "(() => { function one(unused) { const two = 2; return two; } return one(1) + one.length; })()",
    "(() => { let e = 5; try { throw 1; } catch (wrong) { let f = wrong; e += f; } return e; })()",
    "(() => { const { one, two: { three = 4 }, ...rest } = { one: 1, two: {}, six: 6 }; return [one, three, rest] })()",
    "(() => { const take = ({ one, two = one }, [three]) => one + two + three; return take({ one: 1 }, [2]); })()",
    "(() => { const out = []; for (let i = 0; i < 3; i++) { let j = i; out.push(() => j + i); } return out[1](); })()",
    "(() => { var x = 1; { var x = 2; } return x; })()",
    "(() => { const name = 'n'; return { name, long: name, get short() { return name; }, [name]: 1 }.short; })()",
    "(() => { const location = 3; return [location, typeof document, window === globalThis]; })()",
    "(() => { class Thing { static made = 2; grow(by) { return Thing.made + by; } } return new Thing().grow(1); })()",
    "(() => { const fact = function self(n) { return n < 2 ? 1 : n * self(n - 1); }; return fact(5); })()",
    "(() => { const a = 7, b = 3; return [a - (b - 1), a - (b + 1), a / (b * 2), (a, b), -(-a), a - -b, !(a > b)] })()",
    "(() => { const a = 7, b = 3; return [(-a) - b, (-a) * b, (-a) ** 2, (!a) === b] })()",
    "(() => { const late = () => later; const later = 4; return late(); })()",
    "(() => { label: for (const a of [1, 2]) { for (;;) { if (a > 1) break label; continue label; } } return 1; })()",
    "(() => { const o = {}; o.x ??= 5; return [o?.x, o.y?.z, (o.x ?? 1) || 2]; })()",
    "(() => { const at = { x: 1 }; for (let i = ('x' in at) ? 2 : 9; i < 3; i++) return i; })()",
    "(() => { for (let f = () => ('x' in {}); ; ) return [f(), 1.0.toFixed(2), 2.50.toFixed(1), 0.5.toFixed(1)]; })()",
    "(() => { const all = [1, 2]; for (var one of all) { for (var [two] of [[3]]) all; } return [one, two]; })()",
    "(() => { switch (2) { case 1: { let q = 1; return q; } default: { const q = 9; return q; } } })()",
    "(() => { const a = (x) => ({ x }); const b = async () => { await null; }; return [a(1), typeof b().then]; })()",
]


@pytest.mark.parametrize(("script", "small"), WRITTEN.items())
def test_only_what_is_needed_stays(script: str, small: str) -> None:
    assert squeezed(script) == small + "\n"


def test_every_script_means_what_it_meant(browser: Browser) -> None:
    page = browser.new_page()
    for script in MEANINGS:
        small = squeezed(f"result = {script};")
        before, after = (
            page.evaluate(f"() => {{ let result; {each}; return result; }}") for each in (f"result = {script}", small)
        )
        assert json.dumps(before) == json.dumps(after), small
        assert len(small) <= len(script) + len("result=;")
    page.close()


def test_what_is_no_script_is_refused() -> None:
    with pytest.raises(ValueError, match="not JavaScript"):
        squeezed("function (")


def grouped(script: str) -> str:
    """Return an expression with a bracket about each operator and no others: what it means, whatever its brackets."""

    def told(node: Node) -> str:
        inner = [child for child in node.named_children if child.type != "comment"]
        if node.type == "binary_expression":
            middle = node.child_by_field_name("operator")
            assert middle
            return f"({told(inner[0])} {text_of(middle)} {told(inner[1])})"
        return told(inner[0]) if inner else text_of(node)

    return told(PARSER.parse(script.encode()).root_node)


@pytest.mark.parametrize("outer", sorted(STRENGTH))
def test_brackets_go_where_two_operators_mean_the_same_without_and_stay_where_not(outer: str) -> None:
    for inner in sorted(STRENGTH):
        for written, bare in (
            (f"(a {inner} b) {outer} c;", f"a {inner} b {outer} c;"),
            (f"a {outer} (b {inner} c);", f"a {outer} b {inner} c;"),
        ):
            small = squeezed(written)
            assert grouped(small) == grouped(written)
            assert ("(" in small) == (grouped(bare) != grouped(written)), written
