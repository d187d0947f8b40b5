"""Proposals to a client and her answer, out of their links, as a terminal shows them and as JSON."""

import json
from collections.abc import Iterator
from typing import Any

import click

from configurator import linked
from configurator.browser.catalog_json import page_catalog
from configurator.browser.link.proposal_answer import ProposalAnswer, read_answer
from configurator.browser.link.proposal_set import ProposalSet, SetOpening, read_set
from configurator.browser.link.set_doors import set_door
from configurator.browser.link.shapes import Opened
from configurator.browser.link.tokens import is_token_link
from configurator.catalog import Catalog
from configurator.kernel.message import is_said, message, plain, say, say_phrase
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import in_words, wording
from configurator.report import wrapped
from configurator.spoken import phrase
from configurator.visited import on_one_line, priced, together

SET, ANSWER = "p", "a"
OTHERWISE = wording(
    "The figures are those of the leaf with the handle. The other leaf measures a little otherwise, and its piece is "
    "made to that."
)


def refuse(refused: Message) -> None:
    """Refuse a link of which nothing can be told.

    :raises click.BadParameter: with the reason
    """
    if is_said(refused):
        raise click.BadParameter(phrase(refused), param_hint="LINK")


def is_proposed(written: str) -> bool:
    """Return whether what was written is a link of proposals or of an answer, whole or what follows its ``#``."""
    fragment = written.rpartition("#")[2]
    return is_token_link(fragment, SET) or is_token_link(fragment, ANSWER)


class Telling:
    """A link of proposals or of an answer, told in a language and in units."""

    def __init__(self, catalog: Catalog, written: str, units: str | None) -> None:
        self.catalog = catalog
        self.words = catalog.words
        self.fragment = written.rpartition("#")[2]
        self.units = units

    def says(self, told: Message) -> str:
        """Return a message within a line."""
        return on_one_line(say_phrase(told, self.words, self.units or self.catalog.showroom.units))

    def lines(self) -> Iterator[str]:
        """Yield the whole link, line by line."""
        if is_token_link(self.fragment, ANSWER):
            yield from self.answer_lines(self.answer())
        else:
            yield from self.set_lines(self.proposals())

    def answer(self) -> ProposalAnswer:
        """Return the answer that the link holds."""
        read = read_answer(self.fragment)
        refuse(read["refused"])
        return read["held"]

    def proposals(self) -> ProposalSet:
        """Return the proposals that the link holds."""
        read = read_set(self.fragment)
        refuse(read["refused"])
        return read["held"]

    def answer_lines(self, answer: ProposalAnswer) -> Iterator[str]:
        """Yield an answer: which of the doors, in the order of their proposals, has which mark and remark."""
        marks: dict[str, list[float | str]] = {"mark": [answer["mark"], "name"], "visit": [answer["visit"], "name"]}
        yield self.says(message("Answer to the proposals {mark} of the visit {visit}", marks))
        if answer["remark"]:
            yield wrapped(on_one_line(answer["remark"]), 2)
        for number, one in enumerate(answer["openings"], 1):
            liked = self.says(message("Proposal {id}", {"id": [one["liked"], "name"]}))
            none = in_words(wording("nothing marked"), self.words)
            yield f"  {self.door(number)}: {liked if one['liked'] else none}"
            if one["remark"]:
                yield wrapped(on_one_line(one["remark"]), 4)

    def door(self, number: int) -> str:
        """Return what a door without a room is called."""
        return self.says(message("Door {number}", {"number": [str(number), "name"]}))

    def set_lines(self, told: ProposalSet) -> Iterator[str]:
        """Yield proposals: each opening with its door, every covering with its note, price and answer."""
        yield together(told["client"], told["on"]) or in_words(wording("Proposals"), self.words)
        if told["words"]:
            yield wrapped(on_one_line(told["words"]), 2)
        for number, opening in enumerate(told["openings"], 1):
            yield ""
            yield on_one_line(opening["room"]) or self.door(number)
            for proposal in opening["proposals"]:
                named = self.says(message("Proposal {id}", {"id": [proposal["tag"], "name"]}))
                yield f"  {together(named, priced(self.catalog, proposal['price']), proposal['note'])}"
                if proposal["otherwise"]:
                    yield wrapped(self.says(plain(OTHERWISE)), 4)
            yield from self.opened_lines(set_door(opening, page_catalog(self.catalog)))

    def opened_lines(self, opened: Opened) -> Iterator[str]:
        """Yield what comes of an opening's proposals, as a link of configurations is told."""
        units = self.units or opened["state"]["units"]
        yield from (wrapped(say(problem, self.words, units), 2) for problem in opened["problems"])
        if opened["state"]["configurations"]:
            yield linked.as_text(self.catalog, opened, None, units)

    def as_json(self) -> dict[str, Any]:
        """Return what the link holds; of proposals also what comes of them."""
        if is_token_link(self.fragment, ANSWER):
            return {"answer": self.answer()}
        told = self.proposals()
        return {"proposals": {**told, "openings": [self.opening_json(opening) for opening in told["openings"]]}}

    def opening_json(self, opening: SetOpening) -> dict[str, Any]:
        """Return an opening with what comes of each of its proposals."""
        opened = set_door(opening, page_catalog(self.catalog))
        units = self.units or opened["state"]["units"]
        return {**opening, **json.loads(linked.as_json(self.catalog, opened, None, units))}


def as_text(catalog: Catalog, written: str, units: str | None) -> str:
    """Return what a link of proposals or of an answer holds, as a terminal shows it."""
    return "\n".join(Telling(catalog, written, units).lines())


def as_json(catalog: Catalog, written: str, units: str | None) -> str:
    """Return the same as one JSON object: lengths in mm, shares 0 to 1."""
    return json.dumps(Telling(catalog, written, units).as_json(), indent=2, ensure_ascii=False)
