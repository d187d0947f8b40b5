"""Numbers other than lengths, as people write them."""

import pytest

from configurator.catalog.family_numbers import LIMITS
from configurator.catalog.units import READERS
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.mechanisms.common import COMMON_TAKES

WRITTEN = [
    ("share", "35 %", 0.35),
    ("share", "35%", 0.35),
    ("share", "0.35", 0.35),
    ("share", "1", 1.0),
    ("count", "2.5", 2.5),
    ("degree", "45 deg", 45.0),
    ("degree", "-75°", -75.0),
    ("switch", "yes", 1.0),
    ("switch", "No", 0.0),
    ("mass", "0.3 kg/m2", 0.3),
    ("mass", "0.3 kg/m²", 0.3),
    ("run-mass", "0.45 kg/m", 0.45),
    ("weight", "0.8 kg", 0.8),
    ("u-value", "1.1 W/m2K", 1.1),
    ("u-value", "1.1 W/(m²K)", 1.1),
    ("radius", "4 px", 4.0),
]

REFUSED = [
    ("share", "half", "a share from 0 to 1, or one such as 35 %, is expected"),
    ("share", "%", "a share from 0 to 1, or one such as 35 %, is expected"),
    ("count", "three", "a number such as 3 or 2.5 is expected"),
    ("degree", "45", "an angle such as 45 deg is expected"),
    ("switch", "true", "yes or no is expected"),
    ("run-mass", "0.45 kg", "a mass by length such as 0.4 kg/m is expected"),
    ("weight", "800 g", "a mass such as 0.8 kg is expected"),
    ("mass", "0.3", "a mass by area such as 0.3 kg/m2 is expected"),
    ("mass", "300 g/m2", "a mass by area such as 0.3 kg/m2 is expected"),
    ("u-value", "1.1", "a U-value such as 1.1 W/m2K is expected"),
    ("radius", "4", "a radius such as 4 px is expected"),
]


@pytest.mark.parametrize(("unit", "text", "value"), WRITTEN)
def test_a_written_number_is_read(unit: str, text: str, value: float) -> None:
    assert READERS[unit](text) == value


@pytest.mark.parametrize(("unit", "text", "advice"), REFUSED)
def test_a_slip_is_told_with_what_to_write(unit: str, text: str, advice: str) -> None:
    with pytest.raises(ValueError, match="is expected") as told:
        READERS[unit](text)
    assert str(told.value) == advice


@pytest.mark.parametrize("name", MECHANISMS)
def test_every_number_of_a_mechanism_has_a_unit_that_content_can_write(name: str) -> None:
    for unit, _, _ in {**COMMON_TAKES, **MECHANISMS[name]["takes"]}.values():
        assert LIMITS[unit][0] in READERS
