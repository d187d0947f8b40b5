"""A covering fixed to the leaf: on its stiles and rails, travelling with it."""

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.mount.blank import blank_size
from configurator.kernel.mount.cutout import cutout_box
from configurator.kernel.mount.sideways import latch_limit, set_sideways
from configurator.kernel.mount.spacer import spacer_thickness, stand_off_needed
from configurator.kernel.mount.upright import limit_bottom, set_upright
from configurator.kernel.numbers import step_up
from configurator.kernel.sampling import ROUGH_STEPS, Sample, travel_samples
from configurator.kernel.say import say_both
from configurator.kernel.shapes import Cassette, Door, Piece, Size


def part_heights(handle: list[Piece]) -> list[float]:
    """Return the heights at which a moving rail could meet a part of the handle."""
    heights: list[float] = []
    for part in handle:
        if part["kind"] != "plate":
            heights.extend([part["y1"] - 1.0, (part["y0"] + part["y1"]) / 2, part["y0"] - 1.0])
    return heights


def first_try(door: Door, numbers: dict[str, float], cassettes: list[Cassette]) -> Size:
    """Return the size as wanted, before beads and handle are looked at, fixed to the leaf's face."""
    size = blank_size("on-leaf")
    set_upright(door, numbers, cassettes, size)
    glass = glass_box(door)
    size["x0"] = glass["x0"] - numbers["overlap_side"]
    size["x1"] = min(glass["x1"] + numbers["overlap_side"], latch_limit(door, numbers))
    return size


def set_spacer(door: Door, numbers: dict[str, float], samples: list[Sample], size: Size) -> None:
    """Set the spacer, or the refusal where stock spacers do not reach."""
    size["exact_spacer"] = stand_off_needed(door, samples)
    size["spacer"] = spacer_thickness(numbers, size["exact_spacer"])
    size["z0"] = size["spacer"]
    if size["spacer"] > numbers["spacer_most"] and size["refusal"] == "":
        size["refusal"] = "The beads, muntins or its own sweep push it further off the leaf than its spacers reach."


def set_foot(door: Door, numbers: dict[str, float], size: Size) -> None:
    """Let the covering reach down by a step more where rounding would uncover the foot of the glass."""
    foot = glass_box(door)["y0"]
    if size["y0"] > foot:
        lower = size["y0"] - step_up(size["y0"] - foot, numbers["order_step"])
        size["y0"] = max(lower, min(size["y0"], limit_bottom(door, numbers)))


def beyond(words: str, needed: float, made: float, end: str) -> str:
    """Return a refusal that says what size is needed and what is made."""
    return words + ": " + say_both(max(needed, 0.0)) + ", against " + say_both(made) + " at the " + end + "."


def refusal_for(numbers: dict[str, float], size: Size) -> str:
    """Return why a covering of this size cannot be made, or an empty text."""
    width = size["x1"] - size["x0"]
    height = size["y1"] - size["y0"]
    if width < numbers["width_least"]:
        return beyond("It is not made as narrow as this glass needs", width, numbers["width_least"], "least")
    if width > numbers["width_most"]:
        return beyond("It is not made as wide as this opening needs", width, numbers["width_most"], "most")
    if height > numbers["height_most"]:
        return beyond("It is not made as high as this opening needs", height, numbers["height_most"], "most")
    return ""


def on_leaf(
    door: Door, mechanism: str, numbers: dict[str, float], cassettes: list[Cassette], handle: list[Piece]
) -> Size:
    """Return how a covering sits on a leaf hung on the left, beside or behind the given handle."""
    size = first_try(door, numbers, cassettes)
    if size["refusal"] != "":
        return size
    samples = travel_samples(mechanism, numbers, size, part_heights(handle), ROUGH_STEPS)
    set_spacer(door, numbers, samples, size)
    set_foot(door, numbers, size)
    set_sideways(door, numbers, samples, handle, size)
    size["cutout"] = cutout_box(door, numbers, size, handle)
    if size["refusal"] == "":
        size["refusal"] = refusal_for(numbers, size)
    return size
