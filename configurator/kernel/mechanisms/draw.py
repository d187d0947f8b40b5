"""Pleated cloth, upright vanes or flat sliding panels that draw to the side of the opening.

Three kinds share one movement along x. ``panel_count`` from 1 means flat panels, each on a
track of its own; else ``vane_width`` above 0 means vanes that turn about their upright axis; else
the cloth is pleated. All units keep equal distances as they draw, so the leading edge moves
evenly. At ``lower`` 0 they stand stacked at the side, at 1 they are drawn across.
"""

from configurator.kernel.mechanisms.blades import upright_blade
from configurator.kernel.mechanisms.common import COMMON_TAKES, headrail
from configurator.kernel.mechanisms.gather import GATHER_TAKES
from configurator.kernel.numbers import blend, step_up
from configurator.kernel.pieces import box, mirrored, solid
from configurator.kernel.shapes import Piece, Position, Size

DRAW_TAKES: dict[str, list[str | float | None]] = {
    "split": ["switch", 0.0, "1 when half draws to each side, 0 when all draws to the hinge side"],
    "unit_pitch": ["size", 100.0, "greatest width that one pleat or vane covers when drawn across"],
    "unit_stacked": ["length", 20.0, "width that one pleat, vane or panel adds to the stack"],
    "depth_drawn": ["length", 50.0, "depth of the pleats when drawn across"],
    "depth_stacked": ["length", 120.0, "depth of the pleats when stacked"],
    "returns": ["switch", 0.0, "1 when the cloth turns back from its outer edge to the wall"],
    "vane_width": ["length", 0.0, "width of an upright vane; 0 for pleated cloth"],
    "vane_thickness": ["length", 1.0, "thickness of an upright vane"],
    "panel_count": ["count", 0.0, "flat panels to each side; 0 for pleated cloth or vanes"],
    "panel_overlap": ["length", 50.0, "overlap of two flat panels when drawn across"],
    "panel_thickness": ["length", 2.0, "thickness of a flat panel"],
    "fullness": GATHER_TAKES["fullness"],
    "bolt_width": GATHER_TAKES["bolt_width"],
    "side_allowance": GATHER_TAKES["side_allowance"],
    "cut_allowance": GATHER_TAKES["cut_allowance"],
    "pattern_repeat": GATHER_TAKES["pattern_repeat"],
    "draws_aside": ["switch", 1.0, COMMON_TAKES["draws_aside"][2]],
    "over_opening": ["switch", 1.0, COMMON_TAKES["over_opening"][2]],
    "layer_depth": ["length", 15.0, "distance between the tracks of two flat panels"],
}

# The strip of cloth drawn in a plan: thick enough to be seen, thin against a pleat.
PLEAT_STRIP = 4.0


def draw_edge(size: Size, width: float, stack: float, place: Position) -> float:
    """Return the x of the leading edge of what draws to the hinge side."""
    return size["x0"] + blend(min(stack, width), width, place["lower"])


def draw_count(numbers: dict[str, float], width: float) -> int:
    """Return how many pleats or vanes cover a width, at least one."""
    return max(1, int(step_up(width / numbers["unit_pitch"], 1.0)))


def draw_middle(numbers: dict[str, float], size: Size) -> float:
    """Return the z of the middle of the track, under which the cloth hangs."""
    return size["z0"] + numbers["headrail_depth"] / 2


