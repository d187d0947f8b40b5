import pytest

from configurator.kernel.pieces import solid
from configurator.kernel.questions.stack import stack_question
from configurator.kernel.shapes import Piece
from tests.kernel.questions.question_samples import HOUSEHOLD, assert_workings, shade_travel, size_with, value_of
from tests.workings import worked_out


def pleats(x0: float, x1: float) -> Piece:
    return solid("pleat", [x0, x1], [20.0, 2000.0], [50.0, 150.0])


@pytest.mark.parametrize(("halves", "stacks"), [(1, [(0.0, 400.0)]), (2, [(0.0, 300.0), (1700.0, 2000.0)])])
def test_what_draws_aside_stacks_as_wide_as_it_stands_at_one_side(
    halves: int, stacks: list[tuple[float, float]]
) -> None:
    travel = shade_travel(size=size_with("over-opening", x0=0.0, x1=2000.0))
    leg = travel["fit"]["legs"][0] | {"way": "aside", "halves": halves}
    travel["fit"]["legs"] = [leg]
    track = solid("headrail", [0.0, 2000.0], [2000.0, 2040.0], [50.0, 100.0])
    travel["raised"] = [track] + [pleats(*span) for span in stacks]
    reply = stack_question(travel, HOUSEHOLD)
    assert_workings(reply)
    told = next(figure for figure in reply["figures"] if figure["id"] == "side_stack")
    assert told["value"] == stacks[0][1]
    assert worked_out(told) == told["value"]
    assert value_of(reply, "stack_height") == 0


def test_what_is_raised_has_no_side_stack() -> None:
    assert "side_stack" not in [figure["id"] for figure in stack_question(shade_travel(), HOUSEHOLD)["figures"]]
