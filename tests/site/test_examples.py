"""An example visit comes out of its short script as it was."""

import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from configurator.browser.link.packed_text import unpacked_text
from configurator.catalog import Catalog
from configurator.site.mkdocs.examples import FARTHEST, LONGEST, example_js, packed_text, plain_json

# What comes again and again, in few letters.
REPEATED = st.lists(st.sampled_from(["room", "Study", '{"mm":', "0", ",", "a" * 200]), max_size=60).map("".join)


@given(REPEATED)
def test_what_is_packed_is_unpacked_as_it_was(text: str) -> None:
    assert unpacked_text(packed_text(text)) == text


def test_what_comes_again_is_told_by_where_it_stood() -> None:
    chance = random.Random(1)
    text = "".join(chance.choice("abcdefgh") for _ in range(LONGEST))
    between = "".join(chr(chance.randrange(48, 58)) for _ in range(FARTHEST - LONGEST))
    told = packed_text(text + between + text)
    assert unpacked_text(told) == text + between + text
    assert len(told) == len(packed_text(text + between)) + 4
    # One letter further back, it is out of reach.
    assert len(packed_text(f"{text}x{between}{text}")) > len(packed_text(f"{text}x{between}")) + 4


def test_an_example_is_a_fraction_of_its_json_and_has_no_sign_of_a_script_s_own(catalog: Catalog) -> None:
    visit = next(iter(catalog.visits.values()))
    script = example_js(visit)
    assert script.count("'") == 2
    assert len(script) < len(plain_json(visit)) / 3


@pytest.mark.parametrize("letter", ["'", "~", "\\", '"'])
def test_letters_with_a_use_of_their_own_are_told(catalog: Catalog, letter: str) -> None:
    visit = {**next(iter(catalog.visits.values())), "client": f"a{letter}b"}
    plain = plain_json(visit)
    assert unpacked_text(packed_text(plain).replace("\\\\", "\\")) == plain
