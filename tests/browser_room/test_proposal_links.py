"""Proposals and the answer to them as links: the same bytes from Python and a browser, and nothing but what went in."""

import json
import random
import subprocess
from pathlib import Path
from typing import Any

import pytest

from configurator.browser import catalog_js, kernel_js
from configurator.browser.catalog_json import page_catalog
from configurator.browser.link.check import check_of
from configurator.browser.link.decode import read_link
from configurator.browser.link.proposal_answer import (
    AnsweredOpening,
    ProposalAnswer,
    answer_code,
    answer_of_code,
    encode_answer,
    fresh_answer,
    read_answer,
    read_answer_code,
    spaced_code,
)
from configurator.browser.link.proposal_set import LEAF_SIGNS, ProposalSet, encode_set, read_set
from configurator.browser.link.tokens import DAMAGED_TOKENS, NEWER_TOKENS, NO_ANSWER, NO_PROPOSALS
from configurator.browser.link.told_text import seen_text
from configurator.browser.link.visit_set import SetWishes, answered_rows, set_mark, set_of_visit
from configurator.catalog import Catalog
from tests.browser.parity import differences
from tests.scripts.node import NODE
from tests.weir_cottage import house, opening_of

SEED = 20250312
COUNT = 200
# What people write, and what others write who mean no good.
WRITTEN = [
    *(
        "",
        "Dim, not dark; a little warmer.",
        "Für die Küche: wischbar – 2 × 3 m²",
        "кухня и зал",
        "台所の扉",
        "🪟🚪 so",
    ),
    *("<script>alert(1)</script>", "~p1~a1~", "%7E%2C-_-", "a-b--c", "two\nlines", "\"quoted\" & 'so'", "=1+1", "0"),
]
PLAIN: SetWishes = {"client": False, "prices": False, "on": "2025-03-12", "words": ""}
# Node's side: what the pages do with a link.
PAGE = r"""
const { kernel } = Astragal;
const { sets, answers, texts } = JSON.parse(await new Response(process.stdin).text());
console.log(JSON.stringify({
  sets: sets.map((one) => kernel.encode_set(one)),
  read: sets.map((one) => kernel.read_set(kernel.encode_set(one).link)),
  answers: answers.map((one) => kernel.encode_answer(one)),
  codes: sets.map((one, i) => kernel.answer_code(one, answers[i])),
  texts: texts.map((text) => [kernel.read_set(text), kernel.read_answer(text), kernel.read_answer_code(text)]),
}));
"""


def tag(chance: random.Random) -> str:
    """Return letters as a check has them."""
    return check_of(str(chance.random()))


def random_set(chance: random.Random) -> ProposalSet:
    """Return any set within its bounds."""
    return {
        "visit": tag(chance),
        "mark": tag(chance),
        "on": chance.choice(["", "2025-03-12"]),
        "client": chance.choice(WRITTEN),
        "words": chance.choice(WRITTEN),
        "openings": [
            {
                "tag": tag(chance),
                "room": chance.choice(WRITTEN),
                "link": f"2/in/garden-pair:cellular-shade@1/{tag(chance)}",
                "proposals": [
                    {
                        "tag": tag(chance),
                        "leaves": [leaf for leaf in LEAF_SIGNS if chance.random() < 0.3],
                        "otherwise": chance.random() < 0.3,
                        "note": chance.choice(WRITTEN) * chance.randint(0, 3),
                        "price": chance.choice(["", "1250", "1250.50"]),
                    }
                    for _proposal in range(chance.randint(1, 4))
                ],
            }
            for _opening in range(chance.randint(1, 9))
        ],
    }


def random_answer(told: ProposalSet, chance: random.Random) -> ProposalAnswer:
    """Return any answer to a set."""
    answer = fresh_answer(told)
    answer["remark"] = chance.choice(WRITTEN)
    for opening, one in zip(told["openings"], answer["openings"], strict=True):
        one["liked"] = chance.choice(["", *(proposal["tag"] for proposal in opening["proposals"])])
        one["remark"] = chance.choice(WRITTEN)
    return answer


@pytest.fixture(scope="module")
def sets() -> list[ProposalSet]:
    """Sets of every size."""
    chance = random.Random(SEED)
    return [random_set(chance) for _ in range(COUNT)]


@pytest.fixture(scope="module")
def answers(sets: list[ProposalSet]) -> list[ProposalAnswer]:
    """An answer to each set."""
    chance = random.Random(SEED + 1)
    return [random_answer(told, chance) for told in sets]


