"""Proposals on their way: made of a visit, looked at by a client on a phone, answered, and taken over again."""

from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link.check import check_of
from configurator.browser.link.proposal_set import encode_set
from configurator.browser.link.visit_set import set_of_visit
from configurator.catalog import Catalog
from tests import weir_cottage
from tests.browser.accessibility import violations
from tests.browser.conftest import OpenContext
from tests.browser.test_visits import is_kept, opened_house
from tests.browser.trying import viewport

SCRIPT = "<img src=x onerror=\"document.title='broken'\">"


def shared(catalog: Catalog, **texts: str) -> str:
    """Return the link of the house's proposals, with some of its texts set."""
    visit: Any = weir_cottage.house()
    visit["openings"][0]["room"] = texts.get("room", "Study")
    visit["openings"][0]["proposals"][0]["note"] = texts.get("note", "Dark enough for films.")
    wishes: Any = {"client": False, "prices": False, "on": "2025-03-12", "words": texts.get("words", "")}
    return encode_set(set_of_visit(visit, wishes, page_catalog(catalog)))["link"]


def client_part(page: Page) -> Any:
    """Open what of a visit is for its client; return that part."""
    part = page.locator("details.desk").first
    if part.get_attribute("open") is None:
        part.locator("summary").first.click()
    return part


def test_from_the_consultant_to_the_client_and_back(open_context: OpenContext, tmp_path: Path) -> None:
    desk = open_context().new_page()
    opened_house(desk, tmp_path)
    part = client_part(desk)
    link = part.get_by_label("The link that the client opens").input_value()
    assert "Tansy" not in link
    part.get_by_label("With the client’s name").check()
    expect(part.get_by_label("The link that the client opens")).not_to_have_value(link)

    phone = open_context(viewport=viewport("phone"), has_touch=True, reduced_motion="reduce").new_page()
    phone.goto(link)
    study = phone.locator(".client-door").first
    expect(study.locator("h2")).to_have_text("Study")
    expect(study.locator(".leaf-told dl")).to_have_count(2)
    assert violations(phone) == []
    assert phone.evaluate("document.documentElement.scrollWidth") <= viewport("phone")["width"]
    expect(study.get_by_text("1 of 2")).to_be_visible()
    study.locator(".leaves").focus()
    phone.keyboard.press("ArrowRight")
    expect(study.get_by_text("2 of 2")).to_be_visible()
    liked = study.locator(".client-leaf").nth(1)
    expect(liked.locator("h3")).to_be_in_viewport()
    liked.get_by_role("radio").focus()
    phone.keyboard.press("Space")
    study.get_by_label("Your remarks on this door").fill("Is there a darker one?")
    phone.reload()
    expect(phone.locator(".client-leaf :checked")).to_have_count(1)
    expect(phone.locator(".client-answer dd").first).to_have_text("B: Roller shade")
    letter = phone.get_by_role("link", name="Write to the showroom").get_attribute("href") or ""
    assert letter.startswith("mailto:hello@lantern-and-sill.example?")
    assert "Tansy" not in letter
    code = phone.locator(".answer-code").inner_text()

    part.get_by_label("Paste the link, the whole mail, or type the code").fill(code)
    expect(part.locator(".client-answered")).to_contain_text("Roller shade")
    answer = letter.split("visits.html%23")[1].replace("%7E", "~").replace("%2F", "/")
    part.get_by_label("Paste the link, the whole mail, or type the code").fill(f"Dear all,\nvisits.html#{answer}")
    expect(part.locator(".client-answered")).to_contain_text("Is there a darker one?")
    part.get_by_role("button", name="Take the answer over").click()
    is_kept(desk)
    desk.locator(".one-door > summary").first.click()
    proposal = desk.locator(".one-door").first.locator(".proposal").nth(1)
    expect(proposal.get_by_label("The client likes this one")).to_be_checked()
    expect(proposal.get_by_label("What the client says to it")).to_have_value("Is there a darker one?")
    # What is written after an answer is nobody's to take back with it.
    desk.get_by_label("Note on this door").first.fill("A darker one is ordered as a sample.")
    proposal.get_by_label("What the client says to it").fill("Is there a darker one? There is.")
    desk.get_by_role("button", name="Undo").click()
    expect(proposal.get_by_label("The client likes this one")).not_to_be_checked()
    expect(proposal.get_by_label("What the client says to it")).to_have_value("Is there a darker one? There is.")
    expect(desk.get_by_label("Note on this door").first).to_have_value("A darker one is ordered as a sample.")
    expect(desk.locator(".one-visit details").last).not_to_contain_text("answer was taken over", use_inner_text=False)

    part.get_by_label("Paste the link, the whole mail, or type the code").fill(answer)
    proposal.get_by_label("Price").fill("1111")
    expect(part.locator(".client-answered")).to_contain_text("proposals that have been changed since")
    part.get_by_label("Paste the link, the whole mail, or type the code").fill(code)
    expect(part.locator(".client-answered")).to_contain_text("Ask for the link of the answer.")


