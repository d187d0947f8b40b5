"""A covering's mount: on the leaf or over the opening."""

from configurator.kernel.door.leaf import shows_glass
from configurator.kernel.mount.on_leaf import on_leaf
from configurator.kernel.mount.over_opening import over_opening
from configurator.kernel.shapes import Cassette, Door, Piece, Size


def mounted(
    door: Door, mechanism: str, numbers: dict[str, float], cassettes: list[Cassette], handle: list[Piece]
) -> Size:
    """Return how a covering sits on this door, in the mount that its numbers ask for."""
    if numbers["over_opening"] > 0:
        size = over_opening(door, mechanism, numbers, cassettes, handle)
    else:
        size = on_leaf(door, mechanism, numbers, cassettes, handle)
    if not shows_glass(door):
        size["refusal"] = "The door's muntins leave no glass between them."
    return size
