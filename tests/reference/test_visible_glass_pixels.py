"""Visible glass against counted pixels of the rendered elevation.

Source: none but the picture itself, rendered by resvg; within 0.5 % of the glass (issue of the main job).
"""

import io

import pytest
import resvg_py
from PIL import Image

from configurator.drawing.page_svg import screen_svg
from configurator.kernel.answer import ask
from configurator.kernel.mount.hung import hung
from configurator.kernel.scene import scene_at
from configurator.kernel.shapes import Door, Drawing, Position
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.draft import drafted
from configurator.kernel.views.elevation import elevation_of
from configurator.kernel.views.subject import subject
from tests.drawing.drawing_coverings import family
from tests.drawing.drawing_doors import DOORS, HOUSEHOLD
from tests.drawing.drawing_samples import COVERINGS, place_of

ACROSS = 1000
COVERING = ("headrail", "cloth", "sheer", "louver", "rail", "rod", "frame")
# The door's own parts in front of the glass count neither for nor against a covering, so they are left out.
FLAT = "path{fill:none;stroke:none} text{display:none} .sky{fill:#fff}" + "".join(
    f" .{name}{{fill:#000;fill-opacity:1}}" for name in COVERING
)
CASES = [("single", covering) for covering in COVERINGS] + [(door, "cellular") for door in DOORS]
CASES += [("pair", "curtain"), ("divided", "shutter"), ("divided", "slats"), ("out-swing pair", "vane roll")]


def white_area(drawing: Drawing) -> float:
    """Return how much of the picture is white, an edge's pixel counting by how much of it is."""
    text = screen_svg(drawing).replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" ', 1)
    text = text.replace("</desc>", f"</desc><style>{FLAT}</style>", 1)
    image = Image.open(io.BytesIO(bytes(resvg_py.svg_to_bytes(svg_string=text, width=ACROSS, background="#000000"))))
    return sum(level * count for level, count in enumerate(image.convert("L").histogram()))


def only_active(drawing: Drawing, door: Door, whole: bool) -> Drawing:
    """Return the drawing with the glass of the leaf that the figures speak of."""
    spans = scene_at(hung(door, family("cellular"), {}), place_of("cellular", "open"))["leaf_x"]

    def counts(points: list[float]) -> bool:
        middle = sum(points[0::2]) / len(points[0::2])
        return whole or spans[0][0] < middle < spans[0][1]

    marks = [mark for mark in drawing["marks"] if mark["role"] != "sky" or counts(mark["points"])]
    return drawing | {"marks": marks}  # type: ignore[return-value]


def share_of_glass(door: Door, covering: str, place: Position) -> float:
    """Return the share of the glass that stays white when the covering is painted black over it."""
    given = subject(hung(door, family(covering), {}), place, HOUSEHOLD, ENGLISH)
    drawing = elevation_of(drafted(door, given, ENGLISH, "mm"))
    drawing = only_active(drawing, door, given["answer"]["size"]["mount"] == "over-opening")
    bare = drawing | {"marks": [mark for mark in drawing["marks"] if mark["role"] == "sky"]}
    return white_area(drawing) / white_area(bare)  # type: ignore[arg-type]


@pytest.mark.parametrize(("door", "covering"), CASES)
def test_visible_glass_is_what_can_be_counted_on_the_picture(door: str, covering: str) -> None:
    figures = ask(DOORS[door], family(covering), {}, HOUSEHOLD)["figures"]
    for state in ("open", "closed"):
        counted = share_of_glass(DOORS[door], covering, place_of(covering, state))
        assert counted == pytest.approx(figures[f"visible_glass_{state}"]["value"], abs=0.005)
