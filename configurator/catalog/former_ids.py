"""Ids that doors, handles, families, choices and options had before, which links and addresses still know.

``formerly`` names them. None may be in use today, and none may be claimed twice, or an old link could mean either.
"""

from collections.abc import Collection, Iterable

from configurator.catalog.clauses import Term
from configurator.catalog.files import LISTING
from configurator.catalog.located import ContentFile, KeyPath
from configurator.catalog.schema.family import FamilyFile
from configurator.kernel.message import message, plain
from configurator.kernel.tongue import wording

# Today's id by ``door/<id>`` and the like; see ``configurator.browser.link.shapes.Stock``.
FormerIds = dict[str, str]
NAMED = {
    "door": wording("a door"),
    "handle": wording("a handle"),
    "family": wording("a family"),
    "choice": wording("a choice"),
    "option": wording("an option"),
}


class Claims:
    """The former ids of one kind, gathered from file to file."""

    def __init__(self, kind: str, live: Collection[str], found: FormerIds) -> None:
        self.kind = kind
        self.live = live
        self.found = found

    def take(self, file: ContentFile, path: KeyPath, ident: str, former: Iterable[str]) -> None:
        """Take the former ids of something; those that cannot be are noted at ``path`` in its file."""
        for index, name in enumerate(former):
            key = f"{self.kind}/{name}"
            terms: dict[str, Term] = {"name": [name, "name"], "word": [NAMED[self.kind.split("/")[0]], "text"]}
            here = (*path, index)
            if name == LISTING and self.kind in ("door", "family"):
                never = message("'{name}' cannot have been the id of {word}", terms)
                file.at_value(here, never, plain("take it out"))
            elif name in self.live:
                text = wording("'{name}' cannot be a former id of {ident}, for it is the id of {word} today")
                live = message(text, {**terms, "ident": [ident, "name"]})
                file.at_value(here, live, plain("take one out"))
            elif key in self.found:
                claimed: dict[str, Term] = {"name": [name, "name"], "other": [self.found[key], "name"]}
                twice = message("'{name}' is claimed as a former id already, by {other}", claimed)
                file.at_value(here, twice, plain("only one can have had it"))
            else:
                self.found[key] = ident


def take_choices(file: ContentFile, ident: str, family: FamilyFile, found: FormerIds) -> None:
    """Take the former ids of a family's choices and of their options."""
    choices = Claims(f"choice/{ident}", family.choices, found)
    for name, choice in family.choices.items():
        choices.take(file, ("choices", name, "formerly"), name, choice.formerly)
        options = Claims(f"option/{ident}/{name}", choice.options, found)
        for option_name, option in choice.options.items():
            path = ("choices", name, "options", option_name, "formerly")
            options.take(file, path, option_name, option.formerly)
