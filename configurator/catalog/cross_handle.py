"""What a handle file's numbers must be to each other."""

from configurator.catalog.length_advice import units_of
from configurator.catalog.located import ContentFile
from configurator.catalog.schema.handle import HandleFile
from configurator.catalog.suggest import one_of
from configurator.kernel.say import say_length

GRIPS = {"lever": ("length", "height"), "knob": ("diameter",), "pull": ("width", "height")}


def cross_check_handle(file: ContentFile, handle: HandleFile) -> None:
    """Note what does not fit together."""
    wanted = GRIPS[handle.kind]
    given = handle.grip.model_fields_set
    for name in wanted:
        if name not in given:
            file.at_key(("grip", name), f"grip.{name} is missing; a {handle.kind} has {' and '.join(wanted)}")
    for name in sorted(given - set(wanted)):
        file.at_key(("grip", name), f"grip.{name} has no meaning for a {handle.kind}, which has {one_of(wanted)}")
    units = units_of(file.written(("gap",)))
    gap = say_length(handle.gap, units)
    if handle.gap >= handle.projection:
        whole = say_length(handle.projection, units)
        words = f"gap is {gap}, but the whole projection is {whole}; the free gap must be less"
        file.at_value(("gap",), words)
    if handle.plate.thickness > handle.gap:
        thickness = say_length(handle.plate.thickness, units)
        words = f"plate.thickness is {thickness}, but the free gap is {gap}; the plate must not reach the grip"
        file.at_value(("plate", "thickness"), words)
