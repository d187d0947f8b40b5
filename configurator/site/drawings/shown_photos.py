"""The content's photographs as pages show them: which there are, in which places, and what each place is given."""

from collections.abc import Iterator
from functools import partial
from hashlib import sha256
from typing import NamedTuple, TypedDict

from configurator.catalog.schema.photograph import Photograph
from configurator.drawing.photo import FIGURE, HERO, SWATCH, TILE, Cut, photo_sizes, size_of_cut, usual_width, widths_of
from configurator.site.house import House


class ShownPhoto(TypedDict):
    """A picture in a place: the name of its files up to their width, the widths that there are, the one for a screen of
    which nothing is known, its size in pixels, what it shows, and who took it."""

    name: str
    widths: list[int]
    usual: int
    width: int
    height: int
    alt: str
    credit: str


class Use(NamedTuple):
    """A photograph in a place."""

    photo: Photograph
    cut: Cut


def shown_picture(name: str, size: tuple[int, int], told: tuple[str, str], cut: Cut) -> ShownPhoto:
    """Return a picture of a size in a place, with what it shows and who took it."""
    width, height = size
    alt, credit = told
    widths, usual = widths_of(width, cut), usual_width(width, cut)
    return {
        "name": name,
        "widths": widths,
        "usual": usual,
        "width": width,
        "height": height,
        "alt": alt,
        "credit": credit,
    }


def shown_photo(house: House, photo: Photograph | None, cut: Cut) -> ShownPhoto | None:
    """Return a photograph in a place; nothing where there is none."""
    if photo is None:
        return None
    taken = house.photos[photo.file]
    size = size_of_cut((taken.width, taken.height), cut.shape)
    return shown_picture(file_start(house, Use(photo, cut)), size, (photo.alt, photo.credit), cut)


def file_start(house: House, use: Use) -> str:
    """Return the name of a photograph's files in a place, up to their width; all that is cut of one has its subject."""
    name = house.photos[use.photo.file].name
    if use.cut.shape == 0:
        return name
    subject = use.photo.focus.replace("%", "").replace(" ", "-")
    return f"{name}-{use.cut.name}-{subject}"


def photo_uses(house: House) -> Iterator[Use]:
    """Yield every photograph that the pages show, in each of its places."""
    catalog = house.catalog
    if house.showroom.photo:
        yield Use(house.showroom.photo, HERO)
    for family in house.families:
        notes = catalog.family_notes[family["id"]]
        if notes.photo:
            yield from (Use(notes.photo, cut) for cut in (FIGURE, TILE))
        options = [option for choice in notes.choices.values() for option in choice.options.values()]
        yield from (Use(option.photo, SWATCH) for option in options if option.photo and not option.retired)
    yield from (Use(notes.photo, FIGURE) for notes in catalog.door_notes.values() if notes.photo)


def pixels_of(house: House, photo: Photograph) -> str:
    """Return a digest of a photograph's file."""
    return sha256(house.photos[photo.file].path.read_bytes()).hexdigest()


def photo_files(house: House) -> dict[str, bytes]:
    """Return the photographs' files by their addresses, each in the sizes that its places need."""
    files: dict[str, bytes] = {}
    for use in photo_uses(house):
        path, cut, subject = house.photos[use.photo.file].path, use.cut, use.photo.middle
        sizes = house.first.once(
            partial(photo_sizes, path, cut, subject), "photograph", pixels_of(house, use.photo), cut, subject
        )
        files.update({f"assets/{file_start(house, use)}{end}": content for end, content in sizes.items()})
    return files
