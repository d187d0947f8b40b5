"""What of a visit is ordered: what was agreed, or else what the client likes, or all that was proposed."""

from configurator.kernel.visit.visit_shapes import Opening, Proposal


def decided(opening: Opening) -> list[Proposal]:
    """Return the proposal that is ordered for an opening, or none while nothing is decided.

    What was agreed last counts, with the picks of that day; without an agreement the one that is liked, or
    the only one.
    """
    proposals = opening["proposals"]
    if len(opening["agreed"]) > 0:
        last = opening["agreed"][len(opening["agreed"]) - 1]
        return [
            {**one, "family": last["covering"]["id"], "choices": last["choices"], "wishes": last["wishes"]}
            for one in proposals
            if one["id"] == last["proposal"]
        ]
    liked = [one for one in proposals if one["liked"]]
    if len(liked) == 1:
        return liked
    return proposals if len(proposals) == 1 else []
