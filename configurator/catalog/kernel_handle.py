"""A handle file as the kernel's flat handle."""

from typing import cast

from configurator.catalog.schema.from_table import numbers_of
from configurator.catalog.schema.handle import HandleWords
from configurator.kernel.shapes import Handle


def grip_of(handle: HandleWords) -> tuple[float, float]:
    """Return the grip's length from the axis and its height, as the kernel measures them."""
    grip = handle.grip
    if handle.kind == "knob":
        return (grip.diameter or 0.0) / 2, grip.diameter or 0.0
    if handle.kind == "pull":
        return (grip.width or 0.0) / 2, grip.height or 0.0
    return grip.length or 0.0, grip.height or 0.0


def kernel_handle(ident: str, handle: HandleWords) -> Handle:
    """Return the kernel's handle."""
    length, height = grip_of(handle)
    words = {"id": ident, "name": handle.name, "kind": handle.kind, "grip_length": length, "grip_height": height}
    return cast(Handle, words | numbers_of(handle, "handle"))
