"""What of a visit a client is shown, and what of a visit her answer is about."""

from typing import TypedDict

from configurator.browser.link.check import check_of
from configurator.browser.link.proposal_answer import ProposalAnswer
from configurator.browser.link.proposal_set import LEAF_SIGNS, ProposalSet, SetOpening, SetProposal
from configurator.browser.link.shapes import Stock
from configurator.browser.link.spell import spell_number
from configurator.browser.link.told_text import seen_text
from configurator.browser.link.visit_link import opening_link
from configurator.kernel.visit.hung_leaves import is_offered
from configurator.kernel.visit.leaf_doors import is_other_otherwise
from configurator.kernel.visit.visit_shapes import Opening, Proposal, Visit


class SetWishes(TypedDict):
    """What goes into a set beside the proposals: the client's name and the prices only where that is asked for."""

    client: bool
    prices: bool
    on: str
    words: str


class AnsweredRow(TypedDict):
    """What an answer says of an opening of a visit: by their ids, both empty where the visit has them no longer.

    ``asked`` is whether she marked one at all; ``remark`` is what she wrote.
    """

    opening: str
    proposal: str
    asked: bool
    remark: str


def visit_tag(visit: Visit) -> str:
    """Return what an answer calls a visit by: letters that tell nobody its id."""
    return check_of("visit " + visit["id"])


def opening_tag(opening: Opening) -> str:
    """Return what an answer calls an opening by."""
    return check_of("opening " + opening["id"])


def proposal_tag(proposal: Proposal) -> str:
    """Return what an answer calls a proposal by."""
    return check_of("proposal " + proposal["id"])


def proposal_mark(proposal: Proposal) -> str:
    """Return all that somebody chooses by when she marks a proposal, as a text: covering, picks, what is set, price."""
    parts = [proposal["id"], proposal["family"], proposal["price"]]
    for name in sorted(proposal["choices"]):
        parts.append(name + "=" + proposal["choices"][name])
    for name in sorted(proposal["wishes"]):
        parts.append(name + "=" + spell_number(proposal["wishes"][name], "mm"))
    return ";".join(parts)


def offered_proposals(opening: Opening, stock: Stock) -> list[Proposal]:
    """Return what of an opening's proposals can be shown."""
    return [proposal for proposal in opening["proposals"] if is_offered(proposal, stock)]


def shown_openings(visit: Visit, stock: Stock) -> list[Opening]:
    """Return the openings for which something can be shown."""
    return [opening for opening in visit["openings"] if len(offered_proposals(opening, stock)) > 0]


def set_mark(visit: Visit, stock: Stock) -> str:
    """Return five letters that are others when other things are proposed, in another order or at another price."""
    parts = [visit["id"]]
    for opening in shown_openings(visit, stock):
        parts.append(opening["id"])
        parts.extend([proposal_mark(proposal) for proposal in offered_proposals(opening, stock)])
    return check_of("/".join(parts))


def set_of_visit(visit: Visit, wishes: SetWishes, stock: Stock) -> ProposalSet:
    """Return what a client is shown of a visit."""
    openings: list[SetOpening] = []
    for opening in shown_openings(visit, stock):
        offered = offered_proposals(opening, stock)
        otherwise = is_other_otherwise(opening, stock)
        openings.append(
            {
                "tag": opening_tag(opening),
                "room": seen_text(opening["room"]),
                "link": opening_link(visit, opening, offered, stock),
                "proposals": [set_proposal(proposal, wishes["prices"], otherwise) for proposal in offered],
            }
        )
    return {
        "visit": visit_tag(visit),
        "mark": set_mark(visit, stock),
        "on": wishes["on"],
        "client": seen_text(visit["client"]) if wishes["client"] else "",
        "words": seen_text(wishes["words"]),
        "openings": openings,
    }


def set_proposal(proposal: Proposal, priced: bool, otherwise: bool) -> SetProposal:
    """Return what is told of a proposal for an opening, of which the other leaf may measure ``otherwise``."""
    leaves = [leaf for leaf in LEAF_SIGNS if leaf in proposal["leaves"]]
    return {
        "tag": proposal_tag(proposal),
        "leaves": leaves,
        "otherwise": otherwise and (len(leaves) == 0 or "other" in leaves),
        "note": seen_text(proposal["note"]),
        "price": proposal["price"] if priced else "",
    }


def answered_rows(visit: Visit, answer: ProposalAnswer) -> list[AnsweredRow]:
    """Return what an answer says of a visit, opening by opening, in the answer's order."""
    rows: list[AnsweredRow] = []
    for told in answer["openings"]:
        row: AnsweredRow = {"opening": "", "proposal": "", "asked": told["liked"] != "", "remark": told["remark"]}
        for opening in visit["openings"]:
            if opening_tag(opening) == told["opening"]:
                row["opening"] = opening["id"]
                known = [one["id"] for one in opening["proposals"] if proposal_tag(one) == told["liked"]]
                row["proposal"] = known[0] if len(known) > 0 else ""
        rows.append(row)
    return rows
