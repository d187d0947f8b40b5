"""What others put into a built site stays there; what a showroom puts into ``static`` stands in the site as it is."""

import os
import shutil
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from click.testing import CliRunner

from configurator.catalog import ContentProblems, load
from configurator.cli import main
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.mkdocs.build import build
from configurator.site.mkdocs.manifest import Foreign, carry_over, read_manifest, write_manifest
from configurator.site.mkdocs.swap import BEFORE, fill, swap, tidy
from tests.site.pages import plain_name
from tests.site.test_build import files

Site = dict[str, str]
OLD: Site = {"index.html": "old", "assets/site.css": "old", "gone.html": "old"}
NEW: Site = {"index.html": "new", "assets/site.css": "new", "doors/new.html": "new"}
OTHERS: Site = {
    ".git/HEAD": "ref",
    ".git/refs/heads/main": "1",
    ".htaccess": "deny",
    "CNAME": "doors.example",
    "proof-123.html": "proof",
    "doors/leaflet.pdf": "print",
}


def put(folder: Path, site: Site) -> Path:
    """Write files into a folder."""
    for name, text in site.items():
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text(text)
    return folder


def built(folder: Path, site: Site) -> Path:
    """Write files as a build does."""
    write_manifest(put(folder, site))
    return folder


def held(folder: Path) -> Site:
    """Return the files of a folder but the build's list."""
    return {name: text.decode() for name, text in files(folder).items() if name != "assets/built.json"}


@pytest.fixture
def out(tmp_path: Path) -> Path:
    """A built site into which others have put something, an empty folder and a link among it."""
    site = put(built(tmp_path / "site", OLD), OTHERS)
    (site / ".git" / "refs" / "tags").mkdir()
    (site / "latest").symlink_to("doors")
    return site


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A workshop with a new site."""
    built(tmp_path / "workshop" / "site", NEW)
    return tmp_path / "workshop"


def exchange(folder: Path, out: Path) -> None:
    """Put the new site in place as a build does."""
    carry_over(out, folder / "site")
    swap(folder, out)


def by_renaming(folder: Path, out: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Do the same where the system cannot exchange two folders."""
    monkeypatch.setattr("configurator.site.mkdocs.swap.exchanged", lambda one, other: False)
    exchange(folder, out)


