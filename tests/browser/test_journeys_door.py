"""From a door like one's own to its true measurements, and a covering with its choices."""

import re

import pytest
from playwright.sync_api import Locator, Page, expect

from configurator.catalog import Catalog
from configurator.kernel.answer import ask, ruled_out
from configurator.kernel.message import say
from configurator.kernel.tongue import ENGLISH
from tests.browser.conftest import OpenContext
from tests.browser.trying import SIZES, covering, fragment, open_page, to_step, viewport, views

# What is measured of people, not of the door, has no place on a drawing of the door.
OF_PEOPLE = ("person_height", "person_distance", "outside_eye", "outside_distance", "outside_level")


def field(page: Page, name: str) -> Locator:
    """Return a measurement's field by its name."""
    return page.get_by_label(name, exact=True)


def open_door(page: Page, catalog: Catalog, door: str = "garden-door", units: str = "in", step: str = "door") -> None:
    """Open a door to be measured, with a shade half way down."""
    open_page(page, fragment(catalog, covering(catalog, door, "cellular-shade"), units=units, step=step))


def sheet(page: Page) -> str:
    """Return everything on the drawing table."""
    return page.locator(".sheet-inner").inner_html()


def written(page: Page) -> str:
    """Return all words on the drawing."""
    return " | ".join(page.locator(".moving-sheet text").all_text_contents())


@pytest.mark.parametrize("size", SIZES)
def test_one_starts_from_a_door_like_ones_own(open_context: OpenContext, catalog: Catalog, size: str) -> None:
    page = open_context(viewport=viewport(size)).new_page()
    open_page(page, "try.html")
    to_step(page, "Door")
    page.get_by_label(catalog.doors["tall-door"]["name"], exact=True).check()
    expect(page.locator(".moving-sheet > g").first).to_have_attribute(
        "aria-label", re.compile(re.escape(catalog.doors["tall-door"]["name"]))
    )
    page.wait_for_url("**tall-door**")
    height = catalog.doors["tall-door"]["glass_height"] / 25.4
    expect(field(page, "Glass height")).to_have_value(re.compile(rf"{int(height)}\b"))


def test_a_corrected_measurement_moves_the_drawing_and_the_address(page: Page, catalog: Catalog) -> None:
    open_door(page, catalog)
    before = views(page)
    field(page, "Glass width").fill("21 3/8")
    # The drawing follows with the next frame.
    page.wait_for_function("[...document.querySelectorAll('svg text')].some((one) => one.textContent.startsWith('21'))")
    assert "21 3/8 in" in written(page)
    assert views(page) != before
    field(page, "Glass width").blur()
    page.wait_for_url("**glass_width=21.375in**")


def test_units_change_without_losing_a_digit(page: Page, catalog: Catalog) -> None:
    open_door(page, catalog)
    width = field(page, "Glass width")
    for typed, in_mm in [("21 1/3", ""), ("1'9.07\"", "535.178"), ("544.5 mm", "544.5")]:
        width.fill(typed)
        page.get_by_role("radio", name="Millimeters").check()
        if in_mm:
            expect(width).to_have_value(in_mm)
        page.get_by_role("radio", name="Inches").check()
        expect(width).to_have_value(typed)
    page.get_by_role("radio", name="Millimeters").check()
    expect(width).to_have_value("544.5")


@pytest.mark.parametrize(
    ("typed", "reason"),
    [
        ("2", "must lie between"),
        ("twenty", "Write a length"),
        ("", "Write a length"),
        ("22 5/4", "5/4 is no fraction that a tape shows. Write a length"),
        ("1' 13\"", "Inches after feet stay below 12. Write a length"),
        ("--22", "Write a length"),
        ("9'", "must lie between"),
    ],
)
def test_an_impossible_value_is_explained_and_the_drawing_stays(
    page: Page, catalog: Catalog, typed: str, reason: str
) -> None:
    open_door(page, catalog)
    before = views(page)
    width = field(page, "Glass width")
    width.fill(typed)
    expect(page.locator("#field-glass_width-note")).to_contain_text(reason)
    expect(width).to_have_attribute("aria-invalid", "true")
    assert width.input_value() == typed
    assert views(page) == before
    page.get_by_role("button", name="Back to").click()
    expect(width).not_to_have_attribute("aria-invalid", "true")


def test_ground_that_lies_lower_is_taken_with_its_minus(page: Page, catalog: Catalog) -> None:
    open_door(page, catalog, units="mm")
    page.locator(".more-lengths").evaluate_all("all => all.forEach((one) => { one.open = true; })")
    level = field(page, "Ground outside")
    for typed in ("-300", "−300 mm", "-30 cm"):
        level.fill(typed)
        expect(page.locator("#field-household-outside_level-note")).to_be_empty()
        level.blur()
        page.wait_for_url(re.compile(r"outside_level=-300/"))
        level.fill("0")
        level.blur()
        page.wait_for_url(re.compile(r"outside_level=0/"))


def test_a_limit_that_is_told_is_taken(page: Page, catalog: Catalog) -> None:
    open_door(page, catalog)
    width, note = field(page, "Glass width"), page.locator("#field-glass_width-note")
    width.fill("2")
    expect(note).to_contain_text("must lie between")
    told = re.search(r"must lie between (.+) and", note.inner_text())
    assert told
    width.fill(told[1])
    expect(note).not_to_contain_text("must lie")


