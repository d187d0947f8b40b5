"""How high the stack is when open, and how much of the glass it hides."""

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.fit import lowest_edge, moves_aside, only_turns
from configurator.kernel.shapes import Fit, Household, Reply, Travel
from configurator.kernel.telling import figure, length, reply, working


def stack_rule(fit: Fit) -> str:
    """Return the rule for this kind of stack in words."""
    if moves_aside(fit):
        return "it draws to the side and leaves no stack at the top"
    if only_turns(fit):
        return "nothing stacks: the louvers turn edge-on"
    if len(fit["legs"]) == 0:
        return "nothing moves: the whole panel stays in front of the glass"
    return "from the top edge of the covering to its lowest edge when raised"


def stack_question(travel: Travel, household: Household) -> Reply:
    """Answer with the stack's height and how much of the glass's height it hides."""
    fit = travel["fit"]
    top = fit["size"]["y1"]
    glass = glass_box(fit["door"])
    stacks = not moves_aside(fit) and not only_turns(fit)
    low = lowest_edge(travel["raised"]) if stacks else top
    high = min(glass["y1"], top)
    foot = max(low, glass["y0"])
    height = figure(
        "stack_height",
        "height of the stack when open",
        length(top - low),
        working(stack_rule(fit), "{top} - {low}", {"top": [top, "mm"], "low": [low, "mm"]}),
    )
    hidden = figure(
        "stack_over_glass",
        "glass height hidden by the stack",
        length(max(0.0, high - foot)),
        working(
            "the part of the stack between the top and the foot of the glass",
            "max(0, {high} - {foot})",
            {"high": [high, "mm"], "foot": [foot, "mm"]},
        ),
    )
    return reply([height, hidden], [], [])
