"""One invented covering of each mechanism for the drawings' tests."""

from configurator.kernel.looks import no_look
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.mechanisms.common import COMMON_TAKES
from configurator.kernel.shapes import Cassette, Family

CASSETTES: list[Cassette] = [
    {"name": "small", "roll": 46.0, "height": 58.0, "depth": 56.0},
    {"name": "large", "roll": 70.0, "height": 80.0, "depth": 78.0},
]
RAILS = {"headrail_height": 38.0, "headrail_depth": 44.0, "rail_height": 25.0, "rail_depth": 22.0}
ROLL = RAILS | {"tube": 28.0, "cloth_thickness": 0.4, "rise": 80.0, "rail_height": 28.0, "rail_depth": 10.0}
COMMON = {"overlap_side": 38.1, "overlap_bottom": 38.1, "cloth_view": 0.0, "cloth_light": 0.3, "rise": 60.0}
OWN: dict[str, tuple[str, str, dict[str, float]]] = {
    "cellular": (
        "Cellular shade",
        "accordion",
        RAILS | {"pitch": 19.0, "closed_thickness": 1.9, "cell_depth": 19.0, "upper_moves": 1.0},
    ),
    "roller": ("Roller shade", "rolled", ROLL | {"cassette": 1.0, "cloth_view": 0.05}),
    "open roll": ("Roller shade, open roll", "rolled", ROLL | {"cloth_view": 0.05}),
    "soft fold": (
        "Soft-fold shade",
        "soft-fold",
        RAILS
        | {
            "fold_drop": 150.0,
            "fold_thickness": 18.0,
            "proud_depth": 24.0,
            "gathered_depth": 45.0,
            "last_fold": 110.0,
        },
    ),
    "nested fold": ("Nested-fold shade", "nested-fold", RAILS | {"fold_height": 190.0, "layer_thickness": 3.0}),
    "vane roll": (
        "Vane sheer shade",
        "vane-roll",
        ROLL
        | {
            "cassette": 1.0,
            "vane_width": 76.0,
            "vane_pitch": 64.0,
            "sheer_view": 0.7,
            "sheer_light": 0.8,
            "tilt_closed": 90.0,
        },
    ),
    "banded": (
        "Banded shade",
        "banded-roll",
        ROLL
        | {
            "cassette": 1.0,
            "band_clear": 50.0,
            "band_solid": 76.0,
            "band_view": 0.0,
            "band_light": 0.3,
            "cloth_view": 0.7,
            "layer_gap": 6.0,
            "tilt_closed": 90.0,
        },
    ),
    "shutter": (
        "Louvered shutter",
        "louver-panel",
        {
            "headrail_height": 76.0,
            "headrail_depth": 27.0,
            "rail_height": 90.0,
            "rail_depth": 27.0,
            "lower_moves": 0.0,
            "louver_width": 64.0,
            "louver_pitch": 57.0,
            "louver_thickness": 11.0,
            "panel_depth": 27.0,
            "panel_stile": 50.0,
            "frame_width": 25.0,
            "cutout_clear": 20.0,
            "tilt_closed": 75.0,
            "tilt_far": -75.0,
        },
    ),
    "panel": (
        "Stretched sheer panel",
        "stretched",
        {
            "headrail_height": 10.0,
            "headrail_depth": 25.0,
            "lower_moves": 0.0,
            "rod_diameter": 10.0,
            "rod_stand_off": 18.0,
            "fullness": 2.0,
            "gather_depth": 14.0,
            "ruffle": 25.0,
            "cloth_view": 0.35,
        },
    ),
    "slats": (
        "Slatted blind",
        "slatted",
        RAILS | {"slat_width": 50.0, "slat_pitch": 44.0, "slat_thickness": 3.0, "tilt_closed": 75.0, "tilt_far": -75.0},
    ),
    "curtain": (
        "Curtain over the opening",
        "draw",
        {"headrail_height": 28.0, "headrail_depth": 28.0, "fullness": 2.0, "split": 1.0, "over_opening": 1.0},
    ),
}


def family(name: str) -> Family:
    """Return one of the invented coverings with every number that its mechanism reads."""
    title, mechanism, own = OWN[name]
    takes = COMMON_TAKES | MECHANISMS[mechanism]["takes"]
    numbers = {key: float(take[1] or 0) for key, take in takes.items()} | COMMON | own
    return {
        "id": name.replace(" ", "-"),
        "name": title,
        "mechanism": mechanism,
        "retired": False,
        "price_level": 0.0,
        "cleaning": "",
        "animals": "",
        "numbers": numbers,
        "look": no_look(),
        "cassettes": CASSETTES,
        "choices": [],
    }
