"""The light beside a cloth is reckoned from the outermost edges of all cloth that hangs."""

from configurator.kernel.pieces import solid
from configurator.kernel.questions.light_gap import cloth_reach


def test_the_span_of_cloth_is_from_the_first_edge_to_the_last_without_rolls_and_rails() -> None:
    up, out = [0.0, 900.0], [0.0, 5.0]
    cloths = [solid("fabric", span, up, out) for span in ([120.0, 300.0], [40.0, 160.0], [280.0, 610.0])]
    others = [solid("roll", [0.0, 700.0], up, out), solid("headrail", [0.0, 800.0], up, out)]
    assert cloth_reach([*others, *cloths]) == [40.0, 610.0]
    assert cloth_reach(others) == []
