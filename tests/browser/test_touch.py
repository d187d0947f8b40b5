"""A finger on the drawing moves the covering, wherever the page stands; a finger anywhere else moves the page."""

from collections.abc import Callable

import pytest
from playwright.sync_api import Page, expect

from configurator.catalog import Catalog
from configurator.kernel.mechanisms import family_legs
from configurator.kernel.position import along
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Leg
from configurator.places import CONTENT
from tests.browser.conftest import OpenContext
from tests.browser.trying import LOOKED, covering, fragment, grip, open_page, viewport

FAMILIES = [file.stem for file in sorted((CONTENT / "families").glob("*.yaml"))]
# The sheet scrolls along above, and has come to rest at the top of the screen, below which the rest scrolls.
ELSEWHERE = [("cellular-shade", 0), ("cellular-shade", 150), ("vertical-vanes", 0), ("wood-blind", 150)]
PULL = 114
STEPS = 8
Point = tuple[float, float]


class Finger:
    """One finger on the screen, its touches as a real screen sends them."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.session = page.context.new_cdp_session(page)

    def send(self, kind: str, *points: Point) -> None:
        """Send one touch event with all fingers that lie on the screen."""
        touches = [{"x": x, "y": y, "id": number} for number, (x, y) in enumerate(points)]
        self.session.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": touches})

    def draw(self, start: Point, across: float, down: float) -> None:
        """Put the finger down and draw it over the screen, without lifting it."""
        self.send("touchStart", start)
        for step in range(1, STEPS + 1):
            self.send("touchMove", (start[0] + across * step / STEPS, start[1] + down * step / STEPS))

    def swipe(self, start: Point, across: float, down: float) -> None:
        """Draw the finger over the screen and lift it."""
        self.draw(start, across, down)
        self.send("touchEnd")


@pytest.fixture(params=["phone", "tablet"])
def page(request: pytest.FixtureRequest, open_context: OpenContext) -> Page:
    """A page on a screen that is touched."""
    return open_context(viewport=viewport(request.param), has_touch=True, is_mobile=True).new_page()


def place(page: Page, moves: str) -> int:
    """Return at how many hundredths of its way a part stands."""
    return int(page.locator(f"#travel-{moves}").input_value())


# What a finger meets is what has been painted: where holds lie is known to the screen a frame after the page has it.
PAINTED = "new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done))))"


# A page that was swiped runs on for some frames.
AT_REST = """new Promise((done) => {
    let stood = scrollY;
    let frames = 0;
    const look = () => {
        frames = scrollY === stood ? frames + 1 : 0;
        stood = scrollY;
        if (frames > 3) done();
        else requestAnimationFrame(look);
    };
    look();
})"""


def scrolled(page: Page, to: int) -> int:
    """Scroll the page once it rests, and once it is painted there return where it stands."""
    page.evaluate(AT_REST)
    page.evaluate("to => scrollTo({ top: to, behavior: 'instant' })", to)
    page.evaluate(PAINTED)
    return round(page.evaluate("scrollY"))


def wait_moved(page: Page, moves: str, up: bool) -> None:
    """Wait until a part that was half way stands well on one side of it."""
    test = "([id, up]) => up ? document.getElementById(id).value < 45 : document.getElementById(id).value > 55"
    page.wait_for_function(test, arg=[f"travel-{moves}", up])


def half_way(catalog: Catalog, family: str, leg: Leg) -> str:
    """Return the address of a covering with one part half way, and all down where that part turns."""
    place = along(leg, 0.5)
    at = (place["lower"], place["upper"], place["tilt"])
    return fragment(catalog, covering(catalog, "garden-door", family, at=at))


def follow(page: Page, address: str, moves: str) -> None:
    """Open a part's half way, or go there from the open page as by a link on it."""
    if page.url == "about:blank":
        open_page(page, address)
    page.evaluate("hash => { location.hash = hash; }", address.partition("#")[2])
    expect(page.locator(f"#travel-{moves}")).to_have_value("50")
    page.wait_for_function(LOOKED)


def legs_of(catalog: Catalog, family: str) -> list[Leg]:
    """Return what moves of a covering as it comes."""
    return family_legs(catalog.families[family], resolve(catalog.families[family], {}))


