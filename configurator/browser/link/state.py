"""What is shown before a link says otherwise."""

from configurator.browser.link.shapes import Configuration, State, Stock
from configurator.kernel.position import main_position, position
from configurator.kernel.resolve import full_choices, resolve
from configurator.kernel.shapes import Door

# How far down the covering stands that the page opens with: far enough to be seen to move.
OPENING_SHARE = 0.45
# The page's steps: measuring the door, choosing among all coverings, one covering's details, taking it along.
PAGE_STEPS = ["door", "coverings", "details", "take"]
# What a link shows that does not say; links of before there were steps say nothing.
LINKED_STEP = "details"
FRESH_STEP = "coverings"


def preset_door(stock: Stock, ident: str) -> Door:
    """Return a preset door to correct: a copy, with its handle."""
    door = stock["doors"][ident]
    own = door.copy()
    own["handle"] = door["handle"].copy()
    own["hinge_heights"] = list(door["hinge_heights"])
    return own


def fresh_configuration(stock: Stock, door: str, family: str) -> Configuration:
    """Return a preset door with a family as it comes, let down."""
    return {
        "door": preset_door(stock, door),
        "family": family,
        "choices": full_choices(stock["families"][family], {}),
        "place": position(1.0, 0.0, 0.0),
        "measured": [],
        "wishes": {},
    }


def fresh_state(stock: Stock) -> State:
    """Return all coverings on the door that the page opens with, one of them on its way down."""
    family = stock["opening"][1]
    one = fresh_configuration(stock, stock["opening"][0], family)
    one["place"] = main_position(resolve(stock["families"][family], {}), OPENING_SHARE)
    return {
        "units": stock["units"],
        "active": 0,
        "step": FRESH_STEP,
        "needs": [],
        "household": stock["household"].copy(),
        "configurations": [one],
    }