@pytest.fixture(scope="module")
def texts(sets: list[ProposalSet], answers: list[ProposalAnswer]) -> list[str]:
    """Links that have suffered on their way, and what never was one."""
    chance = random.Random(SEED + 2)
    links = [encode_set(told)["link"] for told in sets[:40]] + [encode_answer(one)["link"] for one in answers[:40]]
    cut = [link[: chance.randrange(len(link))] for link in links]
    places = [chance.randrange(2, len(link) - 1) for link in links]
    changed = [link[:at] + chance.choice("xX9~-_%<é") + link[at + 1 :] for link, at in zip(links, places, strict=True)]
    changed = [link for link in changed if link not in links]
    return [*cut, *changed, "", "#", "p", "a", "p1", "a1~", "p0~x", "p99~a~b", "a99~a~b", "~" * 1000, "<b>", "#2/in/x"]


@pytest.fixture(scope="module")
def on_node(
    tmp_path_factory: pytest.TempPathFactory,
    catalog: Catalog,
    sets: list[ProposalSet],
    answers: list[ProposalAnswer],
    texts: list[str],
) -> Any:
    """What Node makes of all of them."""
    script: Path = tmp_path_factory.mktemp("proposals") / "page.mjs"
    script.write_text(f"{kernel_js()}\n{catalog_js(catalog)}\n{PAGE}", encoding="utf-8")
    given = json.dumps({"sets": sets, "answers": answers, "texts": texts})
    done = subprocess.run([NODE, str(script)], input=given, capture_output=True, text=True, timeout=120)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


def test_what_goes_in_comes_out_and_both_sides_write_the_same(sets: list[ProposalSet], on_node: Any) -> None:
    for told, link, there in zip(sets, on_node["sets"], on_node["read"], strict=True):
        here = encode_set(told)
        assert here == link
        assert read_set("#" + here["link"])["held"] == told
        assert there["held"] == told


def test_an_answer_comes_back_as_link_and_as_code(
    sets: list[ProposalSet], answers: list[ProposalAnswer], on_node: Any
) -> None:
    for told, answer, link, code in zip(sets, answers, on_node["answers"], on_node["codes"], strict=True):
        assert encode_answer(answer) == link
        assert read_answer(link["link"])["held"] == answer
        assert answer_code(told, answer) == code
        read = read_answer_code(spaced_code(code).upper())
        assert read["mark"] == told["mark"]
        liked: list[AnsweredOpening] = [{**one, "remark": ""} for one in answer["openings"]]
        assert answer_of_code(told, read) == {**answer, "remark": "", "openings": liked}


def test_a_link_that_has_suffered_is_refused_alike(texts: list[str], on_node: Any) -> None:
    for text, there in zip(texts, on_node["texts"], strict=True):
        here: Any = [read_set(text), read_answer(text), read_answer_code(text)]
        assert list(differences(here, there)) == [], text
        assert all(read["refused"]["text"] for read in here), text


def test_a_slip_in_a_code_is_noticed(sets: list[ProposalSet], answers: list[ProposalAnswer]) -> None:
    code = answer_code(sets[0], answers[0])
    for place in range(len(code)):
        wrong = code[:place] + ("z" if code[place] != "z" else "y") + code[place + 1 :]
        assert read_answer_code(wrong)["refused"]["text"]


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("p1~" + "a" * 1_000_000, NO_PROPOSALS),
        ("p1~" + "~" * 20_001, DAMAGED_TOKENS),
        ("p2~aaaaa~bbbbb", NEWER_TOKENS),
        ("2/in/garden-pair:cellular-shade@1/3k9xq", NO_PROPOSALS),
        ("", NO_PROPOSALS),
    ],
    ids=["megabyte", "long", "newer", "configurations", "empty"],
)
def test_what_is_no_set_is_told_in_a_sentence(text: str, why: str) -> None:
    assert read_set(text)["refused"]["text"] == why
    assert read_set(text)["held"]["openings"] == []


def sealed(*tokens: str) -> str:
    """Return tokens under a check that is right, as somebody would write them who means no good."""
    text = "~".join(tokens)
    return f"{text}~{check_of(text)}"


