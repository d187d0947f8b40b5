"""The order to the workroom: one line a piece, then each piece with its cuts and drawings, and the totals."""

from configurator.kernel.message import is_said, message, plain, silence
from configurator.kernel.papers.blocks import (
    Block,
    Column,
    Paper,
    Row,
    Scaled,
    named_cell,
    new_page,
    number_column,
    paper_caution,
    paper_code,
    paper_drawings,
    paper_row,
    paper_table,
    paper_text,
    paper_title,
    room_to_write,
    sum_column,
    value_cell,
    word_column,
)
from configurator.kernel.papers.ink import inked
from configurator.kernel.papers.making import Commission, Desk, Making, makings, piece_title, which_leaf
from configurator.kernel.papers.order_facts import Fact, fact_groups, option_name
from configurator.kernel.papers.order_totals import Total, cloth_totals, hardware_totals
from configurator.kernel.papers.piece_codes import piece_codes, uncoded
from configurator.kernel.position import closed_position
from configurator.kernel.shapes import Drawing, Fit, Household, Message
from configurator.kernel.tongue import wording
from configurator.kernel.views.draft import Draft, drafted
from configurator.kernel.views.sheet import scale_words
from configurator.kernel.views.subject import subject
from configurator.kernel.views.workroom import workroom_sheet
from configurator.kernel.visit.leaf_answers import ask_leaf
from configurator.kernel.visit.visit_fields import LEAF_NAMES
from configurator.kernel.visit.visit_shapes import HungLeaf

# Room for what the one who orders adds by hand, mm of paper.
NOTES_HIGH = 26.0


def paper_facts(desk: Desk) -> list[Row]:
    """Return who orders, on which day."""
    rows = [
        paper_row([plain("showroom"), named_cell(desk["showroom"])]),
        paper_row([plain("date"), named_cell(desk["day"])]),
    ]
    if desk["client"] != "":
        rows.append(paper_row([plain("for"), named_cell(desk["client"])]))
    return rows


def paper_head(text: Message, desk: Desk) -> list[Block]:
    """Return a paper's title with who writes it, on which day, and the address that it came of."""
    plain_columns = [word_column(silence(), 1.0), word_column(silence(), 4.0)]
    blocks = [paper_title(text, 1.0), paper_table(silence(), plain_columns, paper_facts(desk))]
    if desk["link"] != "":
        blocks.append(paper_code(plain("All of it again, to look at and to change:"), desk["link"]))
    return blocks


def line_columns() -> list[Column]:
    """Return the columns of the list of pieces."""
    return [
        number_column(plain("position"), 0.8),
        word_column(plain("room"), 0.9),
        word_column(plain("covering and picks"), 2.4),
        number_column(plain("quantity"), 0.8),
        word_column(plain("left or right"), 1.5),
        number_column(plain("finished width"), 1.1),
        number_column(plain("finished height"), 1.1),
    ]


def picked_words(making: Making) -> str:
    """Return the covering with all that was picked."""
    fit = making["fit"]
    names = [fit["family"]["name"]]
    names.extend([option_name(choice, fit["choices"][choice["id"]]) for choice in fit["family"]["choices"]])
    return " · ".join(names)


def piece_line(making: Making) -> Row:
    """Return a piece's line in the list."""
    commission = making["commission"]
    figures = making["figures"]
    return paper_row(
        [
            value_cell(making["position"], "count"),
            named_cell(commission["room"]),
            named_cell(picked_words(making)),
            value_cell(commission["count"], "count"),
            which_leaf(making),
            value_cell(figures["order_width"]["value"], "mm"),
            value_cell(figures["order_height"]["value"], "mm"),
        ]
    )


def fact_row(told: Fact) -> Row:
    """Return a fact's row: what it is, its value, its rule and the numbers put in."""
    return paper_row([told["name"], told["value"], told["rule"], told["worked"]])


