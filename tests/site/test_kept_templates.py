"""A template is compiled once for each code, and anew when its text is another."""

from pathlib import Path

import jinja2
import pytest

from configurator.cache import by_code
from configurator.kernel.tongue import ENGLISH
from configurator.site.face.templates import environment


def said(folder: Path) -> str:
    """Return what the template of a folder says, in an environment of its own."""
    return environment([folder], ENGLISH, "in").get_template("page.html").render()


def test_a_kept_template_says_what_its_text_says_now(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(by_code, "FOLDER", tmp_path / "made")
    page = tmp_path / "page.html"
    page.write_text("{{ 1 + 1 }}")
    assert said(tmp_path) == "2"
    with monkeypatch.context() as patch:
        patch.setattr(jinja2.Environment, "compile", lambda *_: pytest.fail("it was kept"))
        assert said(tmp_path) == "2"
    page.write_text("{{ 1 + 2 }}")
    assert said(tmp_path) == "3"
    (entry,) = (tmp_path / "made").iterdir()
    entry.write_bytes(entry.read_bytes()[:-1])
    assert said(tmp_path) == "3"
