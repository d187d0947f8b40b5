"""The questions about living with it: opening the leaf, the way out, reach, children, care, sight, the pair."""

from configurator.kernel.door.opening import has_passive
from configurator.kernel.mount.mounted import mounted
from configurator.kernel.questions.care import care_answers
from configurator.kernel.questions.child import child_answers
from configurator.kernel.questions.pair import pair_answers
from configurator.kernel.questions.reach import reach_answers
from configurator.kernel.questions.reply import Reply
from configurator.kernel.questions.sight import sight_answers
from configurator.kernel.questions.swing import swing_answers
from configurator.kernel.questions.way_out import way_out_answers
from configurator.kernel.sampling import Sample, covering_pieces
from configurator.kernel.shapes import Cassette, Door, Figure, Household, Piece, Position, Size
from configurator.kernel.travel import coarse, open_position, position, position_at


def figure_value(figures: list[Figure], key: str) -> float:
    """Return the value of the figure with this id, which must be among them."""
    for found in figures:
        if found["id"] == key:
            return found["value"]
    return 0.0


def passive_size(
    door: Door, mechanism: str, numbers: dict[str, float], cassettes: list[Cassette], active: Size
) -> Size:
    """Return how the covering would sit on the second leaf alone, which may have no handle."""
    if door["passive_handle"]:
        return active
    return mounted(door, mechanism, numbers, cassettes, [])


def living_replies(
    door: Door,
    mechanism: str,
    numbers: dict[str, float],
    cassettes: list[Cassette],
    size: Size,
    household: Household,
    samples: list[Sample],
    down: list[Piece],
) -> list[Reply]:
    """Return the replies of these questions, in the order in which they are read.

    ``down`` is the closed covering in full detail.
    """

    def rough(place: Position) -> list[Piece]:
        return covering_pieces(mechanism, numbers, size, coarse(place))

    raised = rough(open_position(numbers))
    half = rough(position_at(numbers, 0.5))
    let_down = rough(position(1.0, 1.0, numbers["tilt_closed"])) if numbers["upper_moves"] > 0 else down
    swing = swing_answers(door, size, samples)
    bare = figure_value(swing["figures"], "clear_width_bare")
    covered = figure_value(swing["figures"], "clear_width_covered")
    replies_living = [
        swing,
        way_out_answers(door, size, samples, bare, covered),
        reach_answers(door, household, numbers, size, raised, half, down),
        child_answers(numbers),
        care_answers(door, numbers, size),
        sight_answers(door, household, raised, down, let_down),
    ]
    if has_passive(door) and size["mount"] == "on-leaf":
        replies_living.append(pair_answers(size, passive_size(door, mechanism, numbers, cassettes, size)))
    return replies_living