def paired_rows(facts: list[Fact]) -> list[Row]:
    """Return facts two in a row: those of the first half on the left, of the second on the right."""
    half = int((len(facts) + 1) / 2)
    rows: list[Row] = []
    for at in range(half):
        cells = [facts[at]["name"], facts[at]["value"]]
        other = at + half
        if other < len(facts):
            cells.extend([facts[other]["name"], facts[other]["value"]])
        else:
            cells.extend([silence(), silence()])
        rows.append(paper_row(cells))
    return rows


def paired_table(name: Message, facts: list[Fact], share: float) -> Block:
    """Return a table of facts, two in a row, in which a name has so much of the width that a value has 1 of."""
    columns = [word_column(silence(), share), word_column(silence(), 1.0)]
    return paper_table(name, [columns[0], columns[1], columns[0], columns[1]], paired_rows(facts))


def fact_table(name: Message, facts: list[Fact]) -> Block:
    """Return a table of facts with how they came about; two in a row where none of them was worked out."""
    worked = [told for told in facts if told["rule"]["text"] != ""]
    if len(worked) == 0:
        return paired_table(name, facts, 0.6)
    columns = [
        word_column(plain("what"), 1.3),
        number_column(plain("as ordered"), 0.8),
        word_column(plain("how it came about"), 1.9),
        sum_column(plain("with the numbers"), 1.9),
    ]
    return paper_table(name, columns, [fact_row(told) for told in facts])


def piece_blocks(making: Making) -> list[Block]:
    """Return a piece with all that is told of it."""
    blocks = [paper_title(piece_title(making), 2.0)]
    for group in fact_groups(making):
        blocks.append(fact_table(group["name"], group["facts"]))
        if group["id"] == "size":
            blocks.append(
                paper_text(
                    plain(
                        "These are finished sizes, from edge to edge of the whole covering. Overlap and clearance are "
                        "in them already: take off no more than the cut lengths below do."
                    )
                )
            )
    return blocks


def first_fit(commission: Commission) -> Fit:
    """Return the covering as it hangs on the first of its leaves, of which the drawings are made."""
    return commission["leaves"][0]["fit"]


def closed_draft(commission: Commission, desk: Desk) -> Draft:
    """Return what the drawings of a commission are drawn from: closed, as it is measured."""
    fit = first_fit(commission)
    given = subject(fit, closed_position(fit["numbers"]), commission["household"], desk["words"])
    return drafted(fit["door"], given, desk["words"], desk["units"])


def scaled_caption(text: str, scale: float, desk: Desk) -> Message:
    """Return a drawing's caption: what it is, and at which scale."""
    drawn = scale_words(scale, desk["words"], desk["units"])
    return message("{drawing}, {scale}", {"drawing": [text, "text"], "scale": [drawn, "name"]})


def scaled_drawing(drawing: Drawing, scale: float, text: str, desk: Desk) -> Scaled:
    """Return a drawing at a scale, with its caption."""
    return {"drawing": inked(drawing), "scale": scale, "caption": scaled_caption(text, scale, desk)}


def workroom_drawings(commission: Commission, desk: Desk) -> Block:
    """Return the drawings of a commission, each to its scale."""
    sheet = workroom_sheet(closed_draft(commission, desk))
    close = sheet["close_scale"]
    return paper_drawings(
        [
            scaled_drawing(sheet["views"], sheet["scale"], wording("elevation, section and plan"), desk),
            scaled_drawing(sheet["upright"], close, wording("at the handle, cut upright"), desk),
            scaled_drawing(sheet["level"], close, wording("at the handle, cut level"), desk),
        ]
    )


def total_rows(totals: list[Total]) -> list[Row]:
    """Return totals as rows."""
    return [paper_row([total["what"], total["size"], value_cell(total["amount"], total["unit"])]) for total in totals]


