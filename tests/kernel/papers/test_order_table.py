"""The order as a table: what stands in its cells."""

import pytest

from configurator.kernel.message import plain, silence
from configurator.kernel.papers.blocks import named_cell, value_cell
from configurator.kernel.papers.order_facts import Fact
from configurator.kernel.papers.order_table import fact_cell
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import ENGLISH

INCH = 25.4


def fact_of(value: Message) -> Fact:
    return {"id": "it", "name": plain("it"), "value": value, "rule": silence(), "worked": silence()}


@pytest.mark.parametrize(
    ("value", "cell"),
    [
        (value_cell(26 * INCH, "mm"), "660.4"),
        (value_cell(10 * INCH, "mm"), "254.0"),
        # A sixteenth of an inch is 1.5875 mm: halves of a thousandth go up, on the page and at the command line.
        (value_cell(INCH / 16, "mm"), "1.588"),
        (value_cell(2.0, "count"), "2"),
        (value_cell(2.5, "count"), "2.5"),
        (value_cell(0.873, "share"), "0.873"),
        (named_cell("=1+1"), "'=1+1"),
        (plain("to write in"), "To write in"),
    ],
)
def test_a_number_stands_as_such_and_words_are_no_formula(value: Message, cell: str) -> None:
    assert fact_cell(fact_of(value), ENGLISH, "in") == cell
    assert fact_cell(fact_of(value_cell(1.5, "mm")), {**ENGLISH, "decimal": ","}, "mm") == "1.5"
