"""Moving a covering on the drawing itself, by mouse, finger and keyboard, at three widths."""

import pytest
from playwright.sync_api import CDPSession, Page, expect

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from tests.browser.conftest import OpenContext
from tests.browser.trying import (
    SIZES,
    TWO_FRAMES,
    VIEWS,
    covering,
    fragment,
    fragment_now,
    grip,
    open_page,
    said,
    slider,
    viewport,
    views,
)

# The address has the shade well down, and as far as its slider says.
SAID_ALIKE = """slider => {
    const place = Number(location.hash.split("@")[1]?.split("/")[0]);
    return place > 0.55 && slider.getAttribute("aria-valuetext") === `${Math.floor(place * 100 + 0.5)}% down`;
}"""
# The section in the frame after each step of a slider that a hand holds.
SLID = f"""async (slider, steps) => {{
    const seen = [];
    for (const step of steps) {{
        slider.value = String(step);
        slider.dispatchEvent(new Event("input"));
        await {TWO_FRAMES};
        seen.push({VIEWS}[1]);
    }}
    return seen;
}}"""
every_size = pytest.mark.parametrize("size", SIZES)


def half_down(catalog: Catalog) -> str:
    """Return the address of a shade half way down."""
    return fragment(catalog, covering(catalog, "garden-door", "cellular-shade", at=(0.5, 0.0, 0.0)))


def shade_half_down(page: Page, catalog: Catalog) -> list[str]:
    """Open a shade half way down and return its drawings."""
    open_page(page, half_down(catalog))
    assert said(page, "Bottom rail") == "50% down"
    return views(page)


def lowered_to(page: Page) -> float:
    """Return how far down the address has the shade."""
    return float(fragment_now(page).split("@")[1].split("/")[0])


def moved_down(page: Page, before: list[str]) -> None:
    """Check that elevation and section follow at once, and the address afterwards."""
    # Of several steps the address has taken up the last when it says what the slider does.
    page.wait_for_function(SAID_ALIKE, arg=slider(page, "Bottom rail").element_handle())
    assert lowered_to(page) < 1
    after = views(page)
    assert after[0] != before[0]
    assert after[1] != before[1]


@every_size
def test_the_bottom_rail_follows_the_mouse(open_context: OpenContext, catalog: Catalog, size: str) -> None:
    page = open_context(viewport=viewport(size)).new_page()
    before = shade_half_down(page, catalog)
    x, y = grip(page, "lower")
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y + 20, steps=4)
    page.mouse.move(x + 5, y + 40, steps=4)
    page.mouse.up()
    moved_down(page, before)


def touch(session: CDPSession, kind: str, x: float, y: float) -> None:
    """Touch the screen, as a finger does."""
    points = [] if kind == "touchEnd" else [{"x": x, "y": y}]
    session.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": points})


@every_size
def test_the_bottom_rail_follows_the_finger(open_context: OpenContext, catalog: Catalog, size: str) -> None:
    context = open_context(viewport=viewport(size), has_touch=True, is_mobile=size != "desk")
    page = context.new_page()
    before = shade_half_down(page, catalog)
    scrolled = page.evaluate("scrollY")
    x, y = grip(page, "lower")
    finger = context.new_cdp_session(page)
    touch(finger, "touchStart", x, y)
    for step in range(1, 9):
        touch(finger, "touchMove", x, y + step * 5)
    touch(finger, "touchEnd", x, y + 40)
    moved_down(page, before)
    assert page.evaluate("scrollY") == scrolled


@every_size
def test_the_bottom_rail_follows_the_keys(open_context: OpenContext, catalog: Catalog, size: str) -> None:
    page = open_context(viewport=viewport(size)).new_page()
    before = shade_half_down(page, catalog)
    rail = slider(page, "Bottom rail")
    rail.focus()
    for _ in range(12):
        page.keyboard.press("ArrowRight")
    moved_down(page, before)
    page.keyboard.press("End")
    expect(rail).to_have_attribute("aria-valuetext", "lowered")
    page.keyboard.press("Home")
    expect(rail).to_have_attribute("aria-valuetext", "raised")


def test_taking_a_rail_on_the_drawing_hands_the_keys_to_its_slider(page: Page, catalog: Catalog) -> None:
    shade_half_down(page, catalog)
    page.mouse.click(*grip(page, "lower"))
    page.keyboard.press("ArrowRight")
    expect(slider(page, "Bottom rail")).to_have_attribute("aria-valuetext", "51% down")


def test_a_rail_stops_at_the_ends_of_its_travel(page: Page, catalog: Catalog) -> None:
    shade_half_down(page, catalog)
    x, y = grip(page, "lower")
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y + 2000, steps=3)
    expect(slider(page, "Bottom rail")).to_have_attribute("aria-valuetext", "lowered")
    page.mouse.move(x, 0, steps=3)
    expect(slider(page, "Bottom rail")).to_have_attribute("aria-valuetext", "raised")
    page.mouse.up()


def test_the_section_can_be_dragged_too(page: Page, catalog: Catalog) -> None:
    before = shade_half_down(page, catalog)
    box = page.locator(".hold[data-moves=lower] .hold-area").nth(1).bounding_box()
    assert box
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y + 40, steps=4)
    page.mouse.up()
    moved_down(page, before)


