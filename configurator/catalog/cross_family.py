"""What a family file must be beyond its schema: its mechanism, its choices and their names."""

from configurator.catalog.family_numbers import check_needed, takes_of
from configurator.catalog.files import ID
from configurator.catalog.located import ContentFile, KeyPath, dotted
from configurator.catalog.schema.family import ChoiceFile, FamilyFile
from configurator.catalog.suggest import suggestion
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.message import message, plain
from configurator.kernel.tongue import wording

ID_EXPECTED = wording("small letters, digits and single hyphens are expected, because links are made of it")


def cross_check_family(file: ContentFile, family: FamilyFile) -> bool:
    """Note what does not fit together; return whether the mechanism is known."""
    for name, choice in family.choices.items():
        check_choice(file, name, choice)
    if family.mechanism not in MECHANISMS:
        unknown = message("mechanism is '{name}', which does not exist", {"name": [family.mechanism, "name"]})
        file.at_value(("mechanism",), unknown, suggestion(family.mechanism, MECHANISMS))
        return False
    check_needed(file, takes_of(family.mechanism), family)
    return True


def check_choice(file: ContentFile, name: str, choice: ChoiceFile) -> None:
    """Check a choice: names that can stand in a link, and a preset that is on offer."""
    path: KeyPath = ("choices", name, "options")
    check_id(file, ("choices", name))
    for option in choice.options:
        check_id(file, (*path, option))
    if not choice.options:
        empty = message("{path} is empty", {"path": [dotted(path), "name"]})
        file.at_value(path, empty, plain("at least one option is expected"))
    elif next(iter(choice.options.values())).retired:
        first = (*path, next(iter(choice.options)))
        retired = message("{path} is the preset, being the first, and is retired", {"path": [dotted(first), "name"]})
        file.at_key(first, retired, plain("move another one up"))


def check_id(file: ContentFile, path: KeyPath) -> None:
    """Check the last key of a path as an id."""
    if not ID.fullmatch(str(path[-1])):
        file.at_key(path, message("'{name}' cannot be an id", {"name": [str(path[-1]), "name"]}), plain(ID_EXPECTED))
