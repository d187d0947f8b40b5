"""What a reader finds on the pages."""

import json
import re
from dataclasses import replace
from itertools import pairwise
from pathlib import Path

from configurator.browser.catalog_json import page_catalog
from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.fact_words import ANIMAL_WORDS, CLEANING_WORDS
from configurator.kernel.message import is_said, say_phrase
from configurator.kernel.tongue import ENGLISH
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.house import House
from configurator.site.kinds.facts import fact_lines
from configurator.site.kinds.measure_page import tape_groups
from tests.site.pages import pages, parsed


def text(page: Path) -> str:
    """Return a page's words."""
    return " ".join(" ".join(parsed(page)[0].itertext()).split())


def test_every_page_follows_the_parser_rules(demo: Path) -> None:
    assert [error for page in pages(demo) for error in parsed(page)[1]] == []


def test_every_page_has_one_heading_a_title_a_language_and_landmarks(demo: Path) -> None:
    for page in pages(demo):
        root = parsed(page)[0]
        assert len(root.xpath("//h1")) == 1, page
        assert len(root.xpath("//main")) == 1, page
        assert all(root.xpath(f"//{part}") for part in ("header", "footer", "nav")), page
        assert root.get("lang"), page
        assert root.xpath("//meta[@name='description']/@content")[0], page


def test_titles_are_all_different(demo: Path) -> None:
    titles = [parsed(page)[0].findtext(".//title") for page in pages(demo)]
    assert len(titles) == len(set(titles))


def test_headings_skip_no_level(demo: Path) -> None:
    for page in pages(demo):
        levels = [
            int(tag[1]) for tag in (element.tag for element in parsed(page)[0].iter()) if re.fullmatch(r"h\d", str(tag))
        ]
        assert all(after <= before + 1 for before, after in pairwise(levels)), (page, levels)


def test_every_drawing_says_what_it_shows(demo: Path) -> None:
    for page in pages(demo):
        for drawing in parsed(page)[0].xpath("//*[local-name()='svg'][@role='img']"):
            words = [drawing.xpath(f"string(*[local-name()='{part}'])") for part in ("title", "desc")]
            assert all(words), page


def test_ids_are_unique_on_each_page(demo: Path) -> None:
    for page in pages(demo):
        found = parsed(page)[0].xpath("//@id")
        assert len(found) == len(set(found)), page


def test_every_family_and_every_door_has_its_pages(demo: Path, catalog: Catalog) -> None:
    offered = [family for family in catalog.families.values() if not family["retired"]]
    for family in offered:
        assert (demo / "coverings" / f"{family['id']}.html").is_file()
    for door in catalog.doors:
        assert (demo / "doors" / f"{door}.html").is_file()
        for family in offered:
            assert (demo / "doors" / door / f"{family['id']}.html").is_file()


def test_a_door_page_tells_the_kernels_verdict_on_every_family(demo: Path, catalog: Catalog) -> None:
    door = catalog.doors["garden-pair"]
    root = parsed(demo / "doors" / "garden-pair.html")[0]
    told = {
        row.xpath("string(th)").strip(): row.xpath("string(td[1])").strip()
        for row in root.xpath("//table[@data-sortable]/tbody/tr")
    }
    for family in catalog.families.values():
        answer = ask(door, family, {}, catalog.household)
        fits = not is_said(answer["refusal"])
        words = say_phrase(answer["verdicts"]["pass_through"]["says"], ENGLISH, "in") if fits else "does not fit"
        assert told[family["name"]] == words


def test_a_family_on_a_door_shows_every_figure_with_its_working(demo: Path, catalog: Catalog) -> None:
    answer = ask(catalog.doors["garden-pair"], catalog.families["cellular-shade"], {}, catalog.household)
    rows = parsed(demo / "doors" / "garden-pair" / "cellular-shade.html")[0].xpath(
        "//table[contains(@class,'figures')]/tbody/tr"
    )
    names = [row.xpath("string(th)").strip().lower() for row in rows]
    assert names == [figure["name"].lower() for figure in answer["figures"].values()]
    assert all(row.xpath("string(td[2]/text()[last()])").strip() for row in rows)


def test_a_family_on_a_door_leads_to_the_configurator_in_that_state(demo: Path) -> None:
    root = parsed(demo / "doors" / "garden-pair" / "cellular-shade.html")[0]
    assert any(
        "try.html#2/" in link and "garden-pair" in link and "cellular-shade" in link for link in root.xpath("//a/@href")
    )


def test_the_measuring_guide_names_every_field_that_is_taken_with_a_tape(demo: Path) -> None:
    shown = parsed(demo / "measure.html")[0].xpath("//*[contains(@class,'fill')]//tbody//th/text()")
    fields = [field for group in tape_groups() for field in group["fields"]]
    assert [str(name).strip() for name in shown] == [field["name"] for field in fields]
    trade = parsed(demo / "measure.html")[0].xpath("//*[contains(@class,'fill')]//th/*[@class='trade']/text()")
    assert [str(word) for word in trade] == [field["trade"] for field in fields if "trade" in field]


