"""The commands, as someone at a terminal meets them."""

import csv
import json
import re
import shlex
import shutil
import subprocess
import sys
from collections.abc import Callable
from io import StringIO
from pathlib import Path
from xml.etree import ElementTree

import pytest
from click.testing import CliRunner, Result
from PIL import Image

from configurator.asked import VIEWS
from configurator.catalog import Catalog
from configurator.cli import main
from configurator.kernel.answer import ask, ruled_out
from configurator.kernel.message import is_said, say
from configurator.kernel.tongue import ENGLISH
from configurator.local import folder_server
from configurator.paper import DRAW
from configurator.places import CONTENT
from tests.site.pages import asset

ROOT = Path(__file__).resolve().parent.parent
FIGURES = {
    "order_width",
    "order_height",
    "stack_height",
    "stack_over_glass",
    "visible_glass_open",
    "visible_glass_closed",
    "view_open",
    "view_closed",
    "light_open",
    "light_closed",
    "projection_open",
    "projection_closed",
    "projection_most",
    "handle_gap",
}
PIECE = {"kind", "x0", "x1", "y0", "y1", "z0", "z1", "view", "light"}

Run = Callable[..., Result]


@pytest.fixture
def run(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Run:
    """A function that runs ``astragal`` with arguments in an empty folder."""
    monkeypatch.chdir(tmp_path)
    return lambda *arguments: CliRunner().invoke(main, [str(argument) for argument in arguments])


@pytest.fixture(scope="module")
def fitting(catalog: Catalog) -> list[str]:
    """Options that name a family and a door on which it goes."""
    return next(
        ["--door", door["id"], "--family", family["id"]]
        for door in catalog.doors.values()
        for family in catalog.families.values()
        if not is_said(ask(door, family, {}, catalog.household)["refusal"])
    )


@pytest.mark.parametrize("command", ["build", "check", "serve", "demo", "fit", "draw", "new"])
def test_help_gives_an_example(run: Run, command: str) -> None:
    told = run(command, "--help")
    assert told.exit_code == 0
    assert f"astragal {command}" in told.output.split("Example")[1]


@pytest.mark.parametrize("command", ["fit", "draw"])
def test_the_examples_of_the_help_work_as_printed(run: Run, command: str) -> None:
    examples = run(command, "--help").output.split("Example")[1].split("Options:")[0]
    lines = re.findall(r"astragal (.*)", examples)
    assert lines
    for line in lines:
        told = run(*shlex.split(line.split(" > ")[0]))
        assert told.exit_code == 0, told.output


def test_check_counts_what_it_found_in_one_line(run: Run, catalog: Catalog) -> None:
    told = run("check")
    assert told.exit_code == 0
    counts, lack = told.stdout.splitlines()
    assert f"{len(catalog.doors)} doors" in counts
    assert lack.startswith("No public_address stands in showroom.yaml: ")


def test_where_a_public_address_is_given_nothing_is_lacking(run: Run) -> None:
    run("new", "mine")
    showroom = Path("mine/showroom.yaml")
    showroom.write_text(f"public_address: https://doors.example/\n{showroom.read_text(encoding='utf-8')}")
    assert "public_address" not in run("check", "mine").stdout


def test_within_a_content_folder_that_folder_is_meant_and_said(run: Run, monkeypatch: pytest.MonkeyPatch) -> None:
    run("new", "mine")
    shutil.rmtree("mine/prices")
    shutil.rmtree("mine/visits")
    for kind, kept in {"doors": ["garden-door", "garden-pair"], "families": ["cellular-shade"]}.items():
        for path in Path("mine", kind).iterdir():
            if path.stem not in kept:
                path.unlink()
    for page in Path("mine/pages").iterdir():
        if page.stem != "imprint":
            page.unlink()
    monkeypatch.chdir("mine")
    told = run("check")
    assert told.stdout.startswith(".: 2 doors, ")
    assert told.stderr == "The content is that of the folder you are in.\n"
    built = run("build")
    assert built.exit_code == 0
    assert "No public_address stands" in built.stdout
    assert Path("site/coverings/cellular-shade.html").is_file()
    assert not Path("site/coverings/roller-shade.html").exists()
    # The site that now lies in the folder is no content.
    asset(Path("site"), "icon-48.png").write_bytes(b"spoilt")
    assert run("check").exit_code == 0


def test_check_lists_every_problem_with_its_place(run: Run, tmp_path: Path) -> None:
    run("new", "mine")
    door, family = next(Path("mine/doors").glob("*.yaml")), next(Path("mine/families").glob("*.yaml"))
    for file in (door, family):
        file.write_text(file.read_text() + "color_of_the_sky: blue\n")
    told = run("check", "mine")
    assert told.exit_code == 1
    assert told.stdout == ""
    places = [line.split(": ")[0].rsplit(":", 2)[0] for line in told.stderr.splitlines()]
    assert {Path(place).name for place in places} == {door.name, family.name}


def test_new_starts_a_showroom_that_checks_and_never_overwrites(run: Run) -> None:
    assert run("new", "mine").exit_code == 0
    assert run("check", "mine").exit_code == 0
    Path("mine/showroom.yaml").write_text("my own work")
    told = run("new", "mine")
    assert told.exit_code == 1
    assert "not empty" in told.stderr
    assert Path("mine/showroom.yaml").read_text() == "my own work"


def test_build_leaves_a_folder_alone_that_is_no_site(run: Run) -> None:
    Path("letters").mkdir()
    Path("letters/dear.txt").write_text("keep me")
    told = run("build", CONTENT, "letters")
    assert told.exit_code == 1
    assert "letters" in told.stderr
    assert [file.name for file in Path("letters").iterdir()] == ["dear.txt"]


def test_fit_as_json_has_every_promised_key(run: Run, fitting: list[str]) -> None:
    told = json.loads(run("fit", *fitting, "--json", "--at", "0.5").stdout)
    assert {"door", "family", "choices", "figures", "verdicts", "cautions", "pieces"} <= set(told)
    assert set(told["figures"]) >= FIGURES
    assert all({"value", "unit", "name", "working"} == set(figure) for figure in told["figures"].values())
    assert told["verdicts"]["pass_through"]["state"] in ("clears", "guide by hand", "blocked")
    assert set(told["pieces"]) == {"door", "open", "closed", "at"}
    assert all(set(piece) == PIECE for pieces in told["pieces"].values() for piece in pieces)


def test_fit_tells_what_would_fix_what_does_not_clear(run: Run) -> None:
    asked = ("fit", "--door", "garden-pair", "--family", "banded-shade")
    told = json.loads(run(*asked, "--json").stdout)["fixes"]
    opened = next(fix for fix in told if fix["picks"] == {"head": "open"})
    assert (opened["mends"], opened["state"], opened["numbers"]) == ("pass_through", "clears", {})
    assert opened["changes"]["projection"] < 0
    assert f"What would fix it: {opened['text']}" in run(*asked).stdout
    again = json.loads(run(*asked, "--choice", "head=open", "--json").stdout)
    assert again["verdicts"]["pass_through"]["state"] == "clears"
    assert [fix for fix in again["fixes"] if fix["mends"] == "pass_through"] == []


def test_a_verdict_that_does_not_clear_says_where(run: Run, catalog: Catalog) -> None:
    for door in catalog.doors:
        for family in catalog.families:
            for verdict in json.loads(run("fit", "--door", door, "--family", family, "--json").stdout)[
                "verdicts"
            ].values():
                if verdict["state"] != "clears":
                    assert 0 <= verdict["from"] <= verdict["to"] <= 1
                    assert verdict["why"]
                    return
    pytest.fail("every family clears every door of the starter content, which cannot be")


def test_fit_tells_every_figure_with_its_working(run: Run, catalog: Catalog, fitting: list[str]) -> None:
    told = run("fit", *fitting, "--units", "mm").stdout
    answer = ask(catalog.doors[fitting[1]], catalog.families[fitting[3]], {}, catalog.household)
    for figure in answer["figures"].values():
        assert figure["name"] in told
    width = answer["figures"]["order_width"]["value"]
    assert f"{width:g} mm" in told
    words = " ".join(told.split())
    for caution in answer["cautions"]:
        assert say(caution["text"], ENGLISH, "mm") in words


def test_a_slip_elsewhere_does_not_keep_a_fit_from_being_told(run: Run, tmp_path: Path, fitting: list[str]) -> None:
    content = shutil.copytree(CONTENT, tmp_path / "content")
    family = fitting[fitting.index("--family") + 1]
    other = next(path for path in sorted((content / "families").glob("*.yaml")) if path.stem != family)
    other.write_text("nme: Slip\n")
    (content / "pages" / "loose.md").write_bytes(b"\xff")
    told = run("fit", *fitting, "--content", content)
    assert (told.exit_code, told.output) == (0, run("fit", *fitting).output)
    assert run("check", content).exit_code == 1
    # Of what is asked about, slips are told as ever.
    with (content / "families" / f"{family}.yaml").open("a") as file:
        file.write("nme: Slip\n")
    refused = run("fit", *fitting, "--content", content)
    assert refused.exit_code == 1
    assert f"{family}.yaml" in refused.stderr
    assert other.name not in refused.stderr


def test_fit_tells_a_position_of_its_own(run: Run, fitting: list[str]) -> None:
    assert "At 0.25" in run("fit", *fitting, "--at", "0.25").stdout


def test_a_family_that_cannot_go_on_a_door_says_why_and_gives_no_numbers(run: Run, catalog: Catalog) -> None:
    refused = (
        (["--door", door["id"], "--family", family["id"], "--choice", f"{choice}={option}"], reason)
        for door in catalog.doors.values()
        for family in catalog.families.values()
        for choice, reasons in ruled_out(door, family, {}).items()
        for option, reason in reasons.items()
    )
    wanted, given = next(refused)
    reason = say(given, ENGLISH, "in")
    told = " ".join(run("fit", *wanted).stdout.split())
    assert reason in told
    assert "Figures" not in told
    assert json.loads(run("fit", *wanted, "--json").stdout)["figures"] == {}
    assert reason in run("draw", *wanted, "-o", "no.svg").stderr


def test_the_table_has_a_row_for_every_family_on_every_door(run: Run, catalog: Catalog) -> None:
    rows = list(csv.DictReader(StringIO(run("fit", "--all", "--csv").stdout)))
    offered = [family for family, numbers in catalog.families.items() if not numbers["retired"]]
    assert [(row["door"], row["family"]) for row in rows] == [(d, f) for d in catalog.doors for f in offered]
    for row in rows:
        assert bool(row["refusal"]) != bool(row["order_width"])


@pytest.mark.parametrize("more", [["--door", "garden-pair"], ["--at", "0.5"], ["--json"], ["--choice", "lift=motor"]])
def test_what_a_table_cannot_heed_is_not_passed_over_in_silence(run: Run, more: list[str]) -> None:
    told = run("fit", "--all", "--csv", *more)
    assert told.exit_code == 2
    assert told.stdout == ""


@pytest.mark.parametrize(
    ("option", "slip"), [("--door", "door"), ("--family", "family"), ("--choice", "choice"), ("--choice", "option")]
)
def test_an_unknown_word_brings_the_nearest_one(
    run: Run, catalog: Catalog, fitting: list[str], option: str, slip: str
) -> None:
    choice = catalog.families[fitting[3]]["choices"][0]
    right = {"door": fitting[1], "family": fitting[3], "choice": choice["id"], "option": choice["options"][0]["id"]}
    wrong = right | {slip: right[slip] + "x"}
    arguments = ["--door", wrong["door"], "--family", wrong["family"]]
    told = run("fit", *arguments, "--choice", f"{wrong['choice']}={wrong['option']}")
    assert told.exit_code == 2
    assert option in told.stderr
    assert f"did you mean '{right[slip]}'?" in told.stderr


@pytest.mark.parametrize("at", ["1.5", "-0.1", "half", "nan"])
def test_a_position_outside_the_travel_is_refused(run: Run, fitting: list[str], at: str) -> None:
    assert run("fit", *fitting, f"--at={at}").exit_code == 2


@pytest.mark.parametrize("view", ["elevation", "evening", "street", "section", "plan", "sheet"])
def test_draw_writes_an_svg_with_a_title(run: Run, fitting: list[str], view: str) -> None:
    assert run("draw", *fitting, "--view", view, "--at", "0.35", "-o", "drawn.svg").exit_code == 0
    drawing = ElementTree.parse("drawn.svg").getroot()
    assert drawing.find("{http://www.w3.org/2000/svg}title") is not None


def test_a_room_is_painted_as_a_picture_alone(run: Run, fitting: list[str]) -> None:
    assert run("draw", *fitting, "--view", "room", "--at", "0.35", "-o", "room.png").exit_code == 0
    with Image.open("room.png") as room:
        assert room.size == (1800, 1080)
    assert "'room.svg' does not end in .png" in run("draw", *fitting, "--view", "room", "-o", "room.svg").stderr


def test_open_and_closed_are_drawn_apart(run: Run, catalog: Catalog, fitting: list[str]) -> None:
    moving = next(f for f in catalog.families.values() if f["mechanism"] == "accordion")
    wanted = [*fitting[:2], "--family", moving["id"]]
    run("draw", *wanted, "--at", "open", "-o", "open.svg")
    run("draw", *wanted, "--at", "closed", "-o", "closed.svg")
    assert Path("open.svg").read_text() != Path("closed.svg").read_text()


@pytest.mark.parametrize("family", ["wood-blind", "metal-blind", "vertical-vanes"])
def test_all_the_way_is_drawn_as_closed_is(run: Run, fitting: list[str], family: str) -> None:
    wanted = [*fitting[:2], "--family", family]
    run("draw", *wanted, "--at", "1", "-o", "way.svg")
    run("draw", *wanted, "--at", "closed", "-o", "closed.svg")
    run("draw", *wanted, "--at", "0.9", "-o", "level.svg")
    assert Path("way.svg").read_text() == Path("closed.svg").read_text()
    assert Path("level.svg").read_text() != Path("closed.svg").read_text()


def test_draw_writes_a_png(run: Run, fitting: list[str]) -> None:
    assert run("draw", *fitting, "-o", "drawn.png").exit_code == 0
    with Image.open("drawn.png") as picture:
        assert picture.format == "PNG"


def test_draw_refuses_other_files(run: Run, fitting: list[str]) -> None:
    told = run("draw", *fitting, "-o", "drawn.pdf")
    assert told.exit_code == 2
    assert ".svg" in told.stderr


def test_draw_names_a_folder_that_is_not_there(run: Run, fitting: list[str]) -> None:
    told = run("draw", *fitting, "-o", "drawings/mine.svg")
    assert told.exit_code == 2
    assert "there is no folder 'drawings'" in told.stderr


@pytest.mark.parametrize("command", [["demo", "--open"], ["serve", CONTENT]])
def test_a_taken_port_is_said_plainly_before_anything_is_built(
    run: Run, tmp_path: Path, command: list[str | Path]
) -> None:
    with folder_server(tmp_path, 0) as server:
        told = run(*command, "--port", server.server_address[1])
    assert told.exit_code == 1
    assert told.stderr == "Error: that port is taken; name another with --port\n"
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(("fault", "said"), [(ConnectionResetError, False), (ValueError, True)])
def test_a_served_folder_tells_what_goes_wrong_but_not_who_hangs_up(
    tmp_path: Path, capsys: pytest.CaptureFixture[str], fault: type[Exception], said: bool
) -> None:
    with folder_server(tmp_path, 0) as server:
        try:
            raise fault
        except fault:
            server.handle_error(server.socket, server.server_address)
    assert (fault.__name__ in capsys.readouterr().err) == said


# What only some commands need, and is slow to load.
HEAVY = {"PIL", "jinja2", "markdown", "mkdocs", "svgwrite", "tree_sitter"}
LOADED = "import sys; from configurator.cli import main; main(sys.argv[1:], standalone_mode=False); print(*sys.modules)"


@pytest.mark.parametrize(
    ("arguments", "needed"),
    [
        # Photographs are opened, and guides read as they will be shown.
        ("check", {"PIL", "markdown"}),
        ("fit --door garden-pair --family cellular-shade", set()),
        ("draw --door garden-pair --family cellular-shade -o it.svg", {"svgwrite"}),
        ("new mine", set()),
    ],
)
def test_a_command_loads_only_what_it_needs(arguments: str, needed: set[str], tmp_path: Path) -> None:
    assert loaded_by(arguments, tmp_path) == needed


def test_a_check_of_what_it_remembers_loads_nothing_more(tmp_path: Path) -> None:
    loaded_by("check", tmp_path)
    assert loaded_by("check", tmp_path) == set()


def loaded_by(arguments: str, home: Path) -> set[str]:
    """Return what a command loads of what is slow to load, in a home of its own."""
    command = [sys.executable, "-c", LOADED, *arguments.split()]
    env = {"PYTHONPATH": str(ROOT), "HOME": str(home), "XDG_CACHE_HOME": str(home / "kept")}
    told = subprocess.run(command, cwd=home, env=env, capture_output=True, text=True)
    assert told.returncode == 0, told.stderr
    return HEAVY & set(told.stdout.splitlines()[-1].split())


def test_the_views_that_are_offered_are_those_that_can_be_drawn() -> None:
    assert list(DRAW) == list(VIEWS)
