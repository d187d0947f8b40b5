"""The site while its content is being written: built again at every change, without end."""

import threading
from collections.abc import Callable
from pathlib import Path

import pytest

from configurator.kernel.tongue import ENGLISH
from configurator.site.answers import Answers
from configurator.site.mkdocs.serve import Served
from tests.conftest import small_content


@pytest.fixture
def served(tmp_path: Path, demo_answers: Callable[[], Answers]) -> Served:
    """A small site that is being written."""
    return Served(small_content(tmp_path / "content", "roller-shade"), tmp_path / "site", demo_answers(), ENGLISH)


def test_edits_without_end_take_nothing_more_and_each_is_seen(served: Served) -> None:
    most = served.begin()
    once = served.answers.count
    assert once <= most <= 3 * once
    family = served.content / "families" / "roller-shade.yaml"
    written = family.read_text(encoding="utf-8")
    assert "summary: One smooth cloth on a tube" in written
    held: list[tuple[int, int]] = []
    for tube in ("a tube", "a thin tube", "a fat tube", "a strong tube"):
        told = written.replace("hem: 2 in", f"hem: {2 + len(tube) / 100} in").replace("on a tube;", f"on {tube};")
        family.write_text(told, encoding="utf-8")
        served.rebuild(once)
        assert served.answers.count == once
        page = (served.out / "coverings" / "roller-shade.html").read_text(encoding="utf-8")
        assert f"One smooth cloth on {tube};" in page
        held.append((len(list(Path("/dev/fd").iterdir())), threading.active_count()))
    # Nor any more files and threads: the first build again has opened what all have.
    assert held[1] == held[-1]


def test_what_is_asked_for_again_is_not_forgotten() -> None:
    answers = Answers()
    for name in ("sill", "rail", "sash"):
        answers.once(name.upper, name)
    assert answers.once(lambda: "worked out again", "sill") == "SILL"
    answers.forget_all_but(2)
    assert answers.once(lambda: "worked out again", "sill") == "SILL"
    assert answers.once(lambda: "worked out again", "rail") == "worked out again"


def test_a_slip_is_told_and_the_last_good_site_stays(served: Served, capsys: pytest.CaptureFixture[str]) -> None:
    most = served.begin()
    before = (served.out / "index.html").read_bytes()
    showroom = served.content / "showroom.yaml"
    sound = showroom.read_text(encoding="utf-8")
    showroom.write_text(sound.replace("strapline:", "straplin:"), encoding="utf-8")
    served.rebuild(most)
    assert "unknown key 'straplin'; did you mean 'strapline'?" in capsys.readouterr().err
    assert (served.out / "index.html").read_bytes() == before
    showroom.write_text(sound, encoding="utf-8")
    served.rebuild(most)
    assert "Built." in capsys.readouterr().err
