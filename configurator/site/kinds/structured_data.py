"""Structured data after schema.org, as JSON-LD."""

import json
from typing import Any, TypedDict

from markupsafe import Markup

from configurator.catalog.schema.showroom import Showroom
from configurator.kernel.tongue import wording
from configurator.site.site_page import Crumb

Thing = dict[str, Any]
CATEGORY = wording("Window covering")


def breadcrumbs(crumbs: list[Crumb], title: str, url: str, address: str) -> Thing:
    """Return the BreadcrumbList of a page, from the public address on."""
    trail = [*crumbs, Crumb(title, url)]
    items: list[Thing] = []
    for place, crumb in enumerate(trail, 1):
        items.append({"@type": "ListItem", "position": place, "name": crumb.name, "item": address + crumb.url})
    return {"@type": "BreadcrumbList", "itemListElement": items}


class Offered(TypedDict):
    """What is said of a covering: its name, what it is, and among which things it is found."""

    name: str
    description: str
    category: str


def product(said: Offered, seller: str, url: str, image: str) -> Thing:
    """Return a Product; ``url`` and ``image`` may be empty when the public address is not known."""
    thing: Thing = {
        "@type": "Product",
        **said,
        "brand": {"@type": "Brand", "name": seller},
    }
    if url:
        thing |= {"url": url, "image": image}
    return thing


def page_about(name: str, description: str) -> Thing:
    """Return a WebPage about a thing that is nobody's product."""
    return {"@type": "WebPage", "name": name, "description": description}


def also_called(thing: Thing, names: list[str]) -> Thing:
    """Return a thing with its other names, where it has any."""
    return {**thing, "alternateName": names} if names else thing


def business(showroom: Showroom, address: str) -> Thing:
    """Return the showroom as a LocalBusiness, as far as it tells; hours stay in the words of the page."""
    thing: Thing = {
        "@type": "LocalBusiness",
        "name": showroom.name,
        "description": showroom.strapline,
    }
    if showroom.contact.telephone:
        thing["telephone"] = showroom.contact.telephone
    if showroom.contact.mail:
        thing["email"] = showroom.contact.mail
    if showroom.contact.address:
        thing["address"] = {"@type": "PostalAddress", "streetAddress": ", ".join(showroom.contact.address)}
    if address:
        thing["url"] = address
    return thing


def script_text(things: list[Thing]) -> Markup:
    """Return JSON-LD that cannot end the script element it stands in; there, nothing else is escaped."""
    graph = {"@context": "https://schema.org", "@graph": things}
    return Markup(json.dumps(graph, ensure_ascii=False, separators=(",", ":")).replace("<", "\\u003c"))
