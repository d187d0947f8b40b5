"""What is told to mend a verdict mends it: each fix is made from its data alone and asked again."""

from copy import deepcopy
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from configurator.catalog import load
from configurator.kernel.answer import ask, ask_fit, ask_next, asked_to
from configurator.kernel.message import is_said, say, say_working
from configurator.kernel.mount.hung import hung, hung_with
from configurator.kernel.questions import QUESTIONS
from configurator.kernel.remedy.change import asking_changed, changed, picking
from configurator.kernel.remedy.fixes import best_fixes, fixes
from configurator.kernel.remedy.measured import measured_changes
from configurator.kernel.remedy.pairs import pair_changes
from configurator.kernel.remedy.plight import plight_told
from configurator.kernel.remedy.singles import picked_changes
from configurator.kernel.shapes import Answer, Change, Door, Family, Fit, Fix, Household, Plight, Trial
from configurator.kernel.tongue import ENGLISH
from configurator.places import CONTENT
from tests.cases import Case, seeded_case

CATALOG = load(CONTENT)
NUMBERS = st.integers(0, 999_999)
RANK = {"clears": 0, "blocked": 2}


def starter(door: str, handle: str = "") -> Door:
    """Return a starter door, with another of the starter handles perhaps."""
    found = deepcopy(CATALOG.doors[door])
    if handle:
        found["handle"] = deepcopy(CATALOG.handles[handle])
    return found


def fixes_on(door: Door, family: Family, choices: dict[str, str]) -> list[Fix]:
    """Return the fixes of a family with its picks on a door, for the starter household."""
    return fixes(hung(door, family, choices), CATALOG.household)


def made(case: Case, fix: Fix) -> Answer:
    """Make a fix from its data alone, without the code that sought it, and ask again."""
    door: Any = deepcopy(case["door"])
    wishes = dict(fix["change"]["numbers"])
    if "handle_gap" in wishes:
        deeper = wishes.pop("handle_gap") - door["handle"]["gap"]
        door["handle"]["gap"] += deeper
        door["handle"]["projection"] += deeper
    fit = hung_with(door, case["family"], case["choices"] | fix["change"]["picks"], wishes)
    return ask_fit(fit, case["household"])


def states(answer: Answer) -> dict[str, str]:
    """Return the verdicts as plain words."""
    return {key: verdict["state"] for key, verdict in answer["verdicts"].items()}


def rank(state: str) -> int:
    """Return how bad a state is."""
    return RANK.get(state, 1)


def looks(answer: Answer) -> list[float]:
    """Return visible glass when open, height of the stack and projection; those of a bare door where refused."""
    bare = {"visible_glass_open": 1.0, "stack_height": 0.0, "projection_most": 0.0}
    if is_said(answer["refusal"]):
        return list(bare.values())
    return [answer["figures"][name]["value"] for name in bare]


def assert_mends(case: Case, fix: Fix) -> None:
    """Check that a fix does what it says."""
    before = ask(case["door"], case["family"], case["choices"], case["household"])
    after = made(case, fix)
    assert not is_said(after["refusal"])
    reached = states(after)
    if fix["verdict"] == "refusal":
        assert is_said(before["refusal"])
        assert rank(fix["state"]) == max(map(rank, reached.values()))
        assert "blocked" not in reached.values()
    else:
        assert reached[fix["verdict"]] == fix["state"]
        assert rank(fix["state"]) < rank(before["verdicts"][fix["verdict"]]["state"])
        worse = [key for key, state in reached.items() if rank(state) > rank(states(before).get(key, "clears"))]
        assert worse == []
    told = [fix["glass"], fix["stack"], fix["projection"]]
    assert told == pytest.approx([now - then for now, then in zip(looks(after), looks(before), strict=True)])


def plight_of(fit: Fit, household: Household) -> Plight:
    """Return what is told of a fit, and what of it does not clear."""
    return plight_told(asked_to(QUESTIONS, fit, household))


def single_changes(plight: Plight) -> list[Change]:
    """Return the single changes that a search tries, in its order."""
    return [*picked_changes(plight), *measured_changes(plight)]


def tried(plight: Plight, change: Change) -> Trial:
    """Return what is told once a change is made."""
    return {"change": change, "answer": ask_fit(changed(plight["fit"], change), plight["household"])}


@pytest.mark.parametrize("family", CATALOG.families)
def test_what_is_built_alike_is_told_as_if_it_were_asked_anew(family: str) -> None:
    fit = hung(starter("garden-pair"), CATALOG.families[family], {})
    asked = asked_to(QUESTIONS, fit, CATALOG.household)
    for choice in fit["family"]["choices"]:
        for option in choice["options"]:
            change = picking({choice["id"]: option["id"]})
            begun = asking_changed(asked, change)
            while ask_next(begun):
                pass
            assert begun["answer"] == ask_fit(changed(fit, change), CATALOG.household), (choice["id"], option["id"])


