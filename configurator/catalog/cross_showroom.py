"""What of the showroom's file must fit the rest of the content."""

from collections.abc import Iterable

from configurator.catalog.located import ContentFile
from configurator.catalog.schema.showroom import Showroom
from configurator.catalog.suggest import suggestion
from configurator.kernel.message import message


def check_first_door(file: ContentFile, showroom: Showroom, doors: Iterable[str]) -> None:
    """Note a first door that is none of the content's doors, by their ids."""
    known = list(doors)
    if showroom.first_door and showroom.first_door not in known:
        unknown = message("first_door is '{name}', but there is no such door", {"name": [showroom.first_door, "name"]})
        file.at_value(("first_door",), unknown, suggestion(showroom.first_door, known))
