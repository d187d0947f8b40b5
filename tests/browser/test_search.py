"""The search on the overviews: other names, slips and needs find what is meant, from a disk and in Spanish too."""

import shutil
from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from configurator.catalog import Catalog
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.mkdocs.build import build
from tests.browser.conftest import OpenContext

COVERINGS = "coverings/index.html"
DOORS = "doors/index.html"


def found(page: Page, words: str) -> list[str]:
    """Return the names of what is shown for some words."""
    page.get_by_role("searchbox").fill(words)
    return shown(page).get_by_role("heading").all_inner_texts()


def shown(page: Page) -> Locator:
    """Return what the search has left of the list."""
    return page.locator("#found > li:visible")


def names_with(catalog: Catalog, fact: str, *values: str) -> set[str]:
    """Return the names of the families of which a fact is one of some values."""
    families = [family for family in catalog.families.values() if not family["retired"]]
    return {family["name"] for family in families if dict(family)[fact] in values}


@pytest.mark.parametrize(
    ("words", "name"),
    [
        ("honeycomb", "Cellular shade"),
        ("honeycmob", "Cellular shade"),  # swapped
        ("honycomb", "Cellular shade"),  # missing
        ("honeyycomb", "Cellular shade"),  # one too many
        ("honexcomb shaed", "Cellular shade"),  # wrong, in each word
        ("cafe curtains", "Stretched panel"),
        ("ZEBRA", "Banded shade"),
        ("a shade for the bamboo", "Nested-fold shade"),
    ],
)
def test_a_covering_is_found_by_another_name_and_in_spite_of_a_slip(page: Page, words: str, name: str) -> None:
    page.goto(COVERINGS)
    assert found(page, words) == [name]
    expect(page.get_by_role("status")).to_have_text("1 covering")


def test_a_slip_is_not_forgiven_where_the_word_is_spelled_so(page: Page) -> None:
    page.goto(COVERINGS)
    assert "Metal blind" in found(page, "clean")
    # Of this one it is only said that it leaves a clear view.
    assert "Cellular shade" not in found(page, "clean")


def test_an_animal_finds_what_it_does_not_tear(page: Page, catalog: Catalog) -> None:
    sound = names_with(catalog, "animals", "stands up", "gives way")
    assert sound < {family["name"] for family in catalog.families.values()}
    page.goto(COVERINGS)
    for words in ("cat", "dogs", "for my cat", "cta"):
        assert set(found(page, words)) == sound, words


def test_easy_to_clean_is_what_is_wiped_or_washed(page: Page, catalog: Catalog) -> None:
    page.goto(COVERINGS)
    assert set(found(page, "easy to clean")) == names_with(catalog, "cleaning", "wiped", "washed")


def test_dark_finds_what_darkens_the_room(page: Page) -> None:
    page.goto(COVERINGS)
    dark = found(page, "dark")
    assert 0 < len(dark) < page.locator("#found > li").count()
    page.get_by_role("searchbox").fill("")
    page.get_by_label("Darkens the room").check()
    assert set(shown(page).get_by_role("heading").all_inner_texts()) <= set(dark)


def test_a_wish_and_words_narrow_together(page: Page) -> None:
    page.goto(COVERINGS)
    both = set(found(page, "cat"))
    page.get_by_role("checkbox", name="Lowest profile").check()
    assert set(shown(page).get_by_role("heading").all_inner_texts()) < both


def test_where_nothing_is_found_it_says_how_to_widen(page: Page) -> None:
    for url, told in ((COVERINGS, "search with fewer or other words"), (DOORS, "Search with fewer or other words")):
        page.goto(url)
        assert found(page, "xylophone") == []
        status = page.get_by_role("status")
        expect(status).to_contain_text(told)
        expect(status).to_have_attribute("aria-live", "polite")


def test_doors_are_found_by_the_names_that_people_know(page: Page, catalog: Catalog) -> None:
    page.goto(DOORS)
    doors = found(page, "frnech doors")
    expect(page.get_by_role("status")).to_have_text(f"{len(doors)} doors")
    assert {"Garden pair", "Veranda pair", "Divided-lite door"} <= set(doors)
    assert len(doors) < len(catalog.doors)
    assert found(page, "terace") == ["Garden door"]


def test_the_search_is_worked_by_keyboard_alone(page: Page) -> None:
    page.goto(DOORS)
    field = page.get_by_role("searchbox", name="Search")
    expect(field).to_have_accessible_description("A name that you know it by: French doors, patio door, sidelights")
    field.focus()
    page.keyboard.type("sidelights")
    page.keyboard.press("Enter")
    assert page.url.endswith(DOORS)
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    page.wait_for_url("**/doors/sidelight-door.html")


def test_the_search_works_from_a_disk(page: Page, demo: Path) -> None:
    page.goto((demo / DOORS).as_uri())
    assert found(page, "balcony") == ["Narrow-stile door"]


def test_without_scripts_the_list_of_doors_is_whole(open_context: OpenContext) -> None:
    page = open_context(java_script_enabled=False).new_page()
    page.goto(DOORS)
    expect(page.get_by_role("searchbox")).to_be_hidden()
    assert shown(page).count() == page.locator("#found > li").count()


@pytest.fixture(scope="module")
def spanish(tmp_path_factory: pytest.TempPathFactory, demo_answers: Callable[[], Answers]) -> Path:
    """A small showroom in Spanish alone."""
    folder = tmp_path_factory.mktemp("spanish")
    content = folder / "content"
    shutil.copytree(CONTENT, content, ignore=shutil.ignore_patterns("prices", "visits"))
    kept = {"garden-pair", "sidelight-door", "roller-shade", "cellular-shade", "wood-blind"}
    for path in [*(content / "doors").iterdir(), *(content / "families").iterdir()]:
        if path.stem not in kept:
            path.unlink()
    showroom = content / "showroom.yaml"
    own = showroom.read_text().replace("units: in ", "language: es\nunits: in ", 1)
    showroom.write_text(own.replace("first_door: garden-door", "first_door: garden-pair"))
    build(content, folder / "site", demo_answers())
    return folder / "site"


def test_the_search_knows_the_words_of_the_pages_language(page: Page, spanish: Path) -> None:
    page.goto((spanish / COVERINGS).as_uri())
    assert len(found(page, "para un gato")) == 2
    assert len(found(page, "facil de limpiar")) == 2
    assert len(found(page, "panel de abeja")) == 0
    expect(page.get_by_role("status")).to_contain_text("menos palabras")
    assert len(found(page, "persiana de pnal")) == 1
    page.goto((spanish / DOORS).as_uri())
    assert len(found(page, "puertas frncesas")) == 1
