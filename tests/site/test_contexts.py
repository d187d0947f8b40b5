"""Each kind of page is given what its template names, and says so in its type."""

from typing import get_type_hints

import jinja2
import pytest
from jinja2 import meta

from configurator.catalog import Catalog
from configurator.kernel.tongue import ENGLISH
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.face.templates import environment
from configurator.site.face.themes import template_folders
from configurator.site.house import House
from configurator.site.kinds.all_pages import site_pages
from configurator.site.kinds.coverings_page import CoveringsPage
from configurator.site.kinds.door_page import DoorPage
from configurator.site.kinds.doors_page import DoorsPage
from configurator.site.kinds.family_page import FamilyPage
from configurator.site.kinds.fitted_page import FittedPage
from configurator.site.kinds.frame import Frame
from configurator.site.kinds.guide_pages import GuidesPage, MarkdownPage
from configurator.site.kinds.home_page import HomePage
from configurator.site.kinds.measure_page import MeasurePage
from configurator.site.kinds.try_page import TryPage
from configurator.site.kinds.visits_page import VisitsPage

KINDS: dict[str, type | None] = {
    "coverings.html": CoveringsPage,
    "door.html": DoorPage,
    "doors.html": DoorsPage,
    "family.html": FamilyPage,
    "fitted.html": FittedPage,
    "guides.html": GuidesPage,
    "home.html": HomePage,
    "lost.html": None,
    "main.html": MarkdownPage,
    "measure.html": MeasurePage,
    "proposals.html": TryPage,
    "try.html": TryPage,
    "visits.html": VisitsPage,
}


def held(kind: type | None) -> set[str]:
    """Return the names that a kind of page is given, with those of every page's frame."""
    return set(get_type_hints(Frame)) | (set(get_type_hints(kind)) if kind else set())


def named(env: jinja2.Environment, template: str) -> set[str]:
    """Return the names that a template and all that it extends or includes want to be given."""
    assert env.loader is not None
    tree = env.parse(env.loader.get_source(env, template)[0])
    imports = list(tree.find_all(jinja2.nodes.FromImport))
    # A macro is given what it needs where it is called.
    macros = {name for node in imports for name in node.names}
    others = set(meta.find_referenced_templates(tree)) - {node.template.value for node in imports}
    return (meta.find_undeclared_variables(tree) - macros).union(*(named(env, str(other)) for other in others))


@pytest.mark.parametrize("theme", ["sheet", "linen"])
@pytest.mark.parametrize("template", KINDS)
def test_a_template_names_only_what_its_kind_of_page_is_given(theme: str, template: str) -> None:
    env = environment(template_folders(theme), ENGLISH, "in")
    assert named(env, template) <= held(KINDS[template])


def test_every_kind_of_page_has_its_type(catalog: Catalog) -> None:
    house = House(catalog, CONTENT, Answers())
    assert {page.template for page in site_pages(house)} | {"main.html"} == set(KINDS)
    shown = {page.template: page for page in site_pages(house) if page.template in ("coverings.html", "fitted.html")}
    for template, page in shown.items():
        assert set(page.given()) | set(get_type_hints(Frame)) == held(KINDS[template])
