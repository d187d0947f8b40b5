"""The example visits of a content folder are judged as any visit's file is, each slip told where it stands."""

import json
from pathlib import Path
from typing import Any

import pytest

from configurator.browser.link.packed_text import unpacked_text
from configurator.catalog import Catalog, ContentProblems, load
from configurator.site.mkdocs.examples import example_js, packed_text, plain_json
from configurator.visit_text import visit_text

VISIT: Any = {
    "version": 1,
    "id": "mill",
    "client": "Ms Ada Quill's",
    "units": "in",
    "household": {
        "shoulder_height": 1371.6,
        "person_height": 1676.4,
        "person_distance": 1828.8,
        "outside_eye": 1600.2,
        "outside_distance": 6096,
        "outside_level": -152.4,
    },
    "openings": [
        {
            "id": "hall",
            "preset": "garden-pair",
            "leaves": [{"id": "active", "handle": "lever"}],
            "proposals": [{"id": "a", "family": "cells", "choices": {"fabric": "snow"}}],
        }
    ],
}


def put(content: Path, text: str, name: str = "mill.visit.json") -> list[str]:
    """Put a visit into a content folder, and return what is wrong with that."""
    (content / "visits").mkdir()
    (content / "visits" / name).write_text(text, encoding="utf-8")
    try:
        load(content)
    except ContentProblems as found:
        return [str(problem) for problem in found.problems]
    return []


def test_a_sound_visit_is_among_the_content_s(content: Path) -> None:
    assert put(content, json.dumps(VISIT)) == []
    visit = load(content).visits["mill"]
    assert (visit["client"], visit["openings"][0]["proposals"][0]["liked"]) == ("Ms Ada Quill's", False)


@pytest.mark.parametrize(
    ("before", "after", "below", "says"),
    [
        ('"preset": "garden-pair"', '"preset": "garden-pear"', 0, "there is no door 'garden-pear'; did you mean"),
        ('"handle": "lever"', '"handle": "knob"', 0, "there is no handle 'knob'; known here: lever"),
        ('"family": "cells"', '"family": "sells"', 0, "there is no family 'sells'; did you mean 'cells'?"),
        ('"fabric": "snow"', '"fabric": "snaw"', 0, "it has no option 'snaw'; did you mean 'snow'?"),
        ('"fabric": "snow"', '"cloth": "snow"', 0, "it has no choice 'cloth'"),
        ('"units": "in"', '"units": "ft"', 0, "units must be in or mm"),
        ('"id": "hall"', '"id": ""', 0, "openings.0.id must not be empty"),
        ('"units": "in",', '"units": "in"', 1, "the file is no JSON text"),
    ],
)
def test_a_slip_is_told_where_it_stands(content: Path, before: str, after: str, below: int, says: str) -> None:
    text = json.dumps(VISIT, indent=2)
    assert text.count(before) == 1
    told = put(content, text.replace(before, after))
    assert len(told) == 1
    line = text[: text.index(before)].count("\n") + 1 + below
    assert told[0].startswith(f"content/visits/mill.visit.json:{line}:")
    assert says in told[0]


def test_a_file_of_another_name_is_told_of(content: Path) -> None:
    told = put(content, json.dumps(VISIT), "mill.json")
    assert told == ["content/visits/mill.json:1:1: the file is not read; name it mill.visit.json"]


def test_the_starter_s_example_is_whole_light_and_as_the_page_saves_it(catalog: Catalog) -> None:
    visit = catalog.visits["weir-cottage"]
    assert (catalog.folder / "visits" / "weir-cottage.visit.json").read_text(encoding="utf-8") == visit_text(visit)
    assert [len(opening["proposals"]) for opening in visit["openings"]] == [2, 1, 3, 1]
    assert [len(opening["agreed"]) for opening in visit["openings"]] == [0, 0, 0, 1]
    assert len(example_js(visit)) < 10_000


def test_what_is_packed_is_unpacked_to_the_letter(catalog: Catalog) -> None:
    odd: Any = {**VISIT, "note": '~ it\'s \\ "ö" 🚪 ' * 40}
    for visit in (catalog.visits["weir-cottage"], odd):
        text = unpacked_text(packed_text(plain_json(visit)).replace("\\\\", "\\"))
        assert json.loads(text) == visit
