"""Pleated cloth, upright vanes or flat sliding panels that draw to the side of the opening.

Three kinds share one movement along x. ``panel_count`` from 1 means flat panels, each on a
track of its own; else ``vane_width`` above 0 means vanes that turn about their upright axis; else
the cloth is pleated. All units keep equal distances as they draw, so the leading edge moves
evenly. At ``lower`` 0 they stand stacked at the side, at 1 they are drawn across.
"""

from configurator.kernel.door.obstacles import wall_face
from configurator.kernel.mechanisms.blades import Blade, blade_reach, flat_blade, upright_blade
from configurator.kernel.mechanisms.common import COMMON_TAKES, head_middle, headrail
from configurator.kernel.mechanisms.gather import GATHER_TAKES
from configurator.kernel.mechanisms.legs import DRAWN_WORDS, blade_peaks, lower_leg, turning_leg
from configurator.kernel.numbers import about, blend, step_up
from configurator.kernel.pieces import cloth_optics, mirrored, pushed, solid, veil
from configurator.kernel.shapes import Fit, Leg, Piece, Position
from configurator.kernel.tongue import wording

DRAW_TAKES: dict[str, list[str | float | None]] = {
    "split": ["switch", 0.0, wording("1 when half draws to each side, 0 when all draws to the hinge side")],
    "unit_pitch": ["size", 100.0, wording("greatest width that one pleat or vane covers when drawn across")],
    "unit_stacked": ["length", 20.0, wording("width that a pleat's carrier, a vane or a panel adds to the stack")],
    "cloth_layer": [
        "length",
        15.0,
        wording("width that each layer of gathered cloth takes in the stack, its air included"),
    ],
    "lining_layer": ["length", 5.0, wording("width that a lining adds to each layer in the stack")],
    "meeting_lap": ["length", 0.0, wording("how far the two halves of gathered cloth lap where they meet")],
    "depth_drawn": ["length", 50.0, wording("depth of the pleats when drawn across")],
    "depth_stacked": ["size", 120.0, wording("depth of the pleats when stacked")],
    "returns": ["switch", 0.0, wording("1 when the cloth turns back from its outer edge to the wall")],
    "vane_width": ["length", 0.0, wording("width of an upright vane; 0 for pleated cloth")],
    "vane_thickness": ["length", 1.0, wording("thickness of an upright vane")],
    "panel_count": ["count", 0.0, wording("flat panels to each side; 0 for pleated cloth or vanes")],
    "panel_overlap": ["length", 50.0, wording("overlap of two flat panels when drawn across")],
    "panel_thickness": ["length", 2.0, wording("thickness of a flat panel")],
    **GATHER_TAKES,
    "draws_aside": ["switch", 1.0, COMMON_TAKES["draws_aside"][2]],
    "over_opening": ["switch", 1.0, COMMON_TAKES["over_opening"][2]],
    "layer_depth": ["length", 15.0, wording("distance between the tracks of two flat panels")],
}

# The strip of cloth drawn in a plan: thick enough to be seen, thin against a pleat.
PLEAT_STRIP = 4.0


def draw_legs(numbers: dict[str, float]) -> list[Leg]:
    """Return the legs: drawn across, and for vanes turned."""
    held = "fabric" if numbers["panel_count"] >= 1 else "vane" if numbers["vane_width"] > 0 else "pleat"
    drawn = lower_leg(numbers, DRAWN_WORDS, [held])
    drawn["way"] = "aside"
    drawn["halves"] = 2 if numbers["split"] > 0 else 1
    legs = [drawn]
    peaks = blade_peaks(numbers["vane_width"], numbers["vane_thickness"])
    legs.extend(turning_leg(numbers, "vanes", ["vane"], peaks))
    return legs


def draw_edge(fit: Fit, width: float, stack: float, place: Position) -> float:
    """Return the x of the leading edge of what draws to the hinge side."""
    return fit["size"]["x0"] + blend(min(stack, width), width, place["lower"])


def draw_count(numbers: dict[str, float], width: float) -> int:
    """Return how many pleats or vanes cover a width, at least one."""
    return max(1, int(step_up(width / numbers["unit_pitch"], 1.0)))


def stack_layer(numbers: dict[str, float]) -> float:
    """Return the width that each layer of gathered cloth takes in the stack, with its lining."""
    return numbers["cloth_layer"] + (numbers["lining_layer"] if numbers["lined"] > 0 else 0.0)


def pleat_stack(numbers: dict[str, float], pitch: float) -> float:
    """Return the width of one pleat in the stack: its carrier, and its cloth folded to the stack's depth."""
    layers = pitch * numbers["fullness"] / numbers["depth_stacked"]
    return numbers["unit_stacked"] + layers * stack_layer(numbers)


def hanging_span(fit: Fit) -> list[float]:
    """Return the heights between which cloth or vanes hang."""
    return [fit["size"]["y0"], fit["size"]["y1"] - fit["numbers"]["headrail_height"]]


