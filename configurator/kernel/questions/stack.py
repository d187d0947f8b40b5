"""How high the stack is when open, and how much of the glass it hides."""

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.fit import lowest_edge, moves_aside, only_turns, stacks
from configurator.kernel.piece_kinds import kind_of
from configurator.kernel.shapes import Figure, Fit, Household, Piece, Reply, Travel
from configurator.kernel.telling import figure, length, reply, working
from configurator.kernel.tongue import wording

# Two halves that meet to less than this meet.
HALVES_MEET = 0.01


def stack_rule(fit: Fit) -> str:
    """Return the rule for this kind of stack in words."""
    if moves_aside(fit):
        return wording("it draws to the side and leaves no stack at the top")
    if only_turns(fit):
        return wording("nothing stacks: the louvers turn edge-on")
    if len(fit["legs"]) == 0:
        return wording("nothing moves: the whole panel stays in front of the glass")
    return wording("from the top edge of the covering to its lowest edge when raised")


def side_stack(pieces: list[Piece], halves: int) -> list[float]:
    """Return ``[start, end]`` along x of what stands at the hinge side when drawn back."""
    moving = [piece for piece in pieces if not kind_of(piece["kind"])["fixed"]]
    start = min([piece["x0"] for piece in moving])
    end = max([piece["x1"] for piece in moving])
    if halves > 1:
        # Whatever begins at the start has its own middle no further than the middle of all.
        middle = start + end + HALVES_MEET
        end = max([piece["x1"] for piece in moving if piece["x0"] + piece["x1"] <= middle])
    return [start, end]


def side_figure(travel: Travel) -> Figure:
    """Return how wide the stack is at each side to which it draws."""
    span = side_stack(travel["raised"], travel["fit"]["legs"][0]["halves"])
    how = working(
        "from the outer to the leading edge of what stands at one side when drawn back",
        "{end} - {start}",
        {"end": [span[1], "mm"], "start": [span[0], "mm"]},
    )
    return figure("side_stack", "width of the stack at each side it draws to", length(span[1] - span[0]), how)


def stack_question(travel: Travel, household: Household) -> Reply:
    """Answer with the stack's height and how much of the glass's height it hides."""
    fit = travel["fit"]
    top = fit["size"]["y1"]
    glass = glass_box(fit["door"])
    low = lowest_edge(travel["raised"]) if stacks(fit) else top
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
    figures = [height, hidden]
    if moves_aside(fit):
        figures.append(side_figure(travel))
    return reply(figures, [], [])
