"""Louvers that turn in a framed panel, with a cut-out round the handle.

Outside is the mounting frame, built out from the leaf's face as far as the louvers need. In it
is the panel: two stiles, a top and a bottom rail (``headrail_height``, ``rail_height``), perhaps
a divider rail half-way, and the louvers, spread evenly so that the end ones can turn. A louver
whose sweep meets the cut-out is made short, and a small frame closes the panel round it.
"""

from configurator.kernel.mechanisms.blades import (
    LENS_BLADE,
    Blade,
    blade_reach,
    blade_sweep,
    level_blades,
    spread_centers,
)
from configurator.kernel.mechanisms.common import COMMON_TAKES
from configurator.kernel.mechanisms.legs import turning_leg
from configurator.kernel.numbers import about
from configurator.kernel.pieces import cloth_optics, solid, veil
from configurator.kernel.shapes import Box, Fit, Leg, Piece, Position
from configurator.kernel.tongue import wording

LOUVER_PANEL_TAKES: dict[str, list[str | float | None]] = {
    "louver_width": ["size", None, wording("width of a louver")],
    "louver_pitch": [
        "size",
        None,
        wording("greatest distance between louvers; less than their width, so that they close"),
    ],
    "louver_thickness": ["length", None, wording("thickness of a louver at its middle")],
    "panel_depth": ["length", None, wording("thickness of the panel's stiles and rails")],
    "panel_stile": ["length", None, wording("width of the panel's stiles")],
    "frame_width": ["length", 0.0, wording("width of the mounting frame round the panel; 0 for none")],
    "divider_height": ["length", 0.0, wording("height of a divider rail half-way up; 0 for none")],
    "fixing_plate": ["length", 12.7, COMMON_TAKES["fixing_plate"][2]],
    "notch_frame": ["length", 19.0, wording("width of the small frame round a cut-out")],
}


def louver_legs(numbers: dict[str, float]) -> list[Leg]:
    """Return the one leg: the louvers turned."""
    return turning_leg(numbers, "louvers", ["louver"], [0.0])


def panel_light(fit: Fit) -> Box:
    """Return the opening that the louvers fill, divider included."""
    numbers = fit["numbers"]
    size = fit["size"]
    side = numbers["frame_width"] + numbers["panel_stile"]
    return {
        "x0": size["x0"] + side,
        "x1": size["x1"] - side,
        "y0": size["y0"] + numbers["frame_width"] + numbers["rail_height"],
        "y1": size["y1"] - numbers["frame_width"] - numbers["headrail_height"],
    }


def louver_bays(fit: Fit) -> list[list[float]]:
    """Return the ``[low, high]`` bays of louvers: one, or two with a divider between."""
    light = panel_light(fit)
    divider = fit["numbers"]["divider_height"]
    if divider <= 0:
        return [[light["y0"], light["y1"]]]
    middle = (light["y0"] + light["y1"]) / 2
    return [[light["y0"], middle - divider / 2], [middle + divider / 2, light["y1"]]]


def louver_swing(numbers: dict[str, float]) -> float:
    """Return the diameter of the circle in which a louver turns."""
    return blade_sweep(numbers["louver_width"], numbers["louver_thickness"])


def panel_span(fit: Fit) -> list[float]:
    """Return the panel's thickness along z."""
    return [fit["size"]["z0"], fit["size"]["z0"] + fit["numbers"]["panel_depth"]]


def louver_rows(fit: Fit) -> list[list[list[float]]]:
    """Return for each bay its louvers as ``[y, x1]``, lowest first: center height and latch-side end."""
    numbers = fit["numbers"]
    hole = fit["size"]["cutout"]
    sweep = louver_swing(numbers)
    low = hole["y0"] - numbers["notch_frame"] - sweep / 2
    high = hole["y1"] + numbers["notch_frame"] + sweep / 2
    whole = panel_light(fit)["x1"]
    short = min(whole, hole["x0"] - numbers["notch_frame"]) if hole["x1"] > hole["x0"] else whole
    rows: list[list[list[float]]] = []
    for bay in louver_bays(fit):
        centers = spread_centers(bay[0], bay[1], numbers["louver_pitch"], sweep)
        if short < whole:
            rows.append([[y, short if y > low and y < high else whole] for y in centers])
        else:
            rows.append([[y, whole] for y in centers])
    return rows


def without_hole(piece: Piece, hole: Box) -> list[Piece]:
    """Return what is left of an opaque piece when the cut-out is taken away."""
    if piece["x1"] <= hole["x0"] or piece["x0"] >= hole["x1"]:
        return [piece]
    if piece["y1"] <= hole["y0"] or piece["y0"] >= hole["y1"]:
        return [piece]
    low = max(piece["y0"], hole["y0"])
    high = min(piece["y1"], hole["y1"])
    across = [piece["x0"], piece["x1"]]
    rests = [
        [across, [piece["y0"], low]],
        [across, [high, piece["y1"]]],
        [[piece["x0"], hole["x0"]], [low, high]],
        [[hole["x1"], piece["x1"]], [low, high]],
    ]
    parts: list[Piece] = []
    for rest in rests:
        if rest[0][1] > rest[0][0] and rest[1][1] > rest[1][0]:
            parts.append(solid(piece["kind"], rest[0], rest[1], [piece["z0"], piece["z1"]]))
    return parts


