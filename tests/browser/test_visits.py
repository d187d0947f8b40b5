"""Visits as a consultant keeps them: measured door by door, kept as they are written, taken along as a file."""

import json
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Locator, Page, expect

from configurator.catalog import Catalog
from tests.browser.accessibility import violations
from tests.browser.conftest import OpenContext
from tests.browser.trying import TWO_FRAMES, covering, fragment, to_step, viewport

REFUSE = "indexedDB.open = () => { throw new DOMException('refused', 'SecurityError'); };"
FULL = """const put = IDBObjectStore.prototype.put;
window.isFull = false;
IDBObjectStore.prototype.put = function (...values) {
    if (window.isFull) throw new DOMException('full', 'QuotaExceededError');
    return put.apply(this, values);
};"""


def begin(page: Page, client: str = "Mrs Tansy") -> None:
    """Begin a visit at a client's."""
    page.goto("visits.html")
    page.get_by_role("button", name="Begin a visit").click()
    page.get_by_label("Client", exact=True).fill(client)


def add_door(page: Page, room: str, like: str) -> Locator:
    """Add a door to the visit that is open; return its part of the form."""
    page.get_by_role("button", name="Add a door").click()
    door = page.locator(".one-door").last
    door.get_by_label("Room", exact=True).fill(room)
    door.get_by_label("A door like").select_option(like)
    return door


def open_leaf(door: Locator, leaf: str, group: str) -> Locator:
    """Open what is measured in one place of a leaf; return the leaf."""
    part = door.locator(f"[data-leaf={leaf}]")
    for line in (door.locator("summary").first, part.locator("summary").first, part.get_by_text(group, exact=True)):
        if line.locator("xpath=ancestor::details[1]").get_attribute("open") is None:
            line.click()
    return part


def measure(part: Locator, name: str, *typed: str) -> Locator:
    """Write the readings of a measure into its boxes; return the measure's part of the form."""
    field = part.locator(".reading").filter(has_text=name).first
    boxes = field.locator("input[type=text]")
    expect(boxes).to_have_count(len(typed))
    for box, text in zip(boxes.all(), typed, strict=True):
        box.fill(text)
    return field


def is_kept(page: Page) -> None:
    """Wait until the device has everything; the page tells of what was typed with its next frame."""
    page.evaluate(TWO_FRAMES)
    expect(page.locator(".keep-line")).to_have_attribute("data-state", "kept")


def saved(page: Page, folder: Path) -> Path:
    """Save the visit that is open as a file; return where."""
    with page.expect_download() as download:
        page.get_by_role("button", name="Save a file").filter(visible=True).click()
    file = folder / download.value.suggested_filename
    download.value.save_as(file)
    return file


def test_two_doors_are_measured_kept_taken_along_and_deleted(open_context: OpenContext, tmp_path: Path) -> None:
    page = open_context(viewport=viewport("phone"), has_touch=True).new_page()
    begin(page)
    study = add_door(page, "Study", "garden-pair")
    width = measure(open_leaf(study, "active", "The glass"), "Glass width", "19 15/16", "19 7/8", "19 7/8")
    expect(width).to_contain_text("counts: the smallest of")
    measure(open_leaf(study, "other", "The glass"), "Glass width", "19 13/16", "19 13/16", "19 3/4")
    kitchen = add_door(page, "Kitchen", "half-lite-door")
    measure(open_leaf(kitchen, "active", "The glass"), "Glass width", "20 3/16", "20 1/4", "512.8 mm")
    is_kept(page)

    page.reload()
    expect(page.get_by_label("Client", exact=True)).to_have_value("Mrs Tansy")
    expect(page.locator(".one-door > summary strong")).to_have_text(["Study", "Kitchen"])
    file = saved(page, tmp_path)
    assert file.name.startswith("mrs-tansy-")
    visit = json.loads(file.read_text(encoding="utf-8"))
    readings = [leaf["readings"] for opening in visit["openings"] for leaf in opening["leaves"]]
    assert [[reading["typed"] for reading in each] for each in readings] == [
        ["19 15/16", "19 7/8", "19 7/8"],
        ["19 13/16", "19 13/16", "19 3/4"],
        ["20 3/16", "20 1/4", "512.8 mm"],
    ]

    other = open_context(accept_downloads=True).new_page()
    other.goto("visits.html")
    other.get_by_label("Open a file").set_input_files(file)
    is_kept(other)
    again = saved(other, tmp_path / "again")
    assert again.read_bytes() == file.read_bytes()

    page.get_by_role("button", name="Delete this visit").click()
    page.get_by_role("button", name="Leave it").click()
    page.get_by_role("button", name="Delete this visit").click()
    page.get_by_role("button", name="Delete it", exact=True).click()
    expect(page.get_by_text("No visit is kept on this device yet.")).to_be_in_viewport()
    page.get_by_role("button", name="Undo").click()
    expect(page.locator(".visit-row")).to_contain_text("Mrs Tansy")


