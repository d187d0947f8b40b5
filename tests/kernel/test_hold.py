"""What a hand takes hold of: a box about the parts, no larger and no smaller."""

from configurator.kernel.hold import around
from configurator.kernel.pieces import solid

EDGES = ("x0", "x1", "y0", "y1", "z0", "z1")


def test_the_box_holds_every_part_and_reaches_no_further() -> None:
    parts = [
        solid("bottom-rail", [0.0, 300.0], [10.0, 40.0], [5.0, 30.0]),
        solid("bottom-rail", [320.0, 600.0], [-20.0, 20.0], [0.0, 20.0]),
        solid("bottom-rail", [100.0, 200.0], [0.0, 90.0], [8.0, 55.0]),
    ]
    assert [around(parts)[edge] for edge in EDGES] == [0.0, 600.0, -20.0, 90.0, 0.0, 55.0]
    assert [around(parts[:1])[edge] for edge in EDGES] == [parts[0][edge] for edge in EDGES]
