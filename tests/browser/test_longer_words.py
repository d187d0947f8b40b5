"""A site whose own words are half as long again, on a phone: nothing breaks, and the configurator says nothing else."""

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from babel.messages.catalog import Catalog as Translations
from babel.messages.pofile import write_po
from playwright.sync_api import Page

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.site.answers import Answers
from configurator.translating.own_texts import own_texts
from tests.browser.conftest import OpenContext
from tests.browser.trying import covering, fragment, open_page, viewport
from tests.conftest import built_once, other_content
from tests.made_up_language import longer, marked, own_words, plain, says, unmarked

# A language that nobody has translated us into stands in for one with long words.
LANGUAGE = "eo"
PAGES = ["index", "coverings/index", "doors/index", "doors/garden-pair", "doors/garden-pair/cellular-shade", "measure"]
PAGES += ["coverings/cellular-shade", "guides/index"]
TOO_WIDE = "document.scrollingElement.scrollWidth - document.scrollingElement.clientWidth"
# Text that its own box cuts off; what scrolls or is hidden on purpose is not cut.
CUT = """() => [...document.querySelectorAll("button, label, summary, .press, h1, h2, h3, dt, dd, legend")]
  .filter((node) => node.offsetParent && !node.closest(".unseen, .look, .table"))
  .filter((node) => node.scrollWidth > node.clientWidth + 1 && getComputedStyle(node).overflowX !== "visible")
  .map((node) => node.textContent)"""
ASKED = """() => { const { kernel, catalog } = Astragal; const told = {};
  for (const door of Object.values(catalog.doors)) for (const family of Object.values(catalog.families)) {
    const asked = kernel.asking(kernel.hung(door, family, {}), catalog.household);
    while (kernel.ask_next(asked));
    const { answer } = asked;
    told[`${door.id} ${family.id}`] = [Object.values(answer.verdicts).map((one) => [one.id, one.state]),
      answer.size.limits.map((limit) => limit.by)];
  } return told; }"""
SHOWN = """() => { const found = []; const walk = document.createTreeWalker(document.querySelector("#configurator"), 4);
  while (walk.nextNode()) found.push(walk.currentNode.data); return found; }"""


def long_worded(folder: Path) -> Path:
    """Write a content that translates all our own texts into longer ones."""
    other_content(folder)
    showroom = folder / "showroom.yaml"
    showroom.write_text(f"language: {LANGUAGE}\n" + showroom.read_text(encoding="utf-8"), encoding="utf-8")
    words = Translations(locale=LANGUAGE)
    for told in own_texts():
        forms = [marked(longer(form)) for form in told.forms]
        words.add(told.forms if len(forms) > 1 else told.forms[0], forms if len(forms) > 1 else forms[0])
    with (folder / "words" / f"{LANGUAGE}.po").open("wb") as file:
        write_po(file, words)
    return folder


@pytest.fixture(scope="session")
def long_site(tmp_path_factory: pytest.TempPathFactory, demo_answers: Callable[[], Answers]) -> Path:
    return built_once(tmp_path_factory, "long-words", long_worded, demo_answers)


@pytest.fixture
def phone(open_context: OpenContext) -> Page:
    return open_context(viewport=viewport("phone")).new_page()


@pytest.mark.parametrize("path", PAGES)
def test_longer_words_break_no_page(path: str, phone: Page, long_site: Path) -> None:
    phone.goto((long_site / f"{path}.html").as_uri())
    assert phone.evaluate(TOO_WIDE) <= 0
    assert phone.evaluate(CUT) == []


def test_the_configurator_holds_longer_words_and_says_no_others(phone: Page, long_site: Path, catalog: Catalog) -> None:
    address = fragment(catalog, covering(catalog, "garden-pair", "cellular-shade"))
    open_page(phone, (long_site / "try.html").as_uri() + address.removeprefix("try.html"))
    phone.evaluate("for (const one of document.querySelectorAll('details')) one.open = true")
    phone.locator(".figure .sum").first.wait_for()
    assert phone.evaluate(TOO_WIDE) <= 0
    assert phone.evaluate(CUT) == []
    told = unmarked("\x1f".join(phone.evaluate(SHOWN))).split("\x1f")
    content = own_words(catalog)
    parts = {part.strip() for text in told for part in re.split("[·:,;—]", text)}
    assert {part for part in parts if says(part) and plain(part) not in content} == set()


def test_what_is_asked_and_compared_stays_the_same_in_every_language(
    phone: Page, long_site: Path, catalog: Catalog
) -> None:
    open_page(phone, (long_site / "try.html").as_uri())
    phone.wait_for_function("Boolean(Astragal.kernel.ask_next)")
    theirs = phone.evaluate(ASKED)
    ours = {}
    for door in ("garden-door", "garden-pair"):
        for family in catalog.families.values():
            answer = ask(catalog.doors[door], family, {}, catalog.household)
            states = [[one["id"], one["state"]] for one in answer["verdicts"].values()]
            ours[f"{door} {family['id']}"] = [states, [limit["by"] for limit in answer["size"]["limits"]]]
    assert theirs == ours
