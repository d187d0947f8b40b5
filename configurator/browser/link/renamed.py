"""What has another id today than when a link was made."""

from configurator.browser.link.shapes import Stock
from configurator.kernel.shapes import Choice, Family


def door_now(ident: str, stock: Stock) -> str:
    """Return the id that a door has today; one that nobody has claimed stays as it is."""
    return ident if ident in stock["doors"] else stock["formerly"].get("door/" + ident, ident)


def handle_now(ident: str, stock: Stock) -> str:
    """Return the id that a handle has today."""
    return ident if ident in stock["handles"] else stock["formerly"].get("handle/" + ident, ident)


def family_now(ident: str, stock: Stock) -> str:
    """Return the id that a family has today."""
    return ident if ident in stock["families"] else stock["formerly"].get("family/" + ident, ident)


def choice_now(ident: str, family: Family, stock: Stock) -> str:
    """Return the id that a family's choice has today."""
    for choice in family["choices"]:
        if choice["id"] == ident:
            return ident
    return stock["formerly"].get("choice/" + family["id"] + "/" + ident, ident)


def option_now(ident: str, choice: Choice, family: Family, stock: Stock) -> str:
    """Return the id that an option of a family's choice has today."""
    for option in choice["options"]:
        if option["id"] == ident:
            return ident
    return stock["formerly"].get("option/" + family["id"] + "/" + choice["id"] + "/" + ident, ident)
