"""Two copies of a visit in one: nothing is lost, and what differs is told."""

import json
import random
from typing import Any

from configurator.kernel.visit.merge import can_choose, merge_visits, put_from
from configurator.kernel.visit.visit_shapes import MergedVisit, Visit
from configurator.visit_file import read_text
from tests.weir_cottage import house, leaf_of, opening_of, proposal_of, reading


def merged(mine: Visit, theirs: Visit) -> MergedVisit:
    return merge_visits(mine, theirs, json.dumps)


def differences(both: MergedVisit) -> list[tuple[str, str, str]]:
    return [(each["opening"], each["leaf"], each["at"]) for each in both["differences"]]


def test_a_copy_that_is_the_same_changes_nothing() -> None:
    both = merged(house(), house())
    assert both["visit"] == house()
    assert both["differences"] == []


def test_openings_leaves_and_readings_of_both_are_there() -> None:
    mine, theirs = house(), house()
    mine["openings"] = mine["openings"][:2]
    theirs["openings"] = theirs["openings"][1:]
    leaf_of(mine, "hall", "active")["readings"].append(reading("leaf_twist", 1.0))
    leaf_of(theirs, "hall", "active")["readings"].append(reading("leaf_twist", 2.0))
    both = merged(mine, theirs)
    assert [opening["id"] for opening in both["visit"]["openings"]] == ["study", "hall", "dining", "kitchen"]
    twists = [one["mm"] for one in leaf_of(both["visit"], "hall", "active")["readings"] if one["field"] == "leaf_twist"]
    # This copy's is the later in the file, and so counts where both are of one day.
    assert twists == [2.0, 1.0]
    assert differences(both) == [("hall", "active", "readings"), ("", "", "openings"), ("", "", "openings")]


def test_where_both_say_something_else_this_word_stands_and_the_other_is_noted() -> None:
    mine, theirs = house(), house()
    opening_of(mine, "hall")["room"] = "Entrance"
    opening_of(theirs, "hall")["room"] = "Passage"
    theirs["client"] = "Mrs A. Tansy"
    both = merged(mine, theirs)
    assert opening_of(both["visit"], "hall")["room"] == "Entrance"
    assert [one["what"] for one in both["visit"]["revisions"][-2:]] == [
        'client: "Mrs A. Tansy"',
        'hall.room: "Passage"',
    ]
    # Taken in once more, it is noted once.
    assert merged(both["visit"], theirs)["visit"] == both["visit"]


def test_the_clients_answer_is_taken_into_the_proposal_that_is_the_same() -> None:
    mine, theirs = house(), house()
    answered = proposal_of(theirs, "study", "b")
    answered.update({"liked": True, "remarks": "This one, please."})
    both = merged(mine, theirs)
    taken = proposal_of(both["visit"], "study", "b")
    assert (taken["liked"], taken["remarks"]) == (True, "This one, please.")
    assert len(opening_of(both["visit"], "study")["proposals"]) == 2
    assert both["differences"] == []


def test_a_proposal_of_other_picks_is_kept_under_another_id() -> None:
    mine, theirs = house(), house()
    proposal_of(theirs, "kitchen", "a")["choices"]["fabric"] = "plain-milk"
    both = merged(mine, theirs)
    fabrics = {one["id"]: one["choices"]["fabric"] for one in opening_of(both["visit"], "kitchen")["proposals"]}
    assert fabrics == {"a": "screen-pearl", "a-other": "plain-milk"}
    assert differences(both) == [("kitchen", "", "proposals")]


def test_parts_that_nobody_knows_are_taken_over() -> None:
    mine: Any = house()
    theirs: Any = house()
    theirs["x-route"] = {"miles": 12}
    theirs["openings"][0]["x-photo"] = [1, 2]
    mine["openings"][0]["x-photo"] = [3]
    both: Any = merged(mine, theirs)["visit"]
    assert both["x-route"] == {"miles": 12}
    assert both["openings"][0]["x-photo"] == [3]
    assert both["revisions"][-1]["what"] == "study.x-photo: [1, 2]"


def test_a_long_word_of_the_other_copy_stays_readable() -> None:
    mine, theirs = house(), house()
    theirs["note"] = "x" * 20000
    both = merged(mine, theirs)["visit"]
    assert read_text(json.dumps(both))["slips"] == []
    noted = "".join(each["what"] for each in both["revisions"][-2:])
    assert noted == f'note: "{"x" * 20000}"'


def shaken(chance: random.Random) -> Visit:
    """Return the house with much of it changed or gone."""
    visit = house()
    visit["openings"] = chance.sample(visit["openings"], chance.randrange(1, 5))
    for opening in visit["openings"]:
        opening["note"] = chance.choice(["", "dark", opening["note"]])
        opening["proposals"] = chance.sample(opening["proposals"], chance.randrange(len(opening["proposals"]) + 1))
        for proposal in opening["proposals"]:
            proposal["remarks"] = chance.choice(["", "", "yes", "no"])
            proposal["choices"]["lift"] = chance.choice(["cordless", "wand"])
        for leaf in opening["leaves"]:
            leaf["readings"] = chance.sample(leaf["readings"], chance.randrange(len(leaf["readings"]) + 1))
    return visit


def test_nothing_of_either_copy_is_lost() -> None:
    for seed in range(100):
        chance = random.Random(seed)
        mine, theirs = shaken(chance), shaken(chance)
        both = merged(mine, theirs)["visit"]
        text = json.dumps(both)
        for copy in (mine, theirs):
            for opening in copy["openings"]:
                kept = opening_of(both, opening["id"])
                # In its place or among the revisions, where quotes are escaped once more.
                assert opening["note"] in text
                for leaf in opening["leaves"]:
                    known = leaf_of(both, opening["id"], leaf["id"])["readings"]
                    assert all(one in known for one in leaf["readings"]), seed
                for proposal in opening["proposals"]:
                    assert any(one["choices"] == proposal["choices"] for one in kept["proposals"]), seed
                    assert proposal["remarks"] in text, seed


def test_whose_word_stands_may_be_chosen_and_the_other_is_noted() -> None:
    mine, theirs = house(), house()
    for copy, word in ((mine, "mine"), (theirs, "theirs")):
        copy["place"] = word
        opening_of(copy, "hall")["room"] = word
        leaf_of(copy, "hall", "active")["words"]["swing"] = "in" if word == "mine" else "out"
        proposal_of(copy, "study", "b")["remarks"] = word
    chosen = [each for each in merged(mine, theirs)["differences"] if can_choose(each)]
    assert [each["at"] for each in chosen] == ["place", "proposals.b.remarks", "room", "words.swing"]
    own, other = house_copy(mine), house_copy(theirs)
    for each in chosen:
        put_from(own, theirs, each)
        put_from(other, mine, each)
    both = merged(own, other)["visit"]
    assert both["place"] == opening_of(both, "hall")["room"] == proposal_of(both, "study", "b")["remarks"] == "theirs"
    assert leaf_of(both, "hall", "active")["words"]["swing"] == "out"
    assert 'place: "mine"' in [one["what"] for one in both["revisions"]]
    assert [each for each in merged(both, theirs)["differences"] if can_choose(each)] == []


def house_copy(visit: Visit) -> Visit:
    """Return a copy that shares nothing."""
    copy: Visit = json.loads(json.dumps(visit))
    return copy
