"""What was agreed for each leaf, figure by figure, with the same figure as it comes out today beside it."""

from typing import TypedDict

from configurator.kernel.message import is_said, plain
from configurator.kernel.shapes import Answer, Message
from configurator.kernel.tongue import wording
from configurator.kernel.visit.agreed import has_moved, valued_so
from configurator.kernel.visit.agreed_today import AgreedToday
from configurator.kernel.visit.control_side import side_told
from configurator.kernel.visit.visit_shapes import Agreed, AgreedPart

# What is told of a covering first.
TOLD_FIRST = ["order_width", "order_height", "stack_height", "projection_most", "spacer", "visible_glass_open"]


class BesideToday(TypedDict):
    """A figure of a leaf: its name, what was agreed, what it is today, and whether that is something else."""

    leaf: str
    name: str
    then: Message
    now: Message
    moved: bool


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


def side_row(part: AgreedPart, sides: dict[str, str]) -> list[BesideToday]:
    """Return on which side one leaf's covering is worked; nothing where none was agreed."""
    then = part.get("control", "")
    if then == "":
        return []
    now = sides.get(part["leaf"], "")
    return [
        {
            "leaf": part["leaf"],
            "name": wording("control side"),
            "then": side_told(then),
            "now": side_told(now) if part["leaf"] in sides else plain("cannot be hung"),
            "moved": now != then,
        }
    ]


def beside_today(agreed: Agreed, today: AgreedToday) -> list[BesideToday]:
    """Return the first figures of what was agreed and its control side, leaf by leaf, each with today's beside it."""
    answers: dict[str, Answer] = {}
    sides: dict[str, str] = {}
    for i in range(len(today["hung"])):
        answers[today["hung"][i]["leaf"]] = today["answers"][i]
        sides[today["hung"][i]["leaf"]] = today["sides"][i]
    rows: list[BesideToday] = []
    for part in agreed["parts"]:
        rows.extend(part_rows(part, answers))
        rows.extend(side_row(part, sides))
    return rows
