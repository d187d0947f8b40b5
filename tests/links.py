"""Links to try a reader with: sound ones, ones hurt on their way, and hurt ones with a check that fits."""

import random
from collections.abc import Callable

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import encode
from configurator.browser.link.check import check_of
from configurator.browser.link.shapes import Configuration, State, Stock
from configurator.browser.link.state import PAGE_STEPS
from configurator.catalog import Catalog
from configurator.kernel.needs.ids import NEED_IDS
from configurator.kernel.resolve import full_choices
from configurator.kernel.shapes import Door
from configurator.kernel.tape.leaf_fields import HINGE_LIMITS
from configurator.kernel.tape.table import DOOR_LIMITS, DOOR_WORDS, HANDLE_LIMITS, HOUSEHOLD_LIMITS
from tests.cases import random_case

ODD = "abcxyz0123456789-_.,;:=@/#?%&+ \u00e9\u2028\U0001f6aa<>\"'{}\\\x00"
ODD_WORDS = [
    "__proto__",
    "constructor",
    "toString",
    "NaN",
    "1e999",
    "-",
    "=",
    "in",
    "b",
    "9" * 20,
    "0.0.0",
    "1b9999",
    ".",
]


def random_state(rng: random.Random, catalog: Catalog) -> State:
    """Return a state of one to four configurations, some on the same door."""
    configurations: list[Configuration] = []
    case = random_case(rng, catalog)
    for _ in range(rng.randint(1, 4)):
        one = random_case(rng, catalog)
        door = configurations[-1]["door"] if configurations and rng.random() < 0.5 else one["door"]
        choices = full_choices(one["family"], one["choices"])
        measured = measured_names(rng, door, catalog)
        configurations.append(
            {
                "door": door,
                "family": one["family"]["id"],
                "choices": choices,
                "place": one["place"],
                "measured": measured,
                "wishes": rng.choice([{}, {}, {"width_wanted": 508.0}, {"width_wanted": 330.2, "spacer_wanted": 12.7}]),
            }
        )
    return {
        "units": case["units"],
        "active": rng.randrange(len(configurations)),
        "step": rng.choice(PAGE_STEPS),
        "needs": [need for need in NEED_IDS if rng.random() < 0.1],
        "household": case["household"],
        "configurations": configurations,
    }


def measured_names(rng: random.Random, door: Door, catalog: Catalog) -> list[str]:
    """Return the names of all that differs from a door's preset, and of some more, in the order of a link."""
    preset, handle = catalog.doors[door["id"]], catalog.handles[door["handle"]["id"]]
    own = [*DOOR_WORDS, *DOOR_LIMITS, "hinge_heights", "passive_handle"]
    share = rng.choice([0, 0, 0.2, 1])
    names = [name for name in own if door[name] != preset[name] or rng.random() < share]  # type: ignore[literal-required]
    if door["handle"]["id"] != preset["handle"]["id"] or rng.random() < share:
        names.append("handle")
    for name in HANDLE_LIMITS:
        if door["handle"][name] != handle[name] or rng.random() < share:  # type: ignore[literal-required]
            names.append(f"handle.{name}")
    return names


def cut(rng: random.Random, text: str) -> str:
    """Return the text without its end."""
    return text[: rng.randrange(len(text))]


def without(rng: random.Random, text: str) -> str:
    """Return the text without a stretch."""
    start = rng.randrange(len(text))
    return text[:start] + text[start + rng.randint(1, 12) :]


def with_odd(rng: random.Random, text: str) -> str:
    """Return the text with an odd letter or word put in."""
    start = rng.randrange(len(text) + 1)
    return text[:start] + rng.choice([rng.choice(ODD), rng.choice(ODD_WORDS)]) + text[start:]


def replaced(rng: random.Random, text: str) -> str:
    """Return the text with one letter replaced."""
    start = rng.randrange(len(text))
    return text[:start] + rng.choice(ODD) + text[start + 1 :]


def swapped(rng: random.Random, text: str) -> str:
    """Return the text with two letters swapped."""
    a, b = sorted(rng.sample(range(len(text)), 2))
    return text[:a] + text[b] + text[a + 1 : b] + text[a] + text[b + 1 :]


def doubled(rng: random.Random, text: str) -> str:
    """Return the text with a stretch told twice."""
    a, b = sorted(rng.sample(range(len(text)), 2))
    return text[:b] + text[a:]


def reshuffled(rng: random.Random, text: str) -> str:
    """Return the text with its parts in another order."""
    mark = rng.choice("/;:=,@.")
    parts = text.split(mark)
    rng.shuffle(parts)
    return mark.join(parts)


HURTS: list[Callable[[random.Random, str], str]] = [cut, without, with_odd, replaced, swapped, doubled, reshuffled]


def hurt(rng: random.Random, link: str) -> str:
    """Return a link, hurt once or more."""
    for _ in range(rng.choice([1, 1, 1, 2, 5])):
        if len(link) > 2:
            link = rng.choice(HURTS)(rng, link)
    return link


def resealed(link: str) -> str:
    """Return a link with a check that fits whatever it says now."""
    body, _, check = link.rpartition("/")
    return f"{body}/{check_of(body)}{check[5:]}"


def hurt_links(catalog: Catalog, seed: int, count: int) -> list[str]:
    """Return hurt links, every third with a check that fits."""
    rng = random.Random(seed)
    stock = page_catalog(catalog)
    sound = [encode(random_state(rng, catalog), stock) for _ in range(50)]
    links = [hurt(rng, rng.choice(sound)) for _ in range(count)]
    return [resealed(link) if number % 3 == 0 else link for number, link in enumerate(links)]


def faults(state: State, stock: Stock) -> list[str]:
    """Return what is not right about a state that a link has opened to; nothing where it can be shown."""
    found = []
    if state["units"] not in ("in", "mm"):
        found.append("units")
    if not 1 <= len(state["configurations"]) <= 4 or state["active"] not in range(len(state["configurations"])):
        found.append("configurations")
    if state["step"] not in PAGE_STEPS:
        found.append("step")
    found += outside(state["household"], HOUSEHOLD_LIMITS)
    for one in state["configurations"]:
        found += outside(one["door"], DOOR_LIMITS) + outside(one["door"]["handle"], HANDLE_LIMITS)
        found += [name for name, words in DOOR_WORDS.items() if one["door"][name] not in words["options"]]  # type: ignore[literal-required]
        found += [f"hinge at {y}" for y in one["door"]["hinge_heights"] if not HINGE_LIMITS[0] <= y <= HINGE_LIMITS[1]]
        family = stock["families"][one["family"]]
        if one["choices"] != full_choices(family, one["choices"]):
            found.append("choices")
        place = one["place"]
        if not (0 <= place["lower"] <= 1 and 0 <= place["upper"] <= 1 and -180 <= place["tilt"] <= 180):
            found.append("place")
        if set(one["door"]) != set(stock["doors"][one["door"]["id"]]):
            found.append("door")
    return found


def outside(shape: object, limits: dict[str, list[float]]) -> list[str]:
    """Return the names of a shape's numbers that are outside their limits."""
    return [name for name, (low, high) in limits.items() if not low <= shape[name] <= high]  # type: ignore[index]