def pleated_part(numbers: dict[str, float], size: Size, width: float, place: Position) -> list[Piece]:
    """Return pleated cloth drawn from the hinge side, with its return."""
    count = draw_count(numbers, width)
    x0 = size["x0"]
    x1 = draw_edge(size, width, count * numbers["unit_stacked"], place)
    top = size["y1"] - numbers["headrail_height"]
    middle = draw_middle(numbers, size)
    depth = blend(numbers["depth_stacked"], numbers["depth_drawn"], place["lower"])
    z0 = middle - depth / 2
    z1 = middle + depth / 2
    view = numbers["cloth_view"]
    light = numbers["cloth_light"]
    cloth = box("covering", "pleat", x0, x1, size["y0"], top, z0, z1, view, light)
    pitch = (x1 - x0) / count
    strip = min(PLEAT_STRIP, depth / 2)
    cloth["axis"] = "y"
    cloth["count"] = count
    cloth["pitch"] = pitch
    cloth["outline"] = [
        [x0, z0],
        [x0 + pitch / 2, z1 - strip],
        [x0 + pitch, z0],
        [x0 + pitch, z0 + strip],
        [x0 + pitch / 2, z1],
        [x0, z0 + strip],
    ]
    parts = [cloth]
    if numbers["returns"] > 0 and size["spacer"] > 0:
        wall = size["z0"] - size["spacer"]
        parts.append(box("covering", "return", x0, x0 + PLEAT_STRIP, size["y0"], top, wall, size["z0"], view, light))
    return parts


def vane_part(numbers: dict[str, float], size: Size, width: float, place: Position) -> list[Piece]:
    """Return upright vanes drawn from the hinge side."""
    count = draw_count(numbers, width)
    x0 = size["x0"]
    edge = draw_edge(size, width, count * numbers["unit_stacked"], place)
    top = size["y1"] - numbers["headrail_height"]
    pitch = (edge - x0) / count

    def vane(i: int) -> Piece:
        return upright_blade(
            "vane",
            x0 + (i + 0.5) * pitch,
            size["y0"],
            top,
            draw_middle(numbers, size),
            numbers["vane_width"],
            numbers["vane_thickness"],
            place["tilt"],
            numbers["cloth_view"],
            numbers["cloth_light"],
        )

    if place["coarse"]:
        return [vane_bounds(vane(0), vane(count - 1))]
    return [vane(i) for i in range(count)]


def vane_bounds(first: Piece, last: Piece) -> Piece:
    """Return the box that bounds equal vanes standing in a row."""
    return box(
        "covering",
        "vane",
        first["x0"],
        last["x1"],
        first["y0"],
        first["y1"],
        first["z0"],
        first["z1"],
        first["view"],
        first["light"],
    )


def flat_part(numbers: dict[str, float], size: Size, width: float, place: Position) -> list[Piece]:
    """Return flat panels drawn from the hinge side, the outermost on the track nearest the wall."""
    count = int(numbers["panel_count"])
    overlaps = (count - 1) * numbers["panel_overlap"]
    wide = (width + overlaps) / count
    step = blend(numbers["unit_stacked"], wide - numbers["panel_overlap"], place["lower"])
    half = numbers["panel_thickness"] / 2
    bar = numbers["rail_depth"] / 2
    low = size["y0"] + numbers["rail_height"]
    top = size["y1"] - numbers["headrail_height"]
    first = draw_middle(numbers, size) - (count - 1) * numbers["layer_depth"] / 2
    parts: list[Piece] = []
    for i in range(count):
        x0 = size["x0"] + i * step
        z = first + i * numbers["layer_depth"]
        view = numbers["cloth_view"]
        light = numbers["cloth_light"]
        parts.append(box("covering", "fabric", x0, x0 + wide, low, top, z - half, z + half, view, light))
        if numbers["rail_height"] > 0:
            parts.append(solid("bottom-rail", x0, x0 + wide, size["y0"], low, z - bar, z + bar))
    return parts


def draw_part(numbers: dict[str, float], size: Size, width: float, place: Position) -> list[Piece]:
    """Return what draws to the hinge side and covers ``width`` when drawn across."""
    if numbers["panel_count"] >= 1:
        return flat_part(numbers, size, width, place)
    if numbers["vane_width"] > 0:
        return vane_part(numbers, size, width, place)
    return pleated_part(numbers, size, width, place)


def draw(numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return the track or rod and what hangs from it, to one side or to both."""
    width = size["x1"] - size["x0"]
    pieces = [headrail(numbers, size)]
    if numbers["split"] > 0:
        part = draw_part(numbers, size, width / 2, place)
        pieces.extend(part)
        pieces.extend([mirrored(piece, size["x0"] + size["x1"]) for piece in part])
    else:
        pieces.extend(draw_part(numbers, size, width, place))
    return pieces
