"""A door with coverings as a link that notes nothing of what comes of them, for whoever has asked no question."""

from configurator.browser.link.check import check_of
from configurator.browser.link.encode import LINK_VERSION, covering_part, door_part, general_part
from configurator.browser.link.shapes import State, Stock


def encode_unasked(state: State, stock: Stock) -> str:
    """Return the link of a state whose configurations all stand on the door of the first, without the ``#``."""
    units = state["units"]
    first = state["configurations"][0]
    door = door_part(first["door"], stock, {"units": units, "always": first["measured"]})
    coverings = [covering_part(one, stock, units) for one in state["configurations"]]
    text = "/".join([str(LINK_VERSION), general_part(state, stock), door + ":" + ":".join(coverings)])
    return text + "/" + check_of(text)
