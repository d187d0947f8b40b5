"""A showroom's own translations: gettext catalogs in its folder ``words/``, checked against what they translate."""

import re
from io import BytesIO
from pathlib import Path

from babel.messages.catalog import Catalog, Message
from babel.messages.pofile import PoFileError, read_po

from configurator.catalog.clauses import Clauses, listed
from configurator.catalog.files import misnamed, shown
from configurator.catalog.live_markup import live_in_markdown
from configurator.catalog.located import ContentFile, read_text
from configurator.catalog.own_language import WORDS
from configurator.catalog.problem import Problem
from configurator.catalog.texts import Translations
from configurator.kernel.message import message, plain
from configurator.kernel.tongue import wording
from configurator.tongues.speech import catalog_name, code_of, forms_of, locale_of, said_in

# What a translation must hold as it stands: named terms, and where a link leads.
STANDING = re.compile(r"\{\w+\}|\]\([^)\s]+")
LINES_EXPECTED = wording("msgid and msgstr, each with its text in quotes, or a remark after # is expected")


def words_file(folder: Path, language: str) -> Path:
    """Return where a content folder keeps its translations into a language, be there any or not."""
    return folder / WORDS / catalog_name(locale_of(language))


def read_translations(paths: list[Path], problems: list[Problem]) -> dict[str, Translations]:
    """Return what each of a folder's catalogs translates, by the language's code; what is wrong is noted."""
    found: dict[str, Translations] = {}
    for path in paths:
        language = language_of(path, problems)
        if language:
            found[language] = checked_translations(path, problems)
    return found


def language_of(path: Path, problems: list[Problem]) -> str:
    """Return the language of a catalog by its file's name; nothing, with the problem noted, where it has none."""
    try:
        locale = locale_of(path.stem.replace("_", "-"))
    except ValueError:
        nameless = (plain("the file's name is no language's code"), plain("name it such as es.po or en_GB.po"))
        problems.append(Problem(shown(path), 1, 1, nameless))
        return ""
    if path.name != catalog_name(locale):
        problems.append(misnamed(path, catalog_name(locale)))
        return ""
    return code_of(locale)


def checked_translations(path: Path, problems: list[Problem]) -> Translations:
    """Return what a catalog translates; what is wrong with it is noted."""
    file = ContentFile(shown(path))
    catalog = sound_catalog(path, file)
    for entry in catalog:
        if entry.id and not entry.fuzzy:
            check_entry(file, entry)
    problems.extend(file.problems)
    return said_in(catalog)


def sound_catalog(path: Path, file: ContentFile) -> Catalog:
    """Return a catalog; one without entries, with the problem noted, where the file is no catalog."""
    text = read_text(path, file)
    if text is None:
        return Catalog()
    try:
        return read_po(BytesIO(text.encode()), abort_invalid=True, charset="utf-8")
    except PoFileError as slip:
        line = min(slip.lineno + 1, text.count("\n") + 1)
        unsound = (plain("the file is no sound gettext catalog here"), plain(LINES_EXPECTED))
        file.problems.append(Problem(file.name, line, 1, unsound))
    except ValueError:
        unsound = (plain("the file is no sound gettext catalog"), plain(LINES_EXPECTED))
        file.problems.append(Problem(file.name, 1, 1, unsound))
    return Catalog()


def check_entry(file: ContentFile, entry: Message) -> None:
    """Check that each form of a translation holds the terms of the sentence, and no others."""
    originals = forms_of(entry.id)
    wanted = {part for text in originals for part in STANDING.findall(text)}
    for form in forms_of(entry.string):
        for what, _, _ in live_in_markdown(form):
            file.problems.append(Problem(file.name, entry.lineno or 1, 1, (what, plain("take it out"))))
        held = set(STANDING.findall(form))
        if form and held != wanted and not few(held, wanted, originals):
            file.problems.append(Problem(file.name, entry.lineno or 1, 1, different_terms(wanted, held)))
            return


def few(held: set[str], wanted: set[str], originals: list[str]) -> bool:
    """Return whether a form leaves out no more than the number, as that for one thing may, or what an original does."""
    shared = set.intersection(*(set(STANDING.findall(text)) for text in originals))
    return len(originals) > 1 and held <= wanted and shared - held <= {"{count}"}


def different_terms(wanted: set[str], held: set[str]) -> Clauses:
    """Return what is wrong with a translation that has other terms than its sentence."""
    missing, strange = ([part.removeprefix("](") for part in sorted(parts)] for parts in (wanted - held, held - wanted))
    terms = {"missing": listed(missing, "and"), "strange": listed(strange, "and")}
    if not strange:
        told = message("the translation lacks {missing}", terms)
    elif not missing:
        told = message("the translation has {strange}, which the text has not", terms)
    else:
        told = message("the translation lacks {missing} and has {strange}, which the text has not", terms)
    return told, plain("write the same terms and links as in the text")
