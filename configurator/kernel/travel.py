"""A fit over its whole travel: what all questions share, worked out once."""

from configurator.kernel.contact import even_samples, in_order, tightest
from configurator.kernel.fit import made_round, still_pieces
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.message import is_said
from configurator.kernel.mount.hung import dressed_leaves
from configurator.kernel.position import closed_position, coarse, main_position, open_position
from configurator.kernel.questions.outline import covering_outline
from configurator.kernel.questions.turn import bare_turn, turn_of
from configurator.kernel.shapes import Cuts, Fit, Touch, Travel


def cuts_for(fit: Fit) -> Cuts:
    """Return what the workroom cuts for a covering on one leaf."""
    return MECHANISMS[fit["family"]["mechanism"]]["cuts"](fit)


def travelled(fit: Fit) -> Travel:
    """Return a covering over its travel, which must be able to go on its door."""
    return travelled_beside(fit, bare_turn(fit["door"]))


def travelled_beside(fit: Fit, own: Touch) -> Travel:
    """Return the same where it is known what stops the leaf without it."""
    numbers = fit["numbers"]
    still = still_pieces(fit)
    even = even_samples(fit)
    handle = tightest(fit, even, fit["handle"])
    samples = in_order(even)
    outline = covering_outline(samples)
    leaves = dressed_leaves(fit)
    return {
        "fit": fit,
        "samples": samples,
        "handle": handle,
        "outline": outline,
        "turn": turn_of(fit, own, samples, outline),
        "raised": made_round(fit, still, open_position(numbers)),
        "half": made_round(fit, still, coarse(main_position(numbers, 0.5))),
        "down": made_round(fit, still, closed_position(numbers)),
        "leaves": leaves,
        "cuts": leaf_cuts(leaves),
        "tried": False,
    }


def leaf_cuts(leaves: list[Fit]) -> list[Cuts]:
    """Return what is cut for each covering that can be hung."""
    return [cuts_for(leaf) for leaf in leaves if not is_said(leaf["size"]["refusal"])]


def travelled_alike(travel: Travel, fit: Fit) -> Travel:
    """Return the travel of a fit that is built and hung alike: it moves as the other does, and looks as its own."""
    numbers = fit["numbers"]
    still = still_pieces(fit)
    leaves = dressed_leaves(fit)
    return {
        **travel,
        "fit": fit,
        "raised": made_round(fit, still, open_position(numbers)),
        "half": made_round(fit, still, coarse(main_position(numbers, 0.5))),
        "down": made_round(fit, still, closed_position(numbers)),
        "leaves": leaves,
        "cuts": leaf_cuts(leaves),
    }
