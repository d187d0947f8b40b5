"""A set of proposals as a link, for a client to read: each opening's door with what is proposed, notes and prices."""

from typing import TypedDict

from configurator.browser.link.decode import CONFIGURATIONS_MOST
from configurator.browser.link.tokens import (
    DAMAGED_TOKENS,
    NO_PROPOSALS,
    TokenLink,
    TokenRun,
    next_count,
    next_tag,
    next_text,
    next_token,
    no_link,
    read_tokens,
    tokens_link,
)
from configurator.browser.link.told_text import letter_count, spell_text
from configurator.kernel.message import is_said, message, plain, silence
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import wording

SET_VERSION = 1
SET_OPENINGS_MOST = 40
# What a link of configurations holds.
SET_PROPOSALS_MOST = CONFIGURATIONS_MOST
# Letters of each text.
SET_NAME_MOST = 80
SET_NOTE_MOST = 600
SET_WORDS_MOST = 1200
SET_PRICE_MOST = 24
SET_DAY_MOST = 10
INNER_LINK_MOST = 4000
LEAF_SIGNS = {"active": "a", "other": "o", "left-sidelight": "l", "right-sidelight": "r"}
# Beside the leaves' signs: the other leaf is not as the one with the handle, which is the one that the link holds.
OTHERWISE_SIGN = "x"


class SetProposal(TypedDict):
    """What is told of one proposal; its covering, picks and position stand in the opening's link, in the same order.

    ``tag`` is what an answer calls it by. ``leaves`` are those that it dresses, in the order of ``LEAF_SIGNS``;
    ``otherwise`` says that it dresses the other leaf of a pair, too, and that this one measures otherwise.
    ``price`` is a text, empty where none is told.
    """

    tag: str
    leaves: list[str]
    otherwise: bool
    note: str
    price: str


class SetOpening(TypedDict):
    """One opening: what an answer calls it by, its room, and its door with all that is proposed as a link."""

    tag: str
    room: str
    link: str
    proposals: list[SetProposal]


class ProposalSet(TypedDict):
    """What a client is shown. ``visit`` and ``mark`` say of which visit, and of which of its proposals, an answer is.

    ``client`` is empty unless her name was asked for; ``on`` is a day of ISO 8601, ``words`` are the consultant's.
    """

    visit: str
    mark: str
    on: str
    client: str
    words: str
    openings: list[SetOpening]


class SetRead(TypedDict):
    """What a link of proposals holds, or why nothing of it is shown."""

    held: ProposalSet
    refused: Message


def no_set() -> ProposalSet:
    """Return a set of nothing."""
    return {"visit": "", "mark": "", "on": "", "client": "", "words": "", "openings": []}


def set_words_most() -> int:
    """Return how many letters a link takes of the consultant's words to all of it."""
    return SET_WORDS_MOST


def too_long(what: str, text: str, most: float) -> Message:
    """Return that a text has more letters than a link takes, or silence."""
    count = letter_count(text)
    if count <= most:
        return silence()
    told = wording("{what}: {count} letters are more than a link takes; {most} at most. Shorten it.")
    return message(told, {"what": [what, "text"], "count": [count, "count"], "most": [most, "count"]})


def set_refusal(told: ProposalSet) -> Message:
    """Return why a set goes into no link: the first thing that is beyond its bounds; or silence."""
    if len(told["openings"]) == 0:
        return plain("No door of this visit has a proposal that could be shown.")
    if len(told["openings"]) > SET_OPENINGS_MOST:
        count = len(told["openings"])
        many = wording("A link takes {most} doors at most, and this visit proposes something for {count}.")
        return message(many, {"most": [SET_OPENINGS_MOST, "count"], "count": [count, "count"]})
    found = [
        too_long(wording("Name of the client"), told["client"], SET_NAME_MOST),
        too_long(wording("Your words to the client"), told["words"], SET_WORDS_MOST),
    ]
    found.extend([opening_refusal(opening) for opening in told["openings"]])
    for why in found:
        if is_said(why):
            return why
    return silence()


