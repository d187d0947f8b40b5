"""Two copies of one visit in one: nothing of either is lost, and what they had otherwise is told.

Where both say something else of the same thing, this copy's word stands and the other's is noted among the revisions;
a proposal of which the picks differ is there twice. Whoever calls says how a value reads as text, so that values can be
compared: ``JSON.stringify`` in a browser.
"""

from collections.abc import Callable
from typing import Any, TypedDict

from configurator.kernel.visit.visit_parts import TEXT_MOST
from configurator.kernel.visit.visit_shapes import MergedVisit, Opening, Proposal, Visit, VisitDifference

# What is taken together entry by entry, and so never compared as a whole.
TAKEN_TOGETHER = ["openings", "revisions", "leaves", "proposals", "agreed", "readings", "words"]
# What makes a proposal the one that it is.
PROPOSAL_CORE = ["family", "choices", "wishes", "leaves"]
OTHER_COPY = "-other"
WORDS_PREFIX = "words."
PROPOSALS_PREFIX = "proposals."


class Merger(TypedDict):
    """How a value reads as text, where the two copies are being compared, and what they had otherwise so far."""

    text_of: Callable[[Any], str]
    opening: str
    leaf: str
    differences: list[VisitDifference]


def differ(merger: Merger, at: str, mine: str, theirs: str) -> None:
    """Note that the copies differ."""
    noted: VisitDifference = {
        "opening": merger["opening"],
        "leaf": merger["leaf"],
        "at": at,
        "mine": mine,
        "theirs": theirs,
    }
    merger["differences"].append(noted)


def is_nothing(text: str) -> bool:
    """Return whether a value, as text, says nothing."""
    return text == '""' or text == "[]" or text == "{}" or text == "false"


def merged_entry(mine: Any, theirs: Any, merger: Merger, prefix: str) -> Any:
    """Return an entry with what the other copy alone says of it; where both speak, this copy's word."""
    own: dict[str, Any] = mine
    other: dict[str, Any] = theirs
    merged = own.copy()
    for name in other:
        if name in TAKEN_TOGETHER:
            continue
        here = merger["text_of"](own[name]) if name in own else '""'
        there = merger["text_of"](other[name])
        if here == there or is_nothing(there):
            continue
        if is_nothing(here):
            merged[name] = other[name]
        else:
            differ(merger, prefix + name, here, there)
    return merged


def united(mine: list[Any], theirs: list[Any], merger: Merger) -> list[Any]:
    """Return what stands in either list, this copy's last: it is the newest of its day."""
    known = [merger["text_of"](each) for each in mine]
    both = [each for each in theirs if merger["text_of"](each) not in known]
    both.extend(mine)
    return both


def entry_called(entries: list[Any], ident: str) -> list[Any]:
    """Return the entry with an id, or nothing."""
    return [entry for entry in entries if entry["id"] == ident]


def merged_leaves(mine: Opening, theirs: Opening, merger: Merger) -> list[Any]:
    """Return the leaves of both copies of an opening, with all their readings."""
    leaves: list[Any] = []
    for leaf in mine["leaves"]:
        merger["leaf"] = leaf["id"]
        merged: Any = leaf
        for other in entry_called(theirs["leaves"], leaf["id"]):
            merged = merged_entry(leaf, other, merger, "")
            merged["words"] = merged_entry(leaf["words"], other["words"], merger, WORDS_PREFIX)
            merged["readings"] = united(leaf["readings"], other["readings"], merger)
            if len(merged["readings"]) > len(leaf["readings"]):
                differ(merger, "readings", str(len(leaf["readings"])), str(len(other["readings"])))
        leaves.append(merged)
    merger["leaf"] = ""
    for other in theirs["leaves"]:
        if len(entry_called(mine["leaves"], other["id"])) == 0:
            leaves.append(other)
            differ(merger, "leaves", "", other["id"])
    return leaves


def same_core(mine: Any, theirs: Any, merger: Merger) -> bool:
    """Return whether two proposals propose the same thing."""
    for name in PROPOSAL_CORE:
        if merger["text_of"](mine[name]) != merger["text_of"](theirs[name]):
            return False
    return True


def free_id(ident: str, proposals: list[Any]) -> str:
    """Return an id that no proposal has yet."""
    free = ident
    while len(entry_called(proposals, free)) > 0:
        free = free + OTHER_COPY
    return free


