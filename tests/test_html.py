"""Every page is valid HTML by the conformance checker."""

from pathlib import Path

from tests.conformance import html_errors

SOUND = '<!DOCTYPE html><html lang="en"><meta charset="utf-8"><title>Doors</title><body><main>{}</main></html>'


def test_every_page_conforms_in_both_themes(demo: Path, other_theme: Path) -> None:
    assert html_errors(demo, other_theme) == []


def test_a_page_that_does_not_conform_is_found(tmp_path: Path) -> None:
    (tmp_path / "sound.html").write_text(SOUND.format("<p>Glass</p>"))
    (tmp_path / "unsound.html").write_text(SOUND.format("<p><div>Glass</div></p><img src=a.png>"))
    assert [error.split(":")[1].rsplit("/", 1)[1] for error in html_errors(tmp_path)] == ["unsound.html"] * 2
