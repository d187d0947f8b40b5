"""A visit as a terminal shows it, and as JSON: what was measured, found, proposed and agreed, opening by opening."""

import json
from collections.abc import Iterator

from configurator.browser.catalog_json import page_catalog
from configurator.catalog import Catalog
from configurator.kernel.fit import over_opening
from configurator.kernel.message import is_said, message, say, say_phrase
from configurator.kernel.prices.offers import say_named
from configurator.kernel.say import say_value
from configurator.kernel.shapes import Answer, Message
from configurator.kernel.tongue import Words, in_words, wording
from configurator.kernel.visit.agreed import agreed_beside_today
from configurator.kernel.visit.control_side import side_told
from configurator.kernel.visit.findings import opening_findings, stand_ins
from configurator.kernel.visit.hung_leaves import family_today, hung_leaves, is_offered, picks_today
from configurator.kernel.visit.leaf_answers import hung_answers
from configurator.kernel.visit.leaf_doors import opening_household
from configurator.kernel.visit.used import HOW_WORDS, used_numbers
from configurator.kernel.visit.visit_fields import LEAF_NAMES, visit_field
from configurator.kernel.visit.visit_shapes import (
    Agreed,
    Finding,
    HungLeaf,
    Leaf,
    Moved,
    Opening,
    Proposal,
    Used,
    Visit,
    VisitStock,
)
from configurator.report import figure_json, said, verdict_json, wrapped

NAME_WIDTH = 38
# What is told of a covering first; all of it is what ``fit`` prints.
FIRST_FIGURES = ["order_width", "order_height", "stack_height", "projection_most", "spacer", "visible_glass_open"]


def on_one_line(text: str) -> str:
    """Return somebody's text as a terminal may show it: without what would move its cursor or change its colors."""
    return "".join(letter if letter.isprintable() else " " for letter in text).strip()


def together(*texts: str) -> str:
    """Return what there is of several texts, commas between them."""
    return ", ".join(text for text in map(on_one_line, texts) if text)


def priced(catalog: Catalog, price: str) -> str:
    """Return a price that was named in the showroom's currency; as it is where it has none."""
    return say_named(price, catalog.prices.terms["money"]) if catalog.prices else price


def leaf_name(ident: str, words: Words) -> str:
    """Return what a leaf is called at the head of a line."""
    name = in_words(LEAF_NAMES[ident], words) if ident in LEAF_NAMES else on_one_line(ident)
    return name[:1].upper() + name[1:]


def field_name(ident: str, words: Words) -> str:
    """Return what a field is called; one that nobody knows by its id."""
    for field in visit_field(ident):
        return in_words(field.get("name") or field.get("what", ident), words)
    return on_one_line(ident)


def unit_of(ident: str) -> str:
    """Return the unit of a field's number."""
    return "count" if any(field["unit"] != "length" for field in visit_field(ident)) else "mm"


