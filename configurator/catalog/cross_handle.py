"""What a handle file's numbers must be to each other."""

from configurator.catalog.denied import note_denied
from configurator.catalog.kernel_handle import kernel_handle
from configurator.catalog.located import ContentFile, dotted
from configurator.catalog.schema.handle import HandleWords
from configurator.kernel.message import message, plain
from configurator.kernel.tape.impossible import handle_denied
from configurator.kernel.tongue import wording

GRIPS = {"lever": ("length", "height"), "knob": ("diameter",), "pull": ("width", "height")}
# What each kind has, and what is said of a grip's number that it has not.
HAS = {
    "lever": wording("a lever has length and height"),
    "knob": wording("a knob has diameter"),
    "pull": wording("a pull has width and height"),
}
HAS_NOT = {
    "lever": wording("{path} has no meaning for a lever, which has length or height"),
    "knob": wording("{path} has no meaning for a knob, which has diameter"),
    "pull": wording("{path} has no meaning for a pull, which has width or height"),
}


def cross_check_handle(file: ContentFile, handle: HandleWords) -> None:
    """Note what does not fit together."""
    wanted = GRIPS[handle.kind]
    given = handle.grip.model_fields_set
    for name in wanted:
        path = ("grip", name)
        if name not in given:
            missing = message("{path} is missing", {"path": [dotted(path), "name"]})
            file.at_key(path, missing, plain(HAS[handle.kind]))
    for name in sorted(given - set(wanted)):
        path = ("grip", name)
        file.at_key(path, message(HAS_NOT[handle.kind], {"path": [dotted(path), "name"]}))
    note_denied(file, handle_denied(kernel_handle("", handle)))
