"""A showroom's photographs and painted rooms: where each stands, how it is cut, and that it holds only pixels."""

from collections.abc import Callable
from pathlib import Path

import pytest
from lxml.etree import _Element
from PIL import ExifTags, Image

from configurator.site.answers import Answers
from configurator.site.mkdocs.build import build
from tests.conftest import small_content
from tests.site.pages import asset, parsed, plain_name
from tests.site.test_build import edited

ON_ITS_SIDE = 6
FAMILY = "roller-shade"
# What of the demo the photographs, the rooms and the previews of coverings take together at most, bytes.
PHOTOGRAPHS_MOST, ROOMS_MOST, ROOM_MOST, CARD_MOST = 90_000, 250_000, 20_000, 40_000


def photograph(path: Path) -> None:
    """Write a photograph as a camera does that was held on its side, red at its left, with a note of the camera."""
    picture = Image.new("RGB", (700, 1000), "tan")
    # Turned as the camera says, this is its left.
    picture.paste("red", (0, 500, 700, 1000))
    noted = Image.Exif()
    noted[ExifTags.Base.Orientation] = ON_ITS_SIDE
    noted[ExifTags.Base.Make] = "A camera"
    picture.save(path, exif=noted, quality=95)


def told(name: str) -> str:
    """Return how content names a photograph."""
    return f"photo: {{file: shop.jpg, alt: {name} as it is, focus: 0% 60%, credit: Taken by a friend}}"


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory, demo_answers: Callable[[], Answers]) -> Path:
    """A small site with the same photograph of the showroom, a door, a family and an option."""
    home = tmp_path_factory.mktemp("photographs")
    content = small_content(home / "content", FAMILY)
    for path in (content / "pictures").glob("*.jpg"):
        path.unlink()
    photograph(content / "pictures" / "shop.jpg")
    photograph(content / "pictures" / "nobodys.jpg")
    edited(content, "showroom.yaml", "units: in ", f"{told('Our shop')}\nunits: in ")
    edited(content, "doors/garden-door.yaml", "layout: ", f"{told('Our door')}\nlayout: ")
    edited(content, f"families/{FAMILY}.yaml", "mechanism: ", f"{told('Our roller')}\nmechanism: ")
    option = "look: {color: '#4c4f52'}"
    edited(content, f"families/{FAMILY}.yaml", option, f"{option}\n        {told('Our cloth')}")
    build(content, home / "site", demo_answers())
    return home / "site"


def shown(page: Path, name: str) -> _Element:
    """Return the picture of a page that shows something."""
    (picture,) = parsed(page)[0].xpath(f"//img[@alt='{name} as it is']")
    assert isinstance(picture, _Element)
    return picture


def sources(page: Path, picture: _Element) -> dict[int, Path]:
    """Return a picture's files by the widths that the page tells of them."""
    parts = [part.split() for part in str(picture.get("srcset")).split(",")]
    return {int(width[:-1]): (page.parent / url).resolve() for url, width in parts}


PLACES = {
    "first page": ("index.html", "Our shop", 10 / 7),
    "door": ("doors/garden-door.html", "Our door", 10 / 7),
    "covering": (f"coverings/{FAMILY}.html", "Our roller", 10 / 7),
    "option": (f"coverings/{FAMILY}.html", "Our cloth", 1.0),
    "all coverings": ("coverings/index.html", "Our roller", 0.75),
}