@settings(max_examples=60)
@given(NUMBERS)
def test_a_fix_that_is_told_never_fails_when_it_is_made(number: int) -> None:
    case = seeded_case(CATALOG, 9, number)
    fit = hung(case["door"], case["family"], case["choices"])
    for fix in fixes(fit, case["household"]):
        assert_mends(case, fix)
        for told in [fix["says"], *fix["costs"]]:
            words = say(told, ENGLISH, case["units"])
            assert words.endswith(".")
            assert "{" not in words


@settings(max_examples=40)
@given(NUMBERS)
def test_the_same_is_found_as_if_all_were_asked_of_every_change(number: int) -> None:
    case = seeded_case(CATALOG, 9, number)
    fit = hung(case["door"], case["family"], case["choices"])
    plight = plight_of(fit, case["household"])
    singles = [tried(plight, change) for change in single_changes(plight)]
    pairs = [tried(plight, change) for change in pair_changes(plight, singles)]
    assert fixes(fit, case["household"]) == best_fixes(plight, [*singles, *pairs])


@settings(max_examples=60)
@given(NUMBERS)
def test_a_change_to_a_hung_covering_is_the_covering_hung_anew(number: int) -> None:
    case = seeded_case(CATALOG, 9, number)
    plight = plight_of(hung(case["door"], case["family"], case["choices"]), case["household"])
    for change in single_changes(plight):
        if "handle_gap" not in change["numbers"]:
            anew = hung_with(
                case["door"], case["family"], case["choices"] | change["picks"], dict(change["numbers"].items())
            )
            assert changed(plight["fit"], change) == anew


@pytest.mark.parametrize(
    ("door", "family", "picks", "state"),
    [
        # It clears the lever, if with less room than a hand likes beside what stays put.
        (starter("tall-door", "slim-lever"), "stretched-panel", {"fullness": "spare"}, "caution"),
        (starter("garden-pair"), "banded-shade", {"head": "open"}, "clears"),
        (starter("veranda-pair", "slim-lever"), "banded-shade", {"head": "open"}, "clears"),
    ],
)
def test_a_pick_that_lets_it_pass_the_handle_is_found(
    door: Door, family: str, picks: dict[str, str], state: str
) -> None:
    found = [fix for fix in fixes_on(door, CATALOG.families[family], {}) if fix["verdict"] == "pass_through"]
    assert [fix["state"] for fix in found if fix["change"] == {"picks": picks, "numbers": {}}] == [state]


def test_an_open_roll_is_found_where_no_cassette_takes_the_cloth() -> None:
    family = deepcopy(CATALOG.families["roller-shade"])
    family["cassettes"] = []
    found = fixes_on(starter("garden-door"), family, {"lift": "wand", "fabric": "plain-milk"})
    assert [fix["change"]["picks"] for fix in found if fix["verdict"] == "refusal"] == [{"head": "open"}]


def test_where_all_clears_nothing_is_sought() -> None:
    family = CATALOG.families["louvered-shutter"]
    plight = plight_of(hung(starter("garden-door"), family, {}), CATALOG.household)
    assert plight["troubles"] == []
    assert single_changes(plight) == []
    assert best_fixes(plight, []) == []


def test_where_nothing_helps_nothing_is_told() -> None:
    family = deepcopy(CATALOG.families["stretched-panel"])
    family["choices"] = [choice for choice in family["choices"] if choice["id"] == "header"]
    family["numbers"] |= {"cloth_view": 0.4, "cloth_light": 0.4}
    plight = plight_of(hung(starter("garden-door"), family, {}), CATALOG.household)
    assert "sight" in plight["troubles"]
    plight["fit"]["family"]["choices"] = []
    assert fixes(plight["fit"], CATALOG.household) == []


def searched(door: Door, family: Family) -> tuple[list[Trial], list[Trial], list[Fix]]:
    """Return what was tried alone, what was tried in pairs, and what is told."""
    plight = plight_of(hung(door, family, {}), CATALOG.household)
    singles = [tried(plight, change) for change in single_changes(plight)]
    pairs = [tried(plight, change) for change in pair_changes(plight, singles)]
    return singles, pairs, best_fixes(plight, [*singles, *pairs])


def test_a_pair_is_told_only_where_no_single_change_helps() -> None:
    _, _, told = searched(starter("garden-pair"), CATALOG.families["banded-shade"])
    passing = [fix["change"] for fix in told if fix["verdict"] == "pass_through"]
    assert len(passing) > 0
    assert [change for change in passing if len(change["picks"]) > 1] == []


def test_a_pair_of_picks_is_found_where_neither_helps_alone() -> None:
    _, pairs, told = searched(starter("veranda-pair"), CATALOG.families["cellular-shade"])
    assert len(pairs) > 0
    pair = next(fix for fix in told if len(fix["change"]["picks"]) == 2)
    assert pair["verdict"] == "handle_works"
    assert pair["change"]["picks"] == {"lift": "motor-battery", "mount": "over-opening"}
    assert "Change lift to motor on a battery and mount to above the opening" in say(pair["says"], ENGLISH, "in")


