"""How far a build has come is told as whoever builds wants it told."""

import io
import sys

import pytest

from configurator.progress import Progress
from configurator.site.answers import Added

STEPS = [("garden-pair", Added({}, {})), ("cellular-shade", Added({}, {}))]
AT_WORK = "Working out answers and drawings."


class Terminal(io.StringIO):
    """What is written to a terminal."""

    def isatty(self) -> bool:
        """Be one."""
        return True


@pytest.mark.parametrize(
    ("progress", "expected"),
    [
        (Progress(), [AT_WORK]),
        (Progress(verbose=True), [AT_WORK, "1 of 2: garden-pair", "2 of 2: cellular-shade"]),
        (Progress(quiet=True), []),
        (Progress(quiet=True, verbose=True), []),
    ],
)
def test_plain_lines_tell_of_it_where_there_is_no_terminal(
    progress: Progress, expected: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert list(progress.watch(iter(STEPS), len(STEPS))) == STEPS
    told = capsys.readouterr()
    assert told.err.splitlines() == expected
    assert told.out == ""


def test_a_bar_tells_of_it_on_a_terminal(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "stderr", Terminal())
    assert list(Progress().watch(iter(STEPS), len(STEPS))) == STEPS
    assert AT_WORK in sys.stderr.getvalue()
    assert "100%" in sys.stderr.getvalue()
