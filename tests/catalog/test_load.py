"""What a sound folder becomes: the kernel's flat shapes, and words and sources for the pages."""

from pathlib import Path

import pytest

from configurator.catalog import Catalog, load
from configurator.catalog.measures import Measure
from configurator.catalog.sources import Source
from configurator.kernel.answer import ask


@pytest.fixture
def loaded(content: Path) -> Catalog:
    return load(content)


def by_path(measures: list[Measure]) -> dict[str, Measure]:
    return {measure.path: measure for measure in measures}


def rewrite(path: Path, old: str, put: str) -> None:
    path.write_text(path.read_text(encoding="utf-8").replace(old, put), encoding="utf-8")


def test_a_door_reaches_the_kernel_in_millimetres_with_its_handle(loaded: Catalog) -> None:
    door = loaded.doors["garden-pair"]
    assert door["glass_width"] == 558.8
    assert door["stile_latch"] == pytest.approx(165.1)
    assert door["backset"] == 60.325
    assert door["meeting_gap"] == 3.175
    assert door["handle"] == loaded.handles["lever"]
    assert door["handle"]["gap"] == 34.925


def test_what_nobody_measured_takes_a_preset_that_is_marked_as_assumed(loaded: Catalog) -> None:
    measures = by_path(loaded.door_notes["garden-pair"].measures)
    assert measures["glass.width"] == Measure("glass.width", "glass width", 558.8, "length", Source("invented"), False)
    assert measures["glass.recess"].assumed
    assert measures["pair.astragal.width"].assumed
    assert not measures["pair.meeting_gap"].assumed
    assert measures["hinges.heights.1"].assumed
    assert measures["handle.height"].value == 914.4
    # Of a leaf 80 in high, 10 mm above the floor: 11 in above its bottom, 7 in below its top, and half way between.
    assert loaded.doors["garden-pair"]["hinge_heights"] == pytest.approx([289.4, 1076.8, 1864.2])


def test_measured_hinge_heights_are_kept(content: Path) -> None:
    rewrite(content / "doors/garden-pair.yaml", "{side: left}", "{side: left, heights: [70 in, 10 in]}")
    loaded = load(content)
    assert loaded.doors["garden-pair"]["hinge_heights"] == [254.0, 1778.0]
    assert not by_path(loaded.door_notes["garden-pair"].measures)["hinges.heights.1"].assumed


def test_a_number_may_have_a_source_of_its_own(content: Path) -> None:
    rewrite(
        content / "doors/garden-pair.yaml",
        "{value: 2 3/8 in, source: common practice}",
        "{value: 60 mm, source: published — a standard}",
    )
    loaded = load(content)
    measures = by_path(loaded.door_notes["garden-pair"].measures)
    assert measures["handle.backset"].source == Source("published", "a standard")
    assert str(measures["handle.backset"].source) == "published — a standard"
    assert measures["leaf.width"].source == Source("invented")
    assert loaded.doors["garden-pair"]["backset"] == 60.0


def test_only_an_out_swing_leaf_has_a_stop_on_its_room_face(content: Path) -> None:
    assert load(content).doors["garden-pair"]["stop_lap"] == 0.0
    rewrite(content / "doors/garden-pair.yaml", "swing: in", "swing: out")
    assert load(content).doors["garden-pair"]["stop_lap"] == 12.7


def test_a_single_leaf_has_no_joint(content: Path) -> None:
    rewrite(content / "doors/garden-pair.yaml", "layout: pair", "layout: single")
    rewrite(content / "doors/garden-pair.yaml", "pair: {meeting_gap: 1/8 in}\n", "")
    door = load(content).doors["garden-pair"]
    assert (door["meeting_gap"], door["astragal_width"], door["astragal_projection"]) == (0.0, 0.0, 0.0)