def one_by_one(folder: Path, out: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Do the same where something is mounted at ``out``."""
    fill(folder / "site", out)


def at_a_stroke(folder: Path, out: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Do the same as this system can."""
    exchange(folder, out)


@pytest.mark.parametrize("way", [at_a_stroke, by_renaming, one_by_one])
def test_what_others_put_there_stays_and_what_is_gone_goes(
    way: Callable[[Path, Path, pytest.MonkeyPatch], None], folder: Path, out: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    way(folder, out, monkeypatch)
    assert held(out) == NEW | OTHERS
    assert (out / ".git" / "refs" / "tags").is_dir()
    assert (out / "latest").readlink() == Path("doors")
    assert set(read_manifest(out) or {}) == {*NEW, "assets/built.json"}


def test_a_site_without_a_list_keeps_what_is_not_in_its_own_folders(folder: Path, out: Path) -> None:
    (out / "assets" / "built.json").unlink()
    exchange(folder, out)
    kept = {name: text for name, text in OTHERS.items() if not name.startswith("doors/")}
    assert held(out) == NEW | kept | {"gone.html": "old"}


def test_what_is_in_the_way_stops_the_build_and_all_stays(folder: Path, out: Path) -> None:
    (out / "doors" / "new.html").write_text("mine")
    before = files(out)
    with pytest.raises(Foreign, match=r"doors/new\.html was not built by astragal"):
        exchange(folder, out)
    assert files(out) == before


def test_two_folders_are_exchanged_at_one_stroke(folder: Path, out: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def refuse(path: Path, target: Path) -> None:
        raise AssertionError(f"{path} was moved to {target}")

    monkeypatch.setattr(Path, "rename", refuse)
    exchange(folder, out)
    assert held(out) == NEW | OTHERS
    assert held(folder / "site") == OLD | OTHERS


def test_what_a_killed_build_left_is_tidied_up(out: Path) -> None:
    gone = subprocess.Popen([sys.executable, "-c", ""])
    gone.wait()
    left = out.parent / f".astragal-{gone.pid}-x"
    running = out.parent / f".astragal-{os.getpid()}-x"
    running.mkdir()
    # It was killed as the old site stood aside.
    left.mkdir()
    before = files(out)
    out.rename(left / BEFORE)
    tidy(out)
    assert files(out) == before
    assert not left.exists()
    assert running.exists()


def test_static_files_stand_in_the_site_as_they_are(content: Path, tmp_path: Path, answers: Answers) -> None:
    put(content / "static", {".well-known/proof.txt": "proof", "CNAME": "doors.example", "hints/one.txt": "1"})
    out = tmp_path / "site"
    (tmp_path / "web").mkdir()
    out.symlink_to("web")
    build(content, out, answers)
    assert out.is_symlink()
    assert (out / ".well-known" / "proof.txt").read_text() == "proof"
    (out / "robots.txt").write_text("mine")
    (content / "static" / "CNAME").unlink()
    build(content, out, answers)
    assert not (out / "CNAME").exists()
    assert (out / "hints" / "one.txt").read_text() == "1"
    assert (out / "robots.txt").read_text() == "mine"
    assert [path.name for path in tmp_path.iterdir() if path.name.startswith(".astragal")] == []


def test_what_publishing_changes_is_told_and_on_a_dry_run_nothing_is(content: Path, tmp_path: Path) -> None:
    out = tmp_path / "public"
    arguments = ["publish", str(out), "--content", str(content)]
    put(content / "static", {"CNAME": "doors.example", "hint.txt": "one"})
    first = CliRunner().invoke(main, [*arguments, "--dry-run"]).stdout.splitlines()
    assert {"new: index.html", "new: CNAME", "new: assets/site.css"} < {plain_name(line) for line in first}
    assert first[-2] == "0 files stay as they are."
    assert not out.exists()
    CliRunner().invoke(main, arguments)
    put(out, {".git/HEAD": "ref"})
    put(content / "static", {"hint.txt": "two", "more.txt": "three"})
    (content / "static" / "CNAME").unlink()
    before = files(out)
    told = CliRunner().invoke(main, [*arguments, "--dry-run"]).stdout.splitlines()
    stays = len(before) - len(("assets/built.json", ".git/HEAD", "CNAME", "hint.txt"))
    assert told[:-1] == ["new: more.txt", "changed: hint.txt", "gone: CNAME", f"{stays} files stay as they are."]
    assert files(out) == before
    assert CliRunner().invoke(main, arguments).stdout.splitlines() == told
    assert files(out)["hint.txt"] == b"two"
    assert files(out)[".git/HEAD"] == b"ref"


def test_a_static_file_where_the_site_has_its_own_is_told(content: Path, tmp_path: Path, answers: Answers) -> None:
    put(content / "static", {"index.html": "mine", "ok.txt": "1"})
    with pytest.raises(ContentProblems) as told:
        build(content, tmp_path / "site", answers)
    place = content / "static" / "index.html"
    assert str(told.value) == f"{place}:1:1: the file would stand at index.html, where the site has its own; rename it"


def test_a_static_file_leads_nowhere_else(content: Path, tmp_path: Path) -> None:
    put(tmp_path, {"secret.txt": "secret"})
    (content / "static" / ".deep").mkdir(parents=True)
    (content / "static" / ".deep" / "link").symlink_to(tmp_path / "secret.txt")
    with pytest.raises(ContentProblems, match=r"static/\.deep/link:1:1: this is no file that can be carried over"):
        load(content)


def children(process: int) -> list[str]:
    """Return the processes that a process has started."""
    return subprocess.run(["pgrep", "-P", str(process)], capture_output=True, text=True, check=False).stdout.split()


def until(holds: Callable[[], bool]) -> None:
    """Wait for a state."""
    end = time.monotonic() + 60
    while not holds():
        assert time.monotonic() < end
        time.sleep(0.05)


def test_workers_end_with_the_build_whatever_ends_it(content: Path, tmp_path: Path) -> None:
    code = "from configurator.cli import main; main()"
    out = tmp_path / "site"
    running = subprocess.Popen([sys.executable, "-c", code, "build", str(content), str(out)])
    until(lambda: len(children(running.pid)) >= 1)
    workers = children(running.pid)
    running.kill()
    running.wait()

    def gone(worker: str) -> bool:
        told = subprocess.run(["ps", "-o", "stat=", "-p", worker], capture_output=True, text=True, check=False)
        return told.stdout.strip()[:1] in ("", "Z")

    until(lambda: all(gone(worker) for worker in workers))
    assert not out.exists()


@pytest.fixture
def content(tmp_path: Path) -> Path:
    """The starter content with one door and one family, so that it is soon built."""
    folder = tmp_path / "content"
    shutil.copytree(CONTENT, folder, ignore=shutil.ignore_patterns("prices", "visits"))
    first = next(
        line.split(": ")[1] for line in (folder / "showroom.yaml").read_text().splitlines() if "first_door" in line
    )
    kept = (first, "cellular-shade", "imprint")
    for path in [*(folder / "doors").iterdir(), *(folder / "families").iterdir(), *(folder / "pages").iterdir()]:
        if path.stem not in kept:
            path.unlink()
    return folder


@pytest.fixture(scope="module")
def answers(demo_answers: Callable[[], Answers]) -> Answers:
    """What one build has worked out for the next."""
    return demo_answers()
