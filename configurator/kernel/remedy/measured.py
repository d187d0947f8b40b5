"""The widths, spacers and handle gaps that may mend something, from what is in the way over the whole travel."""

from configurator.kernel.contact import SOLVED, is_nearer
from configurator.kernel.door.leaf import glass_box
from configurator.kernel.fit import over_opening
from configurator.kernel.mount.sideways import PASSING_AIR
from configurator.kernel.numbers import step_down, step_up
from configurator.kernel.questions.pair import pair_width
from configurator.kernel.questions.turning import meets_stop
from configurator.kernel.remedy.change import HANDLE_GAP, setting
from configurator.kernel.say import INCH, on_step
from configurator.kernel.shapes import Change, Fit, Outer, Piece, Plight, Travel

# No handle with a deeper gap is suggested: common practice, no source.
GAP_MOST = 63.5
# How finely a handle's gap is asked for, where sizes are taken in whole millimeters and where they are not.
GAP_STEP = 1.0
GAP_STEP_INCH = INCH / 16


def in_the_way(travel: Travel, part: Piece) -> list[Piece]:
    """Return the pieces, as they stand over the whole travel, that pass a part of the handle with too little air."""
    found: list[Piece] = []
    if travel["handle"]["air"] >= PASSING_AIR - SOLVED:
        return found
    for sample in travel["samples"]:
        for piece in sample["pieces"]:
            if is_nearer(piece, part, PASSING_AIR - SOLVED):
                found.append(piece)
    return found


def covering_width(fit: Fit, right: float) -> float:
    """Return the ordered width at which a covering ends at ``right``; 0 where it would not cover or is no narrower."""
    size = fit["size"]
    width = step_down(right - size["x0"], fit["numbers"]["order_step"])
    covers = size["x0"] + width >= glass_box(fit["door"])["x1"] + fit["numbers"]["overlap_least"]
    return width if covers and width < size["x1"] - size["x0"] else 0.0


def width_off_stop(travel: Travel) -> float:
    """Return the greatest width at which no outer corner strikes the stop as an out-swing leaf turns; 0 for none."""
    fit = travel["fit"]
    step = fit["numbers"]["order_step"]
    outers: list[Outer] = [{**outer} for outer in travel["outline"]]
    if fit["door"]["swing"] != "out" or not meets_stop(fit["door"], outers):
        return 0.0
    right = fit["size"]["x1"]
    width = covering_width(fit, right - step)
    while width > 0 and meets_stop(fit["door"], outers):
        for outer in outers:
            outer["x1"] = outer["x1"] - step
        right = right - step
        width = covering_width(fit, right)
    return width


def widths_to_try(travel: Travel) -> list[float]:
    """Return narrower widths: beside the handle, clear of the stop, and the other leaf's."""
    fit = travel["fit"]
    beside = fit["size"]["x1"]
    for part in fit["handle"]:
        if len(in_the_way(travel, part)) > 0:
            beside = min(beside, part["x0"] - PASSING_AIR)
    found = [covering_width(fit, beside), width_off_stop(travel)]
    for other in travel["leaves"][1:]:
        found.append(min(pair_width(fit["size"]), pair_width(other["size"])))
    return found


def spacers_to_try(travel: Travel) -> list[float]:
    """Return the stacks of stock spacers on which all that is in the way of a part of the handle passes in front."""
    fit = travel["fit"]
    found: list[float] = []
    for part in fit["handle"]:
        more = 0.0
        for piece in in_the_way(travel, part):
            more = max(more, part["z1"] + PASSING_AIR - piece["z0"])
        found.append(step_up(fit["size"]["spacer"] + more, fit["numbers"]["spacer_step"]))
    return [spacer for spacer in found if spacer <= fit["numbers"]["spacer_most"]]


def gaps_to_try(travel: Travel) -> list[float]:
    """Return the free depth behind another handle's grip in which all passes that is now in the grip's way."""
    fit = travel["fit"]
    gap = fit["door"]["handle"]["gap"]
    step = GAP_STEP if on_step(fit["numbers"]["order_step"], GAP_STEP) else GAP_STEP_INCH
    found: list[float] = []
    for part in fit["handle"]:
        if part["kind"] == "grip":
            more = 0.0
            for piece in in_the_way(travel, part):
                more = max(more, piece["z1"] + PASSING_AIR - part["z0"])
            found.append(step_up(gap + more, step))
    return [wanted for wanted in found if wanted <= GAP_MOST]


def above(values: list[float], least: float) -> list[float]:
    """Return the values above the least in order, each once."""
    found: list[float] = []
    last = least
    for value in sorted(values):
        if value > last:
            found.append(value)
            last = value
    return found


def measured_changes(plight: Plight) -> list[Change]:
    """Return the widths, spacers and handle gaps to be tried on a leaf; none where all clears."""
    fit = plight["fit"]
    if len(plight["troubles"]) == 0 or len(plight["travel"]) == 0 or over_opening(fit):
        return []
    travel = plight["travel"][0]
    width = fit["size"]["x1"] - fit["size"]["x0"]
    found = [setting("width_wanted", wide) for wide in above(widths_to_try(travel), 0.0) if wide <= width]
    found.extend([setting("spacer_wanted", deep) for deep in above(spacers_to_try(travel), fit["size"]["spacer"])])
    found.extend([setting(HANDLE_GAP, gap) for gap in above(gaps_to_try(travel), fit["door"]["handle"]["gap"])])
    return found
