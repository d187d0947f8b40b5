"""Which options a door rules out, and that the quick answer is the full one."""

from copy import deepcopy

from configurator.catalog import load
from configurator.kernel.answer import ruled_out, ruled_out_beside
from configurator.kernel.message import silence
from configurator.kernel.mount.hung import hung
from configurator.kernel.remedy.fixes import picks_told, searched
from configurator.kernel.resolve import LOOKS_AND_WORKING, resolve
from configurator.places import CONTENT

CATALOG = load(CONTENT)


def test_an_option_is_ruled_out_just_where_it_is_refused() -> None:
    for door in CATALOG.doors.values():
        for family in CATALOG.families.values():
            found = ruled_out(door, family, {})
            for choice in family["choices"]:
                for option in choice["options"]:
                    refusal = hung(door, family, {choice["id"]: option["id"]})["size"]["refusal"]
                    assert found[choice["id"]].get(option["id"], silence()) == refusal


def test_what_is_ruled_out_is_the_same_where_other_picks_have_been_asked_about() -> None:
    told = 0
    for door in CATALOG.doors.values():
        for family in CATALOG.families.values():
            fit = hung(door, family, {})
            picks = picks_told(searched(fit, CATALOG.household))
            told += len(picks)
            assert ruled_out_beside(fit, picks) == ruled_out(door, family, {})
    assert told > len(CATALOG.doors) * len(CATALOG.families)


def test_some_door_rules_something_out_and_says_why() -> None:
    door = deepcopy(CATALOG.doors["garden-door"])
    door["glass_width"] = 1900.0
    reasons = ruled_out(door, CATALOG.families["louvered-shutter"], {})
    assert "not made as wide" in reasons["louver"]["2-1-2"]["text"]


def test_looks_and_working_move_no_covering() -> None:
    door = CATALOG.doors["garden-door"]
    for family in CATALOG.families.values():
        plain = hung(door, family, {})["size"]
        changed = deepcopy(family)
        changed["choices"] = []
        changed["numbers"] = resolve(family, {})
        for name in LOOKS_AND_WORKING:
            if name in changed["numbers"]:
                changed["numbers"][name] += 1.0
        assert hung(door, changed, {})["size"] == plain
