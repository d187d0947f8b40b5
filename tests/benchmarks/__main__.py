"""All benchmarks, Lighthouse with them: ``python -m tests.benchmarks [pytest arguments]``."""

import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).resolve().parent
# The scores of what passes are printed as well; Lighthouse is not collected by its name elsewhere.
PYTEST = ["pytest", "-rP", "-o", "python_files=test_*.py lighthouse.py", str(HERE)]

if __name__ == "__main__":
    sys.exit(subprocess.run([sys.executable, "-m", *PYTEST, *sys.argv[1:]], cwd=HERE.parents[1]).returncode)
