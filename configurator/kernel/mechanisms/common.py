"""What every mechanism shares: the numbers of a fixing, a headrail and a bottom rail.

A ``TAKES`` table names the numbers a mechanism reads: for each its unit (``length``, ``size``: a
length that is never nothing, ``share``, ``count``, ``degree``, ``switch``, ``mass``), its default
(``None``: the family must give it) and what it means. The catalog checks content against these tables.
"""

from configurator.kernel.numbers import about, blend
from configurator.kernel.pieces import solid
from configurator.kernel.shapes import Fit, Piece, Position
from configurator.kernel.tongue import wording

COMMON_TAKES: dict[str, list[str | float | None]] = {
    "cloth_view": [
        "share",
        None,
        wording("share of the view through the cloth as it hangs, gathers and cells included"),
    ],
    "cloth_light": [
        "share",
        None,
        wording("share of the light through the cloth as it hangs, gathers and cells included"),
    ],
    "cloth_mass": [
        "mass",
        0.15,
        wording("mass of the cloth as it lies flat, or of the louvers and slats by area, kg/m2"),
    ],
    "headrail_mass": ["run-mass", 0.6, wording("mass of the headrail, cassette or track by its length, kg/m")],
    "rail_mass": ["run-mass", 0.3, wording("mass of a moving rail or bar by its length, kg/m")],
    "motor_mass": ["weight", 0.0, wording("mass of the motor and its battery; 0 for none, kg")],
    "headrail_height": ["length", None, wording("height of the headrail (for a rod: its diameter)")],
    "headrail_depth": ["length", None, wording("depth of the headrail from its mounting plane")],
    "cassette": [
        "switch",
        0.0,
        wording("1 when the head is a cassette, the smallest of the family's that takes the roll"),
    ],
    "rail_height": ["length", 0.0, wording("height of the bottom rail")],
    "rail_depth": ["length", 0.0, wording("depth of the bottom rail")],
    "overlap_side": ["length", None, wording("wanted overlap past the glass, each side")],
    "overlap_least": ["length", 0.0, wording("least overlap past the glass, each side, that still covers")],
    "overlap_bottom": ["length", None, wording("wanted overlap below the glass")],
    "rise": ["length", 0.0, wording("how far above the glass the top is set where the top rail has the height")],
    "handle_clear": ["length", 6.0, wording("least air beside the handle, and in front of it when hung clear of it")],
    "edge_clear": ["length", 3.0, wording("clearance to the leaf's edges, hinges and stops")],
    "width_least": ["length", 200.0, wording("least width that can be made")],
    "width_most": ["length", 3000.0, wording("greatest width that can be made")],
    "height_most": ["length", 3000.0, wording("greatest height that can be made")],
    "order_step": ["size", 3.175, wording("step in which the workroom takes sizes")],
    "spacer_step": ["size", 6.35, wording("step in which spacers are stocked")],
    "spacer_most": ["length", 38.1, wording("thickest stack of spacers that may be used")],
    "width_wanted": [
        "length",
        0.0,
        wording("greatest width to be ordered on a leaf, set by hand; 0 leaves it to the door"),
    ],
    "spacer_wanted": ["length", 0.0, wording("least spacer behind the fixings on a leaf, set by hand; 0 for none")],
    "over_opening": ["switch", 0.0, wording("1 when hung above the opening instead of on the leaf")],
    "ceiling_fixed": ["switch", 0.0, wording("1 when an over-opening headrail is fixed to the ceiling")],
    "over_side": ["length", 100.0, wording("wanted overlap past the opening, each side, over-opening")],
    "stand_off": ["length", 0.0, wording("least distance from the wall to the headrail's back, over-opening")],
    "floor_clear": ["length", 12.0, wording("distance from the floor to the lower edge, over-opening")],
    "draws_aside": ["switch", 0.0, wording("1 when it draws to the side instead of rising")],
    "lower_moves": ["switch", 1.0, wording("1 when the bottom rail (or the leading edge) travels")],
    "upper_moves": ["switch", 0.0, wording("1 when the upper rail travels too")],
    "tilt_open": ["degree", 0.0, wording("tilt at which louvers or vanes stand edge-on to the view")],
    "tilt_moving": ["degree", 0.0, wording("tilt while raising and lowering")],
    "tilt_closed": ["degree", 0.0, wording("tilt when closed")],
    "tilt_far": ["degree", 0.0, wording("tilt at the other extreme; the same as tilt_closed where nothing tilts")],
    "hand_follows": ["switch", 1.0, wording("1 when the hand takes the bottom rail itself")],
    "hand_drop": ["length", 0.0, wording("how far below the headrail a wand or loop is held")],
    "hand_away": ["switch", 0.0, wording("1 when worked from a remote control or switch")],
    "cord_length": ["length", 0.0, wording("longest accessible free cord")],
    "loop_length": ["length", 0.0, wording("height of a cord or chain loop")],
    "loop_retained": ["switch", 0.0, wording("1 when the loop is held taut by a device fixed to the door or wall")],
    "wired": ["switch", 0.0, wording("1 when a motor needs a lead across the hinge")],
    "hold_down": ["switch", 0.0, wording("1 when hold-downs keep the bottom rail to the leaf")],
    "hold_down_height": ["length", 25.0, wording("height of a hold-down")],
    "hold_down_depth": ["length", 15.0, wording("depth of a hold-down")],
    "hold_down_width": ["size", 15.0, wording("width of a hold-down")],
    "fixing_plate": ["length", 2.0, wording("thickness under a screw's head: of a bracket's or a holder's plate")],
    "bracket_width": ["size", 25.4, wording("width of a bracket or rod holder; its screws lie half of that apart")],
    "bracket_inset": [
        "length",
        50.8,
        wording("from an end to the middle of the first bracket, or to a frame's first screw"),
    ],
    "bracket_spacing": ["size", 914.4, wording("greatest distance between two brackets")],
    "bracket_screws": ["count", 2.0, wording("screws in each bracket or rod holder")],
    "screw_spacing": ["size", 393.7, wording("greatest distance between two screws of a mounting frame")],
    "screw_thread": ["length", 25.4, wording("thread of a fixing screw in the wood, where the leaf is thick enough")],
    "screw_edge": ["length", 6.35, wording("from a screw to the edge of what it holds, of the leaf, of a casing")],
    "bead_clear": ["length", 6.35, wording("from a screw to the outer edge of a glazing bead")],
    "glass_clear": [
        "length",
        19.05,
        wording("from a screw to the glass that shows; the pane's hidden edge lies between"),
    ],
    "cutout_clear": ["length", 0.0, wording("clearance round the handle in a cut-out; 0 means no cut-out")],
}