def pleated_part(fit: Fit, width: float, place: Position) -> list[Piece]:
    """Return pleated cloth drawn from the hinge side."""
    numbers = fit["numbers"]
    size = fit["size"]
    count = draw_count(numbers, width)
    x0 = size["x0"]
    x1 = draw_edge(fit, width, count * pleat_stack(numbers, width / count), place)
    depth = blend(numbers["depth_stacked"], numbers["depth_drawn"], place["lower"])
    out = about(head_middle(fit), depth)
    through = pushed(cloth_optics(numbers), width, x1 - x0)
    cloth = veil("pleat", [x0, x1], hanging_span(fit), out, through)
    pitch = (x1 - x0) / count
    strip = min(PLEAT_STRIP, depth / 2)
    cloth["axis"] = "y"
    cloth["count"] = count
    cloth["pitch"] = pitch
    cloth["outline"] = [
        [x0, out[0]],
        [x0 + pitch / 2, out[1] - strip],
        [x0 + pitch, out[0]],
        [x0 + pitch, out[0] + strip],
        [x0 + pitch / 2, out[1]],
        [x0, out[0] + strip],
    ]
    return [cloth]


def return_piece(fit: Fit, x0: float) -> Piece:
    """Return the cloth that turns back from an outer edge: to the wall, or to the casing where that is behind it."""
    across = [x0, x0 + PLEAT_STRIP]
    front = fit["size"]["z0"]
    out = [min(wall_face(fit["door"], across), front), front]
    return veil("return", across, hanging_span(fit), out, cloth_optics(fit["numbers"]))


def return_pieces(fit: Fit) -> list[Piece]:
    """Return the returns of pleated cloth, one at each outer edge; none of what has no such cloth."""
    numbers = fit["numbers"]
    size = fit["size"]
    if numbers["returns"] == 0 or size["spacer"] == 0 or numbers["panel_count"] >= 1 or numbers["vane_width"] > 0:
        return []
    returns = [return_piece(fit, size["x0"])]
    if numbers["split"] > 0:
        returns.append(return_piece(fit, size["x1"] - PLEAT_STRIP))
    return returns


def vane_part(fit: Fit, width: float, place: Position) -> list[Piece]:
    """Return upright vanes drawn from the hinge side."""
    numbers = fit["numbers"]
    count = draw_count(numbers, width)
    x0 = fit["size"]["x0"]
    pitch = (draw_edge(fit, width, count * numbers["unit_stacked"], place) - x0) / count
    blade = flat_blade("vane", fit["numbers"], place["tilt"])
    up = hanging_span(fit)
    middle = head_middle(fit)
    if place["coarse"]:
        return [vane_bounds(blade, [x0 + 0.5 * pitch, x0 + (count - 0.5) * pitch], up, middle)]
    return [upright_blade(blade, x0 + (i + 0.5) * pitch, up, middle) for i in range(count)]


def vane_bounds(blade: Blade, middles: list[float], up: list[float], z: float) -> Piece:
    """Return the box that bounds equal vanes in a row, of which the outermost stand at the given middles."""
    half = blade_reach(blade, True) / 2
    out = about(z, blade_reach(blade, False))
    return veil(blade["kind"], [middles[0] - half, middles[1] + half], up, out, blade["through"])


def flat_width(numbers: dict[str, float], width: float) -> float:
    """Return the width of each flat panel of those that cover a width."""
    count = numbers["panel_count"]
    return (width + (count - 1) * numbers["panel_overlap"]) / count


def flat_part(fit: Fit, width: float, place: Position) -> list[Piece]:
    """Return flat panels drawn from the hinge side, the outermost on the track nearest the wall."""
    numbers = fit["numbers"]
    size = fit["size"]
    count = int(numbers["panel_count"])
    wide = flat_width(numbers, width)
    step = blend(numbers["unit_stacked"], wide - numbers["panel_overlap"], place["lower"])
    low = size["y0"] + numbers["rail_height"]
    top = size["y1"] - numbers["headrail_height"]
    first = head_middle(fit) - (count - 1) * numbers["layer_depth"] / 2
    parts: list[Piece] = []
    for i in range(count):
        x0 = size["x0"] + i * step
        z = first + i * numbers["layer_depth"]
        out = about(z, numbers["panel_thickness"])
        parts.append(veil("fabric", [x0, x0 + wide], [low, top], out, cloth_optics(numbers)))
        if numbers["rail_height"] > 0:
            bar = about(z, numbers["rail_depth"])
            parts.append(solid("bottom-rail", [x0, x0 + wide], [size["y0"], low], bar))
    return parts


def draw_part(fit: Fit, width: float, place: Position) -> list[Piece]:
    """Return what draws to the hinge side and covers ``width`` when drawn across."""
    if fit["numbers"]["panel_count"] >= 1:
        return flat_part(fit, width, place)
    if fit["numbers"]["vane_width"] > 0:
        return vane_part(fit, width, place)
    return pleated_part(fit, width, place)


def draw(fit: Fit, place: Position) -> list[Piece]:
    """Return the track or rod and what hangs from it, to one side or to both."""
    size = fit["size"]
    width = size["x1"] - size["x0"]
    pieces = [headrail(fit)]
    if fit["numbers"]["split"] > 0:
        part = draw_part(fit, width / 2, place)
        pieces.extend(part)
        pieces.extend([mirrored(piece, size["x0"] + size["x1"]) for piece in part])
    else:
        pieces.extend(draw_part(fit, width, place))
    pieces.extend(return_pieces(fit))
    return pieces