def test_what_cannot_be_a_length_waits_in_its_field(page: Page) -> None:
    begin(page)
    door = add_door(page, "Hall", "garden-door")
    height = measure(open_leaf(door, "active", "The handle"), "Handle height", "about 36")
    expect(height.locator("input").first).to_have_attribute("aria-invalid", "true")
    expect(height).to_contain_text("Write a length such as 22 1/2, 22.5 or 571 mm.")
    is_kept(page)
    page.reload()
    part = open_leaf(page.locator(".one-door"), "active", "The handle")
    field = part.get_by_label("Handle height", exact=True)
    expect(field).to_have_value("about 36")
    field.fill("36 1/2")
    expect(field).not_to_have_attribute("aria-invalid", "true")


def test_a_slip_of_three_inches_is_told_where_it_was_made(page: Page) -> None:
    # The kitchen of a house of four doors: the leaf is 79 1/2 high, and was first written 76 1/2.
    begin(page)
    door = add_door(page, "Kitchen", "half-lite-door")
    part = open_leaf(door, "active", "The leaf")
    open_leaf(door, "active", "The glass")
    measure(part, "Glass height", "36 1/8", "36 1/8", "36 1/16")
    measure(part, "Width of the glass molding", "1/2")
    measure(part, "Above the glass", "5")
    measure(part, "Below the glass", "37 3/8")
    height = measure(part, "Whole height of the door", "76 1/2")
    expect(height.locator(".finding")).to_contain_text("Measure the whole height again")
    measure(part, "Whole height of the door", "79 1/2")
    expect(height.locator(".finding")).to_have_count(0)


def test_two_windows_agree(open_context: OpenContext) -> None:
    context = open_context()
    one = context.new_page()
    begin(one)
    add_door(one, "Study", "garden-pair")
    add_door(one, "Hall", "garden-door")
    is_kept(one)
    other = context.new_page()
    other.goto(one.url)
    measure(open_leaf(one.locator(".one-door").first, "active", "The glass"), "Glass width", "20", "20", "20")
    measure(open_leaf(other.locator(".one-door").last, "active", "The glass"), "Glass width", "25", "25", "25")
    for page, where in ((one, "last"), (other, "first")):
        is_kept(page)
        part = open_leaf(getattr(page.locator(".one-door"), where), "active", "The glass")
        expected = "25" if where == "last" else "20"
        expect(part.locator(".reading input[type=text]").first).to_have_value(expected)
    one.get_by_role("button", name="Delete this visit").click()
    one.get_by_role("button", name="Delete it", exact=True).click()
    expect(other.get_by_role("alert").filter(visible=True)).to_contain_text("deleted in another window")
    other.get_by_role("button", name="Keep it after all").click()
    expect(one.locator(".visit-row")).to_contain_text("2 doors")


def test_a_browser_that_keeps_nothing_says_so_and_offers_a_file(page: Page, tmp_path: Path) -> None:
    page.add_init_script(REFUSE)
    begin(page)
    expect(page.get_by_role("alert").filter(visible=True)).to_contain_text("This browser keeps nothing for this page")
    assert json.loads(saved_from_notice(page, tmp_path).read_text(encoding="utf-8"))["client"] == "Mrs Tansy"


def test_a_full_device_says_so_until_there_is_room(page: Page, tmp_path: Path) -> None:
    page.add_init_script(FULL)
    begin(page)
    is_kept(page)
    page.evaluate("window.isFull = true")
    page.get_by_label("Place", exact=True).fill("Weir Cottage")
    expect(page.get_by_role("alert").filter(visible=True)).to_contain_text("no room left")
    assert json.loads(saved_from_notice(page, tmp_path).read_text(encoding="utf-8"))["place"] == "Weir Cottage"
    page.evaluate("window.isFull = false")
    page.get_by_label("Place", exact=True).fill("Weir Cottage, Nether Wendel")
    is_kept(page)


def saved_from_notice(page: Page, folder: Path) -> Path:
    """Save the file that a notice offers."""
    with page.expect_download() as download:
        page.get_by_role("alert").get_by_role("button", name="Save a file").click()
    file = folder / "offered.visit.json"
    download.value.save_as(file)
    return file


def test_what_was_chosen_comes_to_the_door_that_it_was_chosen_for(page: Page, catalog: Catalog) -> None:
    begin(page)
    door = add_door(page, "Hall", "garden-door")
    measure(open_leaf(door, "active", "The glass"), "Glass width", "21", "21", "21")
    is_kept(page)
    door.get_by_role("link", name="Choose a covering for this door").click()
    page.locator(".onward").wait_for(state="attached")
    assert "glass_width=21in" in page.url
    assert "Tansy" not in page.url
    to_step(page, "Take along")
    page.get_by_role("link", name="Put it to a visit").click()
    expect(page.locator("#brought-to option:checked")).to_have_text("Hall")
    page.get_by_role("button", name="Put it there").click()
    proposal = page.locator(".proposal")
    expect(proposal).to_have_count(1)
    proposal.get_by_label("Your note to it").fill("Dim, not dark.")
    proposal.get_by_label("Price").fill("1,250.50")
    is_kept(page)
    page.reload()
    page.locator(".one-door > summary").click()
    expect(proposal.get_by_label("Price")).to_have_value("1250.50")
    expect(proposal.get_by_label("Your note to it")).to_have_value("Dim, not dark.")


