"""One run over a content folder, which reads and checks it whole."""

from pathlib import Path
from typing import TypeVar, cast

from pydantic import BaseModel

from configurator.catalog.cross_door import cross_check_door
from configurator.catalog.cross_family import cross_check_family
from configurator.catalog.cross_handle import cross_check_handle
from configurator.catalog.cross_showroom import check_first_door
from configurator.catalog.drawing_blocks import Shop
from configurator.catalog.example_visits import Offered, example_visits
from configurator.catalog.family_bounds import check_bounds
from configurator.catalog.family_notes import family_notes
from configurator.catalog.files import page_files, shown, yaml_files
from configurator.catalog.former_ids import Claims, FormerIds, take_choices
from configurator.catalog.guide_check import note_blocks, read_guide
from configurator.catalog.kernel_door import filled, kernel_door
from configurator.catalog.kernel_family import kernel_family
from configurator.catalog.kernel_handle import kernel_handle
from configurator.catalog.load import Catalog, Wanted
from configurator.catalog.located import ContentFile, KeyPath, read_content
from configurator.catalog.locked import locked
from configurator.catalog.measures import measures
from configurator.catalog.notes import DoorNotes, FamilyNotes, HandleNotes, other_names
from configurator.catalog.own_language import OwnLanguage, check_languages, first_language, translations_in
from configurator.catalog.photo_check import check_photographs
from configurator.catalog.picture_check import note_pictures
from configurator.catalog.pricing import (
    Pricing,
    ReadBook,
    book_paths,
    check_books,
    check_decimals,
    check_terms,
    note_unpriced,
    pricing,
)
from configurator.catalog.problem import ContentProblems, Problem
from configurator.catalog.schema.door import DoorFile, DoorWords
from configurator.catalog.schema.family import FamilyFile
from configurator.catalog.schema.from_table import numbers_of
from configurator.catalog.schema.handle import HandleFile
from configurator.catalog.schema.price_book import PriceBookFile
from configurator.catalog.schema.showroom import Showroom, ShowroomFile
from configurator.catalog.schema_check import check
from configurator.catalog.site_addresses import Shelf, note_addresses
from configurator.catalog.sources import Source, lift_sources
from configurator.catalog.static import note_static
from configurator.catalog.strays import note_strays
from configurator.catalog.theme import check_theme
from configurator.kernel.message import plain
from configurator.kernel.shapes import Door, Family, Handle, Household
from configurator.kernel.visit.visit_shapes import Visit
from configurator.places import SHOWROOM

Model = TypeVar("Model", bound=BaseModel)
Sources = dict[KeyPath, Source]


def loaded(folder: Path, language: str | None, wanted: Wanted | None) -> Catalog:
    """Return what :func:`configurator.catalog.load.load` does."""
    if not folder.is_dir():
        raise ContentProblems([Problem(shown(folder), 0, 0, (plain("there is no such folder"),))])
    closed = locked(folder)
    if closed:
        raise ContentProblems(closed)
    loading = _Loading(folder, language, wanted)
    catalog = loading.catalog()
    if catalog is None or loading.problems:
        raise ContentProblems(loading.problems, loading.language.words)
    return catalog


