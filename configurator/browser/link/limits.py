"""What a measurement of a door, a handle or a household can sensibly be, in millimetres unless said.

The same limits as those of the content files (``configurator/catalog/schema``).
"""

DOOR_WORDS: dict[str, list[str]] = {
    "layout": ["single", "pair", "fixed-pair", "sidelights"],
    "swing": ["in", "out"],
    "hinge_side": ["left", "right"],
}
# glass_light and glass_solar are shares, glass_u is W/m2K.
DOOR_LIMITS: dict[str, list[float]] = {
    "leaf_thickness": [25.0, 100.0],
    "glass_width": [100.0, 1500.0],
    "glass_height": [200.0, 3000.0],
    "stile_hinge": [30.0, 400.0],
    "stile_latch": [30.0, 400.0],
    "rail_top": [30.0, 600.0],
    "rail_bottom": [30.0, 2000.0],
    "bead_width": [0.0, 80.0],
    "bead_projection": [0.0, 40.0],
    "glass_recess": [0.0, 80.0],
    "muntin_columns": [1.0, 12.0],
    "muntin_rows": [1.0, 20.0],
    "muntin_width": [0.0, 80.0],
    "muntin_projection": [0.0, 40.0],
    "hinge_pin_out": [0.0, 60.0],
    "floor_gap": [0.0, 60.0],
    "wall_gap": [0.0, 5000.0],
    "head_gap": [0.0, 30.0],
    "ceiling_height": [1800.0, 8000.0],
    "reveal": [0.0, 500.0],
    "casing_width": [0.0, 300.0],
    "casing_projection": [0.0, 80.0],
    "stop_lap": [0.0, 60.0],
    "meeting_gap": [0.0, 30.0],
    "astragal_width": [0.0, 150.0],
    "astragal_projection": [0.0, 60.0],
    "sidelight_width": [0.0, 1500.0],
    "sidelight_glass_width": [0.0, 1400.0],
    "backset": [20.0, 150.0],
    "handle_height": [700.0, 1300.0],
    "glass_light": [0.0, 1.0],
    "glass_solar": [0.0, 1.0],
    "glass_u": [0.3, 6.0],
}
DOOR_COUNTS = ["muntin_columns", "muntin_rows"]
HINGE_LIMITS = [0.0, 3100.0]
HINGES_MOST = 6

HANDLE_LIMITS: dict[str, list[float]] = {
    "grip_length": [2.5, 300.0],
    "grip_height": [5.0, 1200.0],
    "gap": [1.0, 150.0],
    "projection": [5.0, 200.0],
    "plate_width": [5.0, 200.0],
    "plate_height": [5.0, 1200.0],
    "plate_thickness": [0.0, 40.0],
    "plate_below": [-400.0, 400.0],
    "neck": [3.0, 80.0],
    "turn_above": [0.0, 400.0],
    "turn_width": [0.0, 120.0],
    "turn_height": [0.0, 120.0],
    "turn_projection": [0.0, 120.0],
}
HOUSEHOLD_LIMITS: dict[str, list[float]] = {
    "shoulder_height": [600.0, 2000.0],
    "person_height": [600.0, 2300.0],
    "person_distance": [0.0, 20000.0],
    "outside_eye": [600.0, 2300.0],
    "outside_distance": [100.0, 100000.0],
    "outside_level": [-20000.0, 20000.0],
}


def door_limits() -> dict[str, list[float]]:
    """Return ``[least, most]`` for every number of a door."""
    return DOOR_LIMITS


def handle_limits() -> dict[str, list[float]]:
    """Return ``[least, most]`` for every number of a handle."""
    return HANDLE_LIMITS


def household_limits() -> dict[str, list[float]]:
    """Return ``[least, most]`` for every number of a household."""
    return HOUSEHOLD_LIMITS
