"""Whether a covering of this size can be made."""

from configurator.kernel.fit import lowest_edge, made_at, stacks
from configurator.kernel.message import message, silence
from configurator.kernel.position import coarse, open_position
from configurator.kernel.shapes import Fit, Message
from configurator.kernel.tongue import wording

# A stack as high as what hangs is none that rounding makes higher.
STACK_SLACK = 0.05


def size_refusal(text: str, needed: float, made: float) -> Message:
    """Return a refusal that says what size is needed and what is made."""
    return message(text, {"needed": [max(needed, 0.0), "mm"], "made": [made, "mm"]})


def making_refusal(fit: Fit) -> Message:
    """Return why a covering of this size cannot be made, or silence."""
    numbers = fit["numbers"]
    width = fit["size"]["x1"] - fit["size"]["x0"]
    height = fit["size"]["y1"] - fit["size"]["y0"]
    if width < numbers["width_least"]:
        text = wording("It is not made as narrow as this glass needs: {needed}, against {made} at the least.")
        return size_refusal(text, width, numbers["width_least"])
    if width > numbers["width_most"]:
        text = wording("It is not made as wide as this opening needs: {needed}, against {made} at the most.")
        return size_refusal(text, width, numbers["width_most"])
    if height > numbers["height_most"]:
        text = wording("It is not made as high as this opening needs: {needed}, against {made} at the most.")
        return size_refusal(text, height, numbers["height_most"])
    return stack_refusal(fit, height) if stacks(fit) else silence()


def stack_refusal(fit: Fit, height: float) -> Message:
    """Return that a covering's stack would be higher than the covering itself, or silence."""
    stack = fit["size"]["y1"] - lowest_edge(made_at(fit, coarse(open_position(fit["numbers"]))))
    if stack <= height + STACK_SLACK:
        return silence()
    text = wording("Its stack would be higher than it hangs here: {stack}, against {height}.")
    return message(text, {"stack": [stack, "mm"], "height": [height, "mm"]})
