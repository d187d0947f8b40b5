"""The slow part of a first build, worked out ahead of the pages: a door a task, on every core."""

from concurrent.futures import ProcessPoolExecutor
from pathlib import Path

from configurator.catalog import load
from configurator.site.answers import Answers
from configurator.site.assets import page_script
from configurator.site.cards import door_cards
from configurator.site.house import House
from configurator.site.kinds.door import door_page
from configurator.site.kinds.fitted import fitted

SCRIPT = ""
# What a worker process works on; each reads the content itself, since a house cannot be sent.
_houses: list[House] = []


def work_ahead(house: House) -> None:
    """Fill the house's memory with every door's answers, drawings and previews, and with the script."""
    tasks = [SCRIPT, *(door["id"] for door in house.doors)]
    with ProcessPoolExecutor(initializer=open_house, initargs=(house.content,)) as pool:
        for kept in pool.map(work_out, tasks):
            house.answers.add(kept)


def open_house(content: Path) -> None:
    """Read the content in a worker process."""
    _houses.append(House(load(content), content, Answers()))


def work_out(task: str) -> dict[str, object]:
    """Return what a task added to the worker's memory: those of a door, by its id, or the script."""
    house = _houses[0]
    if task == SCRIPT:
        page_script(house)
    else:
        door = house.catalog.doors[task]
        door_page(house, door)
        door_cards(house, door)
        for family in house.families:
            fitted(house, door, family)
    return house.answers.taken()
