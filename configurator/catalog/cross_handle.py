"""What a handle file's numbers must be to each other."""

from configurator.catalog.denied import note_denied
from configurator.catalog.kernel_handle import kernel_handle
from configurator.catalog.located import ContentFile
from configurator.catalog.schema.handle import HandleWords
from configurator.catalog.suggest import one_of
from configurator.kernel.tape.impossible import handle_denied

GRIPS = {"lever": ("length", "height"), "knob": ("diameter",), "pull": ("width", "height")}


def cross_check_handle(file: ContentFile, handle: HandleWords) -> None:
    """Note what does not fit together."""
    wanted = GRIPS[handle.kind]
    given = handle.grip.model_fields_set
    for name in wanted:
        if name not in given:
            file.at_key(("grip", name), f"grip.{name} is missing; a {handle.kind} has {' and '.join(wanted)}")
    for name in sorted(given - set(wanted)):
        file.at_key(("grip", name), f"grip.{name} has no meaning for a {handle.kind}, which has {one_of(wanted)}")
    note_denied(file, handle_denied(kernel_handle("", handle)))
