"""What the elevation tells beside itself: sizes of glass and order, the handle, how far down, how much is visible."""

from configurator.kernel.message import message, say_phrase
from configurator.kernel.shapes import Answer, Mark
from configurator.kernel.tongue import Words
from configurator.kernel.views.dimensions import (
    FIRST_TIER,
    LETTERS_LIFT,
    TIER,
    WORDS_ROOM,
    Label,
    Notes,
    Tier,
    blank_notes,
    dim_across,
    dim_upright,
    named,
    noted,
    said,
    tier,
)
from configurator.kernel.views.draft import Draft, covering_box, handle_axis_x
from configurator.kernel.views.layout import is_over_opening
from configurator.kernel.views.marks import letters, stroke, text_width


def widths_below(notes: Notes, draft: Draft, base: float) -> None:
    """Add the glass with both overlaps, and the ordered width below it."""
    glass = draft["frame"]["glass"]
    order = draft["frame"]["order"]
    first = base + notes["size"] * FIRST_TIER
    label = said(notes, glass["x1"] - glass["x0"], "after", "glass_width")
    dim_across(notes, [glass["x0"], glass["x1"]], tier(first, base), label)
    if order["x1"] <= order["x0"]:
        return
    left = glass["x0"] - order["x0"]
    right = order["x1"] - glass["x1"]
    # Where its own words stand beside a narrow glass, there is no room for the overlaps'.
    within = text_width(label["text"], notes["size"]) + notes["size"] * 0.5 <= glass["x1"] - glass["x0"]
    if within and not is_over_opening(draft["answer"]):
        if left > 0.5:
            dim_across(notes, [order["x0"], glass["x0"]], tier(first, first), said(notes, left, "before", ""))
        if right > 0.5:
            dim_across(notes, [glass["x1"], order["x1"]], tier(first, first), said(notes, right, "after", ""))
    second = first + notes["size"] * TIER
    origin = base if within else first + notes["size"] * LETTERS_LIFT
    dim_across(notes, [order["x0"], order["x1"]], tier(second, origin), order_label(notes, order["x1"] - order["x0"]))


def order_label(notes: Notes, width: float) -> Label:
    """Return the words for an ordered width; where the letters are large for it, the bare number still fits."""
    label = named(notes, "order {length}", width, "after", "")
    if text_width(label["text"], notes["size"]) < width - notes["size"]:
        return label
    return said(notes, width, "after", "")


def heights_left(notes: Notes, draft: Draft) -> None:
    """Add the glass with both overlaps, and the ordered height beside it."""
    glass = draft["frame"]["glass"]
    order = draft["frame"]["order"]
    start = draft["frame"]["out0"]
    first = start - notes["size"] * FIRST_TIER
    label = said(notes, glass["y1"] - glass["y0"], "below", "glass_height")
    dim_upright(notes, [-glass["y1"], -glass["y0"]], tier(first, start), label)
    if order["y1"] <= order["y0"]:
        return
    above = order["y1"] - glass["y1"]
    below = glass["y0"] - order["y0"]
    if not is_over_opening(draft["answer"]):
        if above > 0.5:
            dim_upright(notes, [-order["y1"], -glass["y1"]], tier(first, first), said(notes, above, "above", ""))
        if below > 0.5:
            dim_upright(notes, [-glass["y0"], -order["y0"]], tier(first, first), said(notes, below, "below", ""))
    second = first - notes["size"] * TIER
    label = named(notes, "order {length}", order["y1"] - order["y0"], "below", "")
    dim_upright(notes, [-order["y1"], -order["y0"]], tier(second, start), label)


def is_on_the_way(draft: Draft) -> bool:
    """Return whether the covering travels and is not all the way down, so that its height is worth a dimension."""
    covering = covering_box(draft)
    drop = covering["y1"] - covering["y0"]
    order = draft["frame"]["order"]
    for leg in draft["answer"]["legs"]:
        if leg["moves"] == "lower":
            return drop > 0 and drop < order["y1"] - order["y0"] - 0.5
    return False


def drop_label(notes: Notes, answer: Answer, drop: float) -> Label:
    """Return what the height of the covering is called at a position."""
    stack = answer["figures"]["stack_height"]["value"] if "stack_height" in answer["figures"] else -1.0
    return named(notes, "stack {length}" if abs(drop - stack) < 0.05 else "down {length}", drop, "below", "")


def drop_upright(notes: Notes, draft: Draft, on: Tier) -> None:
    """Add how far down the covering stands."""
    covering = covering_box(draft)
    label = drop_label(notes, draft["answer"], covering["y1"] - covering["y0"])
    dim_upright(notes, [-covering["y1"], -covering["y0"]], on, label)


def heights_right(notes: Notes, draft: Draft) -> None:
    """Add the handle's height and how far down the covering stands."""
    side = draft["frame"]["out1"]
    first = side + notes["size"] * FIRST_TIER
    height = draft["door"]["handle_height"]
    dim_upright(notes, [-height, 0.0], tier(first, side), said(notes, height, "below", "handle_height"))
    if is_on_the_way(draft):
        drop_upright(notes, draft, tier(first + notes["size"] * TIER, first))


def handle_cross(notes: Notes, draft: Draft) -> None:
    """Add the center lines of the handle's axis."""
    axis = handle_axis_x(draft)
    y = -draft["door"]["handle_height"]
    reach = notes["size"] * 0.9
    notes["lines"].append(stroke("axis-line", axis - reach, y, axis + reach, y))
    notes["lines"].append(stroke("axis-line", axis, y - reach, axis, y + reach))


def visible_words(answer: Answer, words: Words, units: str) -> str:
    """Return how much glass stays visible, open and closed; of a veil that stays, how much of the view."""
    figures = answer["figures"]
    if "visible_glass_open" not in figures:
        return ""
    if figures["visible_glass_open"]["value"] <= 0:
        through = message("view through {share}", {"share": [figures["view_open"]["value"], "share"]})
        return say_phrase(through, words, units)
    terms: dict[str, list[float | str]] = {
        "open": [figures["visible_glass_open"]["value"], "share"],
        "closed": [figures["visible_glass_closed"]["value"], "share"],
    }
    return say_phrase(message("visible glass: open {open}, closed {closed}", terms), words, units)


def notes_base(draft: Draft) -> float:
    """Return the y on the paper under which the level dimensions start: below the words of the upright ones."""
    order = draft["frame"]["order"]
    if order["y1"] <= order["y0"]:
        return draft["room"]
    return max(draft["room"], -order["y0"] + draft["size"] * (WORDS_ROOM - FIRST_TIER + 0.6))


def elevation_notes(draft: Draft) -> list[Mark]:
    """Return the elevation's annotation."""
    frame = draft["frame"]
    notes = blank_notes(draft["size"], draft["words"], draft["units"])
    base = notes_base(draft)
    handle_cross(notes, draft)
    heights_left(notes, draft)
    heights_right(notes, draft)
    widths_below(notes, draft, base)
    words = visible_words(draft["answer"], draft["words"], draft["units"])
    if words != "":
        middle = (frame["x0"] + frame["x1"]) / 2
        y = base + notes["size"] * (FIRST_TIER + TIER * 2 + 0.1)
        notes["texts"].append(letters("label", [middle, y], notes["size"], words, "middle"))
    return noted(notes)
