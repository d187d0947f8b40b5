"""The drawings that are kept as pictures are those that the code makes today."""

import pytest

from configurator.catalog import Catalog
from tests.drawing.kept_drawings import FOLDER, KEPT, kept_file, kept_svg
from tests.drawing.starter_drawings import Shown

ADVICE = "look at `python -m tests.gallery`; if it is meant, `python -m tests.gallery keep`"


@pytest.mark.parametrize("shown", KEPT, ids=lambda shown: shown.name)
def test_a_kept_drawing_has_not_changed(catalog: Catalog, shown: Shown) -> None:
    assert kept_file(shown).read_text(encoding="utf-8") == kept_svg(catalog, shown), ADVICE


def test_the_kept_drawings_are_few_and_all_of_them_compared() -> None:
    files = list(FOLDER.iterdir())
    assert {file.name for file in files} == {kept_file(shown).name for shown in KEPT}
    assert sum(file.stat().st_size for file in files) < 300_000
