"""What visitors of the site see of prices: as the showroom says."""

import re
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.house import House, open_houses
from configurator.site.kinds.door_page import door_page
from configurator.site.kinds.facts import fact_lines
from configurator.site.kinds.fitted_page import fitted
from configurator.site.mkdocs.build import build
from tests.conftest import small_content
from tests.site.pages import plain_name


def shop(folder: Path, shown: str) -> House:
    """Return the starter's showroom with its prices shown in another way."""
    content = shutil.copytree(CONTENT, folder / "content")
    room = content / "showroom.yaml"
    written = room.read_text(encoding="utf-8")
    assert "  shown: from " in written
    room.write_text(written.replace("  shown: from ", f"  shown: {shown} "), encoding="utf-8")
    return open_houses(content, Answers())


@pytest.mark.parametrize(
    ("shown", "told"),
    [
        ("level", {"Price level": "moderate (2 of 4)"}),
        ("from", {"Price": "from $118.00 for the smallest size", "Price level": "moderate (2 of 4)"}),
        ("full", {"Price": "from $118.00 for the smallest size", "Price level": "moderate (2 of 4)"}),
        ("no", {}),
    ],
)
def test_a_covering_s_page_tells_what_the_showroom_shows(tmp_path: Path, shown: str, told: dict[str, str]) -> None:
    house = shop(tmp_path, shown)
    facts = fact_lines(house, house.catalog.families["cellular-shade"])
    assert {fact["name"]: fact["text"] for fact in facts if fact["name"].startswith("Price")} == told


def test_an_area_costs_from_the_least_that_is_charged(tmp_path: Path) -> None:
    # 7 sq ft at $38.50.
    house = shop(tmp_path, "from")
    assert fact_lines(house, house.catalog.families["louvered-shutter"])[0]["text"].startswith("from $269.50")
    # Without a price book there is only the level.
    assert fact_lines(house, house.catalog.families["metal-blind"])[0]["name"] == "Price level"


@pytest.mark.parametrize(("shown", "told"), [("level", []), ("from", ["from $190"]), ("no", [])])
def test_a_door_has_no_more_of_a_price_than_the_showroom_shows(tmp_path: Path, shown: str, told: list[str]) -> None:
    house = shop(tmp_path, shown)
    door, families = house.catalog.doors["garden-door"], house.catalog.families
    page = fitted(house, door, families["cellular-shade"])
    assert page["price"] is None
    assert [figure["text"] for figure in page["key"] if figure["name"] == "Price"] == told
    lines = {line["family"]: line["price"] for line in door_page(house, door)["families"]}
    assert lines["cellular-shade"] == "".join(told)
    # Without a price book there is none.
    assert lines["metal-blind"] == ""


@pytest.mark.parametrize("shown", ["level", "no"])
def test_a_site_without_prices_in_money_has_none_anywhere(
    tmp_path: Path, shown: str, demo_answers: Callable[[], Answers]
) -> None:
    content = small_content(tmp_path / "content", "louvered-shutter")
    shutil.copytree(CONTENT / "prices", content / "prices", ignore=lambda _, names: {*names} - {"shutter.yaml"})
    room = content / "showroom.yaml"
    written = room.read_text(encoding="utf-8").replace("  shown: from ", f"  shown: {shown} ")
    # What no shutter has goes with no shutter.
    sold = written.replace("picks: {lift: [motor-battery, motor-wired]}", "picks: {divider: [middle]}")
    room.write_text(sold, encoding="utf-8")
    build(content, tmp_path / "site", demo_answers())
    texts = {
        plain_name(path.name): path.read_text(encoding="utf-8")
        for path in (tmp_path / "site").rglob("*")
        if path.suffix in (".html", ".js", ".json", ".xml")
    }
    assert texts["astragal-price.js"].startswith("Astragal.prices=null;")
    # $38.50 a square foot, in words and in minor units; a remote control is $44.00.
    for name, text in texts.items():
        assert not re.search(r"\$(?:38|44|269)|:3850\b|:4400\b|Remote control", text), name
    assert ("highest (4 of 4)" in texts["louvered-shutter.html"].lower()) == (shown == "level")


def test_a_price_in_full_is_the_covering_s_and_all_that_a_quote_adds(tmp_path: Path) -> None:
    house = shop(tmp_path, "full")
    door, family = house.catalog.doors["garden-door"], house.catalog.families["cellular-shade"]
    price = fitted(house, door, family)["price"]
    assert price is not None
    # The book has $193 for 30 by 72 in, the next of 25 by 68 in; fitting is at least $95, travel $25, and tax 6.25 %
    # of $193, which is $12.0625.
    assert price["says"].startswith("$193.00 with the choices drawn here, and $325.06 with all")
    assert [table["total"] for table in price["tables"]] == ["$193.00", "$325.06"]
    assert [row["amount"] for row in price["tables"][-1]["rows"]] == ["$193.00", "$95.00", "$25.00", "$12.06"]
    assert "30 in by 72 in for 25 in by 68 in" in price["tables"][0]["rows"][0]["rule"]
    assert "holds for 30 days" in price["terms"][0]
    # On a pair, each leaf has its piece.
    pair = fitted(house, house.catalog.doors["garden-pair"], family)["price"]
    assert pair is not None
    assert pair["says"].startswith("$386.00")
    # Without a price book nothing is said.
    assert fitted(house, door, house.catalog.families["metal-blind"])["price"] is None


def test_a_size_outside_the_book_has_no_price_and_says_so(tmp_path: Path) -> None:
    house = shop(tmp_path, "full")
    assert house.catalog.prices is not None
    # 48 in, where the shade is 68 in high.
    house.catalog.prices.books["cellular-shade"]["size"]["heights"] = [36 * 25.4, 48 * 25.4]
    price = fitted(house, house.catalog.doors["garden-door"], house.catalog.families["cellular-shade"])["price"]
    assert price is not None
    assert price["says"].startswith("The price book ends at 84 in by 48 in, and this is 25 in by 68 in")
    assert price["tables"] == []
