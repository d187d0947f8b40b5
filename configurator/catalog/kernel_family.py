"""A family file as the kernel's flat family."""

from collections.abc import Mapping

from configurator.catalog.family_numbers import read_numbers, takes_of
from configurator.catalog.kernel_look import kernel_look, whole_look
from configurator.catalog.located import ContentFile
from configurator.catalog.schema.family import CassetteFile, ChoiceFile, FamilyFile
from configurator.kernel.shapes import Cassette, Choice, Family, Option


def kernel_family(file: ContentFile, ident: str, family: FamilyFile, showroom: Mapping[str, float]) -> Family:
    """Return the kernel's family, each number of its mechanism filled in; slips in numbers are noted.

    ``showroom`` holds the numbers that the showroom sets for every family that does not give its own.
    """
    takes = takes_of(family.mechanism)
    presets = {name: float(take[1]) for name, take in takes.items() if take[1] is not None}
    given = read_numbers(file, takes, family.numbers, ("numbers",))
    return {
        "id": ident,
        "name": family.name,
        "mechanism": family.mechanism,
        "retired": family.retired,
        "price_level": float(family.price_level),
        "cleaning": family.cleaning,
        "animals": family.animals,
        "numbers": {**presets, **showroom, **given},
        "look": whole_look(family.look),
        "cassettes": [kernel_cassette(cassette) for cassette in family.cassettes],
        "choices": [kernel_choice(file, takes, name, choice) for name, choice in family.choices.items()],
    }


def kernel_cassette(cassette: CassetteFile) -> Cassette:
    """Return the kernel's cassette."""
    return {"name": cassette.name, "roll": cassette.roll, "height": cassette.height, "depth": cassette.depth}


def kernel_choice(
    file: ContentFile, takes: dict[str, list[str | float | None]], ident: str, choice: ChoiceFile
) -> Choice:
    """Return the kernel's choice."""
    options: list[Option] = []
    for name, option in choice.options.items():
        path = ("choices", ident, "options", name, "numbers")
        numbers = read_numbers(file, takes, option.numbers, path)
        options.append(
            {
                "id": name,
                "name": option.name,
                "retired": option.retired,
                "numbers": numbers,
                "look": kernel_look(option.look),
            }
        )
    return {"id": ident, "name": choice.name, "options": options}
