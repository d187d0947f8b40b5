"""A leaf with its used readings as the kernel's door, over the preset that stands for what nobody measured."""

from typing import Any

from configurator.kernel.door.opening import has_passive
from configurator.kernel.numbers import SAME_ON_TAPE
from configurator.kernel.shapes import Door, Handle, Household
from configurator.kernel.tape.new_parts import with_new_parts, with_room
from configurator.kernel.tape.table import (
    DOOR_COUNTS,
    DOOR_LIMITS,
    DOOR_WORDS,
    HANDLE_LIMITS,
    HOUSEHOLD_LIMITS,
    field_key,
    fields_of,
    is_there,
    parts_of_door,
)
from configurator.kernel.visit.used import used_numbers
from configurator.kernel.visit.visit_fields import OTHER_ASKED, is_sidelight
from configurator.kernel.visit.visit_shapes import Leaf, Opening, Used, VisitStock


def no_leaf(ident: str) -> Leaf:
    """Return a leaf of which nothing was measured."""
    return {"id": ident, "words": {}, "handle": "", "note": "", "readings": []}


def leaf_called(opening: Opening, ident: str) -> Leaf:
    """Return a leaf of an opening by its id; one that is missing has not been measured."""
    called = [leaf for leaf in opening["leaves"] if leaf["id"] == ident]
    return called[0] if len(called) > 0 else no_leaf(ident)


def known_now(kind: str, ident: str, stock: VisitStock) -> str:
    """Return the id that a ``door``, a ``handle`` or a ``family`` has today."""
    return stock["formerly"].get(kind + "/" + ident, ident)


def preset_of(opening: Opening, stock: VisitStock) -> Door:
    """Return the preset of an opening; for an unknown one, the door that the showroom's page opens with."""
    ident = opening["preset"] if opening["preset"] in stock["doors"] else known_now("door", opening["preset"], stock)
    door = stock["doors"][ident if ident in stock["doors"] else stock["opening"][0]]
    return {**door, "handle": door["handle"].copy(), "hinge_heights": list(door["hinge_heights"])}


def can_be(mm: float, limits: list[float]) -> bool:
    """Return whether a number lies between two limits, themselves included."""
    return mm >= limits[0] and mm <= limits[1]


def with_words(door: Door, words: dict[str, str]) -> Door:
    """Return a door with what it is in words; words that nobody knows are passed over."""
    given: Any = door.copy()
    for name, word in words.items():
        if name in DOOR_WORDS and word in DOOR_WORDS[name]["options"]:
            given[name] = word
    named: Door = given
    return with_new_parts(door, named)


def with_counts(door: Door, used: dict[str, Used]) -> Door:
    """Return a door with as many lites as were counted."""
    given: Any = door.copy()
    for name in DOOR_COUNTS:
        if name in used and can_be(used[name]["mm"], DOOR_LIMITS[name]):
            given[name] = int(used[name]["mm"])
    counted: Door = given
    return with_new_parts(door, counted)


def with_numbers(door: Door, used: dict[str, Used]) -> Door:
    """Return a door with the used numbers of what it has; those that cannot be are passed over."""
    given: Any = door.copy()
    parts = parts_of_door(door)
    for field in fields_of("door"):
        name = field["id"]
        if name in used and name not in DOOR_COUNTS and is_there(field, parts):
            given[name] = used[name]["mm"] if can_be(used[name]["mm"], DOOR_LIMITS[name]) else given[name]
    measured: Door = given
    return with_room(measured)


def handle_measured(ident: str, door: Door, used: dict[str, Used], stock: VisitStock) -> Handle:
    """Return a preset handle, or the door's own for an unknown one, with the used numbers."""
    now = ident if ident in stock["handles"] else known_now("handle", ident, stock)
    given: Any = stock["handles"][now].copy() if now in stock["handles"] else door["handle"].copy()
    for name, one in used.items():
        key = field_key(name)
        if name.startswith("handle.") and key in HANDLE_LIMITS and can_be(one["mm"], HANDLE_LIMITS[key]):
            given[key] = one["mm"]
    handle: Handle = given
    return handle