@pytest.mark.parametrize(
    ("kind", "grip", "length", "height"),
    [
        ("lever", "{length: 100 mm, height: 20 mm}", 100.0, 20.0),
        ("knob", "{diameter: 50 mm}", 25.0, 50.0),
        ("pull", "{width: 20 mm, height: 300 mm}", 10.0, 300.0),
    ],
)
def test_each_kind_of_grip_is_measured_from_its_axis(
    content: Path, kind: str, grip: str, length: float, height: float
) -> None:
    rewrite(content / "handles/lever.yaml", "kind: lever", f"kind: {kind}")
    rewrite(content / "handles/lever.yaml", "{length: 4 1/2 in, height: 3/4 in}", grip)
    handle = load(content).handles["lever"]
    assert (handle["grip_length"], handle["grip_height"]) == (length, height)


def test_a_family_has_every_number_of_its_mechanism_and_its_options_in_order(loaded: Catalog) -> None:
    family = loaded.families["cells"]
    assert family["numbers"]["pitch"] == pytest.approx(19.05)
    assert family["numbers"]["edge_clear"] == 3.0
    assert [choice["id"] for choice in family["choices"]] == ["fabric", "lift"]
    assert [option["id"] for option in family["choices"][0]["options"]] == ["snow", "dusk"]
    assert family["choices"][0]["options"][0]["numbers"] == {"cloth_view": 0.0, "cloth_light": 0.45}
    assert family["choices"][1]["options"][1]["numbers"] == {"hand_away": 1.0}


def test_the_showrooms_order_step_holds_where_a_family_gives_none(content: Path) -> None:
    rewrite(content / "showroom.yaml", "order_step: 1/8 in", "order_step: 1 mm")
    loaded = load(content)
    assert loaded.families["cells"]["numbers"]["order_step"] == 1.0
    assert by_path(loaded.family_notes["cells"].measures)["numbers.order_step"].value == 1.0
    width = ask(loaded.doors["garden-pair"], loaded.families["cells"], {}, loaded.household)["figures"]["order_width"]
    assert width["value"] == pytest.approx(round(width["value"]))
    rewrite(content / "families/cells.yaml", "  pitch: 3/4 in", "  pitch: 3/4 in\n  order_step: 1/2 in")
    assert load(content).families["cells"]["numbers"]["order_step"] == 12.7


def test_what_is_read_twice_is_told_alike(content: Path) -> None:
    assert repr(load(content).showroom) == repr(load(content).showroom)


@pytest.mark.parametrize(("units", "step"), [("in", 3.175), ("mm", 1.0)])
def test_without_an_order_step_it_is_what_the_showrooms_tape_shows(content: Path, units: str, step: float) -> None:
    rewrite(content / "showroom.yaml", "units: in\norder_step: 1/8 in", f"units: {units}")
    loaded = load(content)
    assert loaded.showroom.order_step == step
    width = ask(loaded.doors["garden-pair"], loaded.families["cells"], {}, loaded.household)["figures"]["order_width"]
    assert width["value"] / step == pytest.approx(round(width["value"] / step))


def test_a_familys_words_and_sources_are_there_for_its_pages(content: Path) -> None:
    rewrite(
        content / "families/cells.yaml",
        "closed_thickness: 3 mm",
        "closed_thickness: {value: 3 mm, source: common practice}",
    )
    notes = load(content).family_notes["cells"]
    assert notes.good_at == ["being low"]
    assert notes.description == ["Cells that close up."]
    measures = by_path(notes.measures)
    assert measures["numbers.closed_thickness"].source == Source("common practice")
    assert measures["numbers.pitch"].source == Source("invented")
    assert measures["numbers.edge_clear"].assumed
    assert measures["choices.fabric.options.snow.numbers.cloth_light"].value == 0.45


def test_facts_that_no_number_tells_keep_their_sources(content: Path) -> None:
    given = "price_level: 2\nanimals: {value: gives way, source: common practice}\n"
    rewrite(content / "families/cells.yaml", "mechanism: accordion\n", f"mechanism: accordion\n{given}")
    loaded = load(content)
    family = loaded.families["cells"]
    assert (family["price_level"], family["cleaning"], family["animals"]) == (2.0, "", "gives way")
    sources = loaded.family_notes["cells"].fact_sources
    assert sources == {"price_level": Source("invented"), "animals": Source("common practice")}


