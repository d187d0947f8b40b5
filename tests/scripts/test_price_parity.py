"""Prices in a browser's language: every line, bill and paper as Python has them."""

import json
import random
import subprocess
from pathlib import Path
from typing import Any

from configurator.browser import kernel_js
from configurator.catalog import Catalog
from configurator.kernel.mount.hung import hung
from configurator.kernel.papers.quote_paper import quote_paper
from configurator.kernel.papers.shown_price import shown_price
from configurator.kernel.prices.offers import offer_of
from configurator.kernel.prices.piece_prices import hung_pieces
from configurator.kernel.prices.price_shapes import Quote
from configurator.kernel.prices.ranks import quote_ways
from tests.scripts.node import NODE

ASK = """
import { readFileSync } from "node:fs";
const { kernel } = Astragal;
const { cases, books } = JSON.parse(readFileSync(process.argv[2], "utf8"));
const told = cases.map(({ openings, quote }) => {
  quote.openings = openings.map(({ name, fits, taken }) => ({
    name, taken,
    offers: fits.map(({ door, family, choices }) => {
      return kernel.offer_of(kernel.hung_pieces(kernel.hung(door, family, choices)), books, quote.terms);
    }),
  }));
  const told = openings.map(({ fits: [{ door, family, choices }] }) => {
    const pieces = kernel.hung_pieces(kernel.hung(door, family, choices));
    return ["from", "full", "level"].map((shown) => kernel.shown_price(pieces, { shown, books, terms: quote.terms }));
  });
  return { quote, ways: kernel.quote_ways(quote), paper: kernel.quote_paper(quote), told };
});
process.stdout.write(JSON.stringify(told));
"""


def random_terms(rng: random.Random, sound: Any) -> Any:
    """Return a showroom's terms with other rates and roundings."""
    return {
        **sound,
        "to": rng.choice([1.0, 5.0, 100.0]),
        "at": rng.choice(["line", "total"]),
        "discount": float(rng.randrange(0, 5000)),
        "tax": float(rng.randrange(0, 3000)),
        "deposit": float(rng.randrange(0, 10000)),
    }


def random_opening(rng: random.Random, catalog: Catalog) -> dict[str, Any]:
    """Return a door with one to four coverings for it."""
    assert catalog.prices is not None
    door = rng.choice(list(catalog.doors.values()))
    families = [catalog.families[rng.choice([*catalog.prices.books, "metal-blind"])] for _ in range(rng.randint(1, 4))]
    fits = [
        {
            "door": door,
            "family": family,
            "choices": {choice["id"]: rng.choice(choice["options"])["id"] for choice in family["choices"]},
        }
        for family in families
    ]
    return {"name": door["name"], "fits": fits, "taken": rng.choice([-1, -1, 0])}


def asked(case: dict[str, Any], books: Any) -> Any:
    """Return what Python tells of a case."""
    quote: Quote = {
        **case["quote"],
        "openings": [
            {
                "name": opening["name"],
                "taken": opening["taken"],
                "offers": [
                    offer_of(hung_pieces(hung(**fit)), books, case["quote"]["terms"]) for fit in opening["fits"]
                ],
            }
            for opening in case["openings"]
        ],
    }
    told = [
        [
            shown_price(
                hung_pieces(hung(**opening["fits"][0])), {"shown": shown, "books": books, "terms": quote["terms"]}
            )
            for shown in ("from", "full", "level")
        ]
        for opening in case["openings"]
    ]
    return {"quote": quote, "ways": quote_ways(quote), "paper": quote_paper(quote), "told": told}


def test_forty_random_quotes_are_the_same_on_both_sides(catalog: Catalog, tmp_path: Path) -> None:
    assert catalog.prices is not None
    rng = random.Random(20)
    cases = []
    for _ in range(40):
        link = rng.choice(["", "https://doors.example/try.html#2/in/a"])
        terms = random_terms(rng, catalog.prices.terms)
        quote = {"showroom": "S", "client": "", "link": link, "on": "today", "terms": terms}
        cases.append({"openings": [random_opening(rng, catalog) for _ in range(rng.randint(1, 3))], "quote": quote})
    (tmp_path / "cases.json").write_text(json.dumps({"cases": cases, "books": catalog.prices.books}), encoding="utf-8")
    (tmp_path / "kernel.mjs").write_text(f"{kernel_js()}\nglobalThis.Astragal = Astragal;\n", encoding="utf-8")
    (tmp_path / "ask.mjs").write_text(ASK, encoding="utf-8")
    command = [NODE, "--import", (tmp_path / "kernel.mjs").as_uri(), str(tmp_path / "ask.mjs")]
    done = subprocess.run([*command, str(tmp_path / "cases.json")], capture_output=True, text=True, timeout=120)
    assert done.returncode == 0, done.stderr
    for case, told in zip(cases, json.loads(done.stdout), strict=True):
        same(asked(case, catalog.prices.books), told, "")


def same(ours: Any, theirs: Any, path: str) -> None:
    """Compare two values: lengths to a billionth of a millimeter, money to the minor unit, texts to the letter."""
    if isinstance(ours, dict):
        assert ours.keys() == theirs.keys(), path
        for key in ours:
            same(ours[key], theirs[key], f"{path}.{key}")
    elif isinstance(ours, list):
        assert len(ours) == len(theirs), path
        for place, (one, other) in enumerate(zip(ours, theirs, strict=True)):
            same(one, other, f"{path}.{place}")
    elif isinstance(ours, float) and not path.endswith((".amount", ".total")):
        assert abs(ours - theirs) < 1e-9, path
    else:
        assert ours == theirs, path