def total_table(name: Message, size: Message, totals: list[Total]) -> list[Block]:
    """Return a table of totals, or nothing where there are none."""
    if len(totals) == 0:
        return []
    columns = [word_column(plain("what"), 3.0), number_column(size, 1.0), number_column(plain("in all"), 1.0)]
    return [paper_table(name, columns, total_rows(totals))]


def leaf_unsettled(one: HungLeaf, household: Household) -> list[Block]:
    """Return what must be settled before a covering is made for a leaf: that it cannot go there, what is blocked."""
    fit = one["fit"]
    terms: dict[str, list[float | str]] = {
        "covering": [fit["family"]["name"], "name"],
        "leaf": [LEAF_NAMES[one["leaf"]], "text"],
    }
    if is_said(fit["size"]["refusal"]):
        text = message("{covering} cannot be made for {leaf}, and is not on this order:", terms)
        return [paper_caution(text), paper_text(fit["size"]["refusal"])]
    blocks: list[Block] = []
    for told in ask_leaf(fit, household)["verdicts"].values():
        if told["state"] == "blocked":
            named: dict[str, list[float | str]] = {**terms, "asked": [told["name"], "text"]}
            text = message("To be settled before it is made: {covering} on {leaf}, {asked}.", named)
            blocks.extend([paper_caution(text), paper_text(told["why"])])
    return blocks


def unsettled(commission: Commission) -> list[Block]:
    """Return what must be settled before a commission is made; leaf by leaf."""
    blocks: list[Block] = []
    for one in commission["leaves"]:
        blocks.extend(leaf_unsettled(one, commission["household"]))
    return blocks


def order_list(made: list[Making]) -> Block:
    """Return the list of pieces: one line each."""
    return paper_table(plain("The pieces"), line_columns(), [piece_line(making) for making in made])


def drawn_title(commission: Commission) -> Message:
    """Return what a commission's drawings show: the covering, on which door, in which room."""
    fit = first_fit(commission)
    terms: dict[str, list[float | str]] = {
        "covering": [fit["family"]["name"], "name"],
        "door": [fit["door"]["name"], "name"],
        "room": [commission["room"], "name"],
    }
    if commission["room"] == "":
        return message("{covering} on {door}", terms)
    return message("{covering} on {door}, {room}", terms)


def made_blocks(own: list[Making], desk: Desk) -> list[Block]:
    """Return the pages of one commission: each piece, then the drawings; nothing where none of it can be made."""
    blocks: list[Block] = []
    for making in own:
        blocks.append(new_page())
        blocks.extend(piece_blocks(making))
    if len(own) > 0:
        blocks.append(new_page())
        blocks.append(paper_title(drawn_title(own[0]["commission"]), 3.0))
        blocks.append(workroom_drawings(own[0]["commission"], desk))
    return blocks


def paper_foot(desk: Desk) -> Message:
    """Return what stands at the foot of every page."""
    return message("{showroom} · {day}", {"showroom": [desk["showroom"], "name"], "day": [desk["day"], "name"]})


def order_paper(commissions: list[Commission], desk: Desk) -> Paper:
    """Return the order to the workroom of one or more commissions."""
    made = makings(commissions)
    title = plain("Order to the workroom")
    blocks = paper_head(title, desk)
    for commission in commissions:
        blocks.extend(unsettled(commission))
    blocks.append(order_list(made))
    blocks.extend(total_table(plain("Cloth in all"), plain("width on the bolt"), cloth_totals(made)))
    blocks.extend(total_table(plain("Hardware in all"), plain("size"), hardware_totals(made)))
    blocks.append(room_to_write(plain("Notes to the workroom"), NOTES_HIGH))
    blocks.extend(piece_codes(made, desk))
    for at in range(len(commissions)):
        blocks.extend(made_blocks([making for making in made if making["order"] == at], desk))
    blocks.extend(uncoded(made, desk))
    return {"id": "order", "title": title, "foot": paper_foot(desk), "blocks": blocks}
