"""What the kernel tells of a covering on one leaf of a visit; on a leaf without a handle, all that asks for none."""

from collections.abc import Callable

from configurator.kernel.answer import answer_to, ask_fit, ask_next, asking
from configurator.kernel.message import is_said
from configurator.kernel.pieces import CLEAR, box
from configurator.kernel.questions.bars import bars_question
from configurator.kernel.questions.care import care_question
from configurator.kernel.questions.child import child_question
from configurator.kernel.questions.cloth import cloth_question
from configurator.kernel.questions.fixing import fixing_question
from configurator.kernel.questions.glass import glass_question
from configurator.kernel.questions.light_gap import light_gap_question
from configurator.kernel.questions.order import order_question
from configurator.kernel.questions.own import own_question
from configurator.kernel.questions.projection import projection_question
from configurator.kernel.questions.sight import sight_question
from configurator.kernel.questions.stack import stack_question
from configurator.kernel.shapes import Answer, Fit, Household, Piece, Reply, Travel
from configurator.kernel.travel import leaf_cuts, travelled
from configurator.kernel.visit.visit_shapes import HungLeaf

# What can be asked where there is no handle and nobody goes through.
HANDLELESS_QUESTIONS: list[Callable[[Travel, Household], Reply]] = [
    order_question,
    stack_question,
    glass_question,
    projection_question,
    light_gap_question,
    cloth_question,
    bars_question,
    own_question,
    fixing_question,
    child_question,
    care_question,
    sight_question,
]
# Further off than anything of a house, mm.
NOWHERE = [-100000.0, -100000.0]


def out_of_the_way() -> Piece:
    """Return what stands for a handle that there is not: a point so far off that nothing comes near it."""
    return box("handle", "neck", [NOWHERE, NOWHERE, NOWHERE], CLEAR)


def ask_leaf(fit: Fit, household: Household) -> Answer:
    """Return the answer of a covering on one leaf, with its handle or without one."""
    if len(fit["handle"]) > 0:
        return ask_fit(fit, household)
    return answer_to(HANDLELESS_QUESTIONS, {**fit, "handle": [out_of_the_way()]}, household)


def ask_pair(fit: Fit, other: Fit, household: Household) -> Answer:
    """Return the answer of a covering beside that of the other leaf, which has a size of its own."""
    begun = asking(fit, household)
    if not is_said(fit["size"]["refusal"]):
        leaves = [fit, other]
        begun["travel"].append({**travelled(fit), "leaves": leaves, "cuts": leaf_cuts(leaves)})
    while ask_next(begun):
        pass
    return begun["answer"]


def hung_answers(hung: list[HungLeaf], household: Household) -> list[Answer]:
    """Return the answer for each leaf; the active one of a pair is asked beside the other as that was measured."""
    answers: list[Answer] = []
    others = [one["fit"] for one in hung if one["leaf"] == "other"]
    for one in hung:
        if one["leaf"] == "active" and len(others) > 0:
            answers.append(ask_pair(one["fit"], others[0], household))
        else:
            answers.append(ask_leaf(one["fit"], household))
    return answers