def whole_width(fit: Fit) -> list[float]:
    """Return the covering's ordered span along x."""
    return [fit["size"]["x0"], fit["size"]["x1"]]


def head_middle(fit: Fit) -> float:
    """Return the z of the middle of the headrail, under which everything hangs."""
    return fit["size"]["z0"] + fit["numbers"]["headrail_depth"] / 2


def headrail_height(fit: Fit) -> float:
    """Return how far the headrail reaches down from the top."""
    return fit["numbers"]["headrail_height"]


def headrail(fit: Fit) -> Piece:
    """Return the headrail: across the whole width, at the top, against the mounting plane."""
    numbers = fit["numbers"]
    size = fit["size"]
    up = [size["y1"] - numbers["headrail_height"], size["y1"]]
    return solid("headrail", whole_width(fit), up, [size["z0"], size["z0"] + numbers["headrail_depth"]])


def moving_rail(fit: Fit, kind: str, top: float) -> Piece:
    """Return a moving rail with its top edge at ``top``, centered under the headrail's depth."""
    numbers = fit["numbers"]
    out = about(head_middle(fit), numbers["rail_depth"])
    return solid(kind, whole_width(fit), [top - numbers["rail_height"], top], out)


def lower_edge(fit: Fit, stack: float, place: Position) -> float:
    """Return the y of the covering's lower edge: from under its ``stack`` to the bottom of its size."""
    return blend(fit["size"]["y1"] - stack, fit["size"]["y0"], place["lower"])


def hanging_drop(fit: Fit) -> float:
    """Return the height between headrail and bottom rail when all is down."""
    numbers = fit["numbers"]
    return fit["size"]["y1"] - fit["size"]["y0"] - numbers["headrail_height"] - numbers["rail_height"]
