"""A picture that stands as it is on a page holds nothing but its pixels."""

from pathlib import Path

import pytest
from PIL import Image

from configurator.drawing.photo import without_notes

MAKER = 0x010F
TURN = 0x0112
ON_ITS_SIDE = 6
KINDS = {"png": "PNG", "jpg": "JPEG", "webp": "WEBP"}


@pytest.mark.parametrize("ending", ["png", "jpg", "webp"])
def test_place_and_camera_go_and_the_picture_stands_upright(tmp_path: Path, ending: str) -> None:
    noted = Image.Exif()
    noted[MAKER] = "A camera"
    noted[TURN] = ON_ITS_SIDE
    path = tmp_path / f"shop.{ending}"
    Image.new("RGB", (30, 20), "tan").save(path, exif=noted)
    assert b"A camera" in path.read_bytes()
    made = tmp_path / f"made.{ending}"
    made.write_bytes(without_notes(path))
    assert b"A camera" not in made.read_bytes()
    with Image.open(made) as opened:
        assert len(opened.getexif()) == 0
        assert opened.size == (20, 30)
        assert opened.format == KINDS[ending]
