"""Python's side of the parity test, and the search for where two answers part.

One case again, by itself: ``python -m tests.browser.parity SEED NUMBER``.
"""

import base64
import json
import sys
import zlib
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import numpy as np
from playwright.sync_api import Browser, Page, sync_playwright

from configurator.browser import catalog_json, kernel_js
from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import decode, encode
from configurator.browser.link.shapes import State, Stock
from configurator.catalog import Catalog, load
from configurator.kernel.answer import ask, ruled_out
from configurator.kernel.message import say_working
from configurator.kernel.moment import moment
from configurator.kernel.mount.hung import hung
from configurator.kernel.needs.matching import best_match
from configurator.kernel.position import position_at, share_at
from configurator.kernel.scene import asked_scene, scene_at
from configurator.kernel.shapes import Drawing, Household
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.detail import detail_handle_of, detail_head_of
from configurator.kernel.views.detail_upright import detail_upright_of
from configurator.kernel.views.draft import Draft, drafted
from configurator.kernel.views.elevation import elevation_of
from configurator.kernel.views.evening import evening_of
from configurator.kernel.views.plan import plan_of
from configurator.kernel.views.section import section_of
from configurator.kernel.views.sheet import sheet_of
from configurator.kernel.views.street import street_of
from configurator.kernel.views.subject import subject
from configurator.kernel.views.workroom import workroom_sheet
from configurator.kernel.whereabouts import place_words
from configurator.places import CONTENT
from tests.browser.conftest import CHROMIUM
from tests.cases import Case, seeded_case

CLOSE = 1e-9
VIEWS: dict[str, Callable[..., Drawing]] = {
    "elevation": elevation_of,
    "section": section_of,
    "plan": plan_of,
    "evening": evening_of,
    "street": street_of,
    "detail_head": detail_head_of,
    "detail_handle": detail_handle_of,
    "detail_upright": detail_upright_of,
}
DRAWN = [elevation_of, section_of, plan_of, sheet_of, workroom_sheet]
WAY = [0.0, 0.45, 0.93, 1.0]
# What the words come to, how many numbers, and the numbers as base64 of doubles.
Condensed = tuple[list[int], list[int], str]


def views_of(number: int, thorough: bool) -> list[str]:
    """Return which views of a case are drawn: all, or each in its turn."""
    return list(VIEWS) if thorough else [list(VIEWS)[number % len(VIEWS)]]


def seen(name: str, draft: Draft, household: Household) -> Drawing:
    """Return a view by its name."""
    return street_of(draft, household) if name == "street" else VIEWS[name](draft)


def asked(case: Case, stock: Stock, views: list[str], thorough: bool) -> dict[str, Any]:
    """Return everything that the kernel tells of a case; ``thorough`` asks for what is slow too."""
    door, family, choices, place = case["door"], case["family"], case["choices"], case["place"]
    household, units = case["household"], case["units"]
    answer = ask(door, family, choices, household)
    fit = hung(door, family, choices)
    view = scene_at(fit, place)
    names = {"family": family["name"], "door": door["name"], "place": place_words(answer["legs"], place, ENGLISH)}
    draft = drafted(door, {"scene": view, "answer": answer, "names": names}, ENGLISH, units)
    link = encode(state_of(case), stock)
    told: dict[str, Any] = {
        "answer": answer,
        "scene": view,
        "views": [seen(name, draft, household) for name in views],
        "moment": moment(fit, place),
        "share": share_at(fit["numbers"], place),
        "way": [position_at(fit["numbers"], share) for share in WAY],
        "said": [say_working(figure, ENGLISH, units) for figure in answer["figures"].values()],
        "link": link,
        "opened": decode(link, stock),
    }
    if thorough:
        told["ruled_out"] = ruled_out(door, family, choices)
        told["matched"] = best_match(door, family, household, ["dark", "handle", "bending", "cleaning"])
        told["pieces"] = asked_scene(fit, place)
        whole = drafted(door, subject(hung(door, family, choices), place, household, ENGLISH), ENGLISH, units)
        told["drawn"] = [draw(whole) for draw in DRAWN]
    return told


def state_of(case: Case) -> State:
    """Return a case as what a link holds."""
    one = {**case, "family": case["family"]["id"], "measured": [], "wishes": {}}
    general = {"units": case["units"], "active": 0, "step": "details", "needs": [], "household": case["household"]}
    return {**general, "configurations": [one]}  # type: ignore[typeddict-item]


