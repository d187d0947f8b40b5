"""What a door's comparison comes down to, and how words are set on a page."""

from markupsafe import Markup

from configurator.catalog import load
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.face.template_words import typeset_value
from configurator.site.house import House
from configurator.site.kinds.compare import NO_FIT
from configurator.site.kinds.glance import at_a_glance

HOUSE = House(load(CONTENT), CONTENT, Answers())


def line(name: str, state: str, clear: float, out: float, light: float) -> dict[str, object]:
    values = {"visible_glass_open": clear, "projection_most": out, "light_closed": light}
    return {
        "name": name,
        "state": state,
        "refusal": "too wide" if state == NO_FIT else "",
        "figures": {key: {"value": value} for key, value in values.items()},
    }


LINES = [
    line("Roller", "clears", 1.0, 73.0, 0.24),
    line("Banded", "clears", 0.9996, 80.0, 0.16),
    line("Cellular", "guide by hand", 0.98, 31.75, 0.38),
    line("Blind", "blocked", 0.96, 41.3, 0.001),
    line("Drapery", NO_FIT, 1.0, 10.0, 0.0),
]


def test_a_comparison_comes_down_to_four_answers() -> None:
    told = [(answer["text"], answer["who"]) for answer in at_a_glance(LINES, HOUSE)]
    assert told == [
        ("2 of 5", "1 guided by hand, 1 blocked"),
        ("2 of 5", "Roller, Banded"),
        ("1 1/4 in", "Cellular"),
        ("0%", "Blind"),
    ]


def test_where_many_share_an_answer_the_first_are_named_and_the_rest_counted() -> None:
    many = [line(name, "clears", 1.0, 25.4, 0.5) for name in ("A", "B", "C", "D", "E")]
    assert at_a_glance(many, HOUSE)[1]["who"] == "A, B and 3 more"


def test_where_nothing_fits_there_is_nothing_to_tell() -> None:
    assert at_a_glance([LINES[-1]], HOUSE) == []


def test_apostrophes_are_curved_in_words_and_left_alone_in_markup() -> None:
    assert typeset_value("the leaf's edge") == "the leaf’s edge"
    assert typeset_value(Markup("<i title='x'>it's</i>")) == "<i title='x'>it's</i>"
