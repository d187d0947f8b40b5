"""What stands on the leaf's face itself, as a mounting frame does, stands beside raised beads, not in them."""

from configurator.kernel.mount.solid import fixed_at_rest
from configurator.kernel.shapes import Box, Fit

# Any stand-off shows which pieces reach back to the face: those that it leaves where they are.
PROBE = 1.0


def reach_on_face(fit: Fit) -> Box:
    """Return how far the pieces that stand on the leaf's face reach inwards from each edge of the covering."""
    size = fit["size"]
    probe: Fit = {**fit, "size": {**size, "z0": PROBE, "spacer": PROBE}}
    middle = (size["x0"] + size["x1"]) / 2
    centre = (size["y0"] + size["y1"]) / 2
    reach: Box = {"x0": 0.0, "x1": 0.0, "y0": 0.0, "y1": 0.0}
    for piece in fixed_at_rest(probe):
        if piece["z0"] < PROBE:
            if piece["x1"] < middle:
                reach["x0"] = max(reach["x0"], piece["x1"] - size["x0"])
            elif piece["x0"] > middle:
                reach["x1"] = max(reach["x1"], size["x1"] - piece["x0"])
            elif piece["y1"] < centre:
                reach["y0"] = max(reach["y0"], piece["y1"] - size["y0"])
            elif piece["y0"] > centre:
                reach["y1"] = max(reach["y1"], size["y1"] - piece["y0"])
    return reach


def set_beside(fit: Fit, reach: Box) -> None:
    """Want as much overlap past the glass as puts what reaches so far inwards on the face beside the beads."""
    numbers = fit["numbers"]
    side = max(reach["x0"], reach["x1"])
    fit["numbers"] = {
        **numbers,
        "overlap_side": wanted_past(fit, numbers["overlap_side"], side),
        "overlap_bottom": wanted_past(fit, numbers["overlap_bottom"], reach["y0"]),
        "rise": wanted_past(fit, numbers["rise"], reach["y1"]),
    }


def wanted_past(fit: Fit, wanted: float, reach: float) -> float:
    """Return the overlap past the glass with which what reaches so far inwards stands beside the bead."""
    return max(wanted, fit["door"]["bead_width"] + reach) if reach > 0 else wanted


def stands_on_face(reach: Box) -> bool:
    """Return whether anything of the covering stands on the leaf's face itself."""
    return max(reach["x0"], reach["x1"], reach["y0"], reach["y1"]) > 0
