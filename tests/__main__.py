"""Everything that must hold before a change lands: ``python -m tests [pytest arguments]``."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
STEPS = [
    ["ruff", "check", "."],
    ["mypy"],
    # What a clock decides is asked for by hand: a busy machine must not stop a change.
    ["pytest", "-n", "2", "--dist", "worksteal", "--ignore", "tests/benchmarks", *sys.argv[1:]],
]


def main() -> int:
    """Run each step in turn; stop at the first that fails and return its exit code."""
    for step in STEPS:
        print("$", *step, flush=True)
        result = subprocess.run([sys.executable, "-m", *step], cwd=ROOT)
        if result.returncode != 0:
            return result.returncode
    return 0


if __name__ == "__main__":
    sys.exit(main())
