"""At night from the street: the same door seen from outside, the room lit, and who stands in it.

What is on the left from the room is on the right from here.
"""

from configurator.kernel.glass_shares import shares_within
from configurator.kernel.message import message, plain, say, say_phrase
from configurator.kernel.questions.sight import HIDES
from configurator.kernel.shapes import Drawing, Household, Mark, Message, Piece, Shares
from configurator.kernel.tongue import wording
from configurator.kernel.views.dimensions import FIRST_TIER, TIER
from configurator.kernel.views.draft import Draft, blank_drawing
from configurator.kernel.views.elevation import elevation_window
from configurator.kernel.views.elevation_notes import notes_base
from configurator.kernel.views.glow import glass_areas
from configurator.kernel.views.lit_room import lit_room, person_bounds
from configurator.kernel.views.marks import letters, rectangle, stroke
from configurator.kernel.views.night_cloth import leak_marks, night_covering
from configurator.kernel.views.parts import front_bounds
from configurator.kernel.views.words import name_terms, title_words

# How far the house shows beside and above the opening, and how thick the ground is drawn, in letters.
HOUSE_BESIDE = 2.2
HOUSE_ABOVE = 0.5
# A threshold's height on the paper where the ground lies lower, mm.
SILL = 30.0
# How wide the trim about the opening is outside, mm: common practice, no source.
TRIM = 50.0
# From such a share of the person's outline on it is all there; below, none of it.
ALL = 0.995
# Cloth that scatters less than this share of the light shows no shadow; no source.
SHADOW_FROM = 0.02


def lites_of(draft: Draft) -> list[Piece]:
    """Return every piece of glass in the opening."""
    return [piece for piece in draft["scene"]["door"] if piece["kind"] == "glass"]


def glass_middle(draft: Draft) -> float:
    """Return the x of the middle of the active leaf's glass, behind which the person stands."""
    return (draft["frame"]["glass"]["x0"] + draft["frame"]["glass"]["x1"]) / 2


def as_from_outside(marks: list[Mark], draft: Draft) -> list[Mark]:
    """Return marks with left and right exchanged about the middle of the drawing."""
    sum_of_edges = draft["frame"]["out0"] + draft["frame"]["out1"]
    turned: list[Mark] = []
    for item in marks:
        points: list[float] = []
        count = 4 if item["shape"] == "bars" else len(item["points"])
        for i in range(len(item["points"])):
            points.append(sum_of_edges - item["points"][i] if i < count and i % 2 == 0 else item["points"][i])
        if item["shape"] == "bars" and item["points"][0] != item["points"][2]:
            # A row starts with its first bar at its left end.
            points[0] = sum_of_edges - item["points"][2]
            points[2] = sum_of_edges - item["points"][0]
        turned.append({**item, "points": points})
    return turned


def house_marks(draft: Draft, household: Household) -> list[Mark]:
    """Return the house front about the opening, the step and the ground outside."""
    frame = draft["frame"]
    size = draft["size"]
    left = frame["out0"] - size * HOUSE_BESIDE
    right = frame["out1"] + size * HOUSE_BESIDE
    ground = max(0.0, -household["outside_level"])
    marks = [rectangle("night-house", [left, -frame["top"] - size * HOUSE_ABOVE, right, ground])]
    if ground > 0:
        marks.append(rectangle("night-leaf night-line", [frame["x0"], 0.0, frame["x1"], min(ground, SILL)]))
    marks.append(stroke("floor cut", left, ground, right, ground))
    return marks


def leaf_marks(draft: Draft) -> list[Mark]:
    """Return the leaves' outer faces, their bars, and the hinges where they show."""
    marks: list[Mark] = []
    pieces = draft["scene"]["door"]
    for kind in ["stile", "rail", "astragal", "muntin", "hinge"]:
        for piece in pieces:
            # The hinge of a leaf that opens inwards is behind it.
            hidden = kind == "hinge" and piece["z1"] > 0
            if piece["kind"] == kind and piece["part"] == "door" and not hidden:
                marks.append(rectangle("night-leaf night-line", front_bounds(piece)))
    return marks


def street_still(draft: Draft, household: Household) -> list[Mark]:
    """Return what no position changes: the house front, the leaves, and the lit room through the glass."""
    frame = draft["frame"]
    lites = lites_of(draft)
    marks = house_marks(draft, household)
    for reach in [TRIM, 0.0]:
        edges = [frame["x0"] - reach, -frame["head"] - reach, frame["x1"] + reach, 0.0]
        marks.append(rectangle("night-frame night-line", edges))
    marks.extend(leaf_marks(draft))
    marks.extend(lit_room(household, lites, glass_middle(draft)))
    ground = max(0.0, -household["outside_level"])
    size = draft["size"]
    marks.append(
        stroke("floor cut", frame["out0"] - size * HOUSE_BESIDE, ground, frame["out1"] + size * HOUSE_BESIDE, ground)
    )
    return as_from_outside(marks, draft)


