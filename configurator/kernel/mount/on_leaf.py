"""A covering fixed to the leaf: on its stiles and rails, travelling with it."""

from configurator.kernel.contact import even_samples
from configurator.kernel.door.leaf import glass_box
from configurator.kernel.door.obstacles import leaf_obstacles, proud_pieces
from configurator.kernel.message import is_said, plain
from configurator.kernel.mount.beside_beads import reach_on_face, set_beside, stands_on_face
from configurator.kernel.mount.cutout_box import cutout_box, cutout_refusal
from configurator.kernel.mount.makeable import making_refusal
from configurator.kernel.mount.sideways import latch_limit, set_sideways
from configurator.kernel.mount.solid import most_inside, solid_refusal
from configurator.kernel.mount.spacer import backmost, push_needed, push_out, spacer_by_hand, spacer_thickness
from configurator.kernel.mount.upright import limit_bottom, set_upright
from configurator.kernel.numbers import step_up
from configurator.kernel.shapes import Fit, Piece, Size
from configurator.kernel.tongue import wording


def set_wanted(fit: Fit) -> None:
    """Set the size as wanted, before beads and handle are looked at, fixed to the leaf's face."""
    set_upright(fit)
    glass = glass_box(fit["door"])
    wanted = fit["numbers"]["overlap_side"]
    fit["size"]["x0"] = glass["x0"] - wanted
    fit["size"]["x1"] = min(glass["x1"] + wanted, latch_limit(fit["door"], fit["numbers"]))


def set_beside_beads(fit: Fit) -> None:
    """Want as much more overlap as puts a frame that stands on the face beside raised beads."""
    if fit["door"]["bead_projection"] <= 0:
        return
    reach = reach_on_face(fit)
    if stands_on_face(reach):
        set_beside(fit, reach)
        fit["size"]["limits"] = []
        set_wanted(fit)


def set_stand_off(fit: Fit, need: float) -> None:
    """Set the spacer that a stand-off asks for, or the refusal where stock spacers do not reach."""
    size = fit["size"]
    size["exact_spacer"] = need
    size["spacer"] = spacer_thickness(fit["numbers"], max(need, spacer_by_hand(fit["numbers"])))
    size["z0"] = size["spacer"]
    if size["spacer"] > fit["numbers"]["spacer_most"]:
        text = wording("The beads, muntins or its own sweep push it further off the leaf than its spacers reach.")
        size["refusal"] = plain(text)


def set_spacer(fit: Fit) -> None:
    """Set the stand-off at which nothing of the covering meets the leaf over its whole travel."""
    samples = even_samples(fit)
    need = max(0.0, -backmost(samples))
    set_stand_off(fit, max(need, push_needed(fit, samples, proud_pieces(fit["door"]))))


def set_foot(fit: Fit) -> None:
    """Let the covering reach down by a step more where rounding would uncover the foot of the glass."""
    size = fit["size"]
    foot = glass_box(fit["door"])["y0"]
    if size["y0"] > foot:
        lower = size["y0"] - step_up(size["y0"] - foot, fit["numbers"]["order_step"])
        size["y0"] = max(lower, min(size["y0"], limit_bottom(fit["door"], fit["numbers"])))


def near_size(fit: Fit) -> list[Piece]:
    """Return what stands on the leaf within the covering's outline, as it is sized."""
    size = fit["size"]
    return [part for part in leaf_obstacles(fit["door"]) if part["x1"] > size["x0"] and part["x0"] < size["x1"]]


def set_clear(fit: Fit) -> None:
    """Push out what came to stand in a bead as the sides were set, or refuse what stands in one all the same."""
    parts = near_size(fit)
    if len(parts) == 0:
        return
    found = most_inside(fit, parts)
    if len(found) > 0:
        set_stand_off(fit, fit["size"]["spacer"] + push_out(found[0], found[1], 0.0))
        fit["size"]["refusal"] = solid_refusal(fit, parts)


def standing_size(size: Size) -> Size:
    """Return a size of its own that goes on from where another has come to."""
    return {**size, "limits": size["limits"].copy()}


def hang_on_leaf(fit: Fit) -> None:
    """Set how a covering sits on a leaf hung on the left, beside or behind its handle."""
    set_wanted(fit)
    if is_said(fit["size"]["refusal"]):
        return
    set_beside_beads(fit)
    set_spacer(fit)
    set_foot(fit)
    fit["standing"] = standing_size(fit["size"])
    hang_at_handle(fit)


def hang_at_handle(fit: Fit) -> None:
    """Set how a covering of which it is known where it stands on its leaf sits beside or behind the handle."""
    size = fit["size"]
    set_sideways(fit)
    if not is_said(size["refusal"]):
        set_clear(fit)
    size["cutout"] = cutout_box(fit)
    if not is_said(size["refusal"]):
        size["refusal"] = making_refusal(fit)
    if not is_said(size["refusal"]):
        size["refusal"] = cutout_refusal(fit)
