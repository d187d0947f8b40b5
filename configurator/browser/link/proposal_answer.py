"""A client's answer to a set of proposals: as a link with her remarks, or as a short code that has her marks alone."""

from typing import TypedDict

from configurator.browser.link.check import CHECK_LETTERS, check_of
from configurator.browser.link.decode import CHECK_LENGTH
from configurator.browser.link.proposal_set import SET_OPENINGS_MOST, SET_PROPOSALS_MOST, ProposalSet, too_long
from configurator.browser.link.tokens import (
    DAMAGED_TOKENS,
    NO_ANSWER,
    TokenLink,
    TokenRun,
    next_tag,
    next_text,
    no_link,
    read_tokens,
    tokens_link,
)
from configurator.browser.link.told_text import spell_text
from configurator.kernel.message import is_said, plain, silence
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import wording

ANSWER_VERSION = 1
REMARK_MOST = 600
# Letters of a code's check: one slip in a thousand passes, beside the mark of the set, which has to be right as well.
CODE_CHECK_LENGTH = 2
# A letter of a code holds what is marked at two doors: none of four, or one.
CODE_BASE = SET_PROPOSALS_MOST + 1
CODE_DAMAGED = wording("This code has a slip in it: look at each letter again, or ask for the link.")


class AnsweredOpening(TypedDict):
    """What is answered for an opening: by tags which one it is, which proposal is liked (or nothing), and remarks."""

    opening: str
    liked: str
    remark: str


class ProposalAnswer(TypedDict):
    """What a client answers to the proposals with a ``mark`` of a ``visit``; ``remark`` is about all of them."""

    visit: str
    mark: str
    remark: str
    openings: list[AnsweredOpening]


class AnswerRead(TypedDict):
    """What a link of an answer holds, or why nothing of it is shown."""

    held: ProposalAnswer
    refused: Message


class CodeRead(TypedDict):
    """What a short code holds: the set's mark, and for each opening which proposal is liked, from 1, or 0 for none."""

    mark: str
    picks: list[int]
    refused: Message


def no_answer() -> ProposalAnswer:
    """Return an answer of nothing."""
    return {"visit": "", "mark": "", "remark": "", "openings": []}


def remark_most() -> int:
    """Return how many letters a link takes of a remark."""
    return REMARK_MOST


def fresh_answer(told: ProposalSet) -> ProposalAnswer:
    """Return the answer to a set before anything is marked."""
    openings: list[AnsweredOpening] = [
        {"opening": opening["tag"], "liked": "", "remark": ""} for opening in told["openings"]
    ]
    return {"visit": told["visit"], "mark": told["mark"], "remark": "", "openings": openings}


def answer_refusal(answer: ProposalAnswer) -> Message:
    """Return what of an answer is beyond the bounds of a link, or silence."""
    remarks = [answer["remark"]]
    remarks.extend([opening["remark"] for opening in answer["openings"]])
    for remark in remarks:
        why = too_long(wording("A remark"), remark, REMARK_MOST)
        if is_said(why):
            return why
    return silence()


def encode_answer(answer: ProposalAnswer) -> TokenLink:
    """Return an answer as a link, without the ``#``; remarks that are too long are refused."""
    refused = answer_refusal(answer)
    if is_said(refused):
        return no_link(refused)
    tokens = ["a" + str(ANSWER_VERSION), answer["visit"], answer["mark"], spell_text(answer["remark"])]
    for opening in answer["openings"]:
        tokens.extend([opening["opening"], opening["liked"], spell_text(opening["remark"])])
    return tokens_link(tokens, wording("Your remarks make a link that mail programs cut. Shorten them."))


def read_answer(text: str) -> AnswerRead:
    """Return the answer that a link (with or without its ``#``) holds; never throws, whatever the text."""
    read = read_tokens(text, "a", ANSWER_VERSION, NO_ANSWER)
    if read["refused"] != "":
        return {"held": no_answer(), "refused": plain(read["refused"])}
    run: TokenRun = {"tokens": read["tokens"], "at": 0, "good": True}
    answer = no_answer()
    answer["visit"] = next_tag(run, False)
    answer["mark"] = next_tag(run, False)
    answer["remark"] = next_text(run, REMARK_MOST)
    while run["good"] and run["at"] < len(run["tokens"]):
        answer["openings"].append(
            {"opening": next_tag(run, False), "liked": next_tag(run, True), "remark": next_text(run, REMARK_MOST)}
        )
    if not run["good"] or len(answer["openings"]) == 0 or len(answer["openings"]) > SET_OPENINGS_MOST:
        return {"held": no_answer(), "refused": plain(DAMAGED_TOKENS)}
    return {"held": answer, "refused": silence()}


def answer_code(told: ProposalSet, answer: ProposalAnswer) -> str:
    """Return what is marked in a set as a code to be read out: the set's mark, a letter for two doors each, a check."""
    picks = [pick_number(told, i, answer) for i in range(len(told["openings"]))]
    text = told["mark"]
    for i in range(0, len(picks), 2):
        second = picks[i + 1] if i + 1 < len(picks) else 0
        text = text + CHECK_LETTERS[picks[i] * CODE_BASE + second]
    return text + code_check(text)


def code_check(text: str) -> str:
    """Return the check at a code's end."""
    return check_of(text)[CHECK_LENGTH - CODE_CHECK_LENGTH :]


def pick_number(told: ProposalSet, place: int, answer: ProposalAnswer) -> int:
    """Return which of an opening's proposals is liked, counted from 1, or 0."""
    proposals = told["openings"][place]["proposals"]
    for i in range(len(proposals)):
        if proposals[i]["tag"] == answer["openings"][place]["liked"]:
            return i + 1
    return 0


def spaced_code(code: str) -> str:
    """Return a code as it is read out: its mark, then the rest."""
    return code[:CHECK_LENGTH] + " " + code[CHECK_LENGTH:]


def read_answer_code(given: str) -> CodeRead:
    """Return what a code holds, however it was spaced or written."""
    code = "".join([letter for letter in given[:200].lower() if letter in CHECK_LETTERS])
    cut = len(code) - CODE_CHECK_LENGTH
    if cut <= CHECK_LENGTH or code_check(code[:cut]) != code[cut:]:
        return {"mark": "", "picks": [], "refused": plain(CODE_DAMAGED)}
    picks: list[int] = []
    for letter in code[CHECK_LENGTH:cut]:
        pair = CHECK_LETTERS.find(letter)
        picks.append(pair // CODE_BASE)
        picks.append(pair % CODE_BASE)
    if len([pick for pick in picks if pick > SET_PROPOSALS_MOST]) > 0 or len(picks) > SET_OPENINGS_MOST:
        return {"mark": "", "picks": [], "refused": plain(CODE_DAMAGED)}
    return {"mark": code[:CHECK_LENGTH], "picks": picks, "refused": silence()}


def answer_of_code(told: ProposalSet, code: CodeRead) -> ProposalAnswer:
    """Return a code's answer to the set of which it is; what the set has not is passed over."""
    answer = fresh_answer(told)
    for i in range(min(len(code["picks"]), len(told["openings"]))):
        pick = code["picks"][i]
        proposals = told["openings"][i]["proposals"]
        if pick > 0 and pick <= len(proposals):
            answer["openings"][i]["liked"] = proposals[pick - 1]["tag"]
    return answer
