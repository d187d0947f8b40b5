"""The slow part of a first build, worked out ahead of the pages on every core: a door or a family a task."""

import gc
import os
from collections.abc import Callable, Iterator
from concurrent.futures import Future, ProcessPoolExecutor
from multiprocessing import parent_process
from multiprocessing.connection import wait
from pathlib import Path
from threading import Thread

from configurator.cache.pack import Pack
from configurator.kernel.shapes import Door, Family
from configurator.site.answers import Added, Answers
from configurator.site.drawings.cards import door_cards, family_preview, own_card
from configurator.site.drawings.rooms import covering_room, first_room, opens_with_room
from configurator.site.drawings.shown_photos import photo_files
from configurator.site.drawings.subjects import first_single, own_door, room_subject
from configurator.site.house import House, open_houses
from configurator.site.kinds.all_pages import door_sheet, fitted_sheet
from configurator.site.kinds.coverings_page import coverings
from configurator.site.kinds.doors_page import doors
from configurator.site.kinds.family_page import mover
from configurator.site.kinds.measure_page import measure
from configurator.site.mkdocs.assets import examples, own_fonts, page_scripts
from configurator.site.mkdocs.page_html import page_html

Task = tuple[str, str]
# The name of what has been worked out, with what came of it; and who sees it go by, told how many there will be.
Done = tuple[str, Added]
Watch = Callable[[Iterator[Done], int], Iterator[Done]]
Doing = tuple[str, Future[Added]]
SCRIPT, FONTS, PHOTOGRAPHS, EXAMPLES, LISTS = "script", "fonts", "photographs", "examples", "lists"
DOOR, FAMILY, ROOM = "door", "family", "room"
# What all pages have.
SHARED: list[Task] = [(SCRIPT, ""), (FONTS, ""), (PHOTOGRAPHS, ""), (EXAMPLES, ""), (LISTS, "")]
# What a worker process works on. One that is a copy of its parent has that one's house; any other reads the content
# itself, since a house cannot be sent.
_houses: list[House] = []


def unwatched(done: Iterator[Done], count: int) -> Iterator[Done]:
    """Return what is done as it is done, and tell nobody."""
    return done


def work_ahead(house: House, watch: Watch = unwatched) -> None:
    """Fill the house's memory with every door's answers, drawings, previews and pages, families' frames, photographs,
    scripts, fonts, example visits and the lists' drawings.

    What is done goes through ``watch``.
    """
    # Compiled here, they are in each worker that is a copy of this process.
    for tongue in house.tongues:
        for template in ("door.html", "fitted.html"):
            tongue.environment.get_template(template)
    _houses[:] = [house]
    with ProcessPoolExecutor(initializer=open_house, initargs=(house.content, house.answers.before.name)) as pool:
        for _, kept in watch(done_in(pool, house), task_count(house)):
            house.answers.add(kept)
    _houses.clear()


def done_in(pool: ProcessPoolExecutor, house: House) -> Iterator[Done]:
    """Yield what the workers have done; whoever takes it adds it to the house's memory before asking for more.

    What the first page opens with is known when all doors are done, and is painted while families still are.
    """
    first = submitted(pool, [*SHARED, *((DOOR, door["id"]) for door in house.doors)])
    last = submitted(pool, [(FAMILY, family["id"]) for family in house.families])
    yield from results(first)
    if opens_with_room(house):
        door, family = room_subject(house)
        last += submitted(pool, [(ROOM, f"{door['id']}/{family['id']}")])
    yield from results(last)


def task_count(house: House) -> int:
    """Return how many things the workers are given to do."""
    return len(SHARED) + len(house.doors) + len(house.families) + opens_with_room(house)


def submitted(pool: ProcessPoolExecutor, tasks: list[Task]) -> list[Doing]:
    """Return tasks that workers are given, each with its name."""
    return [(ident or kind, pool.submit(work_out, (kind, ident))) for kind, ident in tasks]


def results(doing: list[Doing]) -> Iterator[Done]:
    """Yield what comes of tasks, in their order."""
    return ((name, task.result()) for name, task in doing)


def open_house(content: Path, before: str) -> None:
    """Read the content in a worker process, with what is kept under a name of the cache."""
    # A worker ends with its tasks and makes no cycles; looking for them takes a twelfth of its time.
    gc.disable()
    Thread(target=end_with_parent, daemon=True).start()
    if not _houses:
        _houses.append(open_houses(content, Answers(Pack(before))))


def end_with_parent() -> None:
    """Wait until the process is gone that gave this one its work, whatever ended it, and end too."""
    parent = parent_process()
    if parent:
        wait([parent.sentinel])
        os._exit(1)


def work_out(task: Task) -> Added:
    """Return what a task added to the worker's memory, in every language."""
    for house in _houses[0].tongues:
        work_out_in(house, task)
    return _houses[0].answers.taken()


def work_out_in(house: House, task: Task) -> None:
    """Work out a task, a kind and an id, in one language."""
    kind, ident = task
    if kind == SCRIPT:
        page_scripts(house)
    elif kind == FONTS:
        own_fonts(house)
    elif kind == PHOTOGRAPHS:
        photo_files(house)
    elif kind == EXAMPLES:
        examples(house)
    elif kind == LISTS:
        doors(house)
        measure(house)
        own_card(house)
    elif kind == ROOM:
        # No words are in it.
        door, _, family = ident.partition("/")
        first_room(house.first, house.first.catalog.doors[door], house.first.catalog.families[family])
    elif kind == FAMILY:
        work_out_family(house, house.catalog.families[ident])
    else:
        work_out_door(house, house.catalog.doors[ident])


def work_out_family(house: House, family: Family) -> None:
    """Work out a family's moving drawing, its room and its preview, on the one door where it is shown: not every
    door's answers."""
    door = own_door(house, family)
    if door:
        mover(house, door, family)
        covering_room(house, door, family)
    family_preview(house, family)


def work_out_door(house: House, door: Door) -> None:
    """Work out a door's previews, and write its page and that of every family on it.

    The list of coverings shows all of them on one door.
    """
    page_html(house, door_sheet(house, door))
    door_cards(house, door)
    if door is first_single(house):
        coverings(house)
    for family in house.families:
        page_html(house, fitted_sheet(house, door, family))