def merged_proposals(mine: list[Proposal], theirs: list[Proposal], merger: Merger) -> list[Any]:
    """Return the proposals of both copies; one of the same id that proposes something else is there under another."""
    merged: list[Any] = list(mine)
    for other in theirs:
        own = entry_called(merged, other["id"])
        if len(own) == 0:
            merged.append(other)
            differ(merger, "proposals", "", other["id"])
        elif same_core(own[0], other, merger):
            filled = merged_entry(own[0], other, merger, PROPOSALS_PREFIX + other["id"] + ".")
            merged = [filled if each["id"] == other["id"] else each for each in merged]
        else:
            free = free_id(other["id"], merged)
            merged.append({**other, "id": free})
            differ(merger, "proposals", other["id"], free)
    return merged


def merged_opening(mine: Opening, theirs: Opening, merger: Merger) -> Any:
    """Return an opening that both copies have."""
    merger["opening"] = mine["id"]
    merged = merged_entry(mine, theirs, merger, "")
    merged["leaves"] = merged_leaves(mine, theirs, merger)
    merged["proposals"] = merged_proposals(mine["proposals"], theirs["proposals"], merger)
    merged["agreed"] = united(mine["agreed"], theirs["agreed"], merger)
    if len(merged["agreed"]) > len(mine["agreed"]):
        differ(merger, "agreed", str(len(mine["agreed"])), str(len(theirs["agreed"])))
    merger["opening"] = ""
    return merged


def noted_revisions(differences: list[VisitDifference], on: str) -> list[Any]:
    """Return as revisions what the other copy said where this one's word stands."""
    noted: list[Any] = []
    for each in differences:
        if can_choose(each):
            way = [part for part in [each["opening"], each["leaf"], each["at"]] if part != ""]
            what = ".".join(way) + ": " + each["theirs"]
            # In pieces, where one revision could not hold it.
            while len(what) > 0:
                noted.append({"on": on, "who": "", "what": what[:TEXT_MOST]})
                what = what[TEXT_MOST:]
    return noted


def merge_visits(mine: Visit, theirs: Visit, text_of: Callable[[Any], str]) -> MergedVisit:
    """Return two copies of a visit in one, and what they had otherwise, opening by opening."""
    merger: Merger = {"text_of": text_of, "opening": "", "leaf": "", "differences": []}
    merged: Any = merged_entry(mine, theirs, merger, "")
    openings: list[Any] = []
    for opening in mine["openings"]:
        both: list[Opening] = entry_called(theirs["openings"], opening["id"])
        openings.append(merged_opening(opening, both[0], merger) if len(both) > 0 else opening)
    for other in theirs["openings"]:
        if len(entry_called(mine["openings"], other["id"])) == 0:
            openings.append(other)
            differ(merger, "openings", "", other["id"])
    merged["openings"] = openings
    revisions: list[Any] = united(mine["revisions"], theirs["revisions"], merger)
    known = [each["what"] for each in revisions]
    for note in noted_revisions(merger["differences"], later_day(mine["on"], theirs["on"])):
        if note["what"] not in known:
            revisions.append(note)
    merged["revisions"] = revisions
    return {"visit": merged, "differences": merger["differences"]}


def later_day(one: str, other: str) -> str:
    """Return the later of two days."""
    return one if one >= other else other


def spots_told(visit: Visit, difference: VisitDifference) -> list[Any]:
    """Return the entry of a copy in which a difference stands, or nothing."""
    whole: Any = visit
    entries: list[Any] = [whole]
    if difference["opening"] != "":
        entries = entry_called(whole["openings"], difference["opening"])
    if difference["leaf"] != "" and len(entries) > 0:
        entries = entry_called(entries[0]["leaves"], difference["leaf"])
    if len(entries) > 0 and difference["at"].startswith(WORDS_PREFIX):
        return [entries[0]["words"]]
    if len(entries) > 0 and difference["at"].startswith(PROPOSALS_PREFIX):
        start = difference["at"][: len(difference["at"]) - len(name_told(difference))]
        proposals: list[Any] = entries[0]["proposals"]
        return [one for one in proposals if PROPOSALS_PREFIX + one["id"] + "." == start]
    return entries


def name_told(difference: VisitDifference) -> str:
    """Return the name, in its entry, of what two copies have otherwise."""
    parts = difference["at"].split(".")
    return parts[len(parts) - 1]


def can_choose(difference: VisitDifference) -> bool:
    """Return whether only one copy's word can stand, so that somebody may choose which."""
    return difference["mine"] != "" and difference["at"] not in TAKEN_TOGETHER


def put_from(visit: Visit, other: Visit, difference: VisitDifference) -> None:
    """Put into a visit, in place, what the other copy says where they differ."""
    name = name_told(difference)
    for there in spots_told(other, difference):
        theirs: dict[str, Any] = there
        for here in spots_told(visit, difference):
            mine: dict[str, Any] = here
            if name in theirs:
                mine[name] = theirs[name]
