"""Every page is valid HTML by the conformance checker."""

from pathlib import Path

from tests.conformance import html_errors

SOUND = '<!DOCTYPE html><html lang="en"><meta charset="utf-8"><title>Doors</title><body><main>{}</main></html>'


def test_every_page_of_the_demo_conforms(demo: Path) -> None:
    assert html_errors(demo) == []


def test_every_page_in_the_other_theme_conforms(other_theme: Path) -> None:
    assert html_errors(other_theme) == []


def test_a_page_that_does_not_conform_is_found(tmp_path: Path) -> None:
    (tmp_path / "sound.html").write_text(SOUND.format("<p>Glass</p>"))
    assert html_errors(tmp_path) == []
    (tmp_path / "unsound.html").write_text(SOUND.format("<p><div>Glass</div></p><img src=a.png>"))
    assert len(html_errors(tmp_path)) == 2