def test_both_rails_and_the_tilt_move_on_the_drawing(page: Page, catalog: Catalog) -> None:
    both = covering(catalog, "garden-door", "cellular-shade", choices=two_rails(catalog), at=(1.0, 0.2, 0.0))
    open_page(page, fragment(catalog, both))
    x, y = grip(page, "upper")
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y + 60, steps=4)
    page.mouse.up()
    expect(slider(page, "Upper rail")).not_to_have_attribute("aria-valuetext", "20% down")
    assert said(page, "Bottom rail") == "lowered"
    open_page(page, fragment(catalog, covering(catalog, "garden-door", "louvered-shutter", at=(1.0, 0.0, 0.0))))
    x, y = grip(page, "tilt")
    before = views(page)
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y + 40, steps=4)
    page.mouse.up()
    expect(slider(page, "Louvers")).not_to_have_attribute("aria-valuetext", "level")
    assert [new != old for new, old in zip(views(page), before, strict=True)] == [True, True, True]


def tilted_by_hand(page: Page, catalog: Catalog, steps: int) -> None:
    """Take a shutter's louvers and turn them in so many steps, without letting go."""
    open_page(page, fragment(catalog, covering(catalog, "garden-door", "louvered-shutter", at=(1.0, 0.0, 0.0))))
    x, y = grip(page, "tilt")
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y + 40, steps=steps)


@pytest.mark.parametrize("steps", [3, 4])
def test_a_hand_that_holds_still_sees_every_view_where_it_is(page: Page, catalog: Catalog, steps: int) -> None:
    tilted_by_hand(page, catalog, steps)
    page.mouse.up()
    slider_told = slider(page, "Louvers").get_attribute("aria-valuetext")
    at_rest = views(page)
    tilted_by_hand(page, catalog, steps)
    page.wait_for_function(f"(then) => JSON.stringify({VIEWS}) === JSON.stringify(then)", arg=at_rest)
    expect(slider(page, "Louvers")).to_have_attribute("aria-valuetext", slider_told or "")


def test_while_one_view_fills_the_sheet_it_follows_each_move(page: Page, catalog: Catalog) -> None:
    shade_half_down(page, catalog)
    page.get_by_role("radio", name="Section", exact=True).check()
    drawn = slider(page, "Bottom rail").evaluate(SLID, [60, 65, 70, 75])
    assert len(set(drawn)) == 4


def two_rails(catalog: Catalog) -> dict[str, str]:
    """Return the choice that lets a cellular shade's upper rail move."""
    for choice in catalog.families["cellular-shade"]["choices"]:
        for option in choice["options"]:
            if option["numbers"].get("upper_moves", 0) > 0:
                return {choice["id"]: option["id"]}
    raise AssertionError("no option has two moving rails")


def test_open_and_closed_are_one_tap_away(page: Page, catalog: Catalog) -> None:
    shade_half_down(page, catalog)
    closed = page.get_by_role("button", name="Closed", exact=True)
    closed.click()
    expect(closed).to_have_attribute("aria-pressed", "true")
    assert said(page, "Bottom rail") == "lowered"
    page.get_by_role("button", name="Open", exact=True).click()
    expect(closed).to_have_attribute("aria-pressed", "false")
    assert said(page, "Bottom rail") == "raised"


def test_where_it_meets_the_handle_is_marked_on_the_travel(page: Page, catalog: Catalog) -> None:
    met = [
        (door, family, answer["verdicts"]["pass_through"])
        for door in catalog.doors
        for family in catalog.families
        if (answer := ask(catalog.doors[door], catalog.families[family], {}, catalog.household))["verdicts"]
        and answer["verdicts"]["pass_through"]["state"] == "blocked"
        and answer["verdicts"]["pass_through"]["moves"] == "lower"
    ]
    door, family, verdict = met[0]
    open_page(page, fragment(catalog, covering(catalog, door, family, at=(0.0, 0.0, 0.0))))
    mark = page.locator(".slider", has=page.get_by_text("Bottom rail")).locator(".meeting")
    expect(mark).to_contain_text("Blocked by the handle here")
    band = mark.locator(".meeting-band").bounding_box()
    run = slider(page, "Bottom rail").bounding_box()
    assert band
    assert run
    thumb = 24
    start = (band["x"] - run["x"] - thumb / 2) / (run["width"] - thumb)
    assert start == pytest.approx(min(verdict["start"], verdict["end"]), abs=0.01)


def test_what_changes_is_said_once_the_hand_rests(page: Page, catalog: Catalog) -> None:
    shade_half_down(page, catalog)
    page.get_by_role("button", name="Closed", exact=True).click()
    status = page.locator("#configurator > [role=status]")
    expect(status).to_contain_text("Lowered.")
    expect(status).to_contain_text("of the glass clear")
    expect(status).to_contain_text("Passing the handle")


def test_one_view_can_fill_the_sheet(page: Page, catalog: Catalog) -> None:
    shade_half_down(page, catalog)
    page.get_by_role("radio", name="Section", exact=True).check()
    drawn = page.locator(".moving-sheet > g[role=img]")
    assert [drawn.nth(place).is_visible() for place in range(3)] == [False, True, False]
