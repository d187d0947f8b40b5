"""A link that is one token after another, their check at its end: a set of proposals, or an answer to one.

    p1~…~…~3k9xq

The first token is the kind's letter and its version. A token is a link of configurations, a text as
:mod:`configurator.browser.link.told_text` spells it, or a few letters of the code's own.
"""

from typing import TypedDict

from configurator.browser.link.check import CHECK_LETTERS, LINK_LETTERS, check_of
from configurator.browser.link.decode import CHECK_LENGTH, unescaped
from configurator.browser.link.told_text import letter_count, read_text_of
from configurator.kernel.message import message, silence
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import wording

BETWEEN_TOKENS = "~"
COUNT_DIGITS = "0123456789"
COUNT_DIGITS_MOST = 3
# Letters of a whole link: more than this, mail programs cut.
TOKEN_LINK_MOST = 20000
NO_PROPOSALS = wording("This address holds no proposals that can be read.")
NO_ANSWER = wording("This holds no answer that can be read.")
NEWER_TOKENS = wording(
    "This link was made by a newer version of this page. Load the page again when there is a signal, or ask for the "
    "link again."
)
DAMAGED_TOKENS = wording(
    "This link has been cut short or changed on its way, so nothing of it is shown; ask for it again."
)


class TokenRun(TypedDict):
    """Tokens that are read one after the other: where the next one is, and whether all were as they should be."""

    tokens: list[str]
    at: int
    good: bool


class TokensRead(TypedDict):
    """The tokens of a link between its version and its check, and why there are none."""

    tokens: list[str]
    refused: str


class TokenLink(TypedDict):
    """A link, or why there is none."""

    link: str
    refused: Message


def no_link(refused: Message) -> TokenLink:
    """Return why there is no link."""
    return {"link": "", "refused": refused}


def tokens_link(tokens: list[str], too_long: str) -> TokenLink:
    """Return tokens as a link; what is ``too_long`` for mail programs is refused in these words, told its ``count``."""
    text = BETWEEN_TOKENS.join(tokens)
    link = text + BETWEEN_TOKENS + check_of(text)
    if len(link) > TOKEN_LINK_MOST:
        return no_link(message(too_long, {"count": [len(link), "count"]}))
    return {"link": link, "refused": silence()}


def is_token_link(fragment: str, kind: str) -> bool:
    """Return whether what follows an address's ``#`` begins as a link of a kind does."""
    link = fragment.replace("%7E", BETWEEN_TOKENS).replace("%7e", BETWEEN_TOKENS)
    tokens = link.split(BETWEEN_TOKENS)
    return link.startswith(kind) and len(tokens) > 1 and small_number(tokens[0][1:]) > 0


def read_tokens(given: str, kind: str, version: float, none: str) -> TokensRead:
    """Return the tokens of a link (with or without its ``#``) of a kind; ``none`` is said of what is no such link."""
    if letter_count(given) > TOKEN_LINK_MOST * 3:
        return {"tokens": [], "refused": none}
    link = unescaped(given[1:] if given.startswith("#") else given)
    link = link.replace("%7E", BETWEEN_TOKENS).replace("%7e", BETWEEN_TOKENS)
    if not is_token_link(link, kind):
        return {"tokens": [], "refused": none}
    tokens = link.split(BETWEEN_TOKENS)
    if small_number(tokens[0][1:]) > version:
        return {"tokens": [], "refused": NEWER_TOKENS}
    check = tokens[len(tokens) - 1]
    body = link[: len(link) - len(check) - 1]
    strange = [letter for letter in link if letter != BETWEEN_TOKENS and letter not in LINK_LETTERS]
    if len(strange) > 0 or len(link) > TOKEN_LINK_MOST or check_of(body) != check:
        return {"tokens": [], "refused": DAMAGED_TOKENS}
    return {"tokens": tokens[1 : len(tokens) - 1], "refused": ""}


def small_number(text: str) -> int:
    """Return a whole number of three digits at most, or 0 for anything else."""
    strange = [digit for digit in text if digit not in COUNT_DIGITS]
    return int(text) if len(strange) == 0 and text != "" and len(text) <= COUNT_DIGITS_MOST else 0


def next_token(run: TokenRun) -> str:
    """Return the next token; past the end an empty one, noted."""
    if run["at"] >= len(run["tokens"]):
        run["good"] = False
        return ""
    token = run["tokens"][run["at"]]
    run["at"] += 1
    return token


def next_text(run: TokenRun, most: float) -> str:
    """Return the next token as a text of so many letters at most."""
    read = read_text_of(next_token(run))
    if not read["good"] or letter_count(read["text"]) > most:
        run["good"] = False
        return ""
    return read["text"]


def next_tag(run: TokenRun, or_none: bool) -> str:
    """Return the next token as five letters of a check, or as nothing where that may be."""
    token = next_token(run)
    strange = [letter for letter in token if letter not in CHECK_LETTERS]
    if len(strange) > 0 or not (len(token) == CHECK_LENGTH or (or_none and token == "")):
        run["good"] = False
        return ""
    return token


def next_count(run: TokenRun, most: float) -> int:
    """Return the next token as a whole number between 1 and the most that may be."""
    count = small_number(next_token(run))
    if count < 1 or count > most:
        run["good"] = False
        return 0
    return count
