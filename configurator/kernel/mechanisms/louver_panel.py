"""Louvers that turn in a framed panel, with a cut-out round the handle.

Outside is the mounting frame, built out from the leaf's face as far as the louvers need. In it
is the panel: two stiles, a top and a bottom rail (``headrail_height``, ``rail_height``), perhaps
a divider rail half-way, and the louvers, spread evenly so that the end ones can turn. A louver
whose sweep meets the cut-out is made short, and a small frame closes the panel round it.
"""

from configurator.kernel.mechanisms.blades import LENS_BLADE, blade_deep, blade_sweep, level_blades, spread_centres
from configurator.kernel.pieces import box, solid
from configurator.kernel.shapes import Box, Piece, Position, Size

LOUVER_PANEL_TAKES: dict[str, list[str | float | None]] = {
    "louver_width": ["size", None, "width of a louver"],
    "louver_pitch": ["size", None, "greatest distance between louvers; less than their width, so that they close"],
    "louver_thickness": ["length", None, "thickness of a louver at its middle"],
    "panel_depth": ["length", None, "thickness of the panel's stiles and rails"],
    "panel_stile": ["length", None, "width of the panel's stiles"],
    "frame_width": ["length", 0.0, "width of the mounting frame round the panel; 0 for none"],
    "divider_height": ["length", 0.0, "height of a divider rail half-way up; 0 for none"],
    "notch_frame": ["length", 19.0, "width of the small frame round a cut-out"],
}


def panel_light(numbers: dict[str, float], size: Size) -> Box:
    """Return the opening that the louvers fill, divider included."""
    side = numbers["frame_width"] + numbers["panel_stile"]
    return {
        "x0": size["x0"] + side,
        "x1": size["x1"] - side,
        "y0": size["y0"] + numbers["frame_width"] + numbers["rail_height"],
        "y1": size["y1"] - numbers["frame_width"] - numbers["headrail_height"],
    }


def louver_bays(numbers: dict[str, float], light: Box) -> list[list[float]]:
    """Return the ``[low, high]`` bays of louvers: one, or two with a divider between."""
    divider = numbers["divider_height"]
    if divider <= 0:
        return [[light["y0"], light["y1"]]]
    middle = (light["y0"] + light["y1"]) / 2
    return [[light["y0"], middle - divider / 2], [middle + divider / 2, light["y1"]]]


def louver_swing(numbers: dict[str, float]) -> float:
    """Return the diameter of the circle in which a louver turns."""
    return blade_sweep(numbers["louver_width"], numbers["louver_thickness"])


def louver_rows(numbers: dict[str, float], size: Size) -> list[list[list[float]]]:
    """Return for each bay its louvers as ``[y, x1]``, lowest first: centre height and latch-side end."""
    light = panel_light(numbers, size)
    hole = size["cutout"]
    sweep = louver_swing(numbers)
    low = hole["y0"] - numbers["notch_frame"] - sweep / 2
    high = hole["y1"] + numbers["notch_frame"] + sweep / 2
    whole = light["x1"]
    short = min(whole, hole["x0"] - numbers["notch_frame"]) if hole["x1"] > hole["x0"] else whole
    rows: list[list[list[float]]] = []
    for bay in louver_bays(numbers, light):
        centres = spread_centres(bay[0], bay[1], numbers["louver_pitch"], sweep)
        rows.append([[y, short if y > low and y < high else whole] for y in centres])
    return rows


def without_hole(piece: Piece, hole: Box) -> list[Piece]:
    """Return what is left of an opaque piece when the cut-out is taken away."""
    if piece["x1"] <= hole["x0"] or piece["x0"] >= hole["x1"]:
        return [piece]
    if piece["y1"] <= hole["y0"] or piece["y0"] >= hole["y1"]:
        return [piece]
    parts: list[Piece] = []
    low = max(piece["y0"], hole["y0"])
    high = min(piece["y1"], hole["y1"])

    def keep(x0: float, x1: float, y0: float, y1: float) -> None:
        if x1 > x0 and y1 > y0:
            parts.append(solid(piece["kind"], x0, x1, y0, y1, piece["z0"], piece["z1"]))

    keep(piece["x0"], piece["x1"], piece["y0"], low)
    keep(piece["x0"], piece["x1"], high, piece["y1"])
    keep(piece["x0"], hole["x0"], low, high)
    keep(hole["x1"], piece["x1"], low, high)
    return parts


