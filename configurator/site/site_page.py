"""A page of the site before it is written: its address, its words and what its template is given."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any

# What a page's template is given; each kind of page has a TypedDict of its own.
Given = Mapping[str, object]


@dataclass(frozen=True)
class Crumb:
    """One step of the way to a page: its short name and its address from the site's root."""

    name: str
    url: str


@dataclass(frozen=True)
class SitePage:
    """A page that no Markdown file stands for.

    ``url`` is from the site's root, ``given`` is called once when the page is written, ``card`` is
    the link preview's address from the root (empty: the showroom's own card), ``schema`` holds
    schema.org objects beside the breadcrumbs. A page that names the ``inputs`` it depends on, beside
    what all pages do, is not written again while they stay the same. ``moved_to`` is the address to which an old one
    leads on; nothing where the page stands itself. ``known_as`` is another name of what the page is about.
    """

    url: str
    template: str
    title: str
    description: str
    given: Callable[[], Given]
    crumbs: list[Crumb] = field(default_factory=list)
    card: str = ""
    schema: list[dict[str, Any]] = field(default_factory=list)
    listed: bool = True
    inputs: tuple[object, ...] = ()
    moved_to: str = ""
    known_as: str = ""


def way_up(url: str) -> str:
    """Return the relative way from a page back to the site's root (empty, ``../``, ``../../`` …)."""
    return "../" * url.count("/")
