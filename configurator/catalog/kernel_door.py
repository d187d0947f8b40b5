"""A door file as the kernel's flat door."""

from typing import cast

from configurator.catalog.schema.base import Section
from configurator.catalog.schema.door import DoorFile, DoorWords, Hinges
from configurator.catalog.schema.from_table import numbers_of, optional_sections
from configurator.catalog.schema_check import inner_schema
from configurator.kernel.shapes import Door, Handle
from configurator.kernel.tape.table import parts_of_door

# Where a leaf's hinges usually are: 7 in below its top, 11 in above its bottom (common practice, no source).
HINGE_BELOW_TOP = 177.8
HINGE_ABOVE_BOTTOM = 279.4


def hinges_filled(file: DoorWords, floor: float) -> Hinges:
    """Return the hinges, the usual three where nobody measured their heights; those still count as left out."""
    low = floor + HINGE_ABOVE_BOTTOM
    high = floor + file.leaf.height - HINGE_BELOW_TOP
    heights = sorted(file.hinges.heights) or [low, (low + high) / 2, high]
    entries = {**dict(file.hinges), "heights": heights}
    return type(file.hinges).model_construct(_fields_set=file.hinges.model_fields_set, **entries)


def part_filled(file: DoorWords, step: str) -> Section | None:
    """Return the section of a part that the door has; where the file leaves it out, with what is assumed."""
    given: Section | None = getattr(file, step)
    model = inner_schema(DoorFile.model_fields[step].annotation)
    if given or model is None or any(one.is_required() for one in model.model_fields.values()):
        return given
    return cast(Section, model())


def filled(file: DoorWords) -> DoorWords:
    """Return the file with presets for what depends on its layout, its swing and its height."""
    bare = bare_door("", file)
    parts = parts_of_door(bare)
    made: dict[str, object] = {
        step: part_filled(file, step) if part in parts else None for step, part in optional_sections("door").items()
    }
    return file.model_copy(update={**made, "hinges": hinges_filled(file, bare["floor_gap"])})


def bare_door(ident: str, file: DoorWords) -> Door:
    """Return the kernel's door without its handle, whose leaf is the sum of its measured parts."""
    words = {
        "id": ident,
        "name": file.name,
        "layout": file.layout,
        "swing": file.swing,
        "hinge_side": file.hinges.side,
        "hinge_heights": sorted(file.hinges.heights),
        "passive_handle": file.handle.passive,
    }
    return cast(Door, words | numbers_of(file, "door"))


def kernel_door(ident: str, file: DoorWords, handle: Handle) -> Door:
    """Return the kernel's door; ``file`` is :func:`filled`."""
    return {**bare_door(ident, file), "handle": handle}
