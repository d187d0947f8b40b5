"""The questions that drawings have on them; a page asks these first, and the others when somebody reads on."""

from collections.abc import Callable

from configurator.kernel.questions.glass import glass_question
from configurator.kernel.questions.order import order_question
from configurator.kernel.questions.passing import passing_question
from configurator.kernel.questions.projection import projection_question
from configurator.kernel.questions.stack import stack_question
from configurator.kernel.questions.swing import swing_question
from configurator.kernel.shapes import Household, Reply, Travel

DRAWN_QUESTIONS: list[Callable[[Travel, Household], Reply]] = [
    order_question,
    stack_question,
    glass_question,
    projection_question,
    passing_question,
    swing_question,
]
