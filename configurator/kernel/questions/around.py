"""What stands around an in-swing leaf: the reveal, the casing, the walls, a sidelight and the other leaf.

Boxes in plan, from the hinge pin, hinges on the left; see :mod:`configurator.kernel.questions.touch`.
"""

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import leaf_box, leaf_width
from configurator.kernel.door.opening import CASING_BACK, across_pair, frame_edge, has_passive
from configurator.kernel.questions.touch import Obstacle, obstacle
from configurator.kernel.shapes import Door, Outer, Piece

BEYOND_ALL = 1e6


def walls_around(door: Door) -> list[Obstacle]:
    """Return what may stop a leaf on its hinge side: the wall it stands in, its casing, a sidelight, the side wall."""
    edge = -frame_edge(door)
    face = door["reveal"] - door["hinge_pin_out"]
    up = [-BEYOND_ALL, BEYOND_ALL]
    side = "reveal" if door["reveal"] > 0 else "own-wall"
    found = [
        obstacle(["side-wall", "side-wall"], [-BEYOND_ALL, -door["wall_gap"]], up, [-BEYOND_ALL, BEYOND_ALL]),
        obstacle([side, "own-wall"], [-BEYOND_ALL, edge], up, [-BEYOND_ALL, face]),
    ]
    if door["casing_width"] > 0 and door["casing_projection"] > 0:
        inner = edge - CASING_BACK
        across = [inner - door["casing_width"], inner]
        found.append(obstacle(["casing", "casing"], across, up, [-BEYOND_ALL, face + door["casing_projection"]]))
    if door["layout"] == "sidelights":
        beside = [edge, -door["head_gap"]]
        found.append(obstacle(["sidelight", "sidelight"], beside, up, [-BEYOND_ALL, -door["hinge_pin_out"]]))
    return found


def piece_obstacle(piece: Piece, pin: float) -> Obstacle:
    """Return a piece that stays where it is while the leaf turns about its pin."""
    across = [piece["x0"], piece["x1"]]
    ahead = [piece["z0"] - pin, piece["z1"] - pin]
    return obstacle([piece["kind"], piece["kind"]], across, [piece["y0"], piece["y1"]], ahead)


def other_leaf_around(door: Door, covering: list[Outer]) -> list[Obstacle]:
    """Return a pair's other leaf as it stands closed, with its handle and the same covering."""
    if not has_passive(door):
        return []
    pin = door["hinge_pin_out"]
    far = leaf_width(door) * 2 + door["meeting_gap"]
    leaf = leaf_box(door)
    across = [far - leaf["x1"], far]
    found = [obstacle(["other-leaf", "other-leaf"], across, [leaf["y0"], leaf["y1"]], [-BEYOND_ALL, -pin])]
    if door["passive_handle"]:
        found.extend([piece_obstacle(across_pair(door, piece), pin) for piece in handle_pieces(door)])
    for outer in covering:
        beside = [far - outer["x1"], far - outer["x0"]]
        ahead = [outer["z0"] - pin, outer["z1"] - pin]
        found.append(obstacle(["other-covering", "other-covering"], beside, [outer["y0"], outer["y1"]], ahead))
    return found