@pytest.mark.parametrize(
    "tokens",
    [
        ["p1", "bbbbb", "bbbbb", "", "", ""],
        ["p1", "bbbbb", "<b>", "", "", "", "bbbbb", "", "2/in/x", "1", "bbbbb", "", "", ""],
        ["p1", "bbbbb", "bbbbb", "", "x" * 81, "", "bbbbb", "", "2/in/x", "1", "bbbbb", "", "", ""],
        ["p1", "bbbbb", "bbbbb", "", "", "", "bbbbb", "", "2/in/x", "5", *(["bbbbb", "", "", ""] * 5)],
        ["p1", "bbbbb", "bbbbb", "", "", "", "bbbbb", "", "2/in/x", "1", "bbbbb", "aa", "", ""],
        ["p1", "bbbbb", "bbbbb", "", "", "", "bbbbb", "-r-", "2/in/x", "1", "bbbbb", "", "", ""],
        ["p1", "bbbbb", "bbbbb", "", "", "", *(["bbbbb", "", "2/in/x", "1", "bbbbb", "", "", ""] * 41)],
    ],
    ids=["nothing", "mark", "client", "five", "leaves", "escape", "doors"],
)
def test_what_is_beyond_the_bounds_is_refused_though_its_check_is_right(tokens: list[str]) -> None:
    assert read_set(sealed(*tokens))["refused"]["text"] == DAMAGED_TOKENS


def test_nothing_is_an_answer_but_an_answer() -> None:
    assert read_answer("p1~x")["refused"]["text"] == NO_ANSWER
    assert read_answer(sealed("a1", "bbbbb", "bbbbb", ""))["refused"]["text"] == DAMAGED_TOKENS


def test_what_goes_into_no_link_is_refused_with_what_to_do(sets: list[ProposalSet]) -> None:
    told = sets[0]
    opening = told["openings"][0]
    many: ProposalSet = {**told, "openings": [opening] * 41}
    assert "41" in str(encode_set(many)["refused"]["terms"]["count"])
    five: ProposalSet = {**told, "openings": [{**opening, "proposals": opening["proposals"][:1] * 5}]}
    assert "{most} proposals for a door" in encode_set(five)["refused"]["text"]
    assert encode_set({**told, "words": "x" * 1201})["refused"]["text"].endswith("Shorten it.")
    assert "No door" in encode_set({**told, "openings": []})["refused"]["text"]
    long: ProposalSet = {
        **told,
        "openings": [
            {**opening, "room": "Hall", "proposals": [{**opening["proposals"][0], "note": "ж" * 600}]}
            for _ in range(20)
        ],
    }
    assert "more than mail programs pass on" in encode_set(long)["refused"]["text"]


def test_no_text_brings_what_nobody_sees() -> None:
    assert seen_text(" a\x00\u202eb\ud800\tc \n") == "a  b  c"


def test_a_visit_is_shown_without_a_name_or_a_price_unless_asked(catalog: Catalog) -> None:
    stock, visit = page_catalog(catalog), house()
    told = set_of_visit(visit, PLAIN, stock)
    link = encode_set(told)["link"]
    assert visit["client"]
    assert "Tansy" not in link
    assert visit["id"] not in link
    assert [each["price"] for opening in told["openings"] for each in opening["proposals"] if each["price"]] == []
    named = set_of_visit(visit, {**PLAIN, "client": True, "words": " Look at these. "}, stock)
    assert (named["client"], named["words"]) == (visit["client"], "Look at these.")


def test_each_opening_opens_as_it_was_measured(catalog: Catalog) -> None:
    stock, visit = page_catalog(catalog), house()
    told = set_of_visit(visit, PLAIN, stock)
    assert len(told["openings"]) == len([one for one in visit["openings"] if one["proposals"]])
    for shown in told["openings"]:
        opened = read_link(shown["link"], stock)
        assert opened["problems"] == []
        assert len(opened["state"]["configurations"]) == len(shown["proposals"])


def test_an_answer_finds_what_it_is_about_and_an_older_one_is_known(catalog: Catalog) -> None:
    stock, visit = page_catalog(catalog), house()
    told = set_of_visit(visit, PLAIN, stock)
    answer = fresh_answer(told)
    answer["openings"][0]["liked"] = told["openings"][0]["proposals"][-1]["tag"]
    rows = answered_rows(visit, answer)
    study = opening_of(visit, visit["openings"][0]["id"])
    assert (rows[0]["opening"], rows[0]["proposal"]) == (study["id"], study["proposals"][-1]["id"])
    assert rows[1]["proposal"] == ""
    study["note"] = "Something else"
    assert set_mark(visit, stock) == told["mark"]
    study["proposals"].pop()
    assert set_mark(visit, stock) != told["mark"]
    assert (answered_rows(visit, answer)[0]["proposal"], answered_rows(visit, answer)[0]["asked"]) == ("", True)
