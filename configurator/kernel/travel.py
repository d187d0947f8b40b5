"""A fit over its whole travel: what all questions share, worked out once."""

from configurator.kernel.contact import even_samples, in_order, tightest
from configurator.kernel.fit import pieces_at
from configurator.kernel.glass import glass_shares
from configurator.kernel.position import closed_position, coarse, open_position, position_at
from configurator.kernel.shapes import Fit, Travel


def travelled(fit: Fit) -> Travel:
    """Return a covering over its travel, which must be able to go on its door."""
    numbers = fit["numbers"]
    raised = pieces_at(fit, open_position(numbers))
    down = pieces_at(fit, closed_position(numbers))
    samples = even_samples(fit)
    handle = tightest(fit, samples, fit["handle"])
    return {
        "fit": fit,
        "samples": in_order(samples),
        "handle": handle,
        "raised": raised,
        "half": pieces_at(fit, coarse(position_at(numbers, 0.5))),
        "down": down,
        "raised_shares": glass_shares(fit, raised),
        "down_shares": glass_shares(fit, down),
    }
