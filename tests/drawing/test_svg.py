"""SVG: small, well formed, accessible, to scale and always the same."""

import re

import pytest
from lxml import etree

from configurator.drawing.drawing_palette import STYLE_SHEET
from configurator.drawing.page_svg import screen_svg
from configurator.drawing.svg import to_svg
from configurator.kernel.views.tones import is_tone
from tests.drawing.drawing_doors import DOORS
from tests.drawing.drawing_samples import COVERINGS, VIEWS, draft_of, drawn, every_drawing

NAMESPACE = "{http://www.w3.org/2000/svg}"


def parsed(text: str) -> etree._Element:
    return etree.fromstring(text.encode())


@pytest.mark.parametrize("view", VIEWS)
def test_a_drawing_has_title_and_description_tied_to_it(view: str) -> None:
    drawing = drawn(view, "pair", "cellular", "open")
    root = parsed(screen_svg(drawing, "first-"))
    named = [root.find(f".//*[@id='{name}']") for name in root.get("aria-labelledby").split()]
    assert root.get("role") == "img"
    assert [element.text for element in named] == [drawing["title"], drawing["desc"]]


def test_two_drawings_on_a_page_share_no_id() -> None:
    drawing = drawn("plan", "single", "roller", "open")
    first, second = (set(re.findall(r'id="([^"]+)"', screen_svg(drawing, prefix))) for prefix in ("a-", "b-"))
    assert first
    assert not first & second


def test_the_same_drawing_gives_the_same_bytes() -> None:
    assert to_svg(drawn("sheet", "pair", "banded", "0.4")) == to_svg(drawn("sheet", "pair", "banded", "0.4"))


@pytest.mark.parametrize("covering", COVERINGS)
def test_an_elevation_stays_small(covering: str) -> None:
    assert len(screen_svg(drawn("elevation", "single", covering, "closed")).encode()) < 12_000


def test_the_window_is_in_true_millimetres_and_the_file_prints_to_scale() -> None:
    drawing = drawn("sheet", "single", "cellular", "open", "mm")
    root = parsed(to_svg(drawing))
    across = float(root.get("viewBox").split()[2])
    assert across == pytest.approx(drawing["width"], abs=0.06)
    assert across / float(root.get("width").removesuffix("mm")) == pytest.approx(20, rel=1e-3)


def test_see_through_marks_are_never_joined_so_that_two_veils_hide_more_than_one() -> None:
    root = parsed(screen_svg(drawn("elevation", "single", "vane roll", "closed")))
    veils = [path for path in root.iter("path") if path.get("fill-opacity") not in (None, "0")]
    veils = [path for path in veils if not is_tone(path.get("class"))]
    assert veils
    assert all(path.get("d").upper().count("M") == 1 for path in veils)


def test_every_class_on_a_drawing_has_a_rule() -> None:
    styled = set(re.findall(r"\.([a-z-]+)", STYLE_SHEET.read_text(encoding="utf-8")))
    used: set[str] = set()
    for door in DOORS:
        for covering in COVERINGS:
            for drawing in every_drawing(draft_of(DOORS[door], covering, "0.4")).values():
                used |= {name for mark in drawing["marks"] for name in mark["role"].split()}
    assert {name for name in used if not name.startswith(("focus-", "part-"))} <= styled


def test_a_file_needs_no_style_sheet_of_the_page() -> None:
    text = to_svg(drawn("elevation", "single", "cellular", "open"))
    assert "var(" not in text
    assert parsed(text).tag == f"{NAMESPACE}svg"