def side_numbers(opening: Opening) -> dict[str, Used]:
    """Return the used numbers of both sidelights: the smaller glass and the larger panel stand for both."""
    found: dict[str, Used] = {}
    for leaf in opening["leaves"]:
        used = used_numbers(leaf) if is_sidelight(leaf["id"]) else {}
        for name, one in used.items():
            if name != "sidelight_width" and name != "sidelight_glass_width":
                continue
            wider = name not in found or one["mm"] > found[name]["mm"]
            if name not in found or wider == (name == "sidelight_width"):
                found[name] = one
    return found


def active_door(opening: Opening, stock: VisitStock) -> Door:
    """Return the leaf with the handle, in its opening."""
    leaf = leaf_called(opening, "active")
    used = used_numbers(leaf)
    door = with_counts(with_words(preset_of(opening, stock), leaf["words"]), used)
    door = with_numbers(door, side_numbers(opening))
    door["handle"] = handle_measured(leaf["handle"], door, used, stock)
    door["passive_handle"] = leaf_called(opening, "other")["handle"] != ""
    return with_numbers(door, used)


def other_door(opening: Opening, active: Door, stock: VisitStock) -> Door:
    """Return the other leaf of a pair as a door of its own, hung on the other side."""
    leaf = leaf_called(opening, "other")
    used = used_numbers(leaf)
    door = with_numbers(with_counts(active, used), used)
    door["hinge_side"] = "left" if active["hinge_side"] == "right" else "right"
    door["handle"] = handle_measured(leaf["handle"], door, used, stock)
    return door


def is_other_otherwise(opening: Opening, stock: VisitStock) -> bool:
    """Return whether an opening has a second leaf, and that was measured otherwise than the one with the handle."""
    active: Any = active_door(opening, stock)
    if not has_passive(active):
        return False
    other: Any = other_door(opening, active, stock)
    for field in fields_of("door"):
        name = field["id"]
        if name in OTHER_ASKED and name != "wall_gap" and abs(other[name] - active[name]) > SAME_ON_TAPE:
            return True
    return False


def sidelight_door(opening: Opening, active: Door, ident: str) -> Door:
    """Return a sidelight as a leaf of its own: the frame around its glass has the same width on both sides."""
    used = used_numbers(leaf_called(opening, ident))
    bare = with_words(active, {"layout": "single", "swing": "in"})
    door = with_numbers({**bare, "muntin_columns": 1, "muntin_rows": 1}, used)
    measured = with_numbers(active, used)
    glass = measured["sidelight_glass_width"]
    frame = (measured["sidelight_width"] - glass) / 2 - door["bead_width"]
    return {**door, "glass_width": glass, "stile_hinge": frame, "stile_latch": frame, "passive_handle": False}


def leaf_door(opening: Opening, leaf: str, stock: VisitStock) -> Door:
    """Return a leaf of an opening, by its id, as the kernel's door.

    Its used readings stand over the preset's numbers. The other leaf of a pair and the sidelights are doors of their
    own, and have from the active leaf whatever was not measured on them.
    """
    active = active_door(opening, stock)
    if is_sidelight(leaf):
        return sidelight_door(opening, active, leaf)
    return other_door(opening, active, stock) if leaf == "other" else active


def opening_household(opening: Opening, household: Household) -> Household:
    """Return who lives behind an opening and who looks in: the visit's household, with what was read at this door."""
    given: Any = household.copy()
    for name, one in used_numbers(leaf_called(opening, "active")).items():
        key = field_key(name)
        known = name.startswith("household.") and key in HOUSEHOLD_LIMITS
        if known and can_be(one["mm"], HOUSEHOLD_LIMITS[key]):
            given[key] = one["mm"]
    own: Household = given
    return own
