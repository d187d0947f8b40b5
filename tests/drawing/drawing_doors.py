"""Invented doors and coverings for the drawings' tests, each odd in its own way."""

from copy import deepcopy

from configurator.kernel.shapes import Door, Handle, Household

LEVER: Handle = {
    "id": "lever",
    "name": "Lever on a long plate",
    "kind": "lever",
    "grip_length": 115.0,
    "grip_height": 20.0,
    "gap": 38.0,
    "projection": 58.0,
    "plate_width": 44.0,
    "plate_height": 230.0,
    "plate_thickness": 8.0,
    "plate_below": 40.0,
    "neck": 20.0,
    "turn_above": 0.0,
    "turn_width": 0.0,
    "turn_height": 0.0,
    "turn_projection": 0.0,
}
KNOB: Handle = LEVER | {  # type: ignore[assignment]
    "id": "knob",
    "name": "Round knob with deadbolt",
    "kind": "knob",
    "grip_length": 27.0,
    "grip_height": 54.0,
    "gap": 30.0,
    "projection": 64.0,
    "plate_width": 64.0,
    "plate_height": 64.0,
    "plate_thickness": 9.0,
    "plate_below": 0.0,
    "turn_above": 139.7,
    "turn_width": 62.0,
    "turn_height": 62.0,
    "turn_projection": 24.0,
}
SINGLE: Door = {
    "id": "garden-single",
    "name": "Garden single",
    "layout": "single",
    "swing": "in",
    "hinge_side": "left",
    "leaf_thickness": 44.45,
    "glass_width": 558.8,
    "glass_height": 1625.6,
    "stile_hinge": 107.95,
    "stile_latch": 107.95,
    "rail_top": 107.95,
    "rail_bottom": 260.35,
    "bead_width": 19.05,
    "bead_projection": 6.35,
    "glass_recess": 12.7,
    "muntin_columns": 1,
    "muntin_rows": 1,
    "muntin_width": 22.0,
    "muntin_projection": 0.0,
    "hinge_pin_out": 8.0,
    "hinge_heights": [254.0, 1016.0, 1780.0],
    "floor_gap": 9.5,
    "wall_gap": 300.0,
    "head_gap": 3.2,
    "ceiling_height": 2438.4,
    "reveal": 0.0,
    "casing_width": 70.0,
    "casing_projection": 17.5,
    "stop_lap": 0.0,
    "meeting_gap": 3.2,
    "astragal_width": 0.0,
    "astragal_projection": 0.0,
    "sidelight_width": 0.0,
    "sidelight_glass_width": 0.0,
    "backset": 69.85,
    "handle_height": 914.4,
    "passive_handle": False,
    "glass_light": 0.8,
    "glass_solar": 0.6,
    "glass_u": 1.4,
    "handle": LEVER,
}


def door_like(**fields: object) -> Door:
    """Return the single door with some of its measures changed."""
    return SINGLE | deepcopy(fields)  # type: ignore[return-value]


DOORS: dict[str, Door] = {
    "single": SINGLE,
    "pair": door_like(
        id="garden-pair",
        name="Garden pair",
        layout="pair",
        hinge_side="right",
        astragal_width=44.0,
        astragal_projection=12.0,
    ),
    "out-swing pair": door_like(
        id="terrace-pair", name="Terrace pair, opening outwards", layout="pair", swing="out", stop_lap=12.0, reveal=60.0
    ),
    "half-lite": door_like(
        id="side-door",
        name="Side door, half-lite",
        hinge_side="right",
        glass_height=880.0,
        rail_bottom=1000.0,
        muntin_columns=2,
        muntin_rows=2,
        muntin_projection=4.0,
        handle=KNOB,
    ),
    "divided": door_like(
        id="divided",
        name="Fifteen-lite door",
        hinge_side="right",
        muntin_columns=3,
        muntin_rows=5,
        muntin_projection=6.0,
    ),
    "narrow": door_like(
        id="narrow-stile",
        name="Schmalrahmen 985",
        swing="out",
        stop_lap=10.0,
        stile_hinge=70.0,
        stile_latch=70.0,
        rail_top=70.0,
        rail_bottom=80.0,
        bead_width=15.0,
        bead_projection=0.0,
        glass_width=786.0,
        glass_height=1805.0,
        backset=35.0,
        handle_height=1050.0,
    ),
    "sidelights": door_like(
        id="sidelights",
        name="Door with sidelights",
        layout="sidelights",
        sidelight_width=420.0,
        sidelight_glass_width=250.0,
    ),
}

HOUSEHOLD: Household = {
    "shoulder_height": 1400.0,
    "person_height": 1750.0,
    "person_distance": 600.0,
    "outside_eye": 1600.0,
    "outside_distance": 8000.0,
    "outside_level": 0.0,
}
