"""The drawings that are kept as pictures are those that the code makes today."""

from configurator.catalog import Catalog
from tests.drawing.kept_drawings import FOLDER, kept_drawings, kept_file, kept_svg

ADVICE = "look at `python -m tests.gallery`; if it is meant, `python -m tests.gallery keep`"


def test_a_kept_drawing_has_not_changed(catalog: Catalog) -> None:
    drawn = {name: kept_svg(drawing) for name, drawing in kept_drawings(catalog).items()}
    assert [name for name in drawn if kept_file(name).read_text(encoding="utf-8") != drawn[name]] == [], ADVICE


def test_the_kept_drawings_are_few_and_all_of_them_compared(catalog: Catalog) -> None:
    files = list(FOLDER.iterdir())
    assert {file.name for file in files} == {kept_file(name).name for name in kept_drawings(catalog)}
    assert sum(file.stat().st_size for file in files) < 360_000
