"""A quote ends with all of its terms, each as the showroom has set it."""

from typing import Any

import pytest

from configurator.kernel.message import say
from configurator.kernel.papers.blocks import LIST
from configurator.kernel.papers.quote_paper import terms_blocks
from configurator.kernel.tongue import ENGLISH
from tests.kernel.prices.price_samples import terms

MEASURED = "Prices are for the sizes as measured; what is measured anew is priced anew."
HOLDS, HANGS = "This quote holds for 30 days.", "The coverings hang 4 to 6 weeks after the order."
LINES = "Each line is rounded to the nearest $0.01, halves up."


def told(changes: dict[str, Any]) -> list[str]:
    """Return the terms in words, some of them changed."""
    blocks = terms_blocks({**terms(), **changes})  # type: ignore[typeddict-item]
    return [say(item, ENGLISH, "in") for block in blocks if block["kind"] == LIST for item in block["items"]]


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({}, [HOLDS, HANGS, LINES, MEASURED]),
        ({"valid_days": 1.0}, ["This quote holds for 1 day.", HANGS, LINES, MEASURED]),
        ({"lead_weeks": [5.0, 5.0]}, [HOLDS, "The coverings hang 5 weeks after the order.", LINES, MEASURED]),
        ({"lead_weeks": [1.0, 1.0]}, [HOLDS, "The coverings hang 1 week after the order.", LINES, MEASURED]),
        ({"deposit": 4000.0}, [HOLDS, HANGS, "With the order, 40% of the total is to be paid.", LINES, MEASURED]),
        (
            {"at": "total", "to": 100.0},
            [HOLDS, HANGS, "The total is rounded to the nearest $1.00, halves up.", MEASURED],
        ),
    ],
)
def test_every_term_is_told(changes: dict[str, Any], said: list[str]) -> None:
    assert told(changes) == said
