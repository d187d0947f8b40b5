"""Towards the visit: the mail, what the device shares, what to photograph, and how to reach the showroom."""

import io
import re
from collections.abc import Callable
from pathlib import Path
from urllib.parse import parse_qs, unquote, urlsplit

import pytest
from PIL import Image
from playwright.sync_api import Page, expect

from configurator.catalog import Catalog
from configurator.site.answers import Answers
from tests.browser.trying import covering, fragment, open_page, to_step
from tests.conftest import built_once, small_content

PUBLIC = "https://doors.example/show/"
# A device that shares: what it is handed stays on the page.
SHARING = """
navigator.canShare = () => true;
navigator.share = async (told) => {
  const bytes = new Uint8Array(await told.files[0].arrayBuffer());
  window.shared = { title: told.title, text: told.text, type: told.files[0].type, bytes: [...bytes] };
};
"""


def shade(catalog: Catalog) -> str:
    """Return the address of a shade on a door, at the last step."""
    return fragment(catalog, covering(catalog, "garden-door", "cellular-shade"), step="take")


def letter(page: Page, name: str) -> tuple[str, str, str]:
    """Return whom a mail goes to, its subject and its words."""
    link = urlsplit(page.get_by_role("link", name=name).get_attribute("href") or "")
    told = parse_qs(link.query)
    return unquote(link.path), told["subject"][0], told["body"][0].replace("\r\n", "\n")


@pytest.fixture(scope="session")
def quiet_site(tmp_path_factory: pytest.TempPathFactory, demo_answers: Callable[[], Answers]) -> Path:
    """A folder with the site of a showroom that says where it stands, and not how it is reached."""

    def quiet_content(folder: Path) -> Path:
        small_content(folder, "cellular-shade")
        showroom = folder / "showroom.yaml"
        text = showroom.read_text(encoding="utf-8")
        start, end = text.index("contact:"), text.index("# Where the site")
        showroom.write_text(f"{text[:start]}public_address: {PUBLIC}\n{text[end:]}", encoding="utf-8")
        return folder

    return built_once(tmp_path_factory, "quiet", quiet_content, demo_answers)


def test_the_mail_to_the_showroom_holds_the_words_and_the_link(page: Page, catalog: Catalog) -> None:
    open_page(page, shade(catalog))
    to, subject, words = letter(page, "Write to the showroom")
    assert to == catalog.showroom.contact.mail
    assert subject == "Cellular shade on our door: Garden door"
    assert "Size to order: 25 in wide, 68 in high" in words
    assert "Passing the handle: clears" in words
    assert "+" not in (page.get_by_role("link", name="Write to the showroom").get_attribute("href") or "")
    link = words.split("\n")[-1]
    assert link == page.locator("#share-address").input_value()
    open_page(page, link)
    expect(page.locator(".onward-words")).to_have_text("Cellular shade on your door: Garden door")


def test_the_words_follow_the_units(page: Page, catalog: Catalog) -> None:
    open_page(page, shade(catalog))
    page.get_by_role("radio", name="Millimeters").check()
    write = page.get_by_role("link", name="Write to the showroom")
    expect(write).to_have_attribute("href", re.compile(r"635%20mm%20wide"))


def test_the_device_shares_words_link_and_picture(page: Page, catalog: Catalog) -> None:
    page.add_init_script(SHARING)
    open_page(page, shade(catalog))
    page.get_by_role("button", name="Share with this device").click()
    page.wait_for_function("Boolean(window.shared)")
    shared = page.evaluate("window.shared")
    assert shared["title"] == "Cellular shade on our door: Garden door"
    assert page.locator("#share-address").input_value() in shared["text"]
    assert shared["type"] == "image/png"
    picture = Image.open(io.BytesIO(bytes(shared["bytes"]))).convert("RGB")
    assert picture.width == 1200
    # Lawn, cloth, wood, lines and paper.
    assert len(picture.getcolors(100_000) or []) > 100


def test_a_device_that_shares_nothing_offers_the_words_to_copy(page: Page, catalog: Catalog) -> None:
    page.add_init_script("delete Navigator.prototype.share")
    page.context.grant_permissions(["clipboard-read", "clipboard-write"])
    open_page(page, shade(catalog))
    expect(page.get_by_role("button", name="Share with this device")).to_be_hidden()
    page.get_by_role("button", name="Copy the words").click()
    expect(page.get_by_text("The words are copied.")).to_be_visible()
    _, _, words = letter(page, "Write to the showroom")
    assert page.evaluate("navigator.clipboard.readText()").replace("\r\n", "\n") == words


def test_what_has_been_measured_need_not_be_photographed(page: Page, catalog: Catalog) -> None:
    open_page(page, shade(catalog))
    photos = page.locator(".photo-list")
    expect(photos).to_contain_text("The handle from the side")
    expect(photos).to_contain_text("Still assumed: Gap behind the handle and How far the handle stands out")
    expect(photos).not_to_contain_text("Where the two leaves meet")
    to_step(page, "Door")
    page.evaluate("for (const one of document.querySelectorAll('details')) one.open = true")
    for name in ("Gap behind the handle", "How far the handle stands out"):
        field = page.get_by_label(name, exact=True)
        field.fill(field.input_value() + " ")
        field.blur()
    to_step(page, "Take along")
    expect(photos).to_contain_text("The whole door")
    expect(photos).not_to_contain_text("The handle from the side")


def test_the_showroom_says_when_it_is_open(page: Page, catalog: Catalog) -> None:
    open_page(page, shade(catalog))
    part = page.get_by_role("region", name="Bring this to the showroom")
    contact = catalog.showroom.contact
    expect(part.get_by_role("link", name=contact.telephone)).to_have_attribute("href", "tel:5555550142")
    for line in contact.hours:
        expect(part).to_contain_text(line.time)


def test_a_showroom_that_says_nothing_leaves_nothing_broken(page: Page, quiet_site: Path) -> None:
    page.goto((quiet_site / "index.html").as_uri())
    assert page.locator("a[href='tel:'], a[href='mailto:'], dl.hours").count() == 0
    assert page.get_by_role("heading", name="Come and try them").count() == 0
    page.goto((quiet_site / "doors" / "index.html").as_uri())
    assert page.locator(".title-block").get_by_text("Call or write").count() == 0
    open_page(page, (quiet_site / "try.html").as_uri())
    to_step(page, "Take along")
    assert page.locator(".visit-part h3").all_inner_texts() == ["Send it ahead", "Photograph and bring"]
    assert letter(page, "Write a mail with it")[0] == ""


def test_from_a_disk_the_public_address_is_handed_on(page: Page, quiet_site: Path) -> None:
    open_page(page, (quiet_site / "try.html").as_uri())
    to_step(page, "Take along")
    assert page.locator("#share-address").input_value().startswith(f"{PUBLIC}try.html#")
    assert f"{PUBLIC}try.html#" in letter(page, "Write a mail with it")[2]
    expect(page.get_by_text("opened from a disk")).to_be_hidden()


def test_from_a_disk_without_a_public_address_the_words_go_alone(page: Page, demo: Path, catalog: Catalog) -> None:
    open_page(page, (demo / "try.html").as_uri() + "#" + shade(catalog).split("#")[1])
    expect(page.get_by_text("opened from a disk")).to_be_visible()
    assert "file:" not in letter(page, "Write to the showroom")[2]
