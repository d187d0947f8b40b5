"""Whole numbers of minor units out of shares and areas: halves are rounded up, and nothing else is."""


def half_up(above: float, below: float) -> float:
    """Return the whole number nearest to ``above / below``, halves upwards.

    Both are whole, ``above`` not negative and twice ``above`` below 2 to the power of 53: the rest is then exact on
    both sides, where a quotient would not be.
    """
    rest = above % below
    full = (above - rest) / below
    return full + 1 if rest * 2 >= below else full


def rounded_to(above: float, below: float, to: float) -> float:
    """Return ``above / below`` in whole steps of ``to``, halves upwards; all are whole."""
    return half_up(above, below * to) * to
