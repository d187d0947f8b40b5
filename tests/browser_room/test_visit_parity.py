"""A visit comes to the same on Node as in Python: read, written, measured, hung, agreed, merged."""

import json
import random
import subprocess
from pathlib import Path
from typing import Any

import pytest

from configurator.browser import catalog_js, kernel_js
from configurator.browser.catalog_json import page_catalog
from configurator.browser.link.catalog_version import catalog_version
from configurator.browser.link.made_links import linked_order
from configurator.browser.link.visit_link import opening_link
from configurator.catalog import Catalog
from configurator.kernel.visit.agreed import agreed_beside_today, agreed_now
from configurator.kernel.visit.agreed_today import agreed_today
from configurator.kernel.visit.beside_today import beside_today
from configurator.kernel.visit.findings import opening_findings
from configurator.kernel.visit.leaf_doors import leaf_door
from configurator.kernel.visit.merge import merge_visits
from configurator.kernel.visit.used import used_numbers
from configurator.visit_file import read_text
from configurator.visit_text import value_text, visit_text
from tests.browser.parity import differences
from tests.scripts.node import NODE
from tests.test_visit_file import random_visit
from tests.weir_cottage import house, leaf_of, opening_of, proposal_of, reading

# Node's side: what a page does with a visit.
PAGE = r"""
const { kernel, catalog } = Astragal;
const kindOf = (value) => value === null ? "nothing" : Array.isArray(value) ? "list"
  : { string: "text", number: "number", boolean: "flag", object: "entry" }[typeof value];
const read = (text) => {
  try { return kernel.read_visit(JSON.parse(text), kindOf); } catch { return null; }
};
const { texts, mine, theirs, stamp } = JSON.parse(await new Response(process.stdin).text());
const written = texts.map((text) => {
  const told = read(text);
  return told === null ? "no JSON" : told.slips.length > 0 ? told.slips : JSON.stringify(told.visit, null, 2) + "\n";
});
const visit = read(mine).visit;
const openings = visit.openings.map((opening) => {
  const proposal = opening.proposals[0];
  const agreed = kernel.agreed_now(visit, opening, proposal, catalog, stamp);
  return {
    doors: opening.leaves.map((leaf) => kernel.leaf_door(opening, leaf.id, catalog)),
    used: opening.leaves.map((leaf) => kernel.used_numbers(leaf)),
    findings: kernel.opening_findings(opening, catalog, "in"),
    agreed,
  };
});
const later = read(theirs).visit;
const moved = later.openings.map((opening, i) =>
  kernel.agreed_beside_today(later, opening, openings[i].agreed, catalog));
const beside = later.openings.map((opening, i) =>
  kernel.beside_today(openings[i].agreed, kernel.agreed_today(later, opening, openings[i].agreed, catalog)));
const linked = kernel.linked_order(later, catalog, kernel.opening_link).commissions
  .map(({ room, links, controls }) => ({ room, links, controls }));
const merged = kernel.merge_visits(visit, later, (value) => JSON.stringify(value, null, 2));
const version = kernel.catalog_version(catalog);
console.log(JSON.stringify({ written, openings, moved, beside, linked, merged, version }));
"""
HOSTILE = ["", "[" * 100000, "NaN", "[]", '{"version": 2}', '{"version": 1}', '{"version":1,"id":[],"units":3}']


def a_year_later() -> Any:
    """The house with a wall and a lever measured anew, a proposal changed, a reading that is a slip."""
    visit = house()
    leaf_of(visit, "study", "other")["readings"].append(reading("wall_gap", 381.0, on="2025-04-30"))
    leaf_of(visit, "study", "active")["readings"].append(reading("handle.gap", 28.575, on="2026-03-20"))
    proposal_of(visit, "kitchen", "a")["choices"]["fabric"] = "plain-milk"
    opening_of(visit, "hall")["room"] = "Passage"
    return visit


