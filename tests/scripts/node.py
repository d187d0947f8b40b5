"""Node and what runs on it, all of it within the virtual environment."""

import subprocess
import sys
from pathlib import Path

NODE = str(Path(sys.prefix) / "bin" / "node")
COMPILER = Path(sys.prefix) / "typescript" / "node_modules" / "typescript" / "bin" / "tsc"


def type_errors(project: Path) -> list[str]:
    """Return what TypeScript finds wrong with the project that a ``tsconfig.json`` describes."""
    assert COMPILER.is_file(), "TypeScript is missing: sh .ci/setup test"
    command = [NODE, str(COMPILER), "--project", str(project), "--pretty", "false"]
    done = subprocess.run(command, capture_output=True, text=True, timeout=300)
    return done.stdout.splitlines() + done.stderr.splitlines()
