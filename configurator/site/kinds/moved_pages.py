"""Old addresses that lead on: of doors and families that have another id today, and of the one on the other."""

from functools import partial
from typing import TypedDict

from configurator.kernel.tongue import wording
from configurator.site.house import House
from configurator.site.site_page import SitePage


class MovedPage(TypedDict):
    """What the page at an old address shows: where its matter is now, from the site's root, and what that is called."""

    to: str
    name: str


def moved_pages(house: House) -> list[SitePage]:
    """Return a page for every address that something had under a former id."""
    doors, families = former_ids(house, "door"), former_ids(house, "family")
    door_names = {door["id"]: door["name"] for door in house.doors}
    family_names = {family["id"]: family["name"] for family in house.families}
    pages = [moved(house, f"doors/{old}.html", f"doors/{new}.html", door_names[new]) for old, new in doors.items()]
    pages += [
        moved(house, f"coverings/{old}.html", f"coverings/{new}.html", family_names[new])
        for old, new in families.items()
    ]
    for door, door_now in {**{ident: ident for ident in door_names}, **doors}.items():
        for family, family_now in {**{ident: ident for ident in family_names}, **families}.items():
            if door != door_now or family != family_now:
                name = f"{family_names[family_now]}: {door_names[door_now]}"
                pages.append(moved(house, f"doors/{door}/{family}.html", f"doors/{door_now}/{family_now}.html", name))
    return pages


def former_ids(house: House, kind: str) -> dict[str, str]:
    """Return today's id by the former one, of the doors or the families that have pages."""
    shown = {thing["id"] for thing in (house.doors if kind == "door" else house.families)}
    found = {
        key.removeprefix(f"{kind}/"): now for key, now in house.catalog.formerly.items() if key.startswith(f"{kind}/")
    }
    return {old: now for old, now in found.items() if now in shown}


def moved(house: House, url: str, to: str, name: str) -> SitePage:
    """Return the page at an old address."""
    words = house.named(wording("This page has another address now."))
    return SitePage(url, "moved.html", name, words, partial(told, to, name), listed=False, moved_to=to)


def told(to: str, name: str) -> MovedPage:
    """Return what such a page shows."""
    return {"to": to, "name": name}