def slipped() -> Any:
    """The house with readings that cannot be right."""
    visit = house()
    for each in leaf_of(visit, "kitchen", "active")["readings"]:
        each["mm"] += 80.0 if each["typed"] == "79 1/2" else 0.0
    leaf_of(visit, "study", "active")["readings"].append(reading("glass_diagonal", 1730.0, "rising"))
    return visit


@pytest.fixture(scope="module")
def texts() -> list[str]:
    return [*(visit_text(random_visit(random.Random(seed))) for seed in range(20)), *HOSTILE]


@pytest.fixture(scope="module")
def on_node(catalog: Catalog, texts: list[str], tmp_path_factory: pytest.TempPathFactory) -> Any:
    """What comes of it on Node."""
    script: Path = tmp_path_factory.mktemp("visit") / "visit.mjs"
    script.write_text(f"{kernel_js()}\n{catalog_js(catalog)}\n{PAGE}", encoding="utf-8")
    given = {
        "texts": texts,
        "mine": visit_text(slipped()),
        "theirs": visit_text(a_year_later()),
        "stamp": {"on": "2025-03-20", "catalog": "abcde"},
    }
    done = subprocess.run([NODE, str(script)], input=json.dumps(given), capture_output=True, text=True, timeout=120)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout)


def in_python(text: str) -> Any:
    """Return what comes of a text in Python, as Node tells it."""
    told = read_text(text)
    slips = [dict(slip) for slip in told["slips"]]
    return slips or visit_text(told["visit"])


def test_files_are_read_judged_and_written_alike(texts: list[str], on_node: Any) -> None:
    for text, there in zip(texts, on_node["written"], strict=True):
        here = in_python(text)
        if there == "no JSON":
            assert isinstance(here, list)
        elif isinstance(here, str):
            assert there == here
        else:
            assert [slip["says"]["text"] for slip in there] == [slip["says"]["text"] for slip in here]


def test_what_is_made_has_the_same_links_on_both_sides(catalog: Catalog, on_node: Any) -> None:
    ordered = linked_order(a_year_later(), page_catalog(catalog), opening_link)["commissions"]
    here = [{name: made[name] for name in ("room", "links", "controls")} for made in ordered]
    assert here == on_node["linked"]
    assert [list(made["links"]) for made in ordered] == [["active"], ["active"]]


def test_what_is_measured_hung_and_agreed_comes_to_the_same(catalog: Catalog, on_node: Any) -> None:
    stock, mine, later = page_catalog(catalog), slipped(), a_year_later()
    stamp: Any = {"on": "2025-03-20", "catalog": "abcde"}
    for number, opening in enumerate(mine["openings"]):
        agreed = agreed_now(mine, opening, opening["proposals"][0], stock, stamp)
        here: Any = {
            "doors": [leaf_door(opening, leaf["id"], stock) for leaf in opening["leaves"]],
            "used": [used_numbers(leaf) for leaf in opening["leaves"]],
            "findings": opening_findings(opening, stock, "in"),
            "agreed": agreed,
        }
        assert list(differences(here, on_node["openings"][number])) == [], opening["id"]
        moved: Any = agreed_beside_today(later, later["openings"][number], agreed, stock)
        assert list(differences(moved, on_node["moved"][number])) == [], opening["id"]
        beside: Any = beside_today(agreed, agreed_today(later, later["openings"][number], agreed, stock))
        assert list(differences(beside, on_node["beside"][number])) == [], opening["id"]
    assert [len(each["findings"]) for each in on_node["openings"]] == [3, 1, 0, 2]
    assert on_node["version"] == catalog_version(stock)


def test_two_copies_are_merged_alike(on_node: Any) -> None:
    mine, theirs = read_text(visit_text(slipped()))["visit"], read_text(visit_text(a_year_later()))["visit"]
    here: Any = merge_visits(mine, theirs, lambda value: value_text(value, "\n"))
    assert list(differences(here, on_node["merged"])) == []
    assert here["differences"]