def test_a_link_makes_a_visit_of_its_own_where_there_is_none(page: Page, catalog: Catalog) -> None:
    one = covering(catalog, "garden-door", "cellular-shade")
    one["door"], one["measured"] = {**one["door"], "glass_width": 533.4}, ["glass_width"]
    page.goto("visits.html#" + fragment(catalog, one).split("#")[1])
    page.get_by_role("button", name="Put it there").click()
    expect(page.locator(".proposal h4")).to_have_text(catalog.families["cellular-shade"]["name"])
    part = open_leaf(page.locator(".one-door"), "active", "The glass")
    expect(part.locator(".reading input[type=text]").first).to_have_value("21")


@pytest.mark.parametrize(
    "content",
    [b"", b"{", b"null", b"[]", b'{"version": 99}', b'{"version": 1, "id": "a"}', b"\xff" * 1_000_000, b"[" * 100_000],
    ids=["empty", "cut", "null", "list", "newer", "bare", "noise", "deep"],
)
def test_a_hostile_file_is_refused_and_nothing_changes(page: Page, tmp_path: Path, content: bytes) -> None:
    file = tmp_path / "hostile.visit.json"
    file.write_bytes(content)
    page.goto("visits.html")
    page.get_by_label("Open a file").set_input_files(file)
    expect(page.locator(".wrong-file")).to_contain_text("This file is not opened")
    expect(page.get_by_text("No visit is kept on this device yet.")).to_be_visible()


def house(**changes: Any) -> dict[str, Any]:
    """Return the visit of a house with four doors, changed in some of its words."""
    path = Path(__file__).parents[1] / "visits" / "weir-cottage.visit.json"
    return {**json.loads(path.read_text(encoding="utf-8")), **changes}


def opened_house(page: Page, tmp_path: Path, **changes: Any) -> None:
    """Open a house from its file."""
    file = tmp_path / "house.visit.json"
    file.write_text(json.dumps(house(**changes)), encoding="utf-8")
    page.goto("visits.html")
    page.get_by_label("Open a file").set_input_files(file)


def test_script_in_a_file_is_shown_as_text(page: Page, tmp_path: Path) -> None:
    script = "<img src=x onerror=\"document.title='broken'\">"
    opened_house(page, tmp_path, client=script)
    expect(page.locator(".visit-name")).to_have_text(script)
    assert page.title() != "broken"


def test_a_file_that_differs_from_what_is_kept_takes_nothing_away(page: Page, tmp_path: Path) -> None:
    opened_house(page, tmp_path)
    is_kept(page)
    opened_house(page, tmp_path, place="Weir House")
    expect(page.get_by_role("alert").filter(visible=True)).to_contain_text("the file differs")
    page.get_by_role("button", name="Put both together").click()
    expect(page.get_by_label("Place", exact=True)).to_have_value("Weir House")
    expect(page.locator(".one-visit details").last).to_contain_text("Weir Cottage, Nether Wendel", use_inner_text=False)


@pytest.mark.parametrize("size", ["phone", "desk"])
def test_a_visit_has_no_barrier_and_fits_its_screen(open_context: OpenContext, tmp_path: Path, size: str) -> None:
    page = open_context(viewport=viewport(size), reduced_motion="reduce").new_page()
    opened_house(page, tmp_path)
    page.locator(".one-door > summary").first.click()
    for group in ("The glass", "The leaf"):
        open_leaf(page.locator(".one-door").first, "active", group)
    page.get_by_role("button", name="Delete this visit").click()
    assert violations(page) == []
    assert page.evaluate("document.documentElement.scrollWidth") <= viewport(size)["width"]


def test_the_example_opens_and_stays_as_it_was_left(page: Page, catalog: Catalog, tmp_path: Path) -> None:
    page.goto("visits.html")
    page.get_by_role("button", name="Open the example").click()
    expect(page.locator(".one-door")).to_have_count(4)
    page.get_by_label("Place", exact=True).fill("Mill Cottage")
    is_kept(page)
    page.goto("visits.html")
    expect(page.locator(".visit-row")).to_have_count(1)
    page.get_by_role("button", name="Open the example").click()
    expect(page.get_by_label("Place", exact=True)).to_have_value("Mill Cottage")
    kept = json.loads(saved(page, tmp_path).read_text(encoding="utf-8"))
    assert kept == {**catalog.visits["weir-cottage"], "place": "Mill Cottage"}
