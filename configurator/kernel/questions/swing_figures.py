"""The figures of a turning leaf: its angles and the clear widths, without and with the covering."""

from configurator.kernel.door.leaf import leaf_width
from configurator.kernel.door.opening import CASING_BACK, has_passive
from configurator.kernel.questions.turning import RIGHT_ANGLE, clear_width, latch_stop, leaf_front
from configurator.kernel.shapes import Door, Figure, Touch, Working
from configurator.kernel.telling import angle, figure, length, working
from configurator.kernel.tongue import wording

# The working of each way in which one corner comes upon a face; see ``Touch``.
TURN_TEMPLATES: dict[str, str] = {
    "never": "{turn}",
    "closed": "{turn}",
    "side": "acos({across} / sqrt({along} x {along} + {out} x {out})) "
    "- asin({out} / sqrt({along} x {along} + {out} x {out}))",
    "far side": "0 - acos({across} / sqrt({along} x {along} + {out} x {out})) "
    "- asin({out} / sqrt({along} x {along} + {out} x {out}))",
    "outer side": "360 - acos({across} / sqrt({along} x {along} + {out} x {out})) "
    "- asin({out} / sqrt({along} x {along} + {out} x {out}))",
    "face": "180 - asin({ahead} / sqrt({along} x {along} + {out} x {out})) "
    "- asin({out} / sqrt({along} x {along} + {out} x {out}))",
    "back": "asin({ahead} / sqrt({along} x {along} + {out} x {out})) "
    "- asin({out} / sqrt({along} x {along} + {out} x {out}))",
    "front": "asin({ahead} / sqrt({across} x {across} + {ahead} x {ahead})) "
    "- asin({out} / sqrt({across} x {across} + {ahead} x {ahead}))",
    "front beyond": "180 - asin({ahead} / sqrt({across} x {across} + {ahead} x {ahead})) "
    "- asin({out} / sqrt({across} x {across} + {ahead} x {ahead}))",
    "hinge edge": "asin({ahead} / sqrt({across} x {across} + {ahead} x {ahead})) "
    "- acos({along} / sqrt({across} x {across} + {ahead} x {ahead}))",
    "hinge edge beyond": "180 - asin({ahead} / sqrt({across} x {across} + {ahead} x {ahead})) "
    "- acos({along} / sqrt({across} x {across} + {ahead} x {ahead}))",
    "latch edge": "asin({ahead} / sqrt({across} x {across} + {ahead} x {ahead})) "
    "+ acos({along} / sqrt({across} x {across} + {ahead} x {ahead}))",
    "latch edge beyond": "180 - asin({ahead} / sqrt({across} x {across} + {ahead} x {ahead})) "
    "+ acos({along} / sqrt({across} x {across} + {ahead} x {ahead}))",
}

NEVER_RULE = wording("nothing stands in the leaf's way, and it lies back against its own wall")
CLOSED_RULE = wording("{piece} is in {obstacle} while the leaf is still closed")
TURN_RULE = wording(
    "turning about the hinge pin, from which all lengths are taken along the closed leaf and out of it, "
    "{piece} first meets {obstacle}"
)
# The frame's own edge is not measured, so what is taken for it is told with the figure that hangs on it.
FRAME_RULE = wording(
    "turning about the hinge pin, from which all lengths are taken along the closed leaf and out of it, "
    "{piece} first meets {obstacle}; the frame is taken to stand {gap} beside the leaf, as at the head, "
    "and its casing {back} behind its edge"
)


def turn_rule(touch: Touch) -> str:
    """Return the rule of an angle in words."""
    if touch["way"] == "never":
        return NEVER_RULE
    if touch["way"] == "closed":
        return CLOSED_RULE
    return FRAME_RULE if touch["met"] == "reveal" or touch["met"] == "casing" else TURN_RULE


def turn_working(door: Door, touch: Touch) -> Working:
    """Return how an angle came about; its terms name what is met, whichever of them the words use."""
    terms: dict[str, list[float | str]] = {"turn": [touch["angle"], "deg"]}
    if touch["kind"] != "":
        terms = {
            "piece": [touch["kind"], "kind"],
            "obstacle": [touch["met"], "kind"],
            "along": [touch["along"], "mm"],
            "out": [touch["out"], "mm"],
            "across": [touch["across"], "mm"],
            "ahead": [touch["ahead"], "mm"],
            "gap": [door["head_gap"], "mm"],
            "back": [CASING_BACK, "mm"],
            "turn": [touch["angle"], "deg"],
        }
    return working(turn_rule(touch), TURN_TEMPLATES[touch["way"]], terms)


def turn_figure(door: Door, key: str, name: str, touch: Touch) -> Figure:
    """Return how far an in-swing leaf opens, with the working of the point that stops it."""
    return figure(key, name, angle(touch["angle"]), turn_working(door, touch))


def width_figure(door: Door, names: list[str], turn: float, front: float) -> Figure:
    """Return a clear width with its working; ``names`` are the figure's id and name."""
    terms: dict[str, list[float | str]] = {
        "leaf": [leaf_width(door), "mm"],
        "stop": [latch_stop(door), "mm"],
        "front": [front, "mm"],
    }
    rule = wording(
        "the leaf's width less the stop's lap and less what the open leaf, with all that hangs on it, takes of it"
    )
    if has_passive(door):
        rule = wording(
            "the active leaf's width less the stop's lap and less what it takes when open, with all that hangs on it"
        )
    template = "max(0, {leaf} - {stop} - {front})"
    if turn < RIGHT_ANGLE:
        template = "max(0, {leaf} - {stop} - ({leaf} x cos({angle}) + {front} x sin({angle})))"
        terms["angle"] = [turn, "deg"]
    return figure(names[0], names[1], length(clear_width(door, turn, front)), working(rule, template, terms))


def in_swing_figures(door: Door, own: Touch, both: Touch) -> list[Figure]:
    """Return the angles and clear widths of an in-swing leaf, by itself and with the covering."""
    front = leaf_front(door)
    bare = ["clear_width_bare", wording("clear width without the covering")]
    covered = ["clear_width_covered", wording("clear width with the covering")]
    return [
        turn_figure(door, "swing_bare", wording("leaf opens, without the covering"), own),
        turn_figure(door, "swing_covered", wording("leaf opens, with the covering"), both),
        width_figure(door, bare, own["angle"], front),
        width_figure(door, covered, both["angle"], front),
    ]
