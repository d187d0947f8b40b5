"""What the commands say of translations: which file was written, and how much of a language is missing."""

from collections.abc import Iterator

from configurator.catalog import Catalog
from configurator.catalog.translations import words_file
from configurator.tongues.speech import locale_of
from configurator.translating.words_file import renew_words, tally


def renewed(content: Catalog, language: str) -> str:
    """Write a showroom's catalog of a language, and return what was written."""
    path = renew_words(content, language)
    found = tally(content, language)
    return f"Wrote {path}: {found.translated} texts translated, {len(found.missing)} missing."


def notes(content: Catalog) -> Iterator[str]:
    """Yield how much is untranslated of each language beyond the first."""
    for language in content.showroom.tongues[1:]:
        found = tally(content, language)
        path = words_file(content.folder, language)
        absent = "" if path.is_file() else f"; there is no {path} yet"
        name = locale_of(language).get_display_name("en")
        if found.missing:
            count = f"{len(found.missing)} of {found.translated + len(found.missing)} texts are not translated"
            yield f"{name}: {count}{absent}; astragal words {language} {content.folder} lists them."
        else:
            yield f"{name}: every text is translated."
