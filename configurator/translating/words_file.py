"""A showroom's own gettext catalog, written or renewed: all that its content says, and what of ours is missing."""

from collections.abc import Iterator
from dataclasses import dataclass
from io import BytesIO
from pathlib import Path

from babel.messages.catalog import Catalog
from babel.messages.pofile import write_po

from configurator.catalog import Catalog as Content
from configurator.catalog.translations import words_file
from configurator.kernel.tongue import FORMS
from configurator.tongues.speech import code_of, forms_of, key_of, locale_of, own_catalog, read_catalog, said_in
from configurator.translating.own_texts import Said, own_texts

# No dates and no names, so that the same content gives the same file.
HEADER = """\
msgid ""
msgstr ""
"Language: {code}\\n"
"MIME-Version: 1.0\\n"
"Content-Type: text/plain; charset=utf-8\\n"
"Content-Transfer-Encoding: 8bit\\n"
"Plural-Forms: {plurals}\\n"

"""


@dataclass(frozen=True)
class Tally:
    """How many texts a language has translated, and which it has not, in the order in which they stand."""

    translated: int
    missing: list[str]


def to_translate(content: Content, language: str) -> Iterator[Said]:
    """Yield what a showroom's catalog of a language is for, wherever it is said: the content's texts, then ours."""
    for told in content.texts:
        yield Said((told.text,), told.file, told.line)
    if locale_of(language).language == "en":
        return
    known = said_in(read_catalog(own_catalog(language)))
    yield from (said for said in own_texts() if said.key not in known)


def tally(content: Content, language: str) -> Tally:
    """Return how much of a showroom a language translates."""
    said = said_in(read_catalog(words_file(content.folder, language)))
    keys = list(dict.fromkeys(told.key for told in to_translate(content, language)))
    missing = [key.partition(FORMS)[0] for key in keys if key not in said]
    return Tally(len(keys) - len(missing), missing)


def renew_words(content: Content, language: str) -> Path:
    """Write a showroom's catalog of a language, and return where it is.

    What is translated stays; what is no longer said stays too, marked as obsolete, and comes back with its text.
    """
    path = words_file(content.folder, language)
    catalog = read_catalog(path)
    catalog.locale = locale_of(language)
    before = {key_of(entry.id): entry for entry in catalog.obsolete.values()}
    catalog.update(template(content, language), no_fuzzy_matching=True)
    for entry in catalog:
        if entry.id and not any(forms_of(entry.string)) and key_of(entry.id) in before:
            entry.string = before.pop(key_of(entry.id)).string
    gone = [entry for entry in [*before.values(), *catalog.obsolete.values()] if any(forms_of(entry.string))]
    catalog.obsolete.clear()
    catalog.obsolete.update({key_of(entry.id): entry for entry in gone if entry.id not in catalog})
    path.parent.mkdir(exist_ok=True)
    path.write_bytes(written(catalog))
    return path


def template(content: Content, language: str) -> Catalog:
    """Return what is to be translated, each text once with every place at which it is said."""
    found = Catalog(locale=locale_of(language))
    for told in to_translate(content, language):
        ident = told.forms[0] if len(told.forms) == 1 else told.forms
        found.add(ident, locations=[(told.file, told.line)])
    return found


def written(catalog: Catalog) -> bytes:
    """Return a catalog as a file."""
    locale = catalog.locale
    body = BytesIO()
    write_po(body, catalog, omit_header=True)
    code = code_of(locale) if locale else ""
    return HEADER.format(code=code, plurals=catalog.plural_forms).encode() + body.getvalue()
