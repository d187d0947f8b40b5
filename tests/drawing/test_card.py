"""Link previews: they say what they show, in the showroom's colors and in any European language."""

import io

import pytest
from PIL import Image, ImageChops

from configurator.drawing.card import ACROSS, EDGE, HEIGHT, WIDTH, Words, card, pair_card
from configurator.drawing.drawing_palette import colors
from configurator.drawing.rgb import rgb

PICTURE = Image.new("RGB", (300, 300), colors()["paper"])
OWN = {"paper": "#101830", "ink": "#f0e8d8", "warm": "#ff9060"}
# Where the names stand above two drawings, and the showroom's beneath them.
NAMES = (EDGE, 0, WIDTH - EDGE, HEIGHT - EDGE - PICTURE.height - 2)
FOOT = (EDGE, HEIGHT - EDGE + 4, WIDTH - EDGE, HEIGHT)

WRITTEN = [
    Words("Haus & Tür", "Fältstore, größte", "Terrassentür"),
    Words("Σπίτι & Πόρτα", "Ρολοκουρτίνα", "Πόρτα κήπου"),
    Words("Дом и дверь", "Рулонная штора", "Садовая дверь"),
]


def made(words: Words, palette: dict[str, str] | None = None) -> Image.Image:
    """Return the preview of two drawings that show nothing but paper."""
    own = colors() | (palette or {})
    picture = Image.new("RGB", PICTURE.size, own["paper"])
    return Image.open(io.BytesIO(pair_card([picture, picture], words, own))).convert("RGB")


def differ(one: Image.Image, other: Image.Image, box: tuple[int, int, int, int]) -> bool:
    """Return whether two pictures differ within a box."""
    return ImageChops.difference(one.crop(box), other.crop(box)).getbbox() is not None


def test_two_drawings_stand_under_the_covering_s_and_the_door_s_name() -> None:
    plain = made(Words("Lantern & Sill", "Roller shade", "Garden pair"))
    assert differ(plain, made(Words("Lantern & Sill", "Banded shade", "Garden pair")), NAMES)
    assert differ(plain, made(Words("Lantern & Sill", "Roller shade", "Garden door")), NAMES)
    assert not differ(plain, made(Words("Haus & Tür", "Roller shade", "Garden pair")), NAMES)
    assert differ(plain, made(Words("Haus & Tür", "Roller shade", "Garden pair")), FOOT)


@pytest.mark.parametrize("words", WRITTEN)
def test_no_letter_of_a_name_is_a_box(words: Words) -> None:
    boxes = Words(*("".join("\U000fffff" if letter.isalpha() else letter for letter in name) for name in words))
    for box in (NAMES, FOOT):
        assert differ(made(words), made(boxes), box)
        assert differ(made(words), made(Words("", " . ", " . ")), box)


def test_a_name_too_long_for_its_line_stays_on_the_card() -> None:
    shown = made(Words("Lantern & Sill", "Roller shade on a spring " * 9, "Garden pair " * 20))
    edges = [shown.crop((0, 0, 8, HEIGHT - 100)), shown.crop((WIDTH - 8, 0, WIDTH, HEIGHT - 100))]
    assert [edge.getcolors() for edge in edges] == [[(8 * (HEIGHT - 100), rgb(colors()["paper"]))]] * 2


def test_a_showroom_s_name_too_long_for_its_line_stays_on_the_card() -> None:
    shown = made(Words("Lantern & Sill and all their daughters " * 4, "Roller shade", "Garden pair"))
    beside = [(0, FOOT[1], 8, HEIGHT), (WIDTH - 8, FOOT[1], WIDTH, HEIGHT)]
    assert [shown.crop(box).getcolors() for box in beside] == [[(8 * (HEIGHT - FOOT[1]), rgb(colors()["paper"]))]] * 2
    assert differ(shown, made(Words("", "Roller shade", "Garden pair")), FOOT)


def test_a_card_wears_the_showroom_s_colors() -> None:
    words = Words("Lantern & Sill", "Roller shade", "Garden pair")
    single = Image.open(io.BytesIO(card(PICTURE, words, colors() | OWN))).convert("RGB")
    for image in (made(words, OWN), single):
        seen = {color for _, color in image.getcolors(WIDTH * HEIGHT) or []}
        assert {rgb(color) for color in OWN.values()} <= seen
        assert image.getpixel((2, 2)) == rgb(OWN["paper"])


def test_a_sentence_of_three_lines_is_told_to_its_end() -> None:
    sentence = "Short folds tuck behind each other: one small stack, however tall the"
    whole, cut = (
        card(PICTURE, Words("Lantern & Sill", "Nested-fold shade", line), colors())
        for line in (f"{sentence} glass.", sentence)
    )
    assert whole != cut


def box_of(image: Image.Image, color: str) -> tuple[int, int, int, int] | None:
    """Return the box that holds all that has a color, px."""
    return ImageChops.invert(away_from(image, color)).point(lambda level: 255 if level == 255 else 0).getbbox()


def away_from(image: Image.Image, color: str) -> Image.Image:
    """Return how far each pixel is from a color, in the band where that is most."""
    parts = ImageChops.difference(image, Image.new("RGB", image.size, rgb(color))).split()
    return ImageChops.lighter(ImageChops.lighter(parts[0], parts[1]), parts[2])


@pytest.mark.parametrize("count", [1, 2])
def test_each_drawing_stands_on_one_floor_in_the_middle_of_its_room(count: int) -> None:
    palette = colors() | OWN
    picture = Image.new("RGB", (200, 300), rgb(OWN["warm"]))
    nothing = Words("", "", "")
    made_card = card(picture, nothing, palette) if count == 1 else pair_card([picture] * count, nothing, palette)
    image = Image.open(io.BytesIO(made_card)).convert("RGB")
    # One drawing has the right of the card to itself, two have a half each; the floor runs out at the right.
    rooms = [(WIDTH - EDGE - ACROSS, WIDTH - EDGE)] if count == 1 else [(0, WIDTH // 2), (WIDTH // 2, WIDTH)]
    floor = box_of(image, OWN["ink"])
    assert floor is not None
    assert (floor[0], floor[2]) == (rooms[0][0], WIDTH)
    assert floor[3] - floor[1] == 3
    for left, right in rooms:
        stands = box_of(image.crop((left, 0, right, HEIGHT)), OWN["warm"])
        assert stands is not None
        assert (stands[0], right - left - stands[2]) == ((right - left - 200) // 2,) * 2
        assert (stands[1], stands[3]) == (floor[1] + 1 - 300, floor[1])
