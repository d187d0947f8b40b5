"""What axe-core finds on a page."""

from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page

RULES = {"runOnly": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]}


def violations(page: Page) -> list[str]:
    """Return each violation on the page as it stands: the rule, what it asks for, and where it fails."""
    found = Axe().run(page, options=RULES).response["violations"]
    return [f"{rule['id']}: {rule['help']}: {node['target']}" for rule in found for node in rule["nodes"]]
