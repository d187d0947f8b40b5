"""The language that a content folder is read in: chosen once, and every text told in it as its file is read."""

from pathlib import Path
from typing import TypeVar

from pydantic import BaseModel

from configurator.catalog.fields import Tell
from configurator.catalog.located import ContentFile, KeyPath, nearest_spot, read_content
from configurator.catalog.page_blocks import page_texts
from configurator.catalog.problem import Problem
from configurator.catalog.schema.showroom import Showroom
from configurator.catalog.sources import Source
from configurator.catalog.texts import ContentText, Translations, told
from configurator.kernel.message import message, plain
from configurator.kernel.tongue import ENGLISH, Words, in_words
from configurator.places import SHOWROOM

Model = TypeVar("Model", bound=BaseModel)
# The folder of a showroom's own catalogs.
WORDS = "words"


def check_languages(file: ContentFile, showroom: Showroom) -> None:
    """Note languages that a showroom cannot have: written under both keys, none at all, or one twice."""
    if {"language", "languages"} <= showroom.model_fields_set:
        both = plain("language and languages both stand here")
        file.at_key(("languages",), both, plain("keep language for one, languages for more"))
    if "languages" in showroom.model_fields_set and not showroom.languages:
        empty = message("{path} is empty", {"path": ["languages", "name"]})
        file.at_value(("languages",), empty, plain("at least one such as [en, es] is expected"))
    for index, code in enumerate(showroom.languages):
        if code in showroom.languages[:index]:
            twice = message("languages has {code} twice", {"code": [code, "name"]})
            file.at_value(("languages", index), twice, plain("keep one"))


def first_language(folder: Path) -> str:
    """Return the code of the first language that a content folder names, sound or not; English where it names none."""
    file = read_content(folder / SHOWROOM, "")
    return file.written(("language",)) or file.written(("languages", 0)) or ENGLISH["language"]


def translations_in(folder: Path, problems: list[Problem], only: list[str]) -> dict[str, Translations]:
    """Return what a folder's own catalogs translate, or those of ``only`` some languages, by the language's code."""
    paths = sorted((folder / WORDS).glob("[!.]*"))
    wanted = [path for path in paths if not only or path.stem.replace("_", "-") in only]
    if not wanted:
        return {}
    from configurator.catalog.translations import read_translations

    return read_translations(wanted, problems)


class OwnLanguage:
    """The language of one run over a folder, and all the texts that the run has come by."""

    def __init__(self, folder: Path, asked: str | None, every: dict[str, Translations]) -> None:
        self.folder = folder
        self.every = every
        self.asked = asked
        self.words: Words = ENGLISH
        self.translations: Translations = {}
        self.texts: list[ContentText] = []

    def choose(self, first: str) -> None:
        """Take the language that was asked for, or else the showroom's first.

        :raises ValueError: where there is no such language
        """
        code = self.asked or first
        self.translations = self.every.get(code, {})
        plain = code == ENGLISH["language"] and not self.translations
        if not plain:
            # What is known of languages is slow to load, and English needs none of it.
            from configurator.tongues.speech import speech

            self.words = speech(code, self.translations)

    def told(self, file: ContentFile, section: Model) -> Model:
        """Return a file's data in the language."""
        return told(section, self.telling(file))

    def told_sources(self, file: ContentFile, sources: dict[KeyPath, Source]) -> dict[KeyPath, Source]:
        """Return the sources that stand beside numbers in the language."""
        tell = self.telling(file)
        return {path: source.told(tell, (*path, "source")) for path, source in sources.items()}

    def telling(self, file: ContentFile) -> Tell:
        """Return what tells each text of a file in the language."""
        name = self.within(Path(file.name))

        def tell(text: str, path: KeyPath) -> str:
            # A preset is a text of ours; the paragraphs of one text stand where that does.
            if path not in file.keys and not (path[:-1] in file.keys and isinstance(path[-1], int)):
                return in_words(text, self.words)
            line = nearest_spot(file.values, path)[0]
            self.texts.append(ContentText(text, name, line))
            return self.translations.get(text, text)

        return tell

    def take_page(self, page: Path, source: str) -> None:
        """Take the texts of a Markdown page."""
        name = self.within(page)
        self.texts.extend(ContentText(text, name, line) for text, line in page_texts(source))

    def within(self, path: Path) -> str:
        """Return a file's path from the content folder."""
        return path.relative_to(self.folder).as_posix()
