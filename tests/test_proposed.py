"""Proposals and the client's answer at a terminal: all that their links hold, door by door."""

import json
import re
from collections.abc import Callable

import pytest
from click.testing import CliRunner, Result

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link.proposal_answer import ProposalAnswer, encode_answer, fresh_answer
from configurator.browser.link.proposal_set import ProposalSet, encode_set
from configurator.browser.link.visit_set import set_of_visit
from configurator.catalog import Catalog
from configurator.cli import main
from configurator.kernel.tongue import in_words
from configurator.proposed import OTHERWISE
from configurator.visited import on_one_line, priced
from tests.weir_cottage import house


def visit(*arguments: str) -> Result:
    """Run ``astragal visit``."""
    return CliRunner().invoke(main, ["visit", *arguments])


def flowing(text: str) -> str:
    """Return a text as one paragraph, wherever its lines end."""
    return re.sub(r"\s+", " ", text)


@pytest.fixture(scope="module")
def proposals(catalog: Catalog) -> ProposalSet:
    """The proposals for a whole house, with name, words and prices; one is made for a leaf that measures otherwise."""
    told = set_of_visit(
        house(), {"client": True, "prices": True, "on": "2026-03-12", "words": "Look at these."}, page_catalog(catalog)
    )
    for number, opening in enumerate(told["openings"]):
        for place, proposal in enumerate(opening["proposals"]):
            proposal["price"] = f"{1000 + 100 * number + place}.50"
            proposal["otherwise"] = (number, place) == (0, 0)
    told["openings"][-1]["room"] = ""
    return told


@pytest.fixture(scope="module")
def answer(proposals: ProposalSet) -> ProposalAnswer:
    """An answer that likes the last of each other door, with remarks."""
    told = fresh_answer(proposals)
    told["remark"] = "We look forward to it."
    for number, one in enumerate(told["openings"]):
        one["liked"] = proposals["openings"][number]["proposals"][-1]["tag"] if number % 2 == 0 else ""
        one["remark"] = f"Remark {number}" if number != 1 else ""
    return told


def test_an_answer_says_of_each_door_what_is_marked(answer: ProposalAnswer) -> None:
    lines = visit(encode_answer(answer)["link"]).stdout.splitlines()
    first, remark, *rest = lines
    assert answer["mark"] in first
    assert answer["visit"] in first
    assert remark == "  We look forward to it."
    expected = []
    for number, one in enumerate(answer["openings"], 1):
        expected += [f"  Door {number}: " + (f"Proposal {one['liked']}" if one["liked"] else "nothing marked")]
        expected += [f"    {one['remark']}"] if one["remark"] else []
    assert rest == expected
    assert {"nothing marked" in line for line in rest} == {True, False}


def test_proposals_are_told_door_by_door_with_price_and_figures(catalog: Catalog, proposals: ProposalSet) -> None:
    head, *doors = visit(encode_set(proposals)["link"]).stdout.split("\n\n")
    told = flowing("\n\n".join([head, *doors]))
    assert head.splitlines() == [f"{proposals['client']}, 2026-03-12", "  Look at these."]
    rooms = [on_one_line(each["room"]) or f"Door {at}" for at, each in enumerate(proposals["openings"], 1)]
    starts = [next(at for at, part in enumerate(doors) if part.splitlines()[0] == room) for room in rooms]
    assert starts == sorted(starts)
    for start, end, opening in zip(starts, [*starts[1:], len(doors)], proposals["openings"], strict=True):
        own = flowing("\n\n".join(doors[start:end]))
        for proposal in opening["proposals"]:
            named = f"Proposal {proposal['tag']}, {priced(catalog, proposal['price'])}"
            assert (f"{named}, {on_one_line(proposal['note'])}" if proposal["note"] else named) in own
        figures = visit(opening["link"]).stdout
        assert flowing(figures).strip() in own
    assert told.count(flowing(in_words(OTHERWISE, catalog.words))) == 1


def test_what_names_nobody_is_headed_all_the_same(proposals: ProposalSet) -> None:
    bare: ProposalSet = {**proposals, "client": "", "on": "", "words": ""}
    assert visit(encode_set(bare)["link"]).stdout.startswith("Proposals\n\n")


def test_as_json_a_link_holds_what_went_in(proposals: ProposalSet, answer: ProposalAnswer) -> None:
    assert json.loads(visit(encode_answer(answer)["link"], "--json").stdout) == {"answer": answer}
    told = json.loads(visit("https://doors.example/proposals.html#" + encode_set(proposals)["link"], "--json").stdout)
    shown = told["proposals"]
    assert {**shown, "openings": []} == {**proposals, "openings": []}
    for opening, there in zip(proposals["openings"], shown["openings"], strict=True):
        assert {name: there[name] for name in opening} == opening
        assert len(there["configurations"]) == len(opening["proposals"])
        assert all(one["figures"] for one in there["configurations"])


@pytest.mark.parametrize("spoilt", [lambda link: link[:-1], lambda link: link[:20], lambda link: link + "x"])
def test_a_link_that_has_suffered_is_refused(
    proposals: ProposalSet, answer: ProposalAnswer, spoilt: Callable[[str], str]
) -> None:
    for link in (encode_set(proposals)["link"], encode_answer(answer)["link"]):
        refused = visit(spoilt(link))
        assert refused.exit_code == 2
        assert refused.stdout == ""
        assert "LINK" in refused.stderr