def test_no_more_than_three_fixes_are_told_of_a_verdict_the_best_first() -> None:
    found = fixes_on(starter("narrow-stile-door"), CATALOG.families["banded-shade"], {})
    passing = [fix for fix in found if fix["verdict"] == "pass_through"]
    assert [fix["state"] for fix in passing] == ["clears", "clears", "guide by hand"]
    assert list(passing[0]["change"]["numbers"]) == ["spacer_wanted"]
    assert list(passing[1]["change"]["numbers"]) == ["handle_gap"]
    assert len([fix for fix in found if fix["verdict"] == "reach"]) <= 3


def test_a_retired_option_is_never_suggested() -> None:
    family = deepcopy(CATALOG.families["banded-shade"])
    head = next(choice for choice in family["choices"] if choice["id"] == "head")
    next(option for option in head["options"] if option["id"] == "open")["retired"] = True
    found = fixes_on(starter("garden-pair"), family, {})
    assert [fix for fix in found if fix["change"]["picks"].get("head") == "open"] == []


def test_a_corner_that_strikes_the_stop_is_kept_off_it_by_an_ordered_width() -> None:
    family = CATALOG.families["roller-shade"]
    door = starter("narrow-stile-door") | {"swing": "out", "stop_lap": 40.0, "hinge_pin_out": 0.0}
    wide = hung(door, family, {})
    assert ask_fit(wide, CATALOG.household)["verdicts"]["swing"]["state"] == "blocked"
    fix = next(fix for fix in fixes(wide, CATALOG.household) if fix["verdict"] == "swing")
    width = fix["change"]["numbers"]["width_wanted"]
    assert "Order it" in say(fix["says"], ENGLISH, "in")
    # As wide as may be: one step more, and the corner strikes.
    more = hung_with(door, family, {}, {"width_wanted": width + family["numbers"]["order_step"]})
    assert ask_fit(more, CATALOG.household)["verdicts"]["swing"]["state"] == "blocked"


def test_a_pair_of_two_widths_is_ordered_to_the_narrower() -> None:
    door = starter("fixed-pair")
    door["handle"]["grip_length"] += 60.0
    before = ask(door, CATALOG.families["cellular-shade"], {}, CATALOG.household)
    [fix] = [fix for fix in fixes_on(door, CATALOG.families["cellular-shade"], {}) if fix["verdict"] == "pair"]
    assert fix["state"] == "clears"
    assert fix["change"]["numbers"] == {"width_wanted": before["figures"]["pair_width_common"]["value"]}


def test_a_width_set_by_hand_is_ordered_in_steps_from_the_hinge_side_and_told_so() -> None:
    door, family = starter("garden-door"), CATALOG.families["cellular-shade"]
    own = ask(door, family, {}, CATALOG.household)["figures"]
    wanted = own["order_width"]["value"] - 10.0
    told = ask_fit(hung_with(door, family, {}, {"width_wanted": wanted}), CATALOG.household)["figures"]
    assert wanted - family["numbers"]["order_step"] < told["order_width"]["value"] <= wanted
    assert told["overlap_hinge"]["value"] == pytest.approx(own["overlap_hinge"]["value"])
    assert "set by hand" in say_working(told["order_width"], ENGLISH, "mm")


def test_a_spacer_set_by_hand_is_put_in_stock_steps_and_told_so() -> None:
    door, family = starter("garden-door"), CATALOG.families["cellular-shade"]
    own = ask(door, family, {}, CATALOG.household)["figures"]
    assert own["spacer"]["value"] < 7.0
    told = ask_fit(hung_with(door, family, {}, {"spacer_wanted": 7.0}), CATALOG.household)["figures"]
    assert told["spacer"]["value"] == pytest.approx(2 * family["numbers"]["spacer_step"])
    assert "set by hand" in say_working(told["spacer"], ENGLISH, "mm")


def test_what_is_set_by_hand_goes_no_further_than_the_leaf_and_the_stock_allow() -> None:
    door, family = starter("garden-door"), CATALOG.families["cellular-shade"]
    assert hung_with(door, family, {}, {"width_wanted": 5000.0}) == hung(door, family, {}) | {
        "numbers": hung(door, family, {})["numbers"] | {"width_wanted": 5000.0}
    }
    size = hung_with(door, family, {}, {"spacer_wanted": 500.0})["size"]
    assert not is_said(size["refusal"])
    assert 0 < size["spacer"] <= family["numbers"]["spacer_most"]


def test_what_a_fix_costs_is_told_where_it_costs_anything_and_only_there() -> None:
    tried = 0
    for door in ("garden-door", "garden-pair", "half-lite-door"):
        for family in CATALOG.families.values():
            for fix in fixes_on(starter(door), family, {}):
                changed_by = {
                    "Visible glass when open": abs(fix["glass"]) >= 0.0005,
                    "Height of the stack": abs(fix["stack"]) >= 0.05,
                    "Greatest projection": abs(fix["projection"]) >= 0.05,
                }
                told = [cost["text"].split(":")[0] for cost in fix["costs"]]
                assert told == [name for name, changes in changed_by.items() if changes]
                tried += 1
    assert tried > 50
