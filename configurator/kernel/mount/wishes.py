"""What the one who orders sets by hand: numbers of their own, in place of those that the mount would find."""

from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Fit

# The greatest width to be ordered, and the least spacer to be put behind the fixings; 0 leaves each to the mount.
WISHES = ["width_wanted", "spacer_wanted"]
# Within what each can be, mm: what no door has room for is a slip.
WISH_LIMITS: dict[str, list[float]] = {"width_wanted": [50.0, 6000.0], "spacer_wanted": [0.0, 200.0]}


def wished(fit: Fit, wishes: dict[str, float]) -> Fit:
    """Set the wishes in a fit that is not yet hung, and return it."""
    for name in WISHES:
        if name in wishes:
            fit["numbers"][name] = wishes[name]
    return fit


def wishes_of(fit: Fit) -> dict[str, float]:
    """Return what was set by hand in a fit: where its numbers are not those of its family and picks."""
    own = resolve(fit["family"], fit["choices"])
    wishes: dict[str, float] = {}
    for name in WISHES:
        if fit["numbers"][name] != own[name]:
            wishes[name] = fit["numbers"][name]
    return wishes
