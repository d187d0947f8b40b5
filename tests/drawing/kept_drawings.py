"""A few drawings that are kept as pictures, so that no change of theirs goes unseen."""

from pathlib import Path

from configurator.catalog import Catalog
from configurator.drawing.svg import to_svg
from configurator.kernel.shapes import Drawing
from tests.drawing.lettered_drawings import lettered_drawings
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


def kept_drawings(catalog: Catalog) -> dict[str, Drawing]:
    """Return all that are kept, by name: of the starter's coverings, and those with everything written on them."""
    return {shown.name: drawn(catalog, shown) for shown in KEPT} | lettered_drawings()


def kept_file(name: str) -> Path:
    """Return where a drawing is kept."""
    return FOLDER / f"{name}.svg"


def kept_svg(drawing: Drawing) -> str:
    """Return a drawing as it is kept: an element a line, so that a change can be read."""
    return to_svg(drawing).replace("><", ">\n<")


def keep(catalog: Catalog) -> None:
    """Write all of them anew."""
    FOLDER.mkdir(exist_ok=True)
    for old in FOLDER.glob("*.svg"):
        old.unlink()
    for name, drawing in kept_drawings(catalog).items():
        kept_file(name).write_text(kept_svg(drawing), encoding="utf-8")