def test_each_other_name_is_told_once_and_never_the_own(content: Path) -> None:
    named = "name: Garden pair\nalso_called: [French doors, garden pair, French doors, Patio doors]\n"
    rewrite(content / "doors/garden-pair.yaml", "name: Garden pair\n", named)
    loaded = load(content)
    assert loaded.door_notes["garden-pair"].also_called == ["French doors", "Patio doors"]
    assert loaded.family_notes["cells"].also_called == []


def test_paragraphs_may_be_a_text_with_blank_lines(content: Path) -> None:
    rewrite(
        content / "families/cells.yaml", "description: Cells that close up.", "description: |\n  One\n  line.\n\n  Two."
    )
    assert load(content).family_notes["cells"].description == ["One line.", "Two."]


def test_a_retired_option_stays_readable(content: Path) -> None:
    rewrite(content / "families/cells.yaml", "{name: Dusk,", "{name: Dusk, retired: yes,")
    assert load(content).families["cells"]["choices"][0]["options"][1]["retired"]


def test_ids_that_yaml_takes_for_switches_stay_words(content: Path) -> None:
    rewrite(content / "families/cells.yaml", "motor: {", "off: {")
    assert [option["id"] for option in load(content).families["cells"]["choices"][1]["options"]] == ["cordless", "off"]


def test_cassettes_keep_their_order(content: Path) -> None:
    listed = "cassettes:\n- {name: Small, roll: 60 mm, height: 70 mm, depth: 75 mm}\n"
    listed += "- {name: Large, roll: 80 mm, height: 90 mm, depth: 95 mm}\n"
    rewrite(content / "families/cells.yaml", "choices:\n", f"{listed}choices:\n")
    loaded = load(content)
    assert [cassette["roll"] for cassette in loaded.families["cells"]["cassettes"]] == [60.0, 80.0]
    assert by_path(loaded.family_notes["cells"].measures)["cassettes.2.depth"].value == 95.0


def test_the_household_and_the_pages_are_listed(content: Path) -> None:
    for name in ("handles.md", "care.md", "notes.txt"):
        (content / "pages" / name).write_text("# Words", encoding="utf-8")
    loaded = load(content)
    assert loaded.household["shoulder_height"] == 1371.6
    assert loaded.household["outside_level"] == -152.4
    assert [page.name for page in loaded.pages] == ["care.md", "handles.md", "imprint.md"]
    assert loaded.showroom.order_step == 3.175


def test_the_same_door_in_inches_and_in_millimetres_is_the_same(content: Path) -> None:
    inches = load(content).doors["garden-pair"]
    path = content / "doors/garden-pair.yaml"
    for old, put in {
        "width: 36 in": "width: 914.4 mm",
        "height: 6'8\"": "height: 203.2 cm",
        "width: 22 in": "width: 558.8 mm",
        "height: 64 in": "height: 1.6256 m",
        "6 1/2 in": "165.1 mm",
        "1/4 in": "6.35 mm",
        "1/8 in": "3.175 mm",
        "2 3/8 in": "60.325 mm",
    }.items():
        rewrite(path, old, put)
    assert load(content).doors["garden-pair"] == inches


def test_a_showroom_need_not_say_how_it_is_reached(content: Path) -> None:
    showroom = content / "showroom.yaml"
    text = showroom.read_text(encoding="utf-8")
    start, end = text.index("contact:"), text.index("units:")
    showroom.write_text(text[:start] + text[end:], encoding="utf-8")
    assert not load(content).showroom.contact.told
    showroom.write_text(text[:start] + "contact: {telephone: +1 555 555-0142}\n" + text[end:], encoding="utf-8")
    contact = load(content).showroom.contact
    assert contact.told
    assert (contact.mail, contact.address, contact.hours) == ("", [], [])