def panel_frame(numbers: dict[str, float], size: Size) -> list[Piece]:
    """Return mounting frame, stiles, rails and divider, before the cut-out."""
    light = panel_light(numbers, size)
    frame = numbers["frame_width"]
    z0 = size["z0"]
    z1 = z0 + numbers["panel_depth"]
    face = z0 - size["spacer"]
    x0 = size["x0"] + frame
    x1 = size["x1"] - frame
    y0 = size["y0"] + frame
    y1 = size["y1"] - frame
    parts: list[Piece] = []
    if frame > 0:
        parts.append(solid("frame", size["x0"], x0, size["y0"], size["y1"], face, z1))
        parts.append(solid("frame", x1, size["x1"], size["y0"], size["y1"], face, z1))
        parts.append(solid("frame", x0, x1, size["y0"], y0, face, z1))
        parts.append(solid("frame", x0, x1, y1, size["y1"], face, z1))
    parts.append(solid("panel-stile", x0, light["x0"], y0, y1, z0, z1))
    parts.append(solid("panel-stile", light["x1"], x1, y0, y1, z0, z1))
    parts.append(solid("panel-rail", light["x0"], light["x1"], y0, light["y0"], z0, z1))
    parts.append(solid("panel-rail", light["x0"], light["x1"], light["y1"], y1, z0, z1))
    bays = louver_bays(numbers, light)
    if len(bays) > 1:
        parts.append(solid("panel-rail", light["x0"], light["x1"], bays[0][1], bays[1][0], z0, z1))
    return parts


def notch_bars(numbers: dict[str, float], size: Size, rows: list[list[list[float]]]) -> list[Piece]:
    """Return the small frame round the cut-out; its bars reach to the next whole louver of the rows."""
    hole = size["cutout"]
    light = panel_light(numbers, size)
    x0 = hole["x0"] - numbers["notch_frame"]
    if hole["x1"] <= hole["x0"] or x0 >= light["x1"]:
        return []
    half = louver_swing(numbers) / 2
    z0 = size["z0"]
    z1 = z0 + numbers["panel_depth"]
    bars: list[Piece] = []
    bays = louver_bays(numbers, light)
    for i in range(len(bays)):
        low = bays[i][0]
        high = bays[i][1]
        inner_low = max(low, hole["y0"])
        inner_high = min(high, hole["y1"])
        if inner_high <= inner_low:
            continue
        for louver in rows[i]:
            if louver[1] >= light["x1"] and louver[0] < inner_low:
                low = max(low, louver[0] + half)
            if louver[1] >= light["x1"] and louver[0] > inner_high:
                high = min(high, louver[0] - half)
        if inner_low > low:
            bars.append(solid("frame", x0, light["x1"], low, inner_low, z0, z1))
        if high > inner_high:
            bars.append(solid("frame", x0, light["x1"], inner_high, high, z0, z1))
        bars.append(solid("frame", x0, hole["x0"], inner_low, inner_high, z0, z1))
    return bars


def louver_pieces(numbers: dict[str, float], size: Size, x0: float, row: list[list[float]], tilt: float) -> list[Piece]:
    """Return the louvers of a bay about the middle of the panel's thickness, each from ``x0`` to its end."""
    return level_blades(
        "louver",
        LENS_BLADE,
        [[x0, one[1], one[0]] for one in row if one[1] > x0],
        size["z0"] + numbers["panel_depth"] / 2,
        numbers["louver_width"],
        numbers["louver_thickness"],
        tilt,
        numbers["cloth_view"],
        numbers["cloth_light"],
    )


def louver_bounds(numbers: dict[str, float], size: Size, x0: float, row: list[list[float]], tilt: float) -> list[Piece]:
    """Return the boxes that bound a bay's louvers: one for each run of equal length."""
    half = louver_swing(numbers) / 2
    middle = size["z0"] + numbers["panel_depth"] / 2
    deep = blade_deep(numbers["louver_width"], numbers["louver_thickness"], tilt) / 2
    view = numbers["cloth_view"]
    light = numbers["cloth_light"]
    bounds: list[Piece] = []
    start = 0
    for i in range(len(row)):
        if i == len(row) - 1 or row[i + 1][1] != row[i][1]:
            if row[i][1] > x0:
                y0 = row[start][0] - half
                y1 = row[i][0] + half
                bounds.append(
                    box("covering", "louver", x0, row[i][1], y0, y1, middle - deep, middle + deep, view, light)
                )
            start = i + 1
    return bounds


def louver_panel(numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return the frame, the panel with its cut-out and every louver at its tilt."""
    rows = louver_rows(numbers, size)
    pieces: list[Piece] = []
    for part in panel_frame(numbers, size):
        pieces.extend(without_hole(part, size["cutout"]))
    pieces.extend(notch_bars(numbers, size, rows))
    x0 = panel_light(numbers, size)["x0"]
    for row in rows:
        if place["coarse"]:
            pieces.extend(louver_bounds(numbers, size, x0, row, place["tilt"]))
        else:
            pieces.extend(louver_pieces(numbers, size, x0, row, place["tilt"]))
    return pieces
