"""What measurements deny each other, told at the line and column of the one that cannot be."""

from configurator.catalog.length_advice import units_of
from configurator.catalog.located import ContentFile, KeyPath, dotted
from configurator.kernel.message import message
from configurator.kernel.tape.impossible import Contradiction
from configurator.kernel.tape.table import field_called


def note_denied(file: ContentFile, found: list[Contradiction]) -> None:
    """Note each contradiction at its field's place."""
    for one in found:
        path = tuple(field_called(one["field"])["path"].split("."))
        written = file.written(path)
        units = units_near(file, path)
        named = dotted(path)
        if written:
            given = message("{path} is {written}", {"path": [named, "name"], "written": [written, "name"]})
            file.at_value(path, given, one["why"], units=units)
        else:
            file.at_key(path, message("{path} is not given", {"path": [named, "name"]}), one["why"], units=units)


def units_near(file: ContentFile, path: KeyPath) -> str:
    """Return the units in which a value is written, or else the leaf's, or else a handle's gap."""
    texts = [file.written(path), file.written(("leaf", "width")), file.written(("gap",))]
    return units_of(next((text for text in texts if text), ""))
