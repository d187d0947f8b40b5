"""The committed demo is what the content and the code make today."""

from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent


def files(folder: Path) -> dict[str, bytes]:
    """Return every file under a folder by its path."""
    return {str(file.relative_to(folder)): file.read_bytes() for file in folder.rglob("*") if file.is_file()}


def test_the_committed_demo_is_fresh(demo: Path) -> None:
    committed, built = files(ROOT / "site_demo"), files(demo)
    stale = sorted(name for name in committed.keys() | built.keys() if committed.get(name) != built.get(name))
    assert stale == [], "run `astragal demo` and commit site_demo/"


def test_the_committed_demo_is_small() -> None:
    assert sum(len(content) for content in files(ROOT / "site_demo").values()) < 12_000_000
