"""Which pages a site has, and what each is called and given."""

from functools import partial

from configurator.kernel.message import is_said, message, several
from configurator.kernel.shapes import Door, Family
from configurator.kernel.tongue import wording
from configurator.site.drawings.cards import door_card, family_card, fitted_card
from configurator.site.house import House, Terms
from configurator.site.kinds import structured_data
from configurator.site.kinds.compare import fitted_url
from configurator.site.kinds.coverings_page import coverings
from configurator.site.kinds.door_page import door_page
from configurator.site.kinds.doors_page import doors
from configurator.site.kinds.family_page import family_page
from configurator.site.kinds.fitted_page import fitted
from configurator.site.kinds.guide_pages import guides
from configurator.site.kinds.home_page import home
from configurator.site.kinds.measure_page import measure
from configurator.site.kinds.moved_pages import moved_pages
from configurator.site.kinds.try_page import try_page
from configurator.site.kinds.visits_page import visits_page
from configurator.site.site_page import Crumb, Given, SitePage

HOME = Crumb(wording("Home"), "index.html")
COVERINGS = Crumb(wording("Coverings"), "coverings/index.html")
DOORS = Crumb(wording("Doors"), "doors/index.html")


def nothing() -> Given:
    """Return what a page of plain words is given."""
    return {}


def site_pages(house: House) -> list[SitePage]:
    """Return every page but the Markdown ones, which MkDocs finds itself."""
    pages = plain_pages(house)
    pages += [family_sheet(house, family) for family in house.families]
    for door in house.doors:
        pages.append(door_sheet(house, door))
        pages += [fitted_sheet(house, door, family) for family in house.families]
    return pages + moved_pages(house)


def plain_pages(house: House) -> list[SitePage]:
    """Return the pages of which there is one each."""
    showroom = house.showroom
    count: Terms = {"count": [len(house.families), "count"]}
    doors_count: Terms = {"count": [len(house.doors), "count"]}
    named = house.named
    return [
        SitePage(
            "index.html",
            "home.html",
            named(wording("Home")),
            house.say(
                message(
                    "{showroom}: {strapline}. {families} coverings for glazed doors, drawn to scale on {doors} doors.",
                    {
                        "showroom": [showroom.name, "text"],
                        "strapline": [showroom.strapline, "text"],
                        "families": [len(house.families), "count"],
                        "doors": [len(house.doors), "count"],
                    },
                )
            ),
            partial(home, house),
            schema=[structured_data.business(showroom, house.address)],
        ),
        SitePage(
            COVERINGS.url,
            "coverings.html",
            named(wording("Coverings")),
            house.say(
                several(
                    "{count} covering for glazed doors: how much glass it leaves clear, how "
                    "far it stands out, and whether "
                    "it passes the handle.",
                    "{count} coverings for glazed doors: how much glass each leaves clear, how far it stands out, and "
                    "whether it passes the handle.",
                    count,
                )
            ),
            partial(coverings, house),
            [HOME],
        ),
        SitePage(
            DOORS.url,
            "doors.html",
            named(wording("Doors")),
            house.say(
                several(
                    "{count} glazed door drawn to scale, with every covering compared on it.",
                    "{count} glazed doors drawn to one scale, with every covering compared on each.",
                    doors_count,
                )
            ),
            partial(doors, house),
            [HOME],
        ),
        SitePage(
            "measure.html",
            "measure.html",
            named(wording("Measuring a glazed door")),
            named(
                wording(
                    "Which numbers to take of a glazed door, where the tape goes, and a sheet to print and fill in."
                )
            ),
            partial(measure, house),
            [HOME],
        ),
        SitePage(
            "guides/index.html",
            "guides.html",
            named(wording("Guides")),
            named(
                wording("Privacy and light, handles, pairs, safety for children and care, in short and with drawings.")
            ),
            partial(guides, house),
            [HOME],
        ),
        SitePage(
            "try.html",
            "try.html",
            named(wording("Your door")),
            named(wording("Set your own door’s measurements, move each covering on it and read every figure.")),
            partial(try_page, house),
            [HOME],
        ),
        SitePage(
            "visits.html",
            "visits.html",
            named(wording("Visits")),
            named(
                wording("A house with all its doors, measured, proposed and agreed: kept on your device and in a file.")
            ),
            partial(visits_page, house),
            [HOME],
        ),
        SitePage(
            "proposals.html",
            "proposals.html",
            named(wording("Proposals")),
            named(wording("What is proposed for each of your doors, drawn on it: mark what you like, and answer.")),
            partial(try_page, house),
            [HOME],
        ),
        SitePage(
            "404.html",
            "lost.html",
            named(wording("No such page")),
            named(wording("This page is not here.")),
            nothing,
            listed=False,
        ),
    ]


