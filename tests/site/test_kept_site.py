"""A site built from what an earlier process has kept is the site that is built from nothing."""

import shutil
from collections.abc import Callable, Iterator
from hashlib import sha256
from pathlib import Path

import pytest
from click.testing import CliRunner

from configurator.cache.by_content import ByContent
from configurator.cache.pack import Pack
from configurator.cli import main
from configurator.site.answers import Answers
from configurator.site.mkdocs import assets, kept_answers
from configurator.site.mkdocs import build as building
from configurator.site.mkdocs.build import build
from configurator.site.mkdocs.kept_answers import pack_name
from configurator.site.mkdocs.unchanged import stands
from tests.conftest import few_scripts, small_content
from tests.site.pages import plain_name
from tests.site.test_build import edited, files

FAMILIES = ("cellular-shade", "roller-shade")


def with_less(patch: pytest.MonkeyPatch) -> None:
    """Have a build make scripts and fonts of hardly anything: no edit changes them, and they take most of its time."""
    patch.setattr(assets, "configurator_scripts", few_scripts)
    patch.setattr("configurator.site.face.subset.subset", lambda whole, letters, family, _: (family + letters).encode())


@pytest.fixture(scope="module")
def first(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with a content of one door and two coverings, the site that was built of it, and the cache."""
    home = tmp_path_factory.mktemp("first")
    content = small_content(home / "content", FAMILIES[0])
    shutil.copy(Path(__file__).parents[2] / "content" / "families" / f"{FAMILIES[1]}.yaml", content / "families")
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("XDG_CACHE_HOME", str(home / "caches"))
        with_less(patch)
        assert run(content, home / "site") == 0
    return home


@pytest.fixture
def home(first: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """That folder, as it was; whatever a test changes in the content, the site or the cache is put right after it."""
    kept = first.with_name("kept")
    shutil.rmtree(kept, ignore_errors=True)
    first.rename(kept)
    shutil.copytree(kept, first)
    monkeypatch.setenv("XDG_CACHE_HOME", str(first / "caches"))
    with_less(monkeypatch)
    yield first
    shutil.rmtree(first)
    kept.rename(first)


def run(content: Path, out: Path) -> int:
    """Build as whoever types it does, who wants nothing said."""
    told = CliRunner().invoke(main, ["build", "--quiet", str(content), str(out)])
    assert told.output == ""
    return told.exit_code


def from_nothing(home: Path) -> dict[str, bytes]:
    """Return the site of the content as it is now, built without a cache."""
    build(home / "content", home / "plain")
    return files(home / "plain")


def test_what_stands_unchanged_is_not_built_again(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    before = files(home / "site")
    monkeypatch.setattr(building, "site_beside", lambda *_: pytest.fail("it is built again"))
    assert run(home / "content", home / "site") == 0
    assert files(home / "site") == before


TOUCHED: dict[str, Callable[[Path], object]] = {
    "a byte of a page": lambda site: (site / "index.html").write_bytes((site / "index.html").read_bytes() + b"\n"),
    "a page taken out": lambda site: (site / "imprint.html").unlink(missing_ok=True) or (site / "try.html").unlink(),
    "the list of its files": lambda site: (site / "assets" / "built.json").write_text("{}"),
    "a link in place of a page": lambda site: (
        (site / "try.html").rename(site.parent / "try.html"),
        (site / "try.html").symlink_to(site.parent / "try.html"),
    ),
    "all of it": shutil.rmtree,
}


@pytest.mark.parametrize("touched", TOUCHED)
def test_a_site_that_somebody_has_touched_does_not_stand(touched: str, home: Path) -> None:
    memory = ByContent(home / "content")
    assert stands(memory, home / "site")
    TOUCHED[touched](home / "site")
    assert not stands(memory, home / "site")


def test_a_touched_site_is_put_right_from_what_is_kept(home: Path) -> None:
    before = files(home / "site")
    (home / "site" / "index.html").write_text("somebody's own")
    (home / "site" / "sw.js").unlink()
    assert run(home / "content", home / "site") == 0
    assert files(home / "site") == before


EDITS = {
    "a family": ("families/cellular-shade.yaml", "pitch: 3/8 in, cell_depth: 17", "pitch: 1/2 in, cell_depth: 17"),
    "a door": ("doors/garden-door.yaml", "summary: ", "summary: New. "),
    "a handle": ("handles/lever-on-rose.yaml", "gap: ", "gap: 1 3/4 in # "),
    "the household": ("showroom.yaml", "person_height: ", "person_height: 6'1\" # "),
    "the theme": ("showroom.yaml", "  name: sheet\n", "  name: linen\n"),
    "the units": ("showroom.yaml", "units: in ", "units: mm "),
    "a guide": ("pages/privacy.md", "These pages send", "New words. These pages send"),
}


@pytest.mark.parametrize("edit", EDITS)
def test_after_an_edit_the_site_is_the_one_built_from_nothing(edit: str, home: Path) -> None:
    edited(home / "content", *EDITS[edit])
    assert run(home / "content", home / "site") == 0
    assert files(home / "site") == from_nothing(home)


def test_an_edited_family_leaves_the_other_s_pages_as_they_were(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    edited(home / "content", *EDITS["a family"])
    written: list[str] = []
    plainly = Answers.keep_page
    monkeypatch.setattr(Answers, "keep_page", lambda *given: (written.append(given[1]), plainly(*given))[1])
    monkeypatch.setattr(building, "work_ahead", lambda *_: None)
    assert run(home / "content", home / "site") == 0
    assert sorted(written) == [
        "coverings/cellular-shade.html",
        "doors/garden-door.html",
        "doors/garden-door/cellular-shade.html",
    ]


def test_an_asset_s_name_holds_its_hash_and_only_pages_that_name_it_change_with_it(
    home: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = files(home / "site")
    monkeypatch.setattr(assets, "configurator_scripts", lambda folder, words: {"astragal.js": "// Another."})
    after = from_nothing(home)
    for name, content in after.items():
        if name.startswith("assets/") and name != "assets/built.json":
            assert f".{sha256(content).hexdigest()[:8]}." in name
    # The catalog's script names those that are fetched later.
    assert {plain_name(name) for name in before.keys() ^ after.keys()} == {"assets/astragal.js", "assets/catalog.js"}
    naming = {name for name, content in before.items() if name.endswith(".html") and b"assets/catalog." in content}
    changed = {name for name in before.keys() & after.keys() if before[name] != after[name]}
    assert changed == {*naming, "sw.js", "assets/built.json"}
    assert {"try.html", "coverings/roller-shade.html"} <= naming
    assert "index.html" not in naming


def test_what_is_kept_is_spoilt_or_of_another_version(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    before = files(home / "site")
    (kept,) = (home / "caches" / "astragal").glob("answers-*")
    assert len(Pack(pack_name(home / "content"))) > 0
    whole = kept.read_bytes()
    kept.write_bytes(whole[: len(whole) // 2] + b"spoilt" + whole[len(whole) // 2 + 6 :])
    assert len(Pack(pack_name(home / "content"))) == 0
    shutil.rmtree(home / "site")
    assert run(home / "content", home / "site") == 0
    assert files(home / "site") == before
    monkeypatch.setattr(kept_answers, "own_code", lambda: "another version")
    assert len(Pack(pack_name(home / "content"))) == 0


def test_where_nothing_can_be_kept_the_site_is_built_all_the_same(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    before = files(home / "site")
    monkeypatch.setenv("XDG_CACHE_HOME", "/proc/nowhere")
    assert run(home / "content", home / "other") == 0
    assert files(home / "other") == before
