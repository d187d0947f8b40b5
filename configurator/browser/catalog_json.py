"""The catalog as the page needs it: one JSON object, the same text for the same content."""

import json
from typing import Any, TypedDict

from configurator.browser.link.shapes import Stock
from configurator.catalog import Catalog
from configurator.catalog.measures import Measure
from configurator.catalog.notes import DoorNotes
from configurator.catalog.schema.showroom import Contact
from configurator.kernel.answer import ask
from configurator.kernel.message import is_said
from configurator.kernel.prices.money_words import is_in_money
from configurator.kernel.tape.table import fields_of, is_asked
from configurator.kernel.tongue import Words, in_words


class Preset(TypedDict):
    """Where the numbers of a door come from, in words; ``marks`` say it of a field, by its id, whose number comes from
    elsewhere: from a source of its own, or assumed as nobody measured it."""

    source: str
    marks: dict[str, str]


class OpenHours(TypedDict):
    """One line of opening hours, as it should be read."""

    days: str
    time: str


class Reach(TypedDict):
    """How to reach the showroom; what it does not say is empty."""

    telephone: str
    mail: str
    address: list[str]
    hours: list[OpenHours]


class PageCatalog(Stock):
    """What the page works with.

    ``doors``, ``handles`` and ``families`` are the kernel's, by id in the catalog's order, retired
    ones among them. ``words`` is the page's language, which its scripts are already in. ``presets`` says of each door
    where its numbers come from.
    """

    showroom: str
    contact: Reach
    words: Words
    presets: dict[str, Preset]


def page_catalog(catalog: Catalog) -> PageCatalog:
    """Return the part of the catalog that the page works with."""
    return {
        "showroom": catalog.showroom.name,
        "contact": reach(catalog.showroom.contact),
        "words": {**catalog.words, "said": {}},
        "units": catalog.showroom.units,
        "household": catalog.household,
        "doors": catalog.doors,
        "handles": catalog.handles,
        "families": catalog.families,
        "presets": {ident: preset(notes, catalog.words) for ident, notes in catalog.door_notes.items()},
        "opening": opening(catalog),
        "formerly": catalog.formerly,
    }


def reach(contact: Contact) -> Reach:
    """Return how to reach the showroom."""
    hours: list[OpenHours] = [{"days": one.days, "time": one.time} for one in contact.hours]
    return {"telephone": contact.telephone, "mail": contact.mail, "address": contact.address, "hours": hours}


def opening(catalog: Catalog) -> list[str]:
    """Return the showroom's first door (or else the first of all) and the first covering that passes it by itself."""
    door = catalog.doors[catalog.showroom.first_door or next(iter(catalog.doors))]
    offered = [family for family in catalog.families.values() if not family["retired"]]
    for family in offered:
        answer = ask(door, family, {}, catalog.household)
        sound = answer["legs"] and not is_said(answer["refusal"])
        if sound and answer["verdicts"]["pass_through"]["state"] == "clears":
            return [door["id"], family["id"]]
    return [door["id"], offered[0]["id"]]


def preset(notes: DoorNotes, words: Words) -> Preset:
    """Return where the numbers of a door come from, in a language."""
    told = {measure.path: source_words(measure, words) for measure in notes.measures}
    whole = notes.source.said(words)
    fields = [field for field in fields_of("door") if is_asked(field) and field["path"] in told]
    return {
        "source": whole,
        "marks": {field["id"]: told[field["path"]] for field in fields if told[field["path"]] != whole},
    }


def source_words(measure: Measure, words: Words) -> str:
    """Return where one number comes from, in words."""
    return in_words("assumed", words) if measure.assumed else measure.source.said(words)


def catalog_json(catalog: Catalog) -> str:
    """Return the page's catalog as JSON text."""
    return json.dumps(compact(page_catalog(catalog)), ensure_ascii=False, separators=(",", ":"))


def prices_json(catalog: Catalog) -> str:
    """Return what the page works prices out from as JSON text: nothing where the showroom shows none in money, so that
    no price is on the site."""
    prices = catalog.prices
    shown = prices.stock() if prices and is_in_money(prices.shown) else None
    return json.dumps(compact(shown), ensure_ascii=False, separators=(",", ":"))


def money_json(catalog: Catalog) -> str:
    """Return how the showroom writes amounts as JSON text: nothing where it has no currency. It holds no price."""
    money = catalog.prices.terms["money"] if catalog.prices else None
    return json.dumps(compact(money), ensure_ascii=False, separators=(",", ":"))


def compact(value: Any) -> Any:
    """Return the same data with whole numbers written without a decimal point."""
    if isinstance(value, dict):
        return {name: compact(part) for name, part in value.items()}
    if isinstance(value, list):
        return [compact(part) for part in value]
    if isinstance(value, float) and value.is_integer():
        return int(value)
    return value
