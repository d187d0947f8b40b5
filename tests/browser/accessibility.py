"""What axe-core finds on a page."""

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page

EVERY_RULE = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]
COLOR_RULES = ["color-contrast", "link-in-text-block"]


def violations(page: Page, rules: list[str] = EVERY_RULE, but: list[str] | None = None) -> list[str]:
    """Return each violation on the page as it stands: the rule, what it asks for, and where it fails."""
    # Without preloading it fetches no style sheet again, which a page from a disk may not do.
    left_out = {rule: {"enabled": False} for rule in but or []}
    options = {"runOnly": rules, "rules": left_out, "resultTypes": ["violations"], "preload": False}
    found = Axe().run(page, options=options).response["violations"]
    return [f"{rule['id']}: {rule['help']}: {node['target']}" for rule in found for node in rule["nodes"]]


def barriers_day_and_evening(page: Page, size: str) -> list[str]:
    """Return each violation; those of color by day and in the evening on a desk, which are the same on every screen."""
    page.emulate_media(color_scheme="light")
    if size != "desk":
        return violations(page, but=COLOR_RULES)
    found = violations(page)
    page.emulate_media(color_scheme="dark")
    return [*found, *(f"in the evening: {violation}" for violation in violations(page, COLOR_RULES))]