def test_the_client_needs_no_server(open_context: OpenContext, demo: Path, catalog: Catalog) -> None:
    page = open_context(base_url=demo.as_uri()).new_page()
    page.goto(f"{(demo / 'proposals.html').as_uri()}#{shared(catalog)}")
    expect(page.locator(".client-leaf")).to_have_count(7)
    page.get_by_role("radio").first.check()
    expect(page.locator(".client-answer dd").first).not_to_have_text("nothing marked")


def test_the_page_opens_with_the_network_off(open_context: OpenContext, catalog: Catalog) -> None:
    context = open_context(service_workers="allow")
    page = context.new_page()
    page.goto("proposals.html")
    page.wait_for_function("navigator.serviceWorker.ready.then(() => true)")
    page.goto(f"proposals.html#{shared(catalog)}")
    page.reload()
    expect(page.locator(".client-leaf")).to_have_count(7)
    context.set_offline(True)
    page.reload()
    expect(page.locator(".client-leaf")).to_have_count(7)


def test_script_in_every_text_is_shown_as_text(page: Page, catalog: Catalog) -> None:
    page.goto(f"proposals.html#{shared(catalog, room=SCRIPT, note=SCRIPT, words=SCRIPT)}")
    expect(page.locator(".client-door h2").first).to_have_text(SCRIPT)
    expect(page.locator("blockquote").first).to_have_text(SCRIPT)
    assert page.title() != "broken"


@pytest.mark.parametrize(
    ("fragment", "told"),
    [
        ("", "There are no proposals in this address."),
        ("p1~" + "a" * 1_000_000, "holds no proposals"),
        ("p9~aaaaa~bbbbb", "made by a newer version"),
        ("p1~bbbbb~bbbbb~~~~bbbbb~~javascript:alert~1~bbbbb~~~~00000", "cut short or changed"),
    ],
    ids=["empty", "megabyte", "newer", "changed"],
)
def test_a_link_that_holds_none_is_told_with_where_to_go(page: Page, fragment: str, told: str) -> None:
    page.goto("proposals.html")
    page.evaluate("fragment => { location.hash = fragment; }", fragment)
    expect(page.locator("#proposals .notice")).to_contain_text(told)
    expect(page.get_by_role("link", name="Try coverings on your own door")).to_be_visible()


def test_a_door_that_is_no_link_is_never_one(page: Page) -> None:
    body = "p1~bbbbb~bbbbb~~~~bbbbb~Hall~javascript:alert~1~bbbbb~~~"
    page.goto(f"proposals.html#{body}~{check_of(body)}")
    expect(page.locator(".client-door .notice")).to_contain_text("cannot be read, so it is not shown")
    expect(page.locator(".client-leaf, [href^=javascript]")).to_have_count(0)


def test_an_answer_without_its_visit_says_where_it_belongs(page: Page) -> None:
    body = "a1~bbbbb~bbbbb~~bbbbb~~"
    page.goto(f"visits.html#{body}~{check_of(body)}")
    expect(page.get_by_text("its visit is not on this device")).to_be_visible()
