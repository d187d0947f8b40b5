"""What visitors of the site see of prices: as the showroom says."""

import shutil
from pathlib import Path

import pytest

from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.house import House, open_houses
from configurator.site.kinds.facts import fact_lines
from configurator.site.kinds.fitted_page import fitted


def shop(folder: Path, shown: str) -> House:
    """Return the starter's showroom with its prices shown in another way."""
    content = shutil.copytree(CONTENT, folder / "content")
    room = content / "showroom.yaml"
    written = room.read_text(encoding="utf-8")
    assert "  shown: level" in written
    room.write_text(written.replace("  shown: level", f"  shown: {shown}"), encoding="utf-8")
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


@pytest.mark.parametrize("shown", ["level", "from", "no"])
def test_no_door_has_a_price_unless_prices_are_shown_in_full(tmp_path: Path, shown: str) -> None:
    house = shop(tmp_path, shown)
    families = house.catalog.families
    assert fitted(house, house.catalog.doors["garden-door"], families["cellular-shade"])["price"] is None


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
