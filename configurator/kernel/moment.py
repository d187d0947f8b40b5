"""What changes while a rail is dragged: the few figures that belong to one position."""

from configurator.kernel.questions.figure import figure
from configurator.kernel.questions.glass import glass_shares, share_figure
from configurator.kernel.questions.projection import furthest, projection_figure
from configurator.kernel.resolve import resolve
from configurator.kernel.sampling import covering_pieces, lowest_edge
from configurator.kernel.scene import size_of
from configurator.kernel.shapes import Door, Family, Figure, Position


def moment(door: Door, family: Family, choices: dict[str, str], place: Position) -> list[Figure]:
    """Return visible glass, view, light, projection and the lower edge's height at a position.

    An empty list where the family cannot go on the door.
    """
    figures: list[Figure] = []
    size = size_of(door, family, choices)
    if size["refusal"] != "":
        return figures
    pieces = covering_pieces(family["mechanism"], resolve(family, choices), size, place)
    shares = glass_shares(door, size["mount"] == "over-opening", pieces)
    area = shares["area"]
    figures.append(
        share_figure("visible_glass_at", "visible glass", "the glass with no piece in front", shares["visible"], area)
    )
    figures.append(share_figure("view_at", "view", "each part by what of the view comes through", shares["view"], area))
    figures.append(
        share_figure("light_at", "light", "each part by what of the light comes through", shares["light"], area)
    )
    figures.append(projection_figure("projection_at", "projection", furthest(pieces)))
    low = lowest_edge(pieces)
    figures.append(
        figure(
            "lower_edge_at",
            "lower edge above the floor",
            low,
            "mm",
            "the lowest piece of the covering",
            "lower edge at {low}",
            {"low": [low, "mm"]},
        )
    )
    return figures