@pytest.mark.parametrize("place", PLACES.values(), ids=PLACES.keys())
def test_a_photograph_stands_upright_in_its_shape_and_never_wider_than_given(
    site: Path, place: tuple[str, str, float]
) -> None:
    url, name, shape = place
    picture = shown(site / url, name)
    files = sources(site / url, picture)
    assert int(str(picture.get("width"))) / int(str(picture.get("height"))) == pytest.approx(shape, rel=0.01)
    assert max(files) <= 1000
    for width, path in files.items():
        assert b"A camera" not in path.read_bytes()
        with Image.open(path) as opened:
            assert len(opened.getexif()) == 0
            assert opened.width == width
            assert opened.width / opened.height == pytest.approx(shape, rel=0.01)
            red, green, _ = opened.convert("RGB").getpixel((opened.width // 8, opened.height // 2))
            assert red - green > 150, "the subject, at its left, is in sight"


def test_who_took_it_is_said_and_the_subject_stays_in_view(site: Path) -> None:
    for url in ("index.html", "doors/garden-door.html", f"coverings/{FAMILY}.html"):
        assert parsed(site / url)[0].xpath("//figcaption/text()").count("Taken by a friend") == 1
    assert ".hero>img{object-position:0% 60%}" in asset(site, "site.css").read_text()


def test_only_what_is_shown_is_there(site: Path) -> None:
    there = {path.name for path in (site / "assets").glob("*.webp")}
    pages = [site / url for url, _, _ in PLACES.values()]
    named = [
        path.name
        for page in pages
        for picture in parsed(page)[0].xpath("//img")
        for path in sources(page, picture).values()
    ]
    assert there == set(named)


def test_link_previews_show_the_photograph(site: Path) -> None:
    for url, card in (
        (f"coverings/{FAMILY}.html", f"cards/coverings/{FAMILY}.jpg"),
        ("doors/garden-door.html", "cards/doors/garden-door.jpg"),
    ):
        (named,) = parsed(site / url)[0].xpath("//meta[@property='og:image']/@content")
        assert str(named).endswith(card)
        with Image.open(site / card) as opened:
            assert opened.format == "JPEG"
            red, green, _ = opened.getpixel((720, 300))
            assert red - green > 150


def test_every_covering_is_seen_in_its_room(demo: Path) -> None:
    coverings = [page for page in sorted((demo / "coverings").glob("*.html")) if page.stem != "index"]
    for page in coverings:
        pictures = parsed(page)[0].xpath("//figure[@class='seen']/img")
        shown = [plain_name(path.name) for picture in pictures for path in sources(page, picture).values()]
        assert f"room-{page.stem}-768.webp" in shown
        assert all(picture.get("alt") for picture in pictures)
        assert all(path.is_file() for picture in pictures for path in sources(page, picture).values())
    rooms = {path.name: path.stat().st_size for path in (demo / "assets").glob("room-*.webp")}
    assert len(rooms) == len(coverings)
    assert max(rooms.values()) <= ROOM_MOST
    assert sum(rooms.values()) <= ROOMS_MOST


def test_a_room_shows_the_covering_itself(demo: Path) -> None:
    tones = {}
    for name in ("metal-blind", "wood-blind", "traversing-drapery", "louvered-shutter"):
        with Image.open(asset(demo, f"room-{name}-768.webp")) as room:
            tones[name] = room.convert("RGB").crop((269, 77, 461, 461)).resize((8, 8)).tobytes()
    assert len(set(tones.values())) == len(tones)


def test_the_demo_shows_a_family_an_option_and_a_door_and_stays_light(demo: Path) -> None:
    shows = {
        "coverings/soft-fold-shade.html": ("soft-folds-in-the-morning", "slub-linen-near"),
        "doors/garden-pair.html": ("garden-pair-at-dusk",),
        "coverings/index.html": ("soft-folds-in-the-morning",),
    }
    for url, names in shows.items():
        found = " ".join(parsed(demo / url)[0].xpath("//img/@src"))
        assert all(name in found for name in names), url
    names = {name for some in shows.values() for name in some}
    files = [path for name in names for path in (demo / "assets").glob(f"{name}*")]
    assert 0 < sum(path.stat().st_size for path in files) <= PHOTOGRAPHS_MOST
    assert max(path.stat().st_size for path in (demo / "cards" / "coverings").glob("*")) <= CARD_MOST
