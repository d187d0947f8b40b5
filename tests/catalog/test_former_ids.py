"""Former ids: read from every kind of file, and refused where an old link could mean two things."""

from pathlib import Path

import pytest

from configurator.catalog import load
from tests.catalog.conftest import DOOR, HANDLE
from tests.catalog.test_problems import spoil, told

GARDEN, LEVER, CELLS = "doors/garden-pair.yaml", "handles/lever.yaml", "families/cells.yaml"
OPTION = "dusk: {name: Dusk,"


def test_former_ids_are_read_from_every_kind_of_file(content: Path) -> None:
    spoil(content, GARDEN, "name: Garden pair\n", "name: Garden pair\nformerly: [french-pair, terrace-pair]\n")
    spoil(content, LEVER, "name: Lever\n", "name: Lever\nformerly: [old-lever]\n")
    spoil(content, CELLS, "name: Cells\n", "name: Cells\nformerly: [honeycomb]\n")
    spoil(content, CELLS, "    name: Fabric\n", "    name: Fabric\n    formerly: [cloth]\n")
    spoil(content, CELLS, OPTION, "dusk: {name: Dusk, formerly: [evening],")
    assert load(content).formerly == {
        "handle/old-lever": "lever",
        "door/french-pair": "garden-pair",
        "door/terrace-pair": "garden-pair",
        "family/honeycomb": "cells",
        "choice/cells/cloth": "fabric",
        "option/cells/fabric/evening": "dusk",
    }


@pytest.mark.parametrize(
    ("file", "sound", "put", "report"),
    [
        (
            GARDEN,
            "name: Garden pair\n",
            "name: Garden pair\nformerly: [old, garden-pair]\n",
            "2:17: 'garden-pair' cannot be a former id of garden-pair, for it is the id of a door today; take one out",
        ),
        (
            CELLS,
            OPTION,
            "dusk: {name: Dusk, formerly: [snow],",
            "24:37: 'snow' cannot be a former id of dusk, for it is the id of an option today; take one out",
        ),
        (
            CELLS,
            "    name: Lift\n",
            "    name: Lift\n    formerly: [fabric]\n",
            "27:16: 'fabric' cannot be a former id of lift, for it is the id of a choice today; take one out",
        ),
        (
            LEVER,
            "name: Lever\n",
            "name: Lever\nformerly: [old, old]\n",
            "2:17: 'old' is claimed as a former id already, by lever; only one can have had it",
        ),
        (
            CELLS,
            "name: Cells\n",
            "name: Cells\nformerly: [index]\n",
            "2:12: 'index' cannot have been the id of a family; take it out",
        ),
        (
            LEVER,
            "name: Lever\n",
            "name: Lever\nformerly: [Old Lever]\n",
            "2:12: formerly.1 is 'Old Lever'; an id such as garden-door is expected",
        ),
    ],
)
def test_a_former_id_that_could_mean_two_things_is_told(
    content: Path, file: str, sound: str, put: str, report: str
) -> None:
    spoil(content, file, sound, put)
    assert told(content) == [f"content/{file}:{report}"]


@pytest.mark.parametrize(("kind", "text"), [("doors", DOOR), ("handles", HANDLE)])
def test_two_files_cannot_have_had_one_id(content: Path, kind: str, text: str) -> None:
    for name in ("another", "third"):
        (content / kind / f"{name}.yaml").write_text(f"formerly: [once]\n{text}", encoding="utf-8")
    claimed = "'once' is claimed as a former id already, by another; only one can have had it"
    assert told(content) == [f"content/{kind}/third.yaml:1:12: {claimed}"]


@pytest.mark.parametrize(
    ("file", "text", "report"),
    [
        ("doors/index.yaml", DOOR, "'index' is the page of all doors; name the file otherwise"),
        ("pages/index.md", "Ours.", "'index' is the page of all guides; name the file otherwise"),
    ],
)
def test_no_file_takes_the_address_of_the_page_of_all(content: Path, file: str, text: str, report: str) -> None:
    (content / file).write_text(text, encoding="utf-8")
    assert told(content) == [f"content/{file}:1:1: {report}"]