class _Loading:
    """One run over a folder, gathering problems as it goes."""

    def __init__(self, folder: Path, language: str | None, wanted: Wanted | None) -> None:
        self.folder = folder
        self.wanted = wanted
        self.problems: list[Problem] = []
        only = [language or first_language(folder)] if wanted else []
        self.language = OwnLanguage(folder, language, translations_in(folder, self.problems, only))
        self.formerly: FormerIds = {}
        self.photographs: set[Path] = set()

    def catalog(self) -> Catalog | None:
        file, showroom = self.showroom()
        handles, handle_notes = self.handles()
        doors, door_notes = self.doors(handles)
        families, notes = self.families({"order_step": showroom.order_step} if showroom else {})
        if showroom and showroom.quote and showroom.quote.shown == "no":
            families = {ident: {**family, "price_level": 0.0} for ident, family in families.items()}
        prices = None if self.wanted else self.prices(file, showroom, families)
        guides = {} if self.wanted else self.guides()
        visits = {} if self.wanted else self.visits(families)
        if showroom:
            # A door whose file is unsound is there all the same.
            check_first_door(file, showroom, yaml_files(self.folder, "doors", []))
        self.problems.extend(file.problems)
        if not self.wanted:
            note_strays(self.folder, self.photographs, self.problems)
            note_static(self.folder, self.problems)
            note_pictures(self.folder, self.photographs, self.problems)
            if showroom:
                self.note_site(guides, shelf_of(doors, families, self.formerly, showroom))
        if showroom is None:
            return None
        if not self.problems:
            # What is unsound in a door or a family is not told of again at each drawing of it.
            for page, text in guides.items():
                note_blocks(page, text, Shop(doors, families, showroom.units), self.problems)
        return Catalog(
            folder=self.folder,
            units=showroom.units,
            showroom=showroom,
            household=cast(Household, numbers_of(showroom, "household")),
            handles={name: handle for name, handle in handles.items() if handle},
            doors=doors,
            families=families,
            handle_notes=handle_notes,
            door_notes=door_notes,
            family_notes=notes,
            pages=list(guides),
            words=self.language.words,
            translations=self.language.translations,
            texts=self.language.texts,
            formerly=self.formerly,
            prices=prices,
            visits=visits,
        )

    def note_site(self, guides: dict[Path, str], shelf: Shelf) -> None:
        """Note what the site could not be made of: one address for two things, and links that lead nowhere."""
        # Imported here, as most commands read no guide, and what reads them is slow to load.
        from configurator.catalog.guide_links import note_guides

        note_addresses(self.folder, guides, shelf, self.problems)
        note_guides(guides, self.folder, shelf, self.problems)

    def visits(self, families: dict[str, Family]) -> dict[str, Visit]:
        """Return the example visits; a door or a family whose file is unsound is there all the same."""
        doors, handles, known = (list(yaml_files(self.folder, kind, [])) for kind in ("doors", "handles", "families"))
        return example_visits(self.folder, Offered(doors, handles, known, families, self.formerly), self.problems)

    def files(self, kind: str, wanted: str) -> dict[str, Path]:
        """Return the YAML files of one kind by id, or that of the one that is wanted."""
        paths = yaml_files(self.folder, kind, self.problems)
        return {wanted: paths[wanted]} if wanted in paths else paths

    def guides(self) -> dict[Path, str]:
        """Return the pages with their texts."""
        guides = {page: read_guide(page, self.problems) for page in page_files(self.folder, self.problems)}
        for page, text in guides.items():
            self.language.take_page(page, text)
        return guides

    def read(self, path: Path, schema: type[Model]) -> tuple[ContentFile, Model | None, Sources]:
        """Return a file as it was checked, and told in the language."""
        file = read_content(path, shown(path))
        if file.problems and not file.data:
            return file, None, {}
        sources = lift_sources(file)
        found = check(file, schema)
        if found and not self.wanted:
            self.photographs |= check_photographs(file, found, self.folder)
        if isinstance(found, Showroom):
            check_languages(file, found)
            self.language.choose(found.tongues[0])
        return file, self.language.told(file, found) if found else None, self.language.told_sources(file, sources)

    def showroom(self) -> tuple[ContentFile, Showroom | None]:
        file, showroom, _ = self.read(self.folder / SHOWROOM, ShowroomFile)
        if showroom:
            check_theme(file, showroom, self.folder)
        return file, showroom

    def prices(self, file: ContentFile, showroom: Showroom | None, families: dict[str, Family]) -> Pricing | None:
        """Return what the showroom's price books and its terms make up; ``file`` is the showroom's."""
        paths = book_paths(self.folder, self.problems)
        read = [self.read(path, PriceBookFile) for path in paths.values()]
        books: list[ReadBook] = [(book_file, book) for book_file, book, _ in read]
        known = list(yaml_files(self.folder, "families", []))
        check_books(books, families, known)
        terms = showroom.quote if showroom else None
        if terms:
            check_terms(file, terms, families, known)
            check_decimals(file, terms, books)
        elif showroom and books:
            note_unpriced(self.folder, self.problems)
        found = [problem for book_file, _ in books for problem in book_file.problems]
        self.problems.extend(found)
        return pricing(terms, books, self.language.words) if terms and not (found or file.problems) else None

    def handles(self) -> tuple[dict[str, Handle | None], dict[str, HandleNotes]]:
        """Return the handles, None for those whose file is unsound, so that doors may still name them."""
        handles: dict[str, Handle | None] = {}
        notes: dict[str, HandleNotes] = {}
        paths = yaml_files(self.folder, "handles", self.problems)
        claims = Claims("handle", paths, self.formerly)
        for ident, path in paths.items():
            file, handle, sources = self.read(path, HandleFile)
            handles[ident] = None
            if handle:
                cross_check_handle(file, handle)
                claims.take(file, ("formerly",), ident, handle.formerly)
                handles[ident] = kernel_handle(ident, handle)
                numbers = measures(handle, handle.source, sources)
                notes[ident] = HandleNotes(ident, handle.name, handle.summary, handle.source, numbers)
            self.problems.extend(file.problems)
        return handles, notes

    def doors(self, handles: dict[str, Handle | None]) -> tuple[dict[str, Door], dict[str, DoorNotes]]:
        doors: dict[str, Door] = {}
        notes: dict[str, DoorNotes] = {}
        paths = self.files("doors", self.wanted.door if self.wanted else "")
        claims = Claims("door", paths, self.formerly)
        for ident, path in paths.items():
            file, door, sources = self.read(path, DoorFile)
            if door:
                cross_check_door(file, door, handles)
                claims.take(file, ("formerly",), ident, door.formerly)
                door = filled(door)
                handle = handles.get(door.handle.preset)
                if handle:
                    doors[ident] = kernel_door(ident, door, handle)
                notes[ident] = door_notes(ident, door, sources)
            self.problems.extend(file.problems)
        return doors, notes

    def families(self, common: dict[str, float]) -> tuple[dict[str, Family], dict[str, FamilyNotes]]:
        families: dict[str, Family] = {}
        notes: dict[str, FamilyNotes] = {}
        paths = self.files("families", self.wanted.family if self.wanted else "")
        claims = Claims("family", paths, self.formerly)
        for ident, path in paths.items():
            file, family, sources = self.read(path, FamilyFile)
            if family:
                claims.take(file, ("formerly",), ident, family.formerly)
                take_choices(file, ident, family, self.formerly)
            if family and cross_check_family(file, family):
                families[ident] = kernel_family(file, ident, family, common)
                check_bounds(file, families[ident])
                notes[ident] = family_notes(family, families[ident], sources)
            self.problems.extend(file.problems)
        if not self.wanted and families and all(family["retired"] for family in families.values()):
            advice = plain("at least one that is still offered is expected")
            place = shown(self.folder / "families")
            self.problems.append(Problem(place, 0, 0, (plain("every family is retired"), advice)))
        return families, notes


def shelf_of(doors: dict[str, Door], families: dict[str, Family], formerly: FormerIds, showroom: Showroom) -> Shelf:
    """Return what a showroom's pages are made from; what is retired has none."""
    offered = [ident for ident, family in families.items() if not family["retired"]]
    return Shelf(list(doors), offered, formerly, showroom.tongues, bool(showroom.public_address))


def door_notes(ident: str, door: DoorWords, sources: Sources) -> DoorNotes:
    """Return a door's words and numbers."""
    return DoorNotes(
        id=ident,
        name=door.name,
        also_called=other_names(door.name, door.also_called),
        summary=door.summary,
        description=door.description,
        source=door.source,
        measured=door.measured,
        photo=door.photo,
        glass_type=door.glass.type,
        handle=door.handle.preset,
        measures=measures(door, door.source, sources),
    )
