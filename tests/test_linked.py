"""Links at a terminal: what a page opens with them, a command tells."""

import json
import random
import re

import pytest
from click.testing import CliRunner, Result

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import decode, encode
from configurator.browser.link.check import check_of
from configurator.browser.link.encode import fit_of
from configurator.browser.link.shapes import State
from configurator.browser.link.state import fresh_configuration, fresh_state
from configurator.catalog import Catalog
from configurator.cli import main
from configurator.kernel.answer import ask_fit
from configurator.kernel.message import say
from tests.corpus import entries
from tests.links import random_state

SOUND = "2/in/garden-pair:cellular-shade"


def fit(*arguments: str) -> Result:
    """Run ``astragal fit``."""
    return CliRunner().invoke(main, ["fit", *arguments])


def sealed(body: str) -> str:
    """Return a link with the check of its text."""
    return f"{body}/{check_of(body)}"


def every_family(catalog: Catalog) -> list[State]:
    """Return states that between them hold every family, on one door after the other."""
    stock = page_catalog(catalog)
    states = []
    for number, family in enumerate(catalog.families):
        door = list(catalog.doors)[number % len(catalog.doors)]
        state = fresh_state(stock)
        state["configurations"] = [fresh_configuration(stock, door, family)]
        states.append(state)
    return states


def test_every_family_in_a_link_is_told_with_the_figures_of_the_page(catalog: Catalog) -> None:
    stock = page_catalog(catalog)
    states = [*every_family(catalog), *(random_state(random.Random(seed), catalog) for seed in range(2))]
    for state in states:
        told = json.loads(fit(encode(state, stock), "--json").stdout)
        assert told["problems"] == []
        for one, shown in zip(state["configurations"], told["configurations"], strict=True):
            answer = ask_fit(fit_of(one, stock), state["household"])
            assert shown["family"] == one["family"]
            assert shown["refusal"] == say(answer["refusal"], catalog.words, catalog.showroom.units)
            figures = {name: figure["value"] for name, figure in answer["figures"].items()}
            assert {name: figure["value"] for name, figure in shown["figures"].items()} == pytest.approx(figures)
            assert (shown["wishes"], shown["changes"]) == (one["wishes"], [])


def test_links_that_were_kept_open_as_they_do_on_the_page(catalog: Catalog) -> None:
    stock = page_catalog(catalog)
    for entry in entries()[:4]:
        told = json.loads(fit(entry.link, "--json").stdout)
        opened = decode(entry.link, stock)["state"]["configurations"]
        assert [one["family"] for one in told["configurations"]] == [one["family"] for one in opened]


def test_a_whole_address_is_a_link_and_speaks_its_own_units() -> None:
    told = fit("https://showroom.example/doors/try.html#" + sealed("2/mm/garden-pair;glass_width=560:cellular-shade"))
    assert told.exit_code == 0
    assert re.search(r"order width +[\d.]+ mm +[^m\n]+ in\n", told.stdout)
    assert "As it stands in the link" in told.stdout


def test_what_has_moved_since_a_link_was_made_is_told_beside_today() -> None:
    told = fit(sealed(SOUND + "@0.35@w24in,clears"))
    assert "when the link was made: 24 in; now: 25 in" in told.stdout


def test_what_a_link_names_and_nobody_knows_is_told_on_stderr() -> None:
    told = fit(sealed("2/in/garden-pair;no_such_measure=3in:cellular-shade"))
    assert told.exit_code == 0
    assert "no_such_measure" in told.stderr


@pytest.mark.parametrize(
    ("link", "why"),
    [
        (sealed(SOUND)[:-1], "cut short or changed"),
        ("9/in/garden-pair:cellular-shade/00000", "newer version"),
        ("nothing", "no configuration that can be read"),
        ("try.html#", "no configuration that can be read"),
    ],
)
def test_a_link_that_cannot_be_read_gives_no_numbers(link: str, why: str) -> None:
    told = fit(link)
    assert (told.exit_code, told.stdout) == (2, "")
    assert why in told.stderr


def test_nothing_is_named_beside_a_link() -> None:
    told = fit(sealed(SOUND), "--door", "garden-door")
    assert told.exit_code == 2
    assert "A link says which doors, families and picks" in told.stderr
