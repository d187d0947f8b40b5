"""What is cut for the starter's coverings on its doors."""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.shapes import Answer
from tests.workings import worked_out

# Parts of the ids of figures that tell what is cut and what it weighs.
ABOUT = ("cloth_", "lining_", "_cut", "_mass", "pleat", "fold", "rod_pocket", "side_stack")
OTHERS = ("cloth_gap", "cloth_width")


def answer(catalog: Catalog, family: str, door: str, **picks: str) -> Answer:
    return ask(catalog.doors[door], catalog.families[family], picks, catalog.household)


@pytest.mark.parametrize("door", ["garden-door", "garden-pair", "metric-pair-rebated", "sidelight-door"])
def test_every_working_comes_to_its_figure(catalog: Catalog, door: str) -> None:
    told = 0
    for name, family in catalog.families.items():
        picks = [{}] + [{c["id"]: o["id"]} for c in family["choices"] for o in c["options"][1:]]
        for pick in picks:
            for key, figure in answer(catalog, name, door, **pick)["figures"].items():
                if any(part in key for part in ABOUT) and key not in OTHERS:
                    assert worked_out(figure) == pytest.approx(figure["value"]), (name, pick, key)
                    told += 1
    assert told > 1000


@pytest.mark.parametrize("family", ["stretched-panel", "cellular-shade", "roller-shade", "soft-fold-shade"])
def test_both_leaves_of_a_pair_are_cut(catalog: Catalog, family: str) -> None:
    for door in ("garden-pair", "fixed-pair", "closed-in-pair"):
        told = answer(catalog, family, door)["figures"]
        both = told["cloth_leaf"]["value"] + told["cloth_other"]["value"]
        assert told["cloth_total"]["value"] == pytest.approx(both)
        assert told["cloth_other"]["value"] > 0
    single = answer(catalog, family, "garden-door")["figures"]
    assert "cloth_leaf" not in single
    assert single["cloth_total"]["value"] > 0


def test_one_covering_over_both_leaves_is_cut_once(catalog: Catalog) -> None:
    told = answer(catalog, "traversing-drapery", "garden-pair")["figures"]
    assert "cloth_other" not in told


@pytest.mark.parametrize("family", ["stretched-panel", "traversing-drapery", "nested-fold-shade", "flat-fold-shade"])
def test_a_lining_is_told_only_where_it_is_picked(catalog: Catalog, family: str) -> None:
    bare = answer(catalog, family, "garden-door")["figures"]
    lined = answer(catalog, family, "garden-door", lining="lined")["figures"]
    assert "lining_total" not in bare
    assert lined["lining_total"]["value"] > 0
    assert lined["covering_mass"]["value"] > bare["covering_mass"]["value"]


@pytest.mark.parametrize("family", ["cellular-shade", "roller-shade", "wood-blind", "traversing-drapery"])
def test_a_motor_is_weighed(catalog: Catalog, family: str) -> None:
    motor = next(o["id"] for c in catalog.families[family]["choices"] for o in c["options"] if "motor" in o["id"])
    bare = answer(catalog, family, "garden-door")["figures"]["covering_mass"]["value"]
    driven = answer(catalog, family, "garden-door", lift=motor)["figures"]["covering_mass"]
    assert driven["value"] > bare + 0.3
    assert driven["working"]["terms"]["motor"][0] > 0


def test_drapery_is_cut_from_what_hangs_and_not_from_the_order_height(catalog: Catalog) -> None:
    told = answer(catalog, "traversing-drapery", "garden-door")["figures"]
    numbers = catalog.families["traversing-drapery"]["numbers"]
    hangs = told["order_height"]["value"] - numbers["headrail_height"]
    assert told["cloth_cut"]["value"] == pytest.approx(hangs + numbers["heading"] + numbers["hem"])
