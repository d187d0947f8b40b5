"""What stands on the leaf's face itself, as a mounting frame does, stands beside raised beads, not in them."""

from configurator.kernel.mount.solid import fixed_at_rest
from configurator.kernel.numbers import step_up
from configurator.kernel.shapes import Box, Fit

# Any stand-off shows which pieces reach back to the face: those that it leaves where they are.
PROBE = 1.0


def reach_on_face(fit: Fit) -> Box:
    """Return how far the pieces that stand on the leaf's face reach inwards from each edge of the covering."""
    size = fit["size"]
    probe: Fit = {**fit, "size": {**size, "z0": PROBE, "spacer": PROBE}}
    middle = (size["x0"] + size["x1"]) / 2
    center = (size["y0"] + size["y1"]) / 2
    reach: Box = {"x0": 0.0, "x1": 0.0, "y0": 0.0, "y1": 0.0}
    for piece in fixed_at_rest(probe):
        if piece["z0"] < PROBE:
            if piece["x1"] < middle:
                reach["x0"] = max(reach["x0"], piece["x1"] - size["x0"])
            elif piece["x0"] > middle:
                reach["x1"] = max(reach["x1"], size["x1"] - piece["x0"])
            elif piece["y1"] < center:
                reach["y0"] = max(reach["y0"], piece["y1"] - size["y0"])
            elif piece["y0"] > center:
                reach["y1"] = max(reach["y1"], size["y1"] - piece["y0"])
    return reach


def wanted_past(fit: Fit, wanted: float, reach: float) -> float:
    """Return the overlap past the glass with which what reaches so far inwards stands beside the bead."""
    return max(wanted, fit["door"]["bead_width"] + reach) if reach > 0 else wanted


def wanted_sideways(fit: Fit, reach: float) -> float:
    """Return the overlap past each side of the glass, in whole steps of the width so that no step takes any of it."""
    wanted = fit["numbers"]["overlap_side"]
    past = wanted_past(fit, wanted, reach)
    glass = fit["door"]["glass_width"]
    return wanted if past == wanted else (step_up(glass + past * 2, fit["numbers"]["order_step"]) - glass) / 2


def wanted_below(fit: Fit, reach: float) -> float:
    """Return the overlap below the glass, with what the step of the height may take off it."""
    return wanted_past(
        fit, fit["numbers"]["overlap_bottom"], reach + fit["numbers"]["order_step"] if reach > 0 else 0.0
    )


def set_beside(fit: Fit, reach: Box) -> None:
    """Want as much overlap past the glass as puts what reaches so far inwards on the face beside the beads."""
    numbers = fit["numbers"]
    least = fit["door"]["bead_width"] + reach["x1"] if reach["x1"] > 0 else 0.0
    fit["numbers"] = {
        **numbers,
        "overlap_least": max(numbers["overlap_least"], least),
        "overlap_side": wanted_sideways(fit, max(reach["x0"], reach["x1"])),
        "overlap_bottom": wanted_below(fit, reach["y0"]),
        "rise": wanted_past(fit, numbers["rise"], reach["y1"]),
    }


def stands_on_face(reach: Box) -> bool:
    """Return whether anything of the covering stands on the leaf's face itself."""
    return max(max(reach["x0"], reach["x1"]), max(reach["y0"], reach["y1"])) > 0
