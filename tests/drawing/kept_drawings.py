"""A few drawings that are kept as pictures, so that no change of theirs goes unseen."""

from pathlib import Path

from configurator.catalog import Catalog
from configurator.drawing.svg import to_svg
from tests.drawing.starter_drawings import Shown, drawn

FOLDER = Path(__file__).resolve().parent / "pictures"
KEPT = [
    Shown("banded-shade", "dune", "elevation", "half"),
    Shown("cellular-shade", "meadow-flax", "elevation", "half"),
    Shown("flat-fold-shade", "leaf-print", "elevation", "half"),
    Shown("louvered-shutter", "oak", "elevation", "closed"),
    Shown("metal-blind", "silver", "elevation", "half"),
    Shown("nested-fold-shade", "rush-honey", "elevation", "half"),
    Shown("roller-shade", "screen-charcoal", "elevation", "half"),
    Shown("roller-shade", "screen-charcoal", "street", "half"),
    Shown("soft-fold-shade", "linen-oat", "evening", "half"),
    Shown("vane-sheer-shade", "almond", "street", "closed"),
    Shown("soft-fold-shade", "stripe-ink", "elevation", "half"),
    Shown("soft-fold-shade", "linen-oat", "section", "half"),
    Shown("stretched-panel", "voile-mist", "elevation", "closed"),
    Shown("traversing-drapery", "velvet-moss", "elevation", "half"),
    Shown("traversing-drapery", "linen-flax", "plan", "half"),
    Shown("vane-sheer-shade", "almond", "elevation", "half"),
]


def kept_file(shown: Shown) -> Path:
    """Return where a drawing is kept."""
    return FOLDER / f"{shown.name}.svg"


def kept_svg(catalog: Catalog, shown: Shown) -> str:
    """Return a drawing as it is kept: an element a line, so that a change can be read."""
    return to_svg(drawn(catalog, shown)).replace("><", ">\n<")


def keep(catalog: Catalog) -> None:
    """Write all of them anew."""
    FOLDER.mkdir(exist_ok=True)
    for old in FOLDER.glob("*.svg"):
        old.unlink()
    for shown in KEPT:
        kept_file(shown).write_text(kept_svg(catalog, shown), encoding="utf-8")
