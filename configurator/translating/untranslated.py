"""What the commands say of translations: which file was written, and how much of a language is missing."""

from collections.abc import Iterator
from pathlib import Path

from configurator.catalog import Catalog
from configurator.catalog.translations import words_file
from configurator.kernel.message import message
from configurator.kernel.shapes import Message
from configurator.tongues.speech import locale_of
from configurator.translating.words_file import renew_words, tally


def renewed(content: Catalog, language: str) -> Message:
    """Write a showroom's catalog of a language, and return what was written."""
    path = renew_words(content, language)
    found = tally(content, language)
    return message(
        "Wrote {file}: {translated} texts translated, {missing} missing.",
        {
            "file": [str(path), "name"],
            "translated": [found.translated, "count"],
            "missing": [len(found.missing), "count"],
        },
    )


def notes(content: Catalog) -> Iterator[list[Message]]:
    """Yield in clauses how much is untranslated of each language beyond the first."""
    for language in content.showroom.tongues[1:]:
        name = locale_of(language).get_display_name(locale_of(content.words["language"])) or language
        found = tally(content, language)
        if not found.missing:
            yield [message("{language}: every text is translated.", {"language": [name, "name"]})]
            continue
        counts: dict[str, list[float | str]] = {
            "language": [name, "name"],
            "missing": [len(found.missing), "count"],
            "all": [found.translated + len(found.missing), "count"],
        }
        yield [
            message("{language}: {missing} of {all} texts are not translated", counts),
            *absent(words_file(content.folder, language)),
            message("{command} lists them.", {"command": [f"astragal words {language} {content.folder}", "name"]}),
        ]


def absent(path: Path) -> list[Message]:
    """Return that a showroom's catalog is not there; nothing where it is."""
    return [] if path.is_file() else [message("there is no {file} yet", {"file": [path.as_posix(), "name"]})]
