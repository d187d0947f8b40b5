"""Cloth for gathered panels against worked examples on public workroom pages (inches, yards)."""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.questions.cloth import cloth_cut, cloth_widths
from configurator.kernel.resolve import resolve

INCH = 25.4
YARD = 36 * INCH

EXAMPLES = [
    # published: public how-to on calculating curtain fabric (ehow.co.uk 6326063)
    (84, 2.5, 15, 54, 78, 10, 0, 5, 12.22),
    # published: public page on measuring for draperies (drpinc.net); 12.6 as printed is 12.67
    (63, 3, 0, 54, 114, 0, 0, 4, 12.67),
    # published: the same page's rule, with an 11 in repeat
    (63, 3, 0, 54, 114, 0, 11, 4, 13.44),
    # published: public page of commonly used drapery formulas (mylltd.com); 4 in overlap and two 6 in returns
    # belong to the finished width there
    (141, 2.5, 0, 48, 90, 16, 24, 8, 26.67),
]


@pytest.mark.parametrize("example", EXAMPLES)
def test_cloth_agrees_with_the_published_example(example: tuple[float, ...]) -> None:
    width, fullness, sides, bolt, height, allowance, repeat, widths, yards = example
    found = cloth_widths(width * INCH, fullness, sides * INCH, bolt * INCH)
    cut = cloth_cut(height * INCH, allowance * INCH, repeat * INCH)
    assert found == widths
    assert found * cut / YARD == pytest.approx(yards, abs=0.005)


@pytest.mark.parametrize("header", ["none", "ruffle"])
def test_a_rod_pocket_panel_has_cloth_for_its_casings_and_header(catalog: Catalog, header: str) -> None:
    # published: a casing takes the rod's diameter, 1/2 in turned under and 1/4 to 1 in of ease; a header adds twice
    # its height. Public page on estimating curtain yardage (pattern-making.com). The finished height has it once.
    numbers = resolve(catalog.families["stretched-panel"], {"header": header})
    casings = [2 * (numbers["rod_diameter"] + (0.5 + ease) * INCH) for ease in (0.25, 1)]
    assert casings[0] <= numbers["cut_allowance"] - numbers["ruffle"] <= casings[1]