def test_structured_data_says_what_each_page_is_of(demo: Path) -> None:
    kinds: dict[str, set[str]] = {}
    for page in pages(demo):
        data = json.loads(parsed(page)[0].xpath("string(//script[@type='application/ld+json'])"))
        assert data["@context"] == "https://schema.org"
        for thing in data["@graph"]:
            kinds.setdefault(thing["@type"], set()).add(str(page.relative_to(demo)))
            if thing["@type"] == "Product":
                assert thing["name"]
                assert thing["description"]
                assert thing["brand"]["name"]
    assert kinds["LocalBusiness"] == {"index.html"}
    assert "coverings/cellular-shade.html" in kinds["Product"]
    assert "doors/garden-pair/cellular-shade.html" in kinds["Product"]


def test_every_page_has_a_link_preview_of_its_own_kind(demo: Path) -> None:
    for page in pages(demo):
        card = parsed(page)[0].xpath("string(//meta[@property='og:image']/@content)")
        assert (page.parent / card).resolve().is_file(), page


def test_a_guide_holds_the_drawing_that_its_fenced_block_asks_for(demo: Path) -> None:
    root = parsed(demo / "guides" / "handles.html")[0]
    assert root.xpath("//figure//*[local-name()='svg']")
    assert "```" not in text(demo / "guides" / "handles.html")


def test_a_page_of_a_covering_on_a_door_says_what_would_fix_it(demo: Path) -> None:
    page = parsed(demo / "doors" / "garden-pair" / "banded-shade.html")[0]
    told = [" ".join(line.xpath("string()").split()) for line in page.xpath("//*[@class='judgment']//li")]
    assert told[0].startswith("Change head to open roll: it clears.")
    assert "instead of" in told[0]


def test_a_page_tells_by_which_other_names_people_know_its_matter(demo: Path, catalog: Catalog) -> None:
    every = {f"coverings/{ident}.html": notes.also_called for ident, notes in catalog.family_notes.items()}
    every |= {f"doors/{ident}.html": notes.also_called for ident, notes in catalog.door_notes.items()}
    for url, names in every.items():
        assert names, url
        root = parsed(demo / url)[0]
        told = f"Also called: {', '.join(names)}"
        assert told in root.xpath("string(//main)"), url
        assert told in root.xpath("string(//meta[@name='description']/@content)"), url
        assert f", {names[0]} · " in root.findtext(".//title"), url


def test_a_familys_page_says_what_no_figure_tells(demo: Path) -> None:
    rows = parsed(demo / "coverings/roller-shade.html")[0].xpath("//section[@aria-labelledby='facts']//tbody/tr")
    assert [[" ".join(cell.itertext()) for cell in row] for row in rows] == [
        ["Price", "From $96.00 for the smallest size", "Invented"],
        ["Price level", "Low (1 of 4)", "Invented"],
        ["Cleaning", "Wiped with a damp cloth", "Common practice"],
        [
            "With animals",
            "Gives way to a cat or dog that pushes through, and falls back into place",
            "Common practice",
        ],
    ]


def test_a_family_of_which_no_fact_is_known_says_none(catalog: Catalog) -> None:
    families = {**catalog.families}
    families["roller-shade"] = {**families["roller-shade"], "price_level": 0.0, "cleaning": "", "animals": ""}
    house = House(replace(catalog, families=families, prices=None), CONTENT, Answers())
    assert fact_lines(house, house.catalog.families["roller-shade"]) == []


def test_every_family_of_the_starter_has_its_facts_in_the_pages_catalog(catalog: Catalog) -> None:
    for family in page_catalog(catalog)["families"].values():
        assert 1 <= family["price_level"] <= 4, family["id"]
        assert family["cleaning"] in CLEANING_WORDS, family["id"]
        assert family["animals"] in ANIMAL_WORDS, family["id"]


def test_a_familys_page_lists_its_numbers_with_their_sources(demo: Path) -> None:
    page = parsed(demo / "coverings" / "cellular-shade.html")[0]
    rows = [
        [" ".join(cell.xpath("string()").split()) for cell in row]
        for row in page.xpath("//section[@aria-labelledby='numbers']//tr[td]")
    ]
    told = {(cells[0], cells[1]): cells[2] for cells in rows}
    assert told["Wanted overlap past the glass, each side", "1 1/2 in"] == "Common practice"
    assert told["Depth of the headrail from its mounting plane", "1 in"] == "Invented"
    assert told["Clearance to the leaf’s edges, hinges and stops", "3 mm"] == "Common practice, assumed"
    assert told["Height of one cell or pleat when stacked", "0.35 mm"] == "Invented"


def test_every_figure_on_a_door_is_explained_there_or_on_the_coverings_page(demo: Path) -> None:
    for page in sorted((demo / "doors").glob("*/*.html")):
        explained = {
            row.findtext("th")
            for row in parsed(demo / "coverings" / page.name)[0].xpath("//section[@aria-labelledby='rules']//tbody/tr")
        }
        for row in parsed(page)[0].xpath("//table[@class='figures']/tbody/tr"):
            own = row.find("td[2]/br") is not None
            assert own != (row.findtext("th") in explained), (page, row.findtext("th"))


def test_a_figure_that_differs_in_kind_from_door_to_door_tells_each_rule(demo: Path) -> None:
    rows = parsed(demo / "coverings" / "roller-shade.html")[0].xpath("//section[@aria-labelledby='rules']//tbody/tr")
    told = {row.findtext("th"): " / ".join(row.find("td").itertext()) for row in rows}
    assert told["Clear width without the covering"] == (
        "The active leaf's width less the stop's lap and less what it takes when open, with all that hangs on it / "
        "The leaf's width less the stop's lap and less what the open leaf, with all that hangs on it, takes of it"
    )
