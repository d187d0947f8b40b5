"""The starter content: what the demo showroom shows, and how a showroom of one's own begins."""

from collections import Counter
from pathlib import Path

import pytest

from configurator.catalog import Catalog, load
from configurator.catalog.clauses import Refusal
from configurator.catalog.starter import copy_starter
from configurator.kernel.door.leaf import leaf_height, leaf_width
from configurator.places import CONTENT


def test_the_leaf_is_exactly_the_sum_of_its_parts(catalog: Catalog) -> None:
    for name, notes in catalog.door_notes.items():
        measured = {measure.path: measure.value for measure in notes.measures}
        assert leaf_width(catalog.doors[name]) == pytest.approx(measured["leaf.width"], abs=1e-9), name
        assert leaf_height(catalog.doors[name]) == pytest.approx(measured["leaf.height"], abs=1e-9), name


def test_each_file_is_read_once(monkeypatch: pytest.MonkeyPatch) -> None:
    read: Counter[Path] = Counter()
    plain = Path.read_bytes
    monkeypatch.setattr(Path, "read_bytes", lambda path: (read.update([path]), plain(path))[1])
    load(CONTENT)
    assert set(read.values()) == {1}


def test_the_doors_cover_what_a_consultant_meets(catalog: Catalog) -> None:
    doors = catalog.doors.values()
    assert len(doors) >= 12
    assert {door["layout"] for door in doors} == {"single", "pair", "fixed-pair", "sidelights"}
    assert {door["swing"] for door in doors} == {"in", "out"}
    assert {door["hinge_side"] for door in doors} == {"left", "right"}
    assert {door["bead_projection"] > 0 for door in doors} == {True, False}
    assert any(door["muntin_columns"] == 3 and door["muntin_rows"] == 5 for door in doors)
    assert any(leaf_height(door) == pytest.approx(8 * 304.8) for door in doors)
    assert {door["passive_handle"] for door in doors} == {True, False}


def test_the_handles_differ_in_kind_and_have_room_behind(catalog: Catalog) -> None:
    handles = catalog.handles.values()
    assert len(handles) >= 8
    assert {handle["kind"] for handle in handles} == {"lever", "knob", "pull"}
    assert all(0 < handle["gap"] < handle["projection"] for handle in handles)
    assert {handle["kind"] for handle in handles if handle["turn_above"] > 0} == {"lever", "knob"}


def test_every_handle_is_on_some_door(catalog: Catalog) -> None:
    assert {door["handle"]["id"] for door in catalog.doors.values()} == set(catalog.handles)


def test_a_showroom_begins_as_a_copy_of_the_starter(tmp_path: Path) -> None:
    copy_starter(tmp_path / "mine")
    copied = {path.relative_to(tmp_path / "mine"): path.read_bytes() for path in (tmp_path / "mine").rglob("*.*")}
    assert copied == {path.relative_to(CONTENT): path.read_bytes() for path in CONTENT.rglob("*.*")}


def test_a_folder_with_anything_in_it_is_left_alone(tmp_path: Path) -> None:
    (tmp_path / "showroom.yaml").write_text("name: Mine", encoding="utf-8")
    with pytest.raises(Refusal, match="is not empty; name a new folder"):
        copy_starter(tmp_path)
    assert [path.name for path in tmp_path.iterdir()] == ["showroom.yaml"]
    assert (tmp_path / "showroom.yaml").read_text(encoding="utf-8") == "name: Mine"


def test_a_file_is_no_place_for_a_showroom(tmp_path: Path) -> None:
    (tmp_path / "mine").write_text("", encoding="utf-8")
    with pytest.raises(Refusal, match="is not empty"):
        copy_starter(tmp_path / "mine")
