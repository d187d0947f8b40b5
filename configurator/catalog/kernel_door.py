"""A door file as the kernel's flat door."""

from configurator.catalog.schema.door import DoorFile, Pair, Stop
from configurator.kernel.shapes import Door, Handle

# Where a leaf's hinges usually are: 7 in below its top, 11 in above its bottom (common practice, no source).
HINGE_BELOW_TOP = 177.8
HINGE_ABOVE_BOTTOM = 279.4


def hinge_heights(door: DoorFile) -> list[float]:
    """Return the measured hinge heights, or the usual three."""
    if door.hinges.heights:
        return sorted(door.hinges.heights)
    low = door.gaps.floor + HINGE_ABOVE_BOTTOM
    high = door.gaps.floor + door.leaf.height - HINGE_BELOW_TOP
    return [low, (low + high) / 2, high]


def joint(door: DoorFile) -> tuple[float, float, float]:
    """Return meeting gap, astragal width and projection; all 0 where there is one leaf."""
    if door.layout not in ("pair", "fixed-pair"):
        return 0.0, 0.0, 0.0
    pair = door.pair or Pair()
    return pair.meeting_gap, pair.astragal.width, pair.astragal.projection


def stop_lap(door: DoorFile) -> float:
    """Return how far the stop laps the room face: only where the leaf swings out."""
    return (door.stop or Stop()).lap if door.swing == "out" else 0.0


def kernel_door(ident: str, door: DoorFile, handle: Handle) -> Door:
    """Return the kernel's door, whose leaf is the sum of its measured parts."""
    meeting_gap, astragal_width, astragal_projection = joint(door)
    return {
        "id": ident,
        "name": door.name,
        "layout": door.layout,
        "swing": door.swing,
        "hinge_side": door.hinges.side,
        "leaf_thickness": door.leaf.thickness,
        "glass_width": door.glass.width,
        "glass_height": door.glass.height,
        "stile_hinge": door.stiles.hinge,
        "stile_latch": door.stiles.latch,
        "rail_top": door.rails.top,
        "rail_bottom": door.rails.bottom,
        "bead_width": door.bead.width,
        "bead_projection": door.bead.projection,
        "glass_recess": door.glass.recess,
        "muntin_columns": door.muntins.columns,
        "muntin_rows": door.muntins.rows,
        "muntin_width": door.muntins.width,
        "muntin_projection": door.muntins.projection,
        "hinge_pin_out": door.hinges.pin,
        "hinge_heights": hinge_heights(door),
        "floor_gap": door.gaps.floor,
        "wall_gap": door.gaps.wall,
        "head_gap": door.gaps.head,
        "ceiling_height": door.room.ceiling,
        "reveal": door.room.reveal,
        "casing_width": door.room.casing.width,
        "casing_projection": door.room.casing.projection,
        "stop_lap": stop_lap(door),
        "meeting_gap": meeting_gap,
        "astragal_width": astragal_width,
        "astragal_projection": astragal_projection,
        "sidelight_width": door.sidelight.width if door.sidelight else 0.0,
        "sidelight_glass_width": door.sidelight.glass if door.sidelight else 0.0,
        "backset": door.handle.backset,
        "handle_height": door.handle.height,
        "passive_handle": door.handle.passive,
        "glass_light": door.glass.light,
        "glass_solar": door.glass.solar,
        "glass_u": door.glass.u,
        "handle": handle,
    }
