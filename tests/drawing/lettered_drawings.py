"""The drawings with everything written on them, each of another odd door, and the weaves side by side."""

from functools import partial

from configurator.kernel.looks import no_look
from configurator.kernel.mount.hung import hung
from configurator.kernel.shapes import Drawing, Mark
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.evening import evening_of
from configurator.kernel.views.fixing_front import fixing_front
from configurator.kernel.views.marks import shifted
from configurator.kernel.views.measure_elevation import measure_elevation
from configurator.kernel.views.measure_plan import measure_plan
from configurator.kernel.views.measure_section import measure_section
from configurator.kernel.views.people import measure_people
from configurator.kernel.views.street import street_of
from configurator.kernel.views.weaves import WEAVES, weave_tile
from configurator.kernel.views.workroom import workroom_sheet
from tests.drawing.drawing_coverings import family
from tests.drawing.drawing_doors import DOORS, HOUSEHOLD, door_like
from tests.drawing.drawing_samples import draft_of, drawn

MEASURED = {"elevation": measure_elevation, "section": measure_section, "plan": measure_plan}
BARRED = door_like(muntin_columns=2, muntin_rows=3, muntin_projection=5.0, swing="out", stop_lap=12.0, reveal=60.0)


def woven() -> Drawing:
    """Return one repeat of every weave, side by side, in true size."""
    marks: list[Mark] = []
    width, height = 0.0, 0.0
    for weave in WEAVES:
        tile = weave_tile(weave)
        marks += shifted(tile["marks"], width, 0.0)
        width, height = width + tile["width"], max(height, tile["height"])
    return {
        "id": "weaves",
        "title": "Weaves",
        "desc": "",
        "x": 0.0,
        "y": 0.0,
        "width": width,
        "height": height,
        "marks": marks,
        "look": no_look(),
    }


def lettered_drawings() -> dict[str, Drawing]:
    """Return each by its name."""
    workroom = workroom_sheet(draft_of(DOORS["sidelights"], "soft fold", "0.4"))
    hung_up = partial(hung, choices={})
    return {
        "sheet": drawn("sheet", "pair", "banded", "0.4", "mm"),
        "plan-out-swing": drawn("plan", "out-swing pair", "curtain", "open", "mm"),
        "detail-head": drawn("detail head", "single", "curtain", "closed"),
        "detail-handle": drawn("detail handle", "half-lite", "shutter", "closed"),
        "workroom-views": workroom["views"],
        "workroom-level": workroom["level"],
        "workroom-upright": workroom["upright"],
        "street": street_of(draft_of(DOORS["narrow"], "slats", "0.4"), HOUSEHOLD),
        "evening": evening_of(draft_of(DOORS["divided"], "vane roll", "0.4")),
        "fixing-leaf": fixing_front(hung_up(DOORS["half-lite"], family("roller")), ENGLISH, "in", 12.0),
        "fixing-frame": fixing_front(hung_up(DOORS["single"], family("shutter")), ENGLISH, "mm", 10.0),
        "fixing-opening": fixing_front(hung_up(DOORS["pair"], family("curtain")), ENGLISH, "mm", 10.0),
        "measure-people": measure_people({**HOUSEHOLD, "outside_level": -300.0}, DOORS["single"], ENGLISH, "in"),
        **{f"measure-{name}": view(BARRED, ENGLISH, "in") for name, view in MEASURED.items()},
        "weaves": woven(),
    }
