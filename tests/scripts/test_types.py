"""The page's modules agree with each other and with what the kernel takes and gives."""

import json
import shutil
from pathlib import Path

from configurator.browser import kernel_declarations
from configurator.places import THEMES
from tests.scripts.node import type_errors

MODULES = THEMES / "shared" / "js"
OPTIONS = {
    "strict": True,
    "checkJs": True,
    "allowJs": True,
    "noEmit": True,
    "target": "es2022",
    "lib": ["es2023", "dom", "dom.iterable"],
    "module": "esnext",
    "moduleResolution": "bundler",
    "types": [],
}
# Each a line, and what of it is told.
SLIPS = {
    "import { capitol } from './text.js';": "capitol",
    "Astragal.kernel.say_valeu(1, 'mm', 'in');": "say_valeu",
    "Astragal.kernel.say_value('1', 'mm', {}, 'in');": "not assignable to parameter of type 'number'",
    "Astragal.catalog.doors.one.glas_width;": "glas_width",
    "const half = (whole) => capitol(whole);": "implicitly has an 'any' type",
}


def project(folder: Path, modules: Path) -> Path:
    """Write the kernel's declarations and a project of some modules into a folder; return the project's file."""
    declarations = folder / "kernel.d.ts"
    declarations.write_text(kernel_declarations(), encoding="utf-8")
    files = [declarations, *modules.glob("*.js"), *modules.glob("*.d.ts")]
    file = folder / "tsconfig.json"
    file.write_text(json.dumps({"compilerOptions": OPTIONS, "files": [str(each) for each in files]}), encoding="utf-8")
    return file


def test_the_modules_have_no_type_error(tmp_path: Path) -> None:
    assert type_errors(project(tmp_path, MODULES)) == []


def test_slips_are_told_where_they_are(tmp_path: Path) -> None:
    modules = tmp_path / "js"
    modules.mkdir()
    shutil.copy(MODULES / "text.js", modules)
    shutil.copy(MODULES / "page.d.ts", modules)
    (modules / "slips.js").write_text("\n".join(SLIPS), encoding="utf-8")
    errors = [error for error in type_errors(project(tmp_path, modules)) if "slips.js(" in error]
    lines = {int(error.split("slips.js(")[1].split(",")[0]): error for error in errors}
    assert list(lines) == list(range(1, len(SLIPS) + 1)), errors
    assert all(told in lines[line] for line, told in enumerate(SLIPS.values(), 1)), errors