class Telling:
    """One visit told in a language and in units, against today's catalog."""

    def __init__(self, catalog: Catalog, visit: Visit, units: str) -> None:
        self.catalog = catalog
        self.words = catalog.words
        self.stock: VisitStock = page_catalog(catalog)
        self.visit = visit
        self.units = units

    def say(self, told: Message) -> str:
        """Return a sentence."""
        return on_one_line(say(told, self.words, self.units))

    def phrase(self, told: Message) -> str:
        """Return a message within a line."""
        return on_one_line(say_phrase(told, self.words, self.units))

    def lines(self) -> Iterator[str]:
        """Yield the whole visit, line by line."""
        visit = self.visit
        yield together(visit["client"], visit["place"], visit["on"]) or on_one_line(visit["id"])
        if visit["note"]:
            yield wrapped(on_one_line(visit["note"]), 2)
        for opening in visit["openings"]:
            yield ""
            yield from self.opening_lines(opening)

    def opening_lines(self, opening: Opening) -> Iterator[str]:
        """Yield one opening."""
        yield on_one_line(opening["room"]) or on_one_line(opening["id"])
        if opening["note"]:
            yield wrapped(on_one_line(opening["note"]), 2)
        if opening["socket"]:
            yield "  " + self.phrase(message("Socket: {place}", {"place": [on_one_line(opening["socket"]), "name"]}))
        for told in stand_ins(opening, self.stock):
            yield wrapped(self.say(told), 2)
        for leaf in opening["leaves"]:
            yield f"  {leaf_name(leaf['id'], self.words)}"
            yield from (self.used_line(used) for used in used_numbers(leaf).values())
        found = opening_findings(opening, self.stock, self.units)
        if found:
            yield "  " + in_words(wording("To look at again"), self.words)
            yield from (self.finding_line(each) for each in found)
        for proposal in opening["proposals"]:
            yield from self.proposal_lines(opening, proposal)
        for agreed in opening["agreed"]:
            yield from self.agreed_lines(opening, agreed)

    def used_line(self, used: Used) -> str:
        """Return the number of a field and how it came about."""
        taken = used["taken"] if used["field"] == "glass_diagonal" else [used]
        values = [say_value(one["mm"], unit_of(used["field"]), self.words, self.units) for one in taken]
        how = "" if used["how"] == "measured" else in_words(HOW_WORDS.get(used["how"], used["how"]), self.words)
        rule = "" if len(used["taken"]) < 2 or len(taken) > 1 else self.phrase(used["rule"])
        told = f"{', '.join(values):<12} {together(how, rule)}".rstrip()
        return f"    {field_name(used['field'], self.words):<{NAME_WIDTH}} {told}"

    def finding_line(self, found: Finding) -> str:
        """Return what is wrong, where, and what to measure again."""
        where = f"{leaf_name(found['leaf'], self.words)}, {field_name(found['field'], self.words)}"
        again = f" {self.say(found['again'])}" if is_said(found["again"]) else ""
        return wrapped(f"{where}: {self.say(found['says'])}{again}", 4)

    def proposal_lines(self, opening: Opening, proposal: Proposal) -> Iterator[str]:
        """Yield a proposal, and what comes of it on each leaf."""
        named: dict[str, list[float | str]] = {"id": [on_one_line(proposal["id"]), "name"]}
        yield "  " + self.phrase(message("Proposal {id}", named)) + ": " + self.covering_named(proposal)
        for text in (proposal["note"], proposal["remarks"]):
            if text:
                yield wrapped(on_one_line(text), 4)
        for hung, answer in self.answers(opening, proposal):
            yield "    " + self.place_name(hung["leaf"], over_opening(hung["fit"]))
            yield from self.answer_lines(answer)

    def covering_named(self, proposal: Proposal) -> str:
        """Return a covering with its picks, its price and whether the client likes it."""
        names = [proposal["family"], *proposal["choices"].values()]
        if is_offered(proposal, self.stock):
            family = self.stock["families"][family_today(proposal["family"], self.stock)]
            picks = picks_today(family, proposal["choices"], self.stock)
            options = [
                one for choice in family["choices"] for one in choice["options"] if picks.get(choice["id"]) == one["id"]
            ]
            names = [family["name"], *(option["name"] for option in options)]
        liked = in_words(wording("liked"), self.words) if proposal["liked"] else ""
        return together(*names, priced(self.catalog, proposal["price"]), liked)

    def place_name(self, leaf: str, over: bool) -> str:
        """Return where a covering hangs: on which leaf, or over all of them."""
        return in_words(wording("Over the whole opening"), self.words) if over else leaf_name(leaf, self.words)

    def answers(self, opening: Opening, proposal: Proposal) -> list[tuple[HungLeaf, Answer]]:
        """Return the answer for each leaf that a proposal dresses; none where nobody offers it."""
        if not is_offered(proposal, self.stock):
            return []
        household = opening_household(opening, self.visit["household"])
        hung = hung_leaves(opening, proposal, self.stock)
        return list(zip(hung, hung_answers(hung, household), strict=True))

    def answer_lines(self, answer: Answer) -> Iterator[str]:
        """Yield the first figures and every verdict, or why there are none."""
        if is_said(answer["refusal"]):
            yield wrapped(self.say(answer["refusal"]), 6)
            return
        for name in FIRST_FIGURES:
            if name in answer["figures"]:
                figure = answer["figures"][name]
                value = said(figure["value"], figure["unit"], self.words, self.units)
                yield f"      {in_words(figure['name'], self.words):<{NAME_WIDTH}} {value}"
        for verdict in answer["verdicts"].values():
            why = f"{in_words(verdict['name'], self.words)}: {self.phrase(verdict['says'])}. {self.say(verdict['why'])}"
            yield wrapped(why, 6)

    def agreed_lines(self, opening: Opening, agreed: Agreed) -> Iterator[str]:
        """Yield what was agreed with its figures of then, and what has moved since."""
        day: dict[str, list[float | str]] = {"day": [on_one_line(agreed["on"]), "name"]}
        names = [option["name"] for choice in agreed["covering"]["choices"] for option in choice["options"]]
        yield (
            "  "
            + self.phrase(message("Agreed on {day}", day))
            + ": "
            + together(agreed["covering"]["name"], *names, priced(self.catalog, agreed["price"]))
        )
        for part in agreed["parts"]:
            yield "    " + self.place_name(part["leaf"], agreed["covering"]["numbers"].get("over_opening", 0) > 0)
            for name in FIRST_FIGURES:
                if name in part["figures"]:
                    then = part["figures"][name]
                    value = said(then["value"], then["unit"], self.words, self.units)
                    yield f"      {on_one_line(in_words(then['name'], self.words)):<{NAME_WIDTH}} {value}"
            if part.get("control"):
                name = in_words(wording("control side"), self.words)
                yield f"      {name:<{NAME_WIDTH}} {self.phrase(side_told(part['control']))}"
        moved = agreed_beside_today(self.visit, opening, agreed, self.stock)
        if not moved:
            yield "    " + in_words(wording("Everything is as it was agreed."), self.words)
            return
        yield "    " + in_words(wording("What is no longer as it was agreed"), self.words)
        yield from (self.moved_line(each) for each in moved)

    def moved_line(self, moved: Moved) -> str:
        """Return what was and what is."""
        named = together(leaf_name(moved["leaf"], self.words), in_words(moved["name"], self.words))
        was, now = self.say(moved["then"]), self.say(moved["now"])
        if moved["kind"] == "price":
            was, now = priced(self.catalog, was), priced(self.catalog, now)
        pair: dict[str, list[float | str]] = {"was": [was, "name"], "now": [now, "name"]}
        return wrapped(f"{named}: {self.phrase(message('agreed: {was}; today: {now}', pair))}", 6)

    def opening_json(self, opening: Opening) -> dict[str, object]:
        """Return one opening as JSON has it: lengths in mm, shares 0 to 1."""
        return {
            "id": opening["id"],
            "room": opening["room"],
            "leaves": [self.leaf_json(leaf) for leaf in opening["leaves"]],
            "stand_ins": [self.say(told) for told in stand_ins(opening, self.stock)],
            "findings": [self.finding_json(found) for found in opening_findings(opening, self.stock, self.units)],
            "proposals": [self.proposal_json(opening, proposal) for proposal in opening["proposals"]],
            "agreed": [self.agreed_json(opening, agreed) for agreed in opening["agreed"]],
        }

    def leaf_json(self, leaf: Leaf) -> dict[str, object]:
        """Return the used numbers of a leaf, each with the readings of which it comes."""
        used = {
            name: {
                "mm": one["mm"],
                "how": one["how"],
                "rule": self.phrase(one["rule"]),
                "typed": [reading["typed"] for reading in one["taken"]],
            }
            for name, one in used_numbers(leaf).items()
        }
        return {"id": leaf["id"], "used": used}

    def finding_json(self, found: Finding) -> dict[str, object]:
        """Return a finding in words."""
        return {**found, "says": self.say(found["says"]), "again": self.say(found["again"])}

    def proposal_json(self, opening: Opening, proposal: Proposal) -> dict[str, object]:
        """Return a proposal with the answer for each leaf."""
        parts = [
            {
                "leaf": hung["leaf"],
                "refusal": self.say(answer["refusal"]),
                "figures": {key: figure_json(one, self.words, self.units) for key, one in answer["figures"].items()},
                "verdicts": {key: verdict_json(one, self.words, self.units) for key, one in answer["verdicts"].items()},
            }
            for hung, answer in self.answers(opening, proposal)
        ]
        return {**proposal, "parts": parts}

    def agreed_json(self, opening: Opening, agreed: Agreed) -> dict[str, object]:
        """Return what was agreed as it was frozen, and what has moved since."""
        moved = [
            {
                **each,
                "name": in_words(each["name"], self.words),
                "then": self.say(each["then"]),
                "now": self.say(each["now"]),
            }
            for each in agreed_beside_today(self.visit, opening, agreed, self.stock)
        ]
        return {**agreed, "moved": moved}


def as_text(catalog: Catalog, visit: Visit, units: str) -> str:
    """Return the whole visit as a terminal shows it."""
    return "\n".join(Telling(catalog, visit, units).lines())


def as_json(catalog: Catalog, visit: Visit, units: str) -> str:
    """Return the whole visit as one JSON object, worked out against today's catalog."""
    telling = Telling(catalog, visit, units)
    head = {key: visit[key] for key in ("id", "client", "place", "on", "units", "note")}
    openings = [telling.opening_json(opening) for opening in visit["openings"]]
    return json.dumps({**head, "openings": openings}, indent=2, ensure_ascii=False)
