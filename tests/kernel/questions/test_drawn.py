"""What drawings show is asked first; it is no different when all questions are asked."""

from configurator.browser.link.outcome import outcome_text
from configurator.catalog import Catalog
from configurator.kernel.answer import ask_drawn, ask_fit
from configurator.kernel.message import is_said
from configurator.kernel.mount.hung import hung
from configurator.kernel.scene import scene_at
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.draft import drafted
from configurator.kernel.views.elevation import elevation_of
from configurator.kernel.views.plan import plan_of
from configurator.kernel.views.section import section_of


def test_drawings_are_the_same_with_the_questions_they_show_and_with_all(catalog: Catalog) -> None:
    names = {"family": "family", "door": "door", "place": "place"}
    for door in catalog.doors.values():
        for family in catalog.families.values():
            fit = hung(door, family, {})
            drawn, whole = ask_drawn(fit, catalog.household), ask_fit(fit, catalog.household)
            assert drawn["verdicts"].items() <= whole["verdicts"].items()
            assert drawn["figures"].items() <= whole["figures"].items()
            # A link that the page writes notes of what came of it just what one written here does.
            if not is_said(whole["refusal"]):
                assert outcome_text(drawn, "in") == outcome_text(whole, "in")
            scene = scene_at(fit, whole["open"])
            first, all_of_it = (
                drafted(door, {"scene": scene, "answer": answer, "names": names}, ENGLISH, "in")
                for answer in (drawn, whole)
            )
            for view in (elevation_of, section_of, plan_of):
                assert view(first) == view(all_of_it), (door["id"], family["id"])
