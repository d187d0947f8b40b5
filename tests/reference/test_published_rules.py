"""The published rules on doorways, reach and cords that the kernel's cautions go by, each with its source."""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.questions.child import CHILD_RULE, CORD_MOST, child_question
from configurator.kernel.questions.reach import REACH_HIGH, REACH_LOW, REACH_RULE
from configurator.kernel.questions.way_out import (
    CLEAR_HEIGHT_LEAST,
    CLEAR_WIDTH_LEAST,
    LOW_UP_TO,
    MID_MOST,
    MID_UP_TO,
    WIDTH_RULE,
)
from configurator.kernel.say import INCH
from tests.kernel.questions.question_samples import HOUSEHOLD, cautions_of, shade_travel


def test_the_inch() -> None:
    # Published: 25.4 mm exactly. NIST SP 811, Appendix B.
    assert INCH == 25.4


def test_clear_width() -> None:
    # Published: at least 32 in (815 mm), door open 90 degrees, face of door to stop. 2010 ADA Standards 404.2.3.
    # Published: at least 32 in (813 mm). IRC R311.2. Both name 32 in; their millimeters are rounded differently.
    assert CLEAR_WIDTH_LEAST == 32 * INCH
    assert pytest.approx(815, abs=2.5) == CLEAR_WIDTH_LEAST
    assert pytest.approx(813, abs=0.5) == CLEAR_WIDTH_LEAST
    assert "2010 ADA Standards 404.2.3" in WIDTH_RULE
    assert "IRC R311.2" in WIDTH_RULE


def test_clear_height() -> None:
    # Published: at least 78 in high. IRC R311.2.
    assert pytest.approx(78 * INCH) == CLEAR_HEIGHT_LEAST


def test_projections_into_the_clear_width() -> None:
    # Published: none below 34 in above the floor; at most 4 in between 34 and 80 in. 2010 ADA Standards 404.2.3.
    assert pytest.approx(34 * INCH) == LOW_UP_TO
    assert pytest.approx(80 * INCH) == MID_UP_TO
    assert pytest.approx(4 * INCH) == MID_MOST


def test_reach() -> None:
    # Published: operable parts 15 to 48 in above the floor, unobstructed. 2010 ADA Standards 308.2.1, 308.3.1.
    assert pytest.approx(15 * INCH) == REACH_LOW
    assert pytest.approx(48 * INCH) == REACH_HIGH
    assert REACH_RULE == "2010 ADA Standards 308.2.1, 308.3.1"


def test_cords() -> None:
    # Published: accessible operating cords longer than 8 in held hazardous; children 8 years and younger.
    # 87 FR 73144 (16 CFR part 1260, 28 Nov 2022). From memory: a court later set the rule aside.
    assert pytest.approx(8 * INCH) == CORD_MOST
    assert CHILD_RULE.startswith("87 FR 73144 (16 CFR part 1260, 28 Nov 2022")
    assert "from memory" in CHILD_RULE
    assert (
        "8 years and younger" in cautions_of(child_question(shade_travel(cord_length=300.0), HOUSEHOLD))["child_safety"]
    )


def test_door_hardware(catalog: Catalog) -> None:
    # Published: door hardware 34 to 48 in above the floor. 2010 ADA Standards 404.2.7.
    for door in catalog.doors.values():
        assert 34 * INCH <= door["handle_height"] <= 48 * INCH, door["id"]
