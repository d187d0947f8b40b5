"""Where readers have forced their own colors, drawings are drawn in them, and coverings keep theirs."""

from playwright.sync_api import Page

from tests.browser.conftest import OpenContext

PAINTED = """([what, how]) => [...new Set([...document.querySelectorAll(`.drawing-sheet ${what}`)]
    .map((mark) => getComputedStyle(mark)[how]))]"""
GROUND, WORDS = (f"getComputedStyle(document.body).{name}" for name in ("backgroundColor", "color"))
PAGES = ("coverings/index.html", "doors/garden-pair/roller-shade.html")


def painted(page: Page, what: str, how: str) -> list[str]:
    """Return the colors in which some marks of a page's drawings are painted."""
    colors: list[str] = page.evaluate(PAINTED, [what, how])
    return colors


def test_lines_and_garden_take_the_reader_s_colors_and_cloth_its_own(open_context: OpenContext) -> None:
    page = open_context(reduced_motion="reduce").new_page()
    for address in PAGES:
        page.emulate_media(forced_colors="none")
        page.goto(address)
        cloth = painted(page, ".cloth", "fill")
        page.emulate_media(forced_colors="active", color_scheme="dark")
        ground, words = page.evaluate(GROUND), page.evaluate(WORDS)
        assert ground != words
        assert painted(page, ".leaf", "fill") == [ground]
        assert painted(page, ".lawn", "fill") in ([ground], [])
        assert painted(page, ".leaf.seen", "stroke") == [words]
        assert painted(page, ".main", "stroke") == [words]
        assert len(cloth) > 0
        assert painted(page, ".cloth", "fill") == cloth
        page.emulate_media(color_scheme="light")


def test_what_is_chosen_is_told_by_the_reader_s_own_colors(open_context: OpenContext) -> None:
    page = open_context(forced_colors="active").new_page()
    page.goto("try.html")
    page.locator(".onward").wait_for(state="attached")
    chosen = page.locator(".step-nav [aria-current]").evaluate("one => getComputedStyle(one).backgroundColor")
    others = page.locator(".step-nav button:not([aria-current])").evaluate_all(
        "all => all.map((one) => getComputedStyle(one).backgroundColor)"
    )
    assert others
    assert chosen not in others
