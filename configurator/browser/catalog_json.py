"""The catalog as the page needs it: one JSON object, the same text for the same content."""

import json
from typing import Any

from configurator.browser.link.shapes import Stock
from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.message import is_said
from configurator.kernel.tongue import Words


class PageCatalog(Stock):
    """What the page works with.

    ``doors``, ``handles`` and ``families`` are the kernel's, by id in the catalog's order, retired
    ones among them. ``words`` is the page's language, which its scripts are already in.
    """

    showroom: str
    words: Words


def page_catalog(catalog: Catalog) -> PageCatalog:
    """Return the part of the catalog that the page works with."""
    return {
        "showroom": catalog.showroom.name,
        "words": {**catalog.words, "said": {}},
        "units": catalog.showroom.units,
        "household": catalog.household,
        "doors": catalog.doors,
        "handles": catalog.handles,
        "families": catalog.families,
        "opening": opening(catalog),
        "formerly": catalog.formerly,
    }


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


def catalog_json(catalog: Catalog) -> str:
    """Return the page's catalog as JSON text."""
    return json.dumps(compact(page_catalog(catalog)), ensure_ascii=False, separators=(",", ":"))


def compact(value: Any) -> Any:
    """Return the same data with whole numbers written without a decimal point."""
    if isinstance(value, dict):
        return {name: compact(part) for name, part in value.items()}
    if isinstance(value, list):
        return [compact(part) for part in value]
    if isinstance(value, float) and value.is_integer():
        return int(value)
    return value