def sent(case: Case, views: list[str], thorough: bool) -> dict[str, Any]:
    """Return a case as the browser is given it: its family by id."""
    return {**case, "family": case["family"]["id"], "views": views, "thorough": thorough}


def flatten(value: Any, words: list[str], numbers: list[float]) -> None:
    """Put a value's words and its numbers into two lists, in order."""
    if isinstance(value, str):
        words.append(value)
    elif isinstance(value, bool) or value is None:
        words.append({True: "true", False: "false", None: "null"}[value])
    elif isinstance(value, int | float):
        numbers.append(value)
    elif isinstance(value, dict):
        words.append("{" + " ".join(value))
        for part in value.values():
            flatten(part, words, numbers)
    else:
        words.append(f"[{len(value)}")
        for part in value:
            flatten(part, words, numbers)


def condensed(values: list[Any]) -> Condensed:
    """Return a batch of values as little enough to compare thousands."""
    crcs, counts, numbers = [], [], []
    for value in values:
        words: list[str] = []
        before = len(numbers)
        flatten(value, words, numbers)
        crcs.append(zlib.crc32("\n".join(words).encode()))
        counts.append(len(numbers) - before)
    return crcs, counts, base64.b64encode(np.array(numbers, dtype="<f8").tobytes()).decode()


def unequal(mine: Condensed, theirs: Condensed) -> list[int]:
    """Return the places in a batch at which two sides differ by more than 1e-9, relative or absolute."""
    if mine[1] == theirs[1]:
        a, b = (np.frombuffer(base64.b64decode(side[2]), dtype="<f8") for side in (mine, theirs))
        wrong = ~(np.abs(a - b) <= CLOSE * np.maximum(1.0, np.maximum(np.abs(a), np.abs(b))))
        owners = np.repeat(np.arange(len(mine[1])), mine[1])
        wrong_cases = set(owners[wrong].tolist())
    else:
        wrong_cases = {i for i, (a, b) in enumerate(zip(mine[1], theirs[1], strict=True)) if a != b}
    wrong_cases.update(i for i, (a, b) in enumerate(zip(mine[0], theirs[0], strict=True)) if a != b)
    return sorted(wrong_cases)


def differences(mine: Any, theirs: Any, path: str = "") -> Iterator[str]:
    """Yield where two values differ, as readable lines."""
    if isinstance(mine, dict) and isinstance(theirs, dict):
        if list(mine) != list(theirs):
            yield f"{path}: keys {list(mine)} in Python, {list(theirs)} in the browser"
        for name in mine.keys() & theirs.keys():
            yield from differences(mine[name], theirs[name], f"{path}.{name}")
    elif isinstance(mine, list | tuple) and isinstance(theirs, list):
        if len(mine) != len(theirs):
            yield f"{path}: {len(mine)} in Python, {len(theirs)} in the browser"
        for i, (a, b) in enumerate(zip(mine, theirs, strict=False)):
            yield from differences(a, b, f"{path}[{i}]")
    elif is_number(mine) and is_number(theirs):
        if not abs(mine - theirs) <= CLOSE * max(1.0, abs(mine), abs(theirs)):
            yield f"{path}: {mine!r} in Python, {theirs!r} in the browser"
    elif mine != theirs:
        yield f"{path}: {mine!r} in Python, {theirs!r} in the browser"


def is_number(value: Any) -> bool:
    """Return whether a value is a number."""
    return isinstance(value, int | float) and not isinstance(value, bool)


def kernel_page(browser: Browser, catalog: Catalog) -> Page:
    """Return a page with the translated kernel, the catalog and the browser's side of this test."""
    page = browser.new_page()
    page.add_script_tag(content=kernel_js())
    page.add_script_tag(content=f"Astragal.catalog = {catalog_json(catalog)};")
    page.add_script_tag(path=Path(__file__).with_name("parity.js"))
    return page


def told_apart(page: Page, case: Case, catalog: Catalog) -> list[str]:
    """Return where Python and the browser differ on one case."""
    theirs = page.evaluate("asked", sent(case, list(VIEWS), True))
    return list(differences(asked(case, page_catalog(catalog), list(VIEWS), True), theirs))


def main() -> int:
    """Ask one case on both sides and print it with its differences."""
    seed, number = (int(word) for word in sys.argv[1:])
    catalog = load(CONTENT)
    case = seeded_case(catalog, seed, number)
    print(json.dumps(sent(case, list(VIEWS), True)))
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=CHROMIUM, args=["--no-sandbox"])
        found = told_apart(kernel_page(browser, catalog), case, catalog)
        browser.close()
    print(*(found or ["Both sides agree."]), sep="\n")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
