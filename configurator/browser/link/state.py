"""What is shown before a link says otherwise."""

from configurator.browser.link.shapes import Configuration, State, Stock
from configurator.kernel.resolve import full_choices
from configurator.kernel.shapes import Door
from configurator.kernel.travel import position


def first_door(stock: Stock) -> str:
    """Return the id of the first door."""
    names = list(stock["doors"])
    return names[0]


def first_family(stock: Stock) -> str:
    """Return the id of the first family that is still offered."""
    names = list(stock["families"])
    for name in names:
        if not stock["families"][name]["retired"]:
            return name
    return names[0]


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
    }


def fresh_state(stock: Stock) -> State:
    """Return the first door with the first family, in the showroom's units."""
    return {
        "units": stock["units"],
        "active": 0,
        "household": stock["household"].copy(),
        "configurations": [fresh_configuration(stock, first_door(stock), first_family(stock))],
    }
