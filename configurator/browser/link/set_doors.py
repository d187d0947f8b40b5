"""The doors of a set of proposals, each opened through the links' own reader, never as it was given."""

from configurator.browser.link.decode import read_link
from configurator.browser.link.proposal_set import SetOpening
from configurator.browser.link.shapes import Opened, Stock
from configurator.browser.link.state import LINKED_STEP
from configurator.kernel.message import plain
from configurator.kernel.tongue import wording

UNREAD_DOOR = wording("What is proposed for this door cannot be read, so it is not shown; ask for the link again.")


def set_door(opening: SetOpening, stock: Stock) -> Opened:
    """Return an opening's door with a configuration for each proposal; with none, and why, for an unsound link."""
    opened = read_link(opening["link"], stock)
    # What cannot be read opens with something else to begin with, in that step.
    if opened["state"]["step"] != LINKED_STEP or len(opened["state"]["configurations"]) != len(opening["proposals"]):
        opened["state"]["configurations"] = []
        opened["problems"] = [plain(UNREAD_DOOR)]
    return opened