def moves_by_a_finger(page: Page, catalog: Catalog, family: str, scroll: int) -> None:
    """Check that a finger moves every part of a covering either way, and not the page."""
    finger = Finger(page)
    for leg in legs_of(catalog, family):
        aside = leg["way"] == "aside"
        for to_start in (True, False):
            follow(page, half_way(catalog, family, leg), leg["moves"])
            stood = scrolled(page, scroll)
            pull = -PULL if to_start else PULL
            finger.swipe(grip(page, leg["moves"]), pull if aside else 5, 5 if aside else pull)
            hung_left = catalog.doors["garden-door"]["hinge_side"] == "left"
            wait_moved(page, leg["moves"], to_start if not aside or hung_left else not to_start)
            assert round(page.evaluate("scrollY")) == stood, family


def test_a_finger_moves_every_part_of_every_covering_and_not_the_page(page: Page, catalog: Catalog) -> None:
    for family in FAMILIES:
        moves_by_a_finger(page, catalog, family, 700)


@pytest.mark.parametrize(("family", "scroll"), ELSEWHERE)
def test_so_it_does_wherever_the_page_stands(page: Page, catalog: Catalog, family: str, scroll: int) -> None:
    moves_by_a_finger(page, catalog, family, scroll)


@pytest.mark.parametrize("scroll", [0, 700])
@pytest.mark.parametrize("family", ["cellular-shade", "vertical-vanes"])
def test_a_pull_across_its_way_moves_neither_part_nor_page(
    page: Page, catalog: Catalog, family: str, scroll: int
) -> None:
    leg = legs_of(catalog, family)[0]
    open_page(page, half_way(catalog, family, leg))
    stood = scrolled(page, scroll)
    across = (0, PULL) if leg["way"] == "aside" else (PULL, 0)
    for sign in (1, -1):
        Finger(page).swipe(grip(page, "lower"), across[0] * sign, across[1] * sign)
        expect(page.locator("svg.dragging")).to_have_count(0)
        assert place(page, "lower") == 50
        assert round(page.evaluate("scrollY")) == stood


BESIDE = """() => {
    const sheet = document.querySelector(".moving-sheet").getBoundingClientRect();
    const spots = [...Array(40).keys()].map((step) => [sheet.right - 3 - step * 4, sheet.top + sheet.height * 0.6]);
    return spots.find(([x, y]) => !document.elementFromPoint(x, y).closest(".hold"));
}"""
# A busy browser leaves out of a scroll what it had no time to follow.
SCROLLED_BY = "([from, by]) => (scrollY - from) * Math.sign(by) > Math.abs(by) / 8"


def middle(page: Page, selector: str) -> Point:
    """Return the middle of an element."""
    box = page.locator(selector).first.bounding_box()
    assert box
    return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2


def before_it(page: Page, selector: str) -> Point:
    """Return a place on a slider at a fifth of its length, where its thumb is not."""
    slider = page.locator(selector)
    slider.scroll_into_view_if_needed()
    box = slider.bounding_box()
    assert box
    return box["x"] + box["width"] / 5, box["y"] + box["height"] / 2


SWIPED: dict[str, Callable[[Page], Point]] = {
    "the drawing beside any hold": lambda page: page.evaluate(BESIDE),
    "what stands under the drawing": lambda page: middle(page, ".now-line"),
    "the thumb of a slider": lambda page: middle(page, "#travel-lower"),
    "the run of a slider": lambda page: before_it(page, "#travel-lower"),
    "the controls": lambda page: middle(page, ".toolbar legend"),
}


@pytest.mark.parametrize("where", SWIPED)
def test_a_page_that_is_swiped_scrolls_and_moves_no_covering(page: Page, catalog: Catalog, where: str) -> None:
    open_page(page, fragment(catalog, covering(catalog, "garden-door", "wood-blind", at=(0.5, 0.0, 0.0))))
    page.evaluate(WATCHED)
    address = page.evaluate("location.hash")
    for down in (-PULL, PULL):
        scrolled(page, 150)
        x, y = SWIPED[where](page)
        stood = round(page.evaluate("scrollY"))
        Finger(page).swipe((x, y), 3, down)
        page.wait_for_function(SCROLLED_BY, arg=[stood, -down])
    assert page.evaluate("watched") == []
    assert (place(page, "lower"), place(page, "tilt")) == (50, 50)
    assert page.evaluate("location.hash") == address


