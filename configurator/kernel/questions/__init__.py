"""The questions asked of a covering over its travel: one list, one signature.

Each is one file with one function ``(travel, household) -> reply``. It asks the pieces, never the mechanism, so
it holds for every family at once. A new one is named here and nowhere else; the order is that in which they are read.
"""

from collections.abc import Callable

from configurator.kernel.questions.bars import bars_question
from configurator.kernel.questions.care import care_question
from configurator.kernel.questions.child import child_question
from configurator.kernel.questions.cloth import cloth_question
from configurator.kernel.questions.cutout import cutout_question
from configurator.kernel.questions.fixing import fixing_question
from configurator.kernel.questions.glass import glass_question
from configurator.kernel.questions.light_gap import light_gap_question
from configurator.kernel.questions.order import order_question
from configurator.kernel.questions.own import own_question
from configurator.kernel.questions.pair import pair_question
from configurator.kernel.questions.passing import passing_question
from configurator.kernel.questions.projection import projection_question
from configurator.kernel.questions.reach import reach_question
from configurator.kernel.questions.sight import sight_question
from configurator.kernel.questions.stack import stack_question
from configurator.kernel.questions.swing import swing_question
from configurator.kernel.questions.way_out import way_out_question
from configurator.kernel.questions.working_handle import working_handle_question
from configurator.kernel.shapes import Household, Reply, Travel

QUESTIONS: list[Callable[[Travel, Household], Reply]] = [
    order_question,
    stack_question,
    glass_question,
    projection_question,
    light_gap_question,
    cloth_question,
    bars_question,
    own_question,
    cutout_question,
    fixing_question,
    passing_question,
    working_handle_question,
    swing_question,
    way_out_question,
    reach_question,
    child_question,
    care_question,
    sight_question,
    pair_question,
]
