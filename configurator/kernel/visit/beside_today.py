"""What was agreed for each leaf, figure by figure, with the same figure as it comes out today beside it."""

from typing import TypedDict

from configurator.kernel.message import is_said, plain
from configurator.kernel.shapes import Answer, Message
from configurator.kernel.visit.agreed import (
    as_proposal,
    can_hang_frozen,
    has_moved,
    is_known_still,
    valued_so,
    with_frozen,
)
from configurator.kernel.visit.hung_leaves import hung_leaves
from configurator.kernel.visit.leaf_answers import hung_answers
from configurator.kernel.visit.leaf_doors import opening_household
from configurator.kernel.visit.visit_shapes import Agreed, AgreedPart, Opening, Visit, VisitStock

# What is told of a covering first.
TOLD_FIRST = ["order_width", "order_height", "stack_height", "projection_most", "spacer", "visible_glass_open"]


class BesideToday(TypedDict):
    """A figure of a leaf: its name, what was agreed, what it is today, and whether that is something else."""

    leaf: str
    name: str
    then: Message
    now: Message
    moved: bool


def answers_today(visit: Visit, opening: Opening, agreed: Agreed, stock: VisitStock) -> dict[str, Answer]:
    """Return today's answers by leaf, of the covering as it was frozen where the catalog has it no longer."""
    found: dict[str, Answer] = {}
    known = is_known_still(agreed, stock)
    if not known and not can_hang_frozen(agreed["covering"], stock):
        return found
    hung = hung_leaves(opening, as_proposal(agreed), stock if known else with_frozen(agreed, stock))
    answers = hung_answers(hung, opening_household(opening, visit["household"]))
    for i in range(len(hung)):
        found[hung[i]["leaf"]] = answers[i]
    return found


def part_rows(part: AgreedPart, answers: dict[str, Answer]) -> list[BesideToday]:
    """Return the figures of one leaf that was agreed."""
    rows: list[BesideToday] = []
    for name in TOLD_FIRST:
        if name not in part["figures"]:
            continue
        then = part["figures"][name]
        row: BesideToday = {
            "leaf": part["leaf"],
            "name": then["name"],
            "then": valued_so(then["value"], then["unit"]),
            "now": plain("cannot be hung"),
            "moved": True,
        }
        if part["leaf"] in answers:
            answer = answers[part["leaf"]]
            if not is_said(answer["refusal"]) and name in answer["figures"]:
                now = answer["figures"][name]
                row["now"] = valued_so(now["value"], now["unit"])
                row["moved"] = has_moved(then["value"], now["value"], now["unit"])
        rows.append(row)
    return rows


def beside_today(visit: Visit, opening: Opening, agreed: Agreed, stock: VisitStock) -> list[BesideToday]:
    """Return the first figures of what was agreed, leaf by leaf, each with today's beside it."""
    answers = answers_today(visit, opening, agreed, stock)
    rows: list[BesideToday] = []
    for part in agreed["parts"]:
        rows.extend(part_rows(part, answers))
    return rows