WATCHED = """() => {
    window.watched = [];
    const note = (changes) => window.watched.push(...changes.map((change) => change.target.className));
    const told = document.querySelectorAll(".travel-bar output");
    for (const node of told) {
        new MutationObserver(note).observe(node, { childList: true, characterData: true, subtree: true });
    }
}"""


def test_a_touch_on_the_run_of_a_slider_moves_its_part_there(page: Page, catalog: Catalog) -> None:
    open_page(page, fragment(catalog, covering(catalog, "garden-door", "wood-blind", at=(0.5, 0.0, 0.0))))
    Finger(page).swipe(before_it(page, "#travel-lower"), 0, 0)
    wait_moved(page, "lower", True)
    expect(page.locator(".slider output").first).not_to_have_text("50% down")


def test_a_slider_slides_under_the_finger(page: Page, catalog: Catalog) -> None:
    open_page(page, fragment(catalog, covering(catalog, "garden-door", "wood-blind", at=(0.5, 0.0, 0.0))))
    stood = scrolled(page, 150)
    Finger(page).swipe(middle(page, "#travel-lower"), 60, 4)
    wait_moved(page, "lower", False)
    expect(page.locator(".slider output").first).not_to_have_text("50% down")
    assert round(page.evaluate("scrollY")) == stood


def test_what_the_browser_takes_for_another_gesture_is_put_back(page: Page, catalog: Catalog) -> None:
    leg = legs_of(catalog, "cellular-shade")[0]
    open_page(page, half_way(catalog, "cellular-shade", leg))
    address = page.evaluate("location.hash")
    finger = Finger(page)
    finger.draw(grip(page, "lower"), 0, -60)
    wait_moved(page, "lower", True)
    finger.send("touchCancel")
    expect(page.locator("svg.dragging")).to_have_count(0)
    expect(page.locator("#travel-lower")).to_have_value("50")
    assert page.evaluate("location.hash") == address


def test_a_second_finger_takes_nothing_out_of_the_first_ones_hold(page: Page, catalog: Catalog) -> None:
    leg = legs_of(catalog, "cellular-shade")[0]
    open_page(page, half_way(catalog, "cellular-shade", leg))
    finger = Finger(page)
    x, y = grip(page, "lower")
    finger.draw((x, y), 0, -40)
    wait_moved(page, "lower", True)
    held = place(page, "lower")
    beside = page.evaluate(BESIDE)
    finger.send("touchStart", (x, y - 40), (beside[0], beside[1]))
    finger.send("touchMove", (x, y - 40), (beside[0], beside[1] + 80))
    finger.send("touchMove", (x, y - 40), (beside[0], beside[1] + 90))
    finger.send("touchEnd")
    expect(page.locator("svg.dragging")).to_have_count(0)
    assert abs(place(page, "lower") - held) <= 1


@pytest.mark.parametrize("down", [-PULL, PULL])
def test_a_page_swiped_over_the_slider_of_a_family_moves_nothing(page: Page, down: int) -> None:
    page.goto("coverings/cellular-shade.html")
    slider = page.locator(".mover input")
    slider.scroll_into_view_if_needed()
    before = slider.input_value()
    stood = scrolled(page, round(page.evaluate("scrollY")) + 100)
    box = slider.bounding_box()
    assert box
    Finger(page).swipe((box["x"] + box["width"] * 0.8, box["y"] + box["height"] / 2), 3, down)
    page.wait_for_function(SCROLLED_BY, arg=[stood, -down])
    expect(slider).to_have_value(before)
    expect(page.locator(".mover g.frame.now").first).to_be_visible()
    shown = "all => all.map(svg => [...svg.querySelectorAll('g.frame')].findIndex(one => one.matches('.now')))"
    assert page.locator(".mover svg").evaluate_all(shown) == [int(before)] * 2
