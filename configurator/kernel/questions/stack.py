"""How high the stack is when open, and how much of the glass it hides."""

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.questions.figure import figure
from configurator.kernel.sampling import lowest_edge
from configurator.kernel.shapes import Door, Figure, Piece, Size


def stack_height(numbers: dict[str, float], size: Size, raised: list[Piece]) -> float:
    """Return the height of the raised covering; 0 where only louvers turn or it draws aside."""
    if numbers["draws_aside"] > 0:
        return 0.0
    if numbers["lower_moves"] == 0 and numbers["tilt_open"] != numbers["tilt_closed"]:
        return 0.0
    return size["y1"] - lowest_edge(raised)


def stack_rule(numbers: dict[str, float]) -> str:
    """Return the rule for this kind of stack in words."""
    if numbers["draws_aside"] > 0:
        return "it draws to the side and leaves no stack at the top"
    if numbers["lower_moves"] > 0:
        return "from the top edge of the covering to its lowest edge when raised"
    if numbers["tilt_open"] != numbers["tilt_closed"]:
        return "nothing stacks: the louvers turn edge-on"
    return "nothing moves: the whole panel stays in front of the glass"


def stack_figures(door: Door, numbers: dict[str, float], size: Size, raised: list[Piece]) -> list[Figure]:
    """Return the stack's height and how much of the glass's height it hides."""
    glass = glass_box(door)
    height = stack_height(numbers, size, raised)
    low = size["y1"] - height
    hidden = max(0.0, min(glass["y1"] - max(low, glass["y0"]), height))
    return [
        figure(
            "stack_height",
            "height of the stack when open",
            height,
            "mm",
            stack_rule(numbers),
            "top edge {top} less lower edge {low} above the floor",
            {"top": [size["y1"], "mm"], "low": [low, "mm"]},
        ),
        figure(
            "stack_over_glass",
            "glass height hidden by the stack",
            hidden,
            "mm",
            "the part of the stack below the top of the glass",
            "top of the glass {glass} less lower edge of the stack {low}, not less than nothing",
            {"glass": [glass["y1"], "mm"], "low": [low, "mm"]},
        ),
    ]
