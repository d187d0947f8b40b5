"""What changes while a rail is dragged: the few figures that belong to one position."""

from configurator.kernel.fit import lowest_edge, pieces_at
from configurator.kernel.glass_shares import glass_shares
from configurator.kernel.questions.glass import LIGHT_RULE, VIEW_RULE, VISIBLE_RULE, share_figure
from configurator.kernel.questions.projection import furthest, projection_figure
from configurator.kernel.shapes import Figure, Fit, Position
from configurator.kernel.telling import figure, length, working
from configurator.kernel.tongue import wording


def moment(fit: Fit, place: Position) -> list[Figure]:
    """Return visible glass, view, light, projection and the lower edge's height at a position.

    An empty list where the family cannot go on the door.
    """
    pieces = pieces_at(fit, place)
    if len(pieces) == 0:
        return []
    shares = glass_shares(fit, pieces)
    area = shares["area"]
    low = lowest_edge(pieces)
    edge = working("the lowest piece of the covering", "{low}", {"low": [low, "mm"]})
    return [
        share_figure("visible_glass_at", wording("visible glass"), VISIBLE_RULE, shares["visible"], area),
        share_figure("view_at", "view", VIEW_RULE, shares["view"], area),
        share_figure("light_at", "light", LIGHT_RULE, shares["light"], area),
        projection_figure("projection_at", "projection", furthest(pieces)),
        figure("lower_edge_at", "lower edge above the floor", length(low), edge),
    ]