def test_a_length_keeps_its_sixteenths(page: Page, catalog: Catalog) -> None:
    open_door(page, catalog)
    field(page, "Glass width").fill("19 15/16")
    expect(page.locator(".moving-sheet")).to_contain_text("19 15/16 in")
    page.get_by_role("radio", name="Millimeters").check()
    expect(field(page, "Glass width")).to_have_value("506.4125")


def test_a_field_shows_a_door_in_millimetres_as_it_was_given(page: Page, catalog: Catalog) -> None:
    open_door(page, catalog, "metric-single")
    given = catalog.doors["metric-single"]["glass_width"]
    width = field(page, "Glass width")
    expect(width).to_have_value(f"{given:g} mm")
    width.fill("22")
    page.get_by_role("button", name=f"Back to {given:g} mm", exact=True).click()
    expect(width).to_have_value(f"{given:g} mm")


def test_an_unlikely_value_is_questioned_but_drawn(page: Page, catalog: Catalog) -> None:
    open_door(page, catalog)
    before = views(page)
    field(page, "Glass width").fill("11")
    expect(page.locator("#field-glass_width-note")).to_contain_text("Unusual: most are")
    assert views(page) != before


def test_measurements_that_deny_each_other_are_refused(page: Page, catalog: Catalog) -> None:
    open_door(page, catalog)
    before = views(page)
    field(page, "Glass height").fill("110")
    expect(page.locator("#field-glass_height-note")).to_contain_text("higher than the ceiling")
    assert views(page) == before


def test_every_measurement_shows_its_place_on_the_drawing(page: Page, catalog: Catalog) -> None:
    for door in ("garden-pair", "sidelight-door", "divided-lite-door"):
        open_door(page, catalog, door)
        page.locator(".more-lengths").evaluate_all("all => all.forEach((one) => { one.open = true; })")
        for entry in page.locator(".length input[type=text]").all():
            name = entry.get_attribute("id") or ""
            if name.endswith(OF_PEOPLE):
                continue
            entry.focus()
            expect(page.locator(".in-focus > *").first, name).to_be_attached()


@pytest.mark.parametrize("size", ["phone", "desk"])
def test_the_highlight_is_readable_at_any_size(open_context: OpenContext, catalog: Catalog, size: str) -> None:
    page = open_context(viewport=viewport(size)).new_page()
    open_door(page, catalog)
    field(page, "Beside the glass, lock side").focus()
    box = page.locator(".in-focus text").bounding_box()
    assert box
    assert min(box["width"], box["height"]) >= 9


def test_hand_swing_leaves_and_handle_can_be_changed(page: Page, catalog: Catalog) -> None:
    open_door(page, catalog)
    seen = [sheet(page)]
    other = "Left" if catalog.doors["garden-door"]["hinge_side"] == "right" else "Right"
    for choose in (other, "Outwards", "Pair", "With sidelights"):
        page.locator(".eithers").get_by_role("radio", name=choose, exact=True).check()
        page.wait_for_function("before => document.querySelector('.sheet-inner').innerHTML !== before", arg=seen[-1])
        seen.append(sheet(page))
    page.get_by_label("A handle like").select_option("round-knob")
    page.wait_for_function("before => document.querySelector('.sheet-inner').innerHTML !== before", arg=seen[-1])


def test_options_that_the_door_rules_out_stay_and_say_why(page: Page, catalog: Catalog) -> None:
    door, family, choice, option, reason = next(
        (door, family, choice, option, reason)
        for door in catalog.doors
        for family in catalog.families
        for choice, found in ruled_out(catalog.doors[door], catalog.families[family], {}).items()
        for option, reason in found.items()
        if len(found) < len(next(c for c in catalog.families[family]["choices"] if c["id"] == choice)["options"])
    )
    open_page(page, fragment(catalog, covering(catalog, door, family)))
    refused = page.locator(f"#option-{choice}-{option}")
    expect(refused).to_be_disabled()
    label = page.locator("label", has=refused)
    expect(label).to_be_visible()
    expect(label).to_contain_text(say(reason, ENGLISH, "in"))


def test_another_covering_brings_its_own_choices_and_figures(page: Page, catalog: Catalog) -> None:
    open_door(page, catalog, step="details")
    page.locator(".chooser summary").filter(visible=True).first.click()
    page.get_by_label(catalog.families["roller-shade"]["name"]).check()
    for choice in catalog.families["roller-shade"]["choices"]:
        expect(page.locator(".options legend", has_text=choice["name"])).to_have_count(1)
    assert ":roller-shade" in page.url
    figure = page.locator("[data-figure=stack_height]")
    expect(figure).to_contain_text("stack", ignore_case=True)
    figure.locator("summary").click()
    expect(figure.locator(".sum")).to_contain_text("=")


def test_a_covering_that_cannot_go_on_says_so_in_words(page: Page, catalog: Catalog) -> None:
    narrow = covering(catalog, "garden-door", "louvered-shutter")
    narrow["door"] = {**narrow["door"], "glass_width": 110.0}
    answer = ask(narrow["door"], catalog.families["louvered-shutter"], {}, catalog.household)
    open_page(page, fragment(catalog, narrow))
    expect(page.locator(".panel .refusal")).to_have_text(say(answer["refusal"], ENGLISH, "in"))
    expect(page.locator(".now-verdict")).to_contain_text("does not fit")
