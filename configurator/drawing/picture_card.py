"""Link previews that are pictures: a room, or a photograph, with a thing's name and a line beneath it.

They are JPEG, which every network shows, and small.
"""

import io
from functools import cache

from PIL import Image

from configurator.drawing.card import ACROSS, EDGE, HEIGHT, WIDTH, Words, write
from configurator.drawing.card_colors import Palette
from configurator.drawing.photo import cut_out
from configurator.drawing.rgb import rgb

QUALITY = 36
# How wide a photograph stands on a card, px.
PHOTO = ACROSS + EDGE
WORDS = WIDTH - 2 * EDGE - PHOTO
# Where words stand on a room the plaster is lightened, by so much of 255, and until where it is none any more, px.
LIGHTENED, CLEAR = 150, WIDTH - PHOTO
# Where in a room its door stands, in shares of what is cut from it.
DOOR = (1.0, 0.72)


def filled(picture: Image.Image, size: tuple[int, int], subject: tuple[float, float]) -> Image.Image:
    """Return a picture cut and scaled to a size in px, its ``subject`` in sight."""
    return cut_out(picture, size[0] / size[1], subject).resize(size, Image.Resampling.HAMMING)


def photo_card(photo: Image.Image, subject: tuple[float, float], words: Words, palette: Palette) -> bytes:
    """Return a card with a photograph on its right."""
    image = Image.new("RGB", (WIDTH, HEIGHT), rgb(palette["paper"]))
    image.paste(filled(photo, (PHOTO, HEIGHT), subject), (WIDTH - PHOTO, 0))
    return lettered(image, words, palette)


def room_backdrop(room: Image.Image, palette: Palette) -> Image.Image:
    """Return a painted room as a card shows it: the words' part of the wall a little lighter."""
    image = filled(room, (WIDTH, HEIGHT), DOOR)
    image.paste(rgb(palette["paper"]), (0, 0), lightened())
    return image


@cache
def lightened() -> Image.Image:
    """Return the mask of what lightens the wall where words stand."""
    fall = Image.linear_gradient("L").rotate(-90).resize((CLEAR, HEIGHT))
    return fall.point([at * LIGHTENED // 255 for at in range(256)])


def lettered(image: Image.Image, words: Words, palette: Palette) -> bytes:
    """Return a card as JPEG, its words written on it."""
    write(image, words, WORDS, palette)
    return jpeg(image, QUALITY)


def jpeg(image: Image.Image, quality: int) -> bytes:
    """Return a picture as JPEG, which comes in one go: nobody watches a preview come, and in steps it takes twice the
    time."""
    out = io.BytesIO()
    image.save(out, "JPEG", quality=quality, optimize=True)
    return out.getvalue()
