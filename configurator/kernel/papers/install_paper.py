"""The installer's sheet: for each piece where to drill, what to check before, and what to hand over after."""

from configurator.kernel.fit import over_opening
from configurator.kernel.message import plain
from configurator.kernel.papers.blocks import (
    Block,
    Column,
    Paper,
    new_page,
    number_column,
    paper_drawings,
    paper_table,
    paper_title,
    room_to_write,
    signature_lines,
    tick_list,
    word_column,
)
from configurator.kernel.papers.install_facts import (
    before_drilling,
    fixing_rows,
    handed_over,
    held_down_facts,
    level_facts,
)
from configurator.kernel.papers.making import Commission, Desk, Making, makings, piece_title
from configurator.kernel.papers.order_paper import (
    paired_table,
    paper_foot,
    paper_head,
    scaled_drawing,
    unsettled,
)
from configurator.kernel.papers.piece_codes import piece_codes, uncoded
from configurator.kernel.shapes import Drawing, Message
from configurator.kernel.tongue import wording
from configurator.kernel.views.fixing_front import fixing_front
from configurator.kernel.views.sheet import usual_scales
from configurator.kernel.visit.leaf_answers import ask_leaf

# The largest scale that is drawn to, and what A4 and Letter have room for under the title, mm of paper.
LARGEST_SCALE = 10.0
FRONT_WIDE = 190.0
FRONT_HIGH = 240.0
REMARKS_HIGH = 14.0
# How much wider a fact's name stands than its value.
FACT_SHARE = 1.9


def is_front_room(view: Drawing, scale: float) -> bool:
    """Return whether a page has room for a drawing at a scale."""
    return view["width"] / scale <= FRONT_WIDE and view["height"] / scale <= FRONT_HIGH


def fixing_drawing(making: Making, desk: Desk) -> Block:
    """Return where the piece is fixed, at 1:10 or the largest usual scale for which a page has room."""
    scales = [scale for scale in usual_scales(desk["units"]) if scale >= LARGEST_SCALE]
    at = 0
    view = fixing_front(making["fit"], desk["words"], desk["units"], scales[at])
    while at < len(scales) - 1 and not is_front_room(view, scales[at]):
        at = at + 1
        view = fixing_front(making["fit"], desk["words"], desk["units"], scales[at])
    text = wording("from the room; a cross is a screw, the numbers are those of the list")
    return paper_drawings([scaled_drawing(view, scales[at], text, desk)])


def place_columns(making: Making) -> list[Column]:
    """Return the columns of the list of fixings."""
    over = over_opening(making["fit"])
    beside = plain("from the opening's hinge-side edge") if over else plain("from the glass's hinge-side edge")
    above = plain("from the opening's upper edge") if over else plain("from the glass's upper edge")
    return [
        number_column(plain("no."), 0.5),
        word_column(plain("what"), 1.0),
        number_column(beside, 1.5),
        number_column(above, 1.5),
        number_column(plain("above the floor"), 1.1),
        number_column(plain("screws"), 0.7),
        number_column(plain("spacer"), 0.8),
        number_column(plain("screw length"), 1.0),
    ]


def piece_cautions(making: Making) -> list[Message]:
    """Return the cautions that go with this very piece, each with its source."""
    told: list[Message] = []
    for one in ask_leaf(making["fit"], making["commission"]["household"])["cautions"]:
        if not one["general"]:
            told.append(one["text"])
    return told


def installed_blocks(making: Making, desk: Desk) -> list[Block]:
    """Return the pages of one piece."""
    blocks = [paper_title(piece_title(making), 2.0)]
    cautions = piece_cautions(making)
    if len(cautions) > 0:
        blocks.append(paper_title(plain("Cautions, ticked as read"), 3.0))
        blocks.append(tick_list(cautions))
    blocks.append(paper_title(plain("Before the first hole"), 3.0))
    blocks.append(tick_list(before_drilling(making)))
    blocks.append(paired_table(plain("Level line, spacer and screws"), level_facts(making), FACT_SHARE))
    held = held_down_facts(making)
    if len(held) > 0:
        blocks.append(paired_table(plain("Hold-downs"), held, FACT_SHARE))
    blocks.append(paper_table(plain("Where to drill"), place_columns(making), fixing_rows(making["fit"])))
    blocks.append(paper_title(plain("Handed over to the client"), 3.0))
    blocks.append(tick_list(handed_over(making)))
    blocks.append(room_to_write(plain("Otherwise than on this sheet"), REMARKS_HIGH))
    blocks.append(signature_lines([plain("installer"), plain("client")]))
    blocks.append(new_page())
    blocks.append(paper_title(piece_title(making), 3.0))
    blocks.append(fixing_drawing(making, desk))
    return blocks


def install_paper(commissions: list[Commission], desk: Desk) -> Paper:
    """Return the installer's sheet of one or more commissions."""
    title = plain("Installer's sheet")
    blocks = paper_head(title, desk)
    for commission in commissions:
        blocks.extend(unsettled(commission))
    made = makings(commissions)
    for at in range(len(made)):
        if at > 0:
            blocks.append(new_page())
        blocks.extend(installed_blocks(made[at], desk))
    codes = piece_codes(made, desk)
    if len(codes) > 0:
        blocks.append(new_page())
        blocks.extend(codes)
    blocks.extend(uncoded(made, desk))
    return {"id": "install", "title": title, "foot": paper_foot(desk), "blocks": blocks}
