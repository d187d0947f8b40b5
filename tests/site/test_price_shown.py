"""What visitors of the site see of prices: as the showroom says."""

import shutil
from pathlib import Path

import pytest

from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.house import House, open_houses
from configurator.site.kinds.facts import fact_lines


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
