"""The codes that open what a visit has made, each piece on its door."""

from configurator.kernel.message import message, plain
from configurator.kernel.papers.blocks import Block, paper_code, paper_text, paper_title
from configurator.kernel.papers.making import Desk, Making, piece_title

# Where a link is opened.
TRY_PAGE = "try.html#"


def piece_code(making: Making, address: str, before: str) -> Block:
    """Return the code that opens a piece on its door; or that it is the one before, or that there is none."""
    at: dict[str, list[float | str]] = {"position": [str(making["position"]), "name"]}
    if address == "":
        why = message(
            "Piece {position} has no code, as no link opens just that: it is for a sidelight, for a leaf measured by "
            "itself, or of a covering that is no longer offered as it was agreed.",
            at,
        )
        return paper_text(why)
    if address == before:
        return paper_text(message("Piece {position} is opened by the code above it.", at))
    return paper_code(piece_title(making), address)


def piece_codes(made: list[Making], desk: Desk) -> list[Block]:
    """Return what opens each piece of a visit on its door; nothing where the paper's head has the link of all, or
    where :func:`uncoded` says why."""
    if desk["link"] != "" or desk["home"] == "" or len(made) == 0:
        return []
    blocks = [paper_title(plain("Each on its door, to look at"), 2.0)]
    before = ""
    for making in made:
        links = making["commission"]["links"]
        address = desk["home"] + TRY_PAGE + links[making["leaf"]] if making["leaf"] in links else ""
        blocks.append(piece_code(making, address, before))
        before = address if address != "" else before
    return blocks


def uncoded(made: list[Making], desk: Desk) -> list[Block]:
    """Return why the pieces of a visit have no codes, where the site's address is not known."""
    if desk["link"] != "" or desk["home"] != "" or len(made) == 0:
        return []
    return [paper_text(plain("There are no codes, as nobody knows the address at which the site stands."))]