def mounting_frame(fit: Fit) -> list[Piece]:
    """Return the frame round the panel, built out from the leaf's face; nothing where there is none."""
    size = fit["size"]
    frame = fit["numbers"]["frame_width"]
    if frame <= 0:
        return []
    out = [size["z0"] - size["spacer"], panel_span(fit)[1]]
    inner = [size["x0"] + frame, size["x1"] - frame]
    whole = [size["y0"], size["y1"]]
    return [
        solid("frame", [size["x0"], inner[0]], whole, out),
        solid("frame", [inner[1], size["x1"]], whole, out),
        solid("frame", inner, [size["y0"], size["y0"] + frame], out),
        solid("frame", inner, [size["y1"] - frame, size["y1"]], out),
    ]


def panel_frame(fit: Fit) -> list[Piece]:
    """Return the panel's stiles, rails and divider, before the cut-out."""
    light = panel_light(fit)
    size = fit["size"]
    frame = fit["numbers"]["frame_width"]
    out = panel_span(fit)
    up = [size["y0"] + frame, size["y1"] - frame]
    across = [light["x0"], light["x1"]]
    parts = [
        solid("panel-stile", [size["x0"] + frame, light["x0"]], up, out),
        solid("panel-stile", [light["x1"], size["x1"] - frame], up, out),
        solid("panel-rail", across, [up[0], light["y0"]], out),
        solid("panel-rail", across, [light["y1"], up[1]], out),
    ]
    bays = louver_bays(fit)
    if len(bays) > 1:
        parts.append(solid("panel-rail", across, [bays[0][1], bays[1][0]], out))
    return parts


def notch_reach(fit: Fit, bay: list[float], row: list[list[float]]) -> list[float]:
    """Return how far down and up the cut-out's frame reaches in a bay: to the next whole louver, or the bay's end."""
    hole = fit["size"]["cutout"]
    whole = panel_light(fit)["x1"]
    half = louver_swing(fit["numbers"]) / 2
    low = bay[0]
    high = bay[1]
    for louver in row:
        if louver[1] >= whole and louver[0] < hole["y0"]:
            low = max(low, louver[0] + half)
        if louver[1] >= whole and louver[0] > hole["y1"]:
            high = min(high, louver[0] - half)
    return [low, high]


def notch_bars(fit: Fit) -> list[Piece]:
    """Return the small frame round the cut-out; its bars reach to the next whole louver."""
    hole = fit["size"]["cutout"]
    whole = panel_light(fit)["x1"]
    x0 = hole["x0"] - fit["numbers"]["notch_frame"]
    if hole["x1"] <= hole["x0"] or x0 >= whole:
        return []
    out = panel_span(fit)
    bars: list[Piece] = []
    bays = louver_bays(fit)
    rows = louver_rows(fit)
    for i in range(len(bays)):
        inner = [max(bays[i][0], hole["y0"]), min(bays[i][1], hole["y1"])]
        if inner[1] <= inner[0]:
            continue
        outer = notch_reach(fit, bays[i], rows[i])
        if inner[0] > outer[0]:
            bars.append(solid("frame", [x0, whole], [outer[0], inner[0]], out))
        if outer[1] > inner[1]:
            bars.append(solid("frame", [x0, whole], [inner[1], outer[1]], out))
        bars.append(solid("frame", [x0, hole["x0"]], inner, out))
    return bars


def louver_blade(fit: Fit, tilt: float) -> Blade:
    """Return what all louvers are at a tilt."""
    numbers = fit["numbers"]
    return {
        "kind": "louver",
        "corners": LENS_BLADE,
        "width": numbers["louver_width"],
        "thickness": numbers["louver_thickness"],
        "tilt": tilt,
        "through": cloth_optics(numbers),
    }


def louver_pieces(fit: Fit, x0: float, row: list[list[float]], tilt: float) -> list[Piece]:
    """Return the louvers of a bay about the middle of the panel's thickness, each from ``x0`` to its end."""
    out = panel_span(fit)
    spans = [[x0, one[1], one[0]] for one in row if one[1] > x0]
    return level_blades(louver_blade(fit, tilt), spans, (out[0] + out[1]) / 2)


def louver_bounds(fit: Fit, x0: float, row: list[list[float]], tilt: float) -> list[Piece]:
    """Return the boxes that bound a bay's louvers: one for each run of equal length."""
    blade = louver_blade(fit, tilt)
    half = blade_reach(blade, True) / 2
    panel = panel_span(fit)
    out = about((panel[0] + panel[1]) / 2, blade_reach(blade, False))
    bounds: list[Piece] = []
    start = 0
    for i in range(len(row)):
        if i == len(row) - 1 or row[i + 1][1] != row[i][1]:
            if row[i][1] > x0:
                up = [row[start][0] - half, row[i][0] + half]
                bounds.append(veil("louver", [x0, row[i][1]], up, out, blade["through"]))
            start = i + 1
    return bounds


def framed_panel(fit: Fit) -> list[Piece]:
    """Return the frame and the panel with its cut-out, which stay as the louvers turn."""
    parts = mounting_frame(fit)
    parts.extend(panel_frame(fit))
    pieces: list[Piece] = []
    for part in parts:
        pieces.extend(without_hole(part, fit["size"]["cutout"]))
    pieces.extend(notch_bars(fit))
    return pieces


def louver_panel(fit: Fit, place: Position) -> list[Piece]:
    """Return every louver at its tilt."""
    pieces: list[Piece] = []
    x0 = panel_light(fit)["x0"]
    for row in louver_rows(fit):
        if place["coarse"]:
            pieces.extend(louver_bounds(fit, x0, row, place["tilt"]))
        else:
            pieces.extend(louver_pieces(fit, x0, row, place["tilt"]))
    return pieces
