"""The page's modules become classic scripts, and a slip in one is told with file and line."""

from pathlib import Path

import pytest

from configurator.browser import configurator_scripts
from configurator.browser.page_module import PageProblem
from configurator.kernel.tongue import ENGLISH
from tests.site.pages import plain_name

PARTS = "export async function fetchPart(names) {\n  return Astragal.page;\n}\n"


def scripts(folder: Path, modules: dict[str, str]) -> dict[str, str]:
    """Write modules into a folder; return the scripts made of them."""
    for name, text in {"parts": PARTS, **modules}.items():
        (folder / f"{name}.js").write_text(text, encoding="utf-8")
    return configurator_scripts(folder, ENGLISH)


def test_what_a_module_asks_for_later_is_a_script_of_its_own(tmp_path: Path) -> None:
    made = scripts(
        tmp_path,
        {
            "app": 'import { near } from "./near.js";\nimport("./far.js").then(({ far }) => far(near));\n',
            "near": 'export const near = "at once";\n',
            "far": 'import { near } from "./near.js";import { cot } from "./cot.js";export const far = [near, cot];\n',
            "cot": 'export const cot = "only when wanted";\n',
        },
    )
    assert list(made) == ["astragal.js", "astragal-far.js"]
    assert "at once" in made["astragal.js"]
    assert "only when wanted" not in made["astragal.js"]
    assert "only when wanted" in made["astragal-far.js"]
    assert "at once" not in made["astragal-far.js"]
    assert not any(word in text for text in made.values() for word in ("import", "export"))


def test_a_later_script_that_takes_from_another_comes_after_it(tmp_path: Path) -> None:
    made = scripts(
        tmp_path,
        {
            "app": 'import("./second.js");\nimport("./first.js");\n',
            "second": 'import { one } from "./first.js";\nexport const two = one + one;\n',
            "first": "export const one = 1;\n",
        },
    )
    assert '["first","second"]' in made["astragal.js"]
    assert list(made) == ["astragal.js", "astragal-first.js", "astragal-second.js"]


def test_a_later_script_fetches_another_as_the_first_does(tmp_path: Path) -> None:
    made = scripts(
        tmp_path,
        {
            "app": 'import("./table.js").then(({ table }) => table);\n',
            "table": 'export const table = () => import("./focus.js").then(({ focus }) => focus);\n',
            "focus": 'export const focus = "brought forward";\n',
        },
    )
    assert "fetchPart" in made["astragal-table.js"].split("=")[0]
    assert "fetchPart" in made["astragal.js"].split("Object.assign")[-1]


def test_of_the_kernel_a_script_has_what_its_modules_call(tmp_path: Path) -> None:
    made = scripts(
        tmp_path,
        {
            "app": 'Astragal.kernel.say_value(1, "mm", "in");\nimport("./far.js");\n',
            "far": 'export const far = Astragal.kernel.usual_scales("in");\n',
        },
    )
    assert "usual_scales" not in made["astragal.js"]
    assert "usual_scales" in made["astragal-far.js"]
    assert len(made["astragal-far.js"]) < len(made["astragal.js"])


def test_a_second_page_has_scripts_of_its_own(tmp_path: Path) -> None:
    made = scripts(
        tmp_path,
        {
            "app": 'import { near } from "./near.js";\nimport("./far.js").then(({ far }) => far(near));\n',
            "visits": 'import { near } from "./near.js";\nexport const kept = near + "kept";\n',
            "near": 'export const near = "at once";\n',
            "far": 'export const far = "only when wanted";\n',
        },
    )
    assert set(made) == {"astragal.js", "astragal-far.js", "astragal-visits.js"}
    assert "at once" in made["astragal-visits.js"]
    assert "only when wanted" not in made["astragal-visits.js"]
    assert "kept" not in made["astragal.js"]


@pytest.mark.parametrize(
    ("modules", "told"),
    [
        ({"app": "\nAstragal.kernel.say_valeu(1);"}, "app.js:2: the kernel has no function say_valeu"),
        ({"app": "const { kernel } = Astragal;\nkernel.aks();"}, "app.js:2: the kernel has no function aks"),
        ({"app": 'import { a } from "./b.js";', "b": "const a = 1;"}, "app.js:1: b.js does not export a"),
        ({"app": 'import { a } from "./c.js";'}, "app.js:1: there is no module c.js"),
        ({"app": 'import("./c.js");'}, "app.js:1: there is no module c.js"),
        ({"app": 'import a from "./b.js";', "b": "export const a = 1;"}, "app.js:1: write import {"),
        ({"app": 'import { a as c } from "./b.js";', "b": "export const a = 1;"}, "app.js:1: write import {"),
        ({"app": 'import { a } from "far";'}, "app.js:1: far is no module of this folder"),
        ({"app": "export default 1;"}, "app.js:1: write export before"),
        ({"app": "const a = 1;", "b": "\nfunction a() {}"}, "b.js:2: a is also declared at"),
        ({"app": "\nconst a = _(b);"}, "app.js:2: _ takes its words written out"),
        ({"app": "\nconst a = _(`b ${c}`);"}, "app.js:2: _ takes its words written out"),
        ({"app": '_several("one", many, {});'}, "app.js:1: _several takes its words written out"),
        ({"app": "const a = ;"}, "app.js:1: this is no JavaScript"),
        (
            {
                "app": 'import { b } from "./b.js"; export const a = 1;',
                "b": 'import { a } from "./app.js"; export const b = 1;',
            },
            "app imports b imports app: break the ring",
        ),
        (
            {"app": 'import { b } from "./b.js";\nimport("./b.js");', "b": "export const b = 1;"},
            "app.js:1: b.js is asked for later",
        ),
        (
            {"app": 'import("./b.js");', "visits": 'import("./b.js");', "b": "export const b = 1;"},
            "astragal-b.js would be a script of two pages",
        ),
        (
            {
                "app": 'import("./b.js");\nimport("./c.js");',
                "b": 'import { d } from "./d.js";',
                "c": 'import { d } from "./d.js";',
                "d": "export const d = 1;",
            },
            "c.js:1: b.js takes it too",
        ),
    ],
)
def test_a_slip_is_told_with_file_and_line(tmp_path: Path, modules: dict[str, str], told: str) -> None:
    with pytest.raises(PageProblem) as problem:
        scripts(tmp_path, modules)
    assert told in str(problem.value)


def test_no_script_takes_anything_out_of_the_kernel(demo: Path) -> None:
    made = {plain_name(file.name): file.read_text(encoding="utf-8") for file in demo.glob("assets/astragal*.js")}
    assert [name for name, text in made.items() if "Astragal.kernel=" in text] == []
    adding = [name for name, text in made.items() if "Astragal.kernel||={}" in text]
    assert {"astragal.js", "astragal-visits.js", "astragal-compare.js"} <= set(adding)