def opening_refusal(opening: SetOpening) -> Message:
    """Return what of an opening is beyond the bounds of a link, or silence."""
    if len(opening["proposals"]) > SET_PROPOSALS_MOST:
        many = wording("{room}: a link takes {most} proposals for a door; take out what nobody is to choose.")
        return message(many, {"room": [opening["room"], "name"], "most": [SET_PROPOSALS_MOST, "count"]})
    why = too_long(wording("Name of the room"), opening["room"], SET_NAME_MOST)
    if not is_said(why):
        why = too_long(wording("A door with its coverings"), opening["link"], INNER_LINK_MOST)
    for proposal in opening["proposals"]:
        if not is_said(why):
            why = too_long(wording("Your note to a proposal"), proposal["note"], SET_NOTE_MOST)
        if not is_said(why):
            why = too_long(wording("Price"), proposal["price"], SET_PRICE_MOST)
    return why


def encode_set(told: ProposalSet) -> TokenLink:
    """Return a set as a link, without the ``#``; one that is beyond the bounds of links is refused."""
    refused = set_refusal(told)
    if is_said(refused):
        return no_link(refused)
    tokens = ["p" + str(SET_VERSION), told["visit"], told["mark"]]
    tokens.extend([spell_text(text) for text in [told["on"], told["client"], told["words"]]])
    for opening in told["openings"]:
        tokens.extend([opening["tag"], spell_text(opening["room"]), opening["link"], str(len(opening["proposals"]))])
        for proposal in opening["proposals"]:
            signs = "".join([sign for leaf, sign in LEAF_SIGNS.items() if leaf in proposal["leaves"]])
            if proposal["otherwise"]:
                signs = signs + OTHERWISE_SIGN
            tokens.extend([proposal["tag"], signs, spell_text(proposal["note"]), spell_text(proposal["price"])])
    return tokens_link(
        tokens, wording("The link has {count} letters, more than mail programs pass on whole. Shorten the notes.")
    )


def read_set(text: str) -> SetRead:
    """Return the set that a link (with or without its ``#``) holds; never throws, whatever the text.

    What it says of doors and coverings stays a link, to be opened by
    :func:`configurator.browser.link.decode.read_link`.
    """
    read = read_tokens(text, "p", SET_VERSION, NO_PROPOSALS)
    if read["refused"] != "":
        return {"held": no_set(), "refused": plain(read["refused"])}
    run: TokenRun = {"tokens": read["tokens"], "at": 0, "good": True}
    told = no_set()
    told["visit"] = next_tag(run, False)
    told["mark"] = next_tag(run, False)
    told["on"] = next_text(run, SET_DAY_MOST)
    told["client"] = next_text(run, SET_NAME_MOST)
    told["words"] = next_text(run, SET_WORDS_MOST)
    while run["good"] and run["at"] < len(run["tokens"]):
        told["openings"].append(next_opening(run))
    if not run["good"] or is_said(set_refusal(told)):
        return {"held": no_set(), "refused": plain(DAMAGED_TOKENS)}
    return {"held": told, "refused": silence()}


def next_opening(run: TokenRun) -> SetOpening:
    """Return the next opening of a set."""
    opening: SetOpening = {"tag": next_tag(run, False), "room": "", "link": "", "proposals": []}
    opening["room"] = next_text(run, SET_NAME_MOST)
    opening["link"] = next_token(run)
    for _proposal in range(next_count(run, SET_PROPOSALS_MOST)):
        opening["proposals"].append(next_proposal(run))
    return opening


def next_proposal(run: TokenRun) -> SetProposal:
    """Return the next proposal of an opening."""
    tag = next_tag(run, False)
    signs = next_token(run)
    leaves = [leaf for leaf, sign in LEAF_SIGNS.items() if sign in signs]
    otherwise = OTHERWISE_SIGN in signs
    if len(signs) != len(leaves) + (1 if otherwise else 0):
        run["good"] = False
    return {
        "tag": tag,
        "leaves": leaves,
        "otherwise": otherwise,
        "note": next_text(run, SET_NOTE_MOST),
        "price": next_text(run, SET_PRICE_MOST),
    }
