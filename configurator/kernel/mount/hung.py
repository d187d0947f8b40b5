"""A covering is hung on a door: the one place where a fit is made."""

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import shows_glass
from configurator.kernel.door.obstacles import over_joint
from configurator.kernel.door.opening import has_passive, opening_hardware
from configurator.kernel.message import is_said, plain
from configurator.kernel.mount.blank import blank_fit, no_box
from configurator.kernel.mount.fixing_spots import set_fixings
from configurator.kernel.mount.hold_down import set_hold_downs
from configurator.kernel.mount.on_leaf import hang_at_handle, hang_on_leaf, standing_size
from configurator.kernel.mount.over_opening import hang_over_opening
from configurator.kernel.mount.wishes import wished
from configurator.kernel.shapes import Door, Family, Fit, Size


def hung(door: Door, family: Family, choices: dict[str, str]) -> Fit:
    """Return a family with its picks, hung on the active leaf or over the opening, in the mount that it asks for."""
    return hung_with(door, family, choices, {})


def hung_with(door: Door, family: Family, choices: dict[str, str], wishes: dict[str, float]) -> Fit:
    """Return it hung with numbers that are set by hand (of ``WISHES``; those that are left out, as the family has)."""
    handle = handle_pieces(door)
    if door["passive_handle"]:
        handle.extend(over_joint(door))
    return hang(wished(blank_fit(door, family, choices, handle), wishes))


def hang(fit: Fit) -> Fit:
    """Hang a blank fit on a leaf with its hardware, none perhaps, and return it."""
    door = fit["door"]
    if not shows_glass(door):
        fit["size"]["refusal"] = plain("The door's muntins leave no glass between them.")
    elif fit["size"]["mount"] == "over-opening":
        fit["handle"] = opening_hardware(door)
        hang_over_opening(fit)
    else:
        hang_on_leaf(fit)
    return fixed(fit)


def fixed(fit: Fit) -> Fit:
    """Find where a covering is fixed and held down, if it can hang at all, and return it."""
    if not is_said(fit["size"]["refusal"]):
        set_fixings(fit)
    if not is_said(fit["size"]["refusal"]):
        set_hold_downs(fit)
    return fit


def dresses_both(fit: Fit) -> bool:
    """Return whether a second leaf is dressed too, with a covering of its own."""
    return has_passive(fit["door"]) and fit["size"]["mount"] == "on-leaf"


def is_shaped_by_handle(size: Size) -> bool:
    """Return whether a covering was sized or cut out for a handle, so that a leaf without one takes another size."""
    for limit in size["limits"]:
        if limit["by"] == "handle":
            return True
    return is_said(size["refusal"]) or size["cutout"]["x1"] > size["cutout"]["x0"]


def other_leaf(fit: Fit) -> Fit:
    """Return the second leaf's own covering, in the active leaf's space.

    It stands off alike; without a handle of its own only what of the active leaf's reaches over the joint is in its
    way.
    """
    if fit["door"]["passive_handle"]:
        return fit
    beside = over_joint(fit["door"])
    if len(beside) == 0 and not is_shaped_by_handle(fit["size"]):
        return {**fit, "handle": beside}
    other: Fit = {**fit, "handle": beside, "size": standing_size(fit["standing"]), "fixings": []}
    hang_at_handle(other)
    return fixed(other)


def dressed_leaves(fit: Fit) -> list[Fit]:
    """Return the fits of all that hangs: the covering itself and, where a second leaf is dressed too, its own."""
    leaves = [fit]
    if dresses_both(fit):
        leaves.append(other_leaf(fit))
    return leaves


def without_cutout(fit: Fit) -> Fit:
    """Return the same covering with nothing cut out of it."""
    return {**fit, "size": {**fit["size"], "cutout": no_box()}}
