"""What is wrong with something written, and what to write instead: clauses, each said whole in a language."""

from collections.abc import Iterable

from configurator.kernel.message import say_phrase
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import ENGLISH, Words

Term = list[float | str]
Clauses = tuple[Message, ...]
# Between the words of a listed term.
BETWEEN = "\n"


class Slip(ValueError):
    """A slip of whoever wrote a value: what to write instead, in clauses; ``units`` (``in``, ``mm``) tells lengths."""

    def __init__(self, *clauses: Message, units: str = "in") -> None:
        self.clauses = clauses
        self.units = units
        super().__init__(say_clauses(clauses, ENGLISH, units))


class Refusal(OSError):
    """A folder or file that cannot be used as asked for: why, and what to do instead, in clauses."""

    def __init__(self, *clauses: Message) -> None:
        self.clauses = clauses
        super().__init__(say_clauses(clauses, ENGLISH, "in"))


def listed(words: Iterable[str], joined: str) -> Term:
    """Return a term that names several things, the last ``joined`` with ``and`` or ``or``."""
    return [BETWEEN.join(words), joined]


def say_clauses(clauses: Clauses, words: Words, units: str) -> str:
    """Return clauses in a language, their lengths in ``units`` (``in`` or ``mm``)."""
    return "; ".join(say_clause(clause, words, units) for clause in clauses)


def say_clause(clause: Message, words: Words, units: str) -> str:
    """Return one clause; what is a sentence elsewhere loses its capital and its full stop."""
    terms = {name: as_name(term, words) if term[1] in ("and", "or") else term for name, term in clause["terms"].items()}
    text = say_phrase({"text": clause["text"], "terms": terms}, words, units)
    if clause["text"].endswith("."):
        return text[:1].lower() + text[1:].removesuffix(".")
    return text


def as_name(term: Term, words: Words) -> Term:
    """Return a listed term as a name, joined as the language does it."""
    things = str(term[0]).split(BETWEEN)
    if words["language"].partition("-")[0] == "en":
        most, last = ", ".join(things[:-1]), things[-1]
        return [f"{most} {term[1]} {last}" if most else last, "name"]
    # What is known of languages is slow to load, and English needs none of it.
    from babel.lists import format_list

    code = words["language"].replace("-", "_")
    either = term[1] == "or"
    return [format_list(things, "or", code) if either else format_list(things, "standard", code), "name"]
