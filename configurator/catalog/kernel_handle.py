"""A handle file as the kernel's flat handle."""

from configurator.catalog.schema.handle import HandleFile
from configurator.kernel.shapes import Handle


def grip_of(handle: HandleFile) -> tuple[float, float]:
    """Return the grip's length from the axis and its height, as the kernel measures them."""
    grip = handle.grip
    if handle.kind == "knob":
        return (grip.diameter or 0.0) / 2, grip.diameter or 0.0
    if handle.kind == "pull":
        return (grip.width or 0.0) / 2, grip.height or 0.0
    return grip.length or 0.0, grip.height or 0.0


def kernel_handle(ident: str, handle: HandleFile) -> Handle:
    """Return the kernel's handle."""
    length, height = grip_of(handle)
    turn = handle.turn
    return {
        "id": ident,
        "name": handle.name,
        "kind": handle.kind,
        "grip_length": length,
        "grip_height": height,
        "gap": handle.gap,
        "projection": handle.projection,
        "plate_width": handle.plate.width,
        "plate_height": handle.plate.height,
        "plate_thickness": handle.plate.thickness,
        "plate_below": handle.plate.below,
        "neck": handle.neck,
        "turn_above": turn.above if turn else 0.0,
        "turn_width": turn.width if turn else 0.0,
        "turn_height": turn.height if turn else 0.0,
        "turn_projection": turn.projection if turn else 0.0,
    }
