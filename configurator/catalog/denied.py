"""What measurements deny each other, told at the line and column of the one that cannot be."""

from configurator.catalog.length_advice import units_of
from configurator.catalog.located import ContentFile, KeyPath, dotted
from configurator.kernel.message import say
from configurator.kernel.tape.impossible import Contradiction
from configurator.kernel.tape.table import field_called
from configurator.kernel.tongue import ENGLISH


def note_denied(file: ContentFile, found: list[Contradiction]) -> None:
    """Note each contradiction at its field's place."""
    for one in found:
        path = tuple(field_called(one["field"])["path"].split("."))
        written = file.written(path)
        words = f"{dotted(path)} is {written}" if written else f"{dotted(path)} is not given"
        told = say(one["why"], ENGLISH, units_near(file, path)).removesuffix(".")
        (file.at_value if written else file.at_key)(path, f"{words}; {told[0].lower()}{told[1:]}")


def units_near(file: ContentFile, path: KeyPath) -> str:
    """Return the units in which a value is written, or else the leaf's, or else a handle's gap."""
    texts = [file.written(path), file.written(("leaf", "width")), file.written(("gap",))]
    return units_of(next((text for text in texts if text), ""))
