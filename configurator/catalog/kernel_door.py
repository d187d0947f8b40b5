"""A door file as the kernel's flat door."""

from configurator.catalog.schema.door import DoorFile, Hinges, Pair, Stop
from configurator.kernel.shapes import Door, Handle

# Where a leaf's hinges usually are: 7 in below its top, 11 in above its bottom (common practice, no source).
HINGE_BELOW_TOP = 177.8
HINGE_ABOVE_BOTTOM = 279.4


def usual_heights(door: DoorFile) -> list[float]:
    """Return the heights of the usual three hinges."""
    low = door.gaps.floor + HINGE_ABOVE_BOTTOM
    high = door.gaps.floor + door.leaf.height - HINGE_BELOW_TOP
    return [low, (low + high) / 2, high]


def filled(door: DoorFile) -> DoorFile:
    """Return the door with presets for what depends on its layout, its swing and its height."""
    hinges = Hinges.model_construct(
        _fields_set=door.hinges.model_fields_set,
        side=door.hinges.side,
        heights=sorted(door.hinges.heights) or usual_heights(door),
        pin=door.hinges.pin,
    )
    stop = door.stop or Stop() if door.swing == "out" else None
    pair = door.pair or Pair() if door.layout in ("pair", "fixed-pair") else None
    return door.model_copy(update={"hinges": hinges, "stop": stop, "pair": pair})


def kernel_door(ident: str, door: DoorFile, handle: Handle) -> Door:
    """Return the kernel's door, whose leaf is the sum of its measured parts; ``door`` is :func:`filled`."""
    pair = door.pair
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
        "hinge_heights": door.hinges.heights,
        "floor_gap": door.gaps.floor,
        "wall_gap": door.gaps.wall,
        "head_gap": door.gaps.head,
        "ceiling_height": door.room.ceiling,
        "reveal": door.room.reveal,
        "casing_width": door.room.casing.width,
        "casing_projection": door.room.casing.projection,
        "stop_lap": door.stop.lap if door.stop else 0.0,
        "meeting_gap": pair.meeting_gap if pair else 0.0,
        "astragal_width": pair.astragal.width if pair else 0.0,
        "astragal_projection": pair.astragal.projection if pair else 0.0,
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
