"""A covering hung on the wall or from the ceiling, across the whole opening."""

from configurator.kernel.door.leaf import leaf_box
from configurator.kernel.door.opening import has_passive, opening_box
from configurator.kernel.mount.blank import blank_size
from configurator.kernel.mount.cassette import cassette_for, has_roll
from configurator.kernel.mount.on_leaf import part_heights, refusal_for
from configurator.kernel.mount.upright import RAILS_ONLY, is_rails_only
from configurator.kernel.numbers import step_down, step_up
from configurator.kernel.sampling import ROUGH_STEPS, Sample, covering_pieces, lowest_edge, travel_samples
from configurator.kernel.shapes import Cassette, Door, Piece, Size
from configurator.kernel.travel import coarse, open_position

# Air between the raised stack and the top of a leaf that swings in under it.
OVER_LEAF = 10.0
ROUNDS_OVER = 3


def set_across(door: Door, numbers: dict[str, float], size: Size) -> None:
    """Set the left and right edges: past the opening by the wanted overlap, short of the side walls."""
    opening = opening_box(door)
    left = max(opening["x0"] - numbers["over_side"], -door["wall_gap"] + numbers["edge_clear"])
    right = opening["x1"] + numbers["over_side"]
    if has_passive(door):
        right = min(right, opening["x1"] + door["wall_gap"] - numbers["edge_clear"])
    size["exact_width"] = right - left
    size["x0"] = left
    size["x1"] = left + step_down(right - left, numbers["order_step"])
    hinge_by = "wall" if left > opening["x0"] - numbers["over_side"] else "wanted"
    size["limits"].append({"side": "hinge", "by": hinge_by, "overlap": opening["x0"] - size["x0"]})
    size["limits"].append({"side": "latch", "by": "wanted", "overlap": size["x1"] - opening["x1"]})


def set_hung(door: Door, mechanism: str, numbers: dict[str, float], cassettes: list[Cassette], size: Size) -> None:
    """Set top and bottom so that the raised stack clears the leaf's top, as far as the ceiling allows."""
    ceiling = door["ceiling_height"]
    wanted = leaf_box(door)["y1"] + OVER_LEAF
    size["y0"] = numbers["floor_clear"]
    size["y1"] = min(wanted + numbers["headrail_height"], ceiling)
    if is_rails_only(numbers, size):
        size["refusal"] = RAILS_ONLY
        return
    wants_cassette = has_roll(numbers) and numbers["cassette"] > 0
    for _ in range(ROUNDS_OVER):
        if wants_cassette:
            size["cassette"] = cassette_for(cassettes, numbers, size["y1"] - size["y0"])
        rest = covering_pieces(mechanism, numbers, size, coarse(open_position(numbers)))
        head = size["y1"] - lowest_edge(rest)
        if numbers["draws_aside"] > 0:
            head = numbers["headrail_height"]
        size["y1"] = ceiling if numbers["ceiling_fixed"] > 0 else min(wanted + head, ceiling - numbers["edge_clear"])
    size["exact_height"] = size["y1"] - size["y0"]
    size["y0"] = size["y1"] - step_down(size["exact_height"], numbers["order_step"])
    by = "ceiling" if size["y1"] >= ceiling - numbers["edge_clear"] else "wanted"
    size["limits"].append({"side": "top", "by": by, "overlap": size["y1"] - opening_box(door)["y1"]})
    if wants_cassette and size["cassette"]["roll"] == 0:
        size["refusal"] = "The rolled-up cloth is thicker than the largest cassette takes; an open roll may serve."


def backs_at(samples: list[Sample], handle: list[Piece]) -> list[float]:
    """Return the z of the back of whatever comes to the height of a part of the handle over the travel."""
    backs: list[float] = []
    for sample in samples:
        for part in handle:
            for piece in sample["pieces"]:
                if piece["y0"] < part["y1"] and piece["y1"] > part["y0"]:
                    backs.append(piece["z0"])
    return backs


def set_bracket(door: Door, mechanism: str, numbers: dict[str, float], handle: list[Piece], size: Size) -> None:
    """Set the mounting plane: the wall or casing, plus what the cloth needs to hang clear of the handle."""
    wall = door["reveal"]
    size["z0"] = wall
    need = max(numbers["stand_off"], door["casing_projection"])
    backs = backs_at(travel_samples(mechanism, numbers, size, part_heights(handle), ROUGH_STEPS), handle)
    if len(backs) > 0:
        front = max([part["z1"] for part in handle])
        need = max(need, front + numbers["handle_clear"] - min(backs))
    size["exact_spacer"] = need
    size["spacer"] = step_up(need, numbers["spacer_step"])
    size["z0"] = wall + size["spacer"]


def over_opening(
    door: Door, mechanism: str, numbers: dict[str, float], cassettes: list[Cassette], handle: list[Piece]
) -> Size:
    """Return how a covering hangs over the opening of a door whose active leaf hangs on the left."""
    size = blank_size("over-opening")
    set_across(door, numbers, size)
    set_hung(door, mechanism, numbers, cassettes, size)
    if size["refusal"] == "":
        size["refusal"] = refusal_for(numbers, size)
    if size["refusal"] == "" and is_rails_only(numbers, size):
        size["refusal"] = RAILS_ONLY
    if size["refusal"] == "":
        set_bracket(door, mechanism, numbers, handle, size)
    return size