def street_covering(draft: Draft) -> list[Mark]:
    """Return what moves: the covering as far as it is seen through the glass, and the light that leaks past it."""
    lites = lites_of(draft)
    covering = draft["scene"]["covering"]
    marks = night_covering(covering, lites)
    marks.extend(leak_marks(covering, glass_areas(draft["scene"]["door"], True), lites))
    marks.extend([rectangle("night-edge", front_bounds(lite)) for lite in lites])
    return as_from_outside(marks, draft)


def person_seen(draft: Draft, household: Household) -> Shares:
    """Return what of the person is clear of the covering, and what of the view of them is left; no area: unseen."""
    edges = person_bounds(household, glass_middle(draft))
    glass = draft["frame"]["glass"]
    x0 = max(edges[0], glass["x0"])
    x1 = min(edges[2], glass["x1"])
    low = max(-edges[3], glass["y0"])
    high = min(-edges[1], glass["y1"])
    if x1 <= x0 or high <= low:
        return {"visible": 0.0, "view": 0.0, "light": 0.0, "area": 0.0}
    return shares_within([[x0, x1]], [[low, high]], draft["scene"]["covering"])


def seen_words(seen: Shares) -> Message:
    """Return what the observer makes out of the person."""
    terms: dict[str, list[float | str]] = {"clear": [seen["visible"], "share"], "view": [seen["view"], "share"]}
    if seen["area"] <= 0:
        return plain("From there the lines of sight miss the glass; nothing need be covered.")
    if seen["visible"] >= ALL:
        return plain("Nothing hangs in the way: the person is seen as without a covering.")
    if seen["view"] <= HIDES:
        return plain("Of the person behind the covering nothing is made out.")
    if seen["visible"] <= 1 - ALL:
        return message("The person shows through the covering, {view} as plain as without it.", terms)
    return message(
        "{clear} of the person, as far as the glass shows it, is clear of the covering; with what comes through, "
        "{view} of the view of the person is left.",
        terms,
    )


def street_words(draft: Draft, household: Household) -> list[Message]:
    """Return what the view shows, what it takes for granted, and what the observer makes out."""
    terms: dict[str, list[float | str]] = {
        "distance": [household["outside_distance"], "mm"],
        "eye": [household["outside_level"] + household["outside_eye"], "mm"],
        "inside": [household["person_distance"], "mm"],
    }
    seen = person_seen(draft, household)
    told = [
        seen_words(seen),
        message(
            "At night: someone {distance} outside looks straight at the glass, the eye {eye} above the room’s floor; "
            "the room is evenly lit, and a person stands {inside} behind the glass.",
            terms,
        ),
    ]
    if seen["light"] - seen["view"] > SHADOW_FROM:
        told.append(plain("A lamp right behind the person would throw a shadow on cloth that lets light through."))
    return told


def street_desc(draft: Draft, household: Household) -> str:
    """Return the drawing's description."""
    told = [message("{covering}, {place}, on {door}.", name_terms(draft["names"]))]
    told.extend(street_words(draft, household))
    return " ".join([say(one, draft["words"], draft["units"]) for one in told])


def street_notes(draft: Draft, household: Household) -> list[Mark]:
    """Return how much of the view of the person is left, below the drawing."""
    seen = person_seen(draft, household)
    if seen["area"] <= 0:
        return []
    size = draft["size"]
    terms: dict[str, list[float | str]] = {"view": [seen["view"], "share"]}
    words = say_phrase(message("seen of a person inside: {view}", terms), draft["words"], draft["units"])
    y = notes_base(draft) + size * (FIRST_TIER + TIER * 2 + 0.1)
    middle = (draft["frame"]["out0"] + draft["frame"]["out1"]) / 2
    return [letters("label", [middle, y], size, words, "middle")]


def street_of(draft: Draft, household: Household) -> Drawing:
    """Return the door at night from the street."""
    view = elevation_window(draft, blank_drawing("elevation", draft))
    view["id"] = "street"
    view["title"] = title_words(wording("seen from the street at night"), draft["names"], draft["words"])
    view["desc"] = street_desc(draft, household)
    view["marks"].extend(street_still(draft, household))
    view["marks"].extend(street_covering(draft))
    view["marks"].extend(street_notes(draft, household))
    return view
