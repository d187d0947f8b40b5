"""A covering fixed to the leaf: on its stiles and rails, travelling with it."""

from configurator.kernel.contact import even_samples
from configurator.kernel.door.leaf import glass_box
from configurator.kernel.message import is_said, plain
from configurator.kernel.mount.cutout import cutout_box, cutout_refusal
from configurator.kernel.mount.makeable import making_refusal
from configurator.kernel.mount.sideways import latch_limit, set_sideways
from configurator.kernel.mount.spacer import spacer_by_hand, spacer_thickness, stand_off_needed
from configurator.kernel.mount.upright import limit_bottom, set_upright
from configurator.kernel.numbers import step_up
from configurator.kernel.shapes import Fit


def set_wanted(fit: Fit) -> None:
    """Set the size as wanted, before beads and handle are looked at, fixed to the leaf's face."""
    set_upright(fit)
    glass = glass_box(fit["door"])
    wanted = fit["numbers"]["overlap_side"]
    fit["size"]["x0"] = glass["x0"] - wanted
    fit["size"]["x1"] = min(glass["x1"] + wanted, latch_limit(fit["door"], fit["numbers"]))


def set_spacer(fit: Fit) -> None:
    """Set the spacer, or the refusal where stock spacers do not reach."""
    size = fit["size"]
    size["exact_spacer"] = stand_off_needed(fit, even_samples(fit))
    size["spacer"] = spacer_thickness(fit["numbers"], max(size["exact_spacer"], spacer_by_hand(fit["numbers"])))
    size["z0"] = size["spacer"]
    if size["spacer"] > fit["numbers"]["spacer_most"]:
        text = "The beads, muntins or its own sweep push it further off the leaf than its spacers reach."
        size["refusal"] = plain(text)


def set_foot(fit: Fit) -> None:
    """Let the covering reach down by a step more where rounding would uncover the foot of the glass."""
    size = fit["size"]
    foot = glass_box(fit["door"])["y0"]
    if size["y0"] > foot:
        lower = size["y0"] - step_up(size["y0"] - foot, fit["numbers"]["order_step"])
        size["y0"] = max(lower, min(size["y0"], limit_bottom(fit["door"], fit["numbers"])))


def hang_on_leaf(fit: Fit) -> None:
    """Set how a covering sits on a leaf hung on the left, beside or behind its handle."""
    size = fit["size"]
    set_wanted(fit)
    if is_said(size["refusal"]):
        return
    set_spacer(fit)
    set_foot(fit)
    set_sideways(fit)
    size["cutout"] = cutout_box(fit)
    if not is_said(size["refusal"]):
        size["refusal"] = making_refusal(fit)
    if not is_said(size["refusal"]):
        size["refusal"] = cutout_refusal(fit)
