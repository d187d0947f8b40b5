"""Every covering in every look, view and place on one page, for whoever changes a drawing: ``python -m tests.gallery``.

The page and its drawings stand in ``tests/.cache/gallery``. What differs from the run before is shown first, before
beside after. ``python -m tests.gallery keep`` writes the few drawings that the tests compare.
"""

import shutil
import sys
from html import escape
from pathlib import Path

from configurator.catalog import Catalog, load
from configurator.drawing.svg import to_svg
from configurator.places import CONTENT
from tests.drawing.kept_drawings import keep
from tests.drawing.starter_drawings import Shown, drawn, every_shown

HERE = Path(__file__).resolve().parent
FOLDER = HERE / ".cache" / "gallery"
STYLE = """
body { margin: 1rem; font: 14px/1.3 sans-serif; background: #fff; }
section { display: flex; flex-wrap: wrap; gap: 0.75rem; align-items: end; margin-bottom: 2rem; }
h2 { flex-basis: 100%; margin: 0; font-size: 1.1rem; }
figure { margin: 0; } figcaption { font-size: 0.75rem; }
img { height: 22rem; max-width: 40rem; object-fit: contain; }
.changed { outline: 3px solid #b3261e; outline-offset: 3px; }
"""


def draw_all(catalog: Catalog, folder: Path) -> list[Shown]:
    """Write every drawing into a folder; return what there is."""
    folder.mkdir(parents=True)
    shown = list(every_shown(catalog))
    for each in shown:
        (folder / f"{each.name}.svg").write_text(to_svg(drawn(catalog, each)), encoding="utf-8")
    return shown


def has_changed(shown: Shown) -> bool:
    """Return whether a drawing was otherwise in the run before."""
    before, now = (FOLDER / run / f"{shown.name}.svg" for run in ("before", "now"))
    return before.is_file() and before.read_bytes() != now.read_bytes()


def figure(shown: Shown, runs: tuple[str, ...]) -> str:
    """Return a drawing with its name, as each of the runs has it."""
    pictures = "".join(f'<img loading="lazy" src="{run}/{shown.name}.svg" alt="{run}">' for run in runs)
    mark = ' class="changed"' if has_changed(shown) else ""
    return f"<figure{mark}>{pictures}<figcaption>{escape(' '.join(shown[1:]))}</figcaption></figure>"


def page(shown: list[Shown]) -> str:
    """Return the page: what has changed, then everything, family by family."""
    changed = [each for each in shown if has_changed(each)]
    told = f"{len(changed)} of {len(shown)} drawings have changed since the run before"
    parts = [f"<h1>{told}</h1><section>", *(figure(each, ("before", "now")) for each in changed), "</section>"]
    for family in dict.fromkeys(each.family for each in shown):
        own = [figure(each, ("now",)) for each in shown if each.family == family]
        parts += [f"<section><h2>{escape(family)}</h2>", *own, "</section>"]
    return f'<!doctype html><meta charset="utf-8"><title>Drawings</title><style>{STYLE}</style>{"".join(parts)}\n'


def main() -> None:
    """Draw everything anew, the run before kept beside it."""
    catalog = load(CONTENT)
    if sys.argv[1:] == ["keep"]:
        keep(catalog)
        return
    shutil.rmtree(FOLDER / "before", ignore_errors=True)
    if (FOLDER / "now").is_dir():
        (FOLDER / "now").rename(FOLDER / "before")
    shown = draw_all(catalog, FOLDER / "now")
    (FOLDER / "index.html").write_text(page(shown), encoding="utf-8")
    print(FOLDER / "index.html")


if __name__ == "__main__":
    main()
