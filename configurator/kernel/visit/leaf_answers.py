"""What the kernel tells of a covering on one leaf of a visit; on a leaf without a handle, all that asks for none."""

from collections.abc import Callable

from configurator.kernel.answer import answer_to, ask_fit
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
