"""A small sound showroom in a folder of its own, to be spoiled by the tests."""

from pathlib import Path

import pytest

SHOWROOM = """\
name: Test room
strapline: Doors to look through
source: invented
contact:
  telephone: (555) 555-0100
  mail: hello@test.example
  address: [1 Any Lane]
  hours: [{days: Monday, time: 9 to 5}]
units: in
order_step: 1/8 in
household:
  shoulder_height: 4'6"
  person_height: 5'6"
  person_distance: 6 ft
  outside_eye: 5'3"
  outside_distance: 20 ft
  outside_level: -6 in
theme:
  name: sheet
  colors: {paper: '#ffffff', ink: '#000000', warm: '#803010', cool: '#105060'}
  dark: {paper: '#000000', ink: '#ffffff', warm: '#e0a070', cool: '#80c0d0'}
"""

HANDLE = """\
name: Lever
summary: A lever.
source: invented
kind: lever
grip: {length: 4 1/2 in, height: 3/4 in}
gap: 1 3/8 in
projection: 2 1/4 in
plate: {width: 2 in, height: 2 in, thickness: 3/8 in}
neck: 3/4 in
"""

DOOR = """\
name: Garden pair
summary: Two leaves.
source: invented
measured: preset
layout: pair
swing: in
leaf:
  width: 36 in
  height: 6'8"
glass:
  width: 22 in
  height: 64 in
stiles: {hinge: 6 1/2 in, latch: 6 1/2 in}
rails: {top: 6 in, bottom: 9 in}
bead: {width: 1/2 in, projection: 1/4 in}
hinges: {side: left}
pair: {meeting_gap: 1/8 in}
handle:
  preset: lever
  backset: {value: 2 3/8 in, source: common practice}
"""

FAMILY = """\
name: Cells
summary: A cellular shade.
source: invented
mechanism: accordion
description: Cells that close up.
moves: Up and down.
good_at: [being low]
bad_at: [being clear]
care: Dust it.
safety: No cords.
numbers:
  headrail_height: 1 in
  headrail_depth: 1 1/4 in
  overlap_side: 1 in
  overlap_bottom: 1 in
  pitch: 3/4 in
  closed_thickness: 3 mm
  cell_depth: 3/4 in
choices:
  fabric:
    name: Fabric
    options:
      snow: {name: Snow, look: {color: '#f4f4f0'}, numbers: {cloth_view: 0, cloth_light: 45 %}}
      dusk: {name: Dusk, numbers: {cloth_view: 0, cloth_light: 0.01}}
  lift:
    name: Lift
    options:
      cordless: {name: Cordless}
      motor: {name: Motor, numbers: {hand_away: yes}}
"""

FILES = {
    "showroom.yaml": SHOWROOM,
    "handles/lever.yaml": HANDLE,
    "doors/garden-pair.yaml": DOOR,
    "families/cells.yaml": FAMILY,
    "pages/imprint.md": "Who we are.\n",
}


@pytest.fixture
def content(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A sound content folder, named as a showroom would name it from where it stands."""
    monkeypatch.chdir(tmp_path)
    folder = Path("content")
    for name, text in FILES.items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
    return folder