def family_sheet(house: House, family: Family) -> SitePage:
    """Return the page of a family."""
    notes = house.catalog.family_notes[family["id"]]
    url, card = f"coverings/{family['id']}.html", family_card(house, family)
    return SitePage(
        url,
        "family.html",
        notes.name,
        with_other_names(house, notes.summary, notes.also_called),
        partial(family_page, house, family),
        [HOME, COVERINGS],
        card,
        [structured_data.also_called(product(house, notes.name, notes.summary, url, card), notes.also_called)],
        inputs=(family, notes, *house.doors),
        known_as=first_of(notes.also_called),
    )


def door_sheet(house: House, door: Door) -> SitePage:
    """Return the page of a door."""
    notes = house.catalog.door_notes[door["id"]]
    words = house.say(
        several(
            "{summary} {count} covering on it, to scale.",
            "{summary} {count} coverings on it, compared to scale.",
            {"summary": [notes.summary, "text"], "count": [len(house.families), "count"]},
        )
    )
    return SitePage(
        f"doors/{door['id']}.html",
        "door.html",
        notes.name,
        with_other_names(house, words, notes.also_called),
        partial(door_page, house, door),
        [HOME, DOORS],
        door_card(house, door),
        [structured_data.also_called(structured_data.page_about(notes.name, notes.summary), notes.also_called)],
        inputs=(door, notes, *house.families),
        known_as=first_of(notes.also_called),
    )


def with_other_names(house: House, words: str, names: list[str]) -> str:
    """Return what describes a thing, and what else people call it."""
    terms: Terms = {"words": [words, "text"], "names": [", ".join(names), "text"]}
    return house.say(message("{words} Also called: {names}.", terms)) if names else words


def first_of(names: list[str]) -> str:
    """Return the first of some names, or nothing."""
    return names[0] if names else ""


def fitted_sheet(house: House, door: Door, family: Family) -> SitePage:
    """Return the page of a family on a door."""
    url, card = fitted_url(door, family), fitted_card(door, family)
    title = house.on_door(door, family)
    # Read at each build, whole answers take a while.
    words = house.once(partial(fitted_words, house, door, family), "sentence", door, family)
    return SitePage(
        url,
        "fitted.html",
        title,
        words,
        partial(fitted, house, door, family),
        [HOME, DOORS, Crumb(door["name"], f"doors/{door['id']}.html")],
        card,
        [product(house, title, words, url, card)],
        inputs=(
            door,
            family,
            house.catalog.door_notes[door["id"]],
            house.catalog.family_notes[family["id"]],
        ),
    )


def fitted_words(house: House, door: Door, family: Family) -> str:
    """Return what happens to a family on a door, in one sentence."""
    answer = house.answer(door, family)
    if is_said(answer["refusal"]):
        return house.say(message("{fitted}: it does not go on. {why}", fitted_terms(house, door, family)))
    terms: Terms = {
        "share": [answer["figures"]["visible_glass_open"]["value"], "percent"],
        "passing": [house.phrase(answer["verdicts"]["pass_through"]["says"]), "text"],
    }
    return house.say(
        message(
            "Open, {share} of the glass stays clear. At the handle: {passing}. Drawings to scale and all figures.",
            terms,
        )
    )


def fitted_terms(house: House, door: Door, family: Family) -> Terms:
    """Return the terms that tell why a family does not go on a door."""
    refusal = house.answer(door, family)["refusal"]
    return {"fitted": [house.on_door(door, family), "text"], "why": [house.say(refusal), "text"]}


def product(house: House, name: str, words: str, url: str, card: str) -> structured_data.Thing:
    """Return a covering as structured data."""
    address = house.address
    seller = house.showroom.name
    url, card = address and address + url, address and house.first.address + house.card_root(card) + card
    said: structured_data.Offered = {
        "name": name,
        "description": words,
        "category": house.named(structured_data.CATEGORY),
    }
    return structured_data.product(said, seller, url, card)
