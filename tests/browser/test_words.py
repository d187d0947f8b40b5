"""Lengths and words as a browser reads and writes them: the very same as Python."""

import json
import random
from collections.abc import Callable, Iterator
from typing import Any

import pytest
from playwright.sync_api import Browser

from configurator.browser import kernel_js
from configurator.kernel.lengths import say_span, write_length, written_length
from configurator.kernel.message import say, several
from configurator.kernel.say import say_both, say_value
from configurator.kernel.tongue import ENGLISH, FORMS, Words
from configurator.kernel.typeset import typeset
from configurator.kernel.views.sheet import INCH_SCALES, METRIC_SCALES, scale_words
from configurator.tongues.speech import speech
from tests.tapes import REFUSED, WRITTEN
from tests.words import SET

# A function of the kernel by its name, asked with many inputs.
Asked = Callable[[str, list[Any]], list[Any]]
# One text each way, since Playwright takes milliseconds to hand over each of thousands of lists; languages go by name.
ASK = """([name, all]) => JSON.stringify(JSON.parse(all).map((one) =>
    Astragal.kernel[name](...one.map((part) => part?.spoken ? languages[part.spoken] : part))))"""
SCRAPS = [
    "22",
    "1/2",
    "5/4",
    " ",
    "-",
    "−",
    "'",
    '"',
    "″",
    "½",
    "⅟",
    "in",
    "ft",
    "mm",
    "cm",
    "m",
    ".",
    ",",
    "6",
    "8",
    "/",
]


def scribbles(seed: int, count: int) -> list[list[str]]:
    """Return texts made of scraps of lengths, each with units."""
    pick = random.Random(seed)
    return [["".join(pick.choices(SCRAPS, k=pick.randint(1, 7))), pick.choice(["in", "mm"])] for _ in range(count)]


FORMS_OF_BRICKS = ["{count} brick, {share}", "{count} bricks, {share}"]
# Polish has forms for one, for few and for many; its numbers have a decimal comma.
POLISH: Words = {
    **speech("pl"),
    "said": {
        FORMS.join(FORMS_OF_BRICKS): FORMS.join(
            ["{count} cegła, {share}", "{count} cegły, {share}", "{count} cegieł, {share}"]
        )
    },
}
LANGUAGES = [ENGLISH, POLISH, speech("es"), speech("tr"), speech("ja")]


def handed(part: Any) -> Any:
    """Return part of an input as the page is given it: a language by its name."""
    return {"spoken": part["language"]} if any(part is one for one in LANGUAGES) else part


@pytest.fixture
def theirs(browser: Browser) -> Iterator[Asked]:
    """Ask a function of the translated kernel with many inputs."""
    page = browser.new_page()
    page.add_script_tag(content=kernel_js())
    page.evaluate("all => { window.languages = all; }", {words["language"]: words for words in LANGUAGES})

    def ask(name: str, inputs: list[Any]) -> list[Any]:
        given = json.dumps([[handed(part) for part in one] for one in inputs])
        found: list[Any] = json.loads(page.evaluate(ASK, [name, given]))
        return found

    yield ask
    page.close()


def test_each_language_has_its_forms_and_numbers_on_both_sides(theirs: Asked) -> None:
    told = [several(*FORMS_OF_BRICKS, {"count": [n, "count"], "share": [n / 300, "percent"]}) for n in range(320)]
    pick = random.Random(6)
    sizes = [pick.uniform(-2000, 20000) for _ in range(400)] + [tenths / 10 for tenths in range(-300, 3000, 7)]
    for words in LANGUAGES:
        assert theirs("say", [[one, words, "mm"] for one in told]) == [say(one, words, "mm") for one in told]
        for units in ("in", "mm"):
            assert theirs("write_length", [[mm, words, units] for mm in sizes]) == [
                write_length(mm, words, units) for mm in sizes
            ]
        shares = [[mm / 20000, "share", words, "mm"] for mm in sizes]
        assert theirs("say_value", shares) == [say_value(mm / 20000, "share", words, "mm") for mm in sizes]
    counted = theirs("say", [[told[n], POLISH, "mm"] for n in (1, 3, 5, 22, 112)])
    assert [one.split(",")[0] for one in counted] == ["1 cegła", "3 cegły", "5 cegieł", "22 cegły", "112 cegieł"]
    assert theirs("write_length", [[571.5, POLISH, "mm"], [0.1, POLISH, "in"]]) == ["571,5", "0,1 mm"]


def test_lengths_and_words_are_the_same_on_both_sides(theirs: Asked) -> None:
    texts = [list(written) for written in WRITTEN] + [[text, "in"] for text in REFUSED] + scribbles(4, 20_000)
    assert theirs("written_length", texts) == [written_length(text, units) for text, units in texts]
    pick = random.Random(5)
    sizes = [count * 25.4 / 64 for count in range(-500, 6500, 7)] + [pick.uniform(-2000, 20000) for _ in range(2000)]
    sizes += [tenths / 10 for tenths in range(-3000, 30000, 11)]
    assert theirs("say_both", [[mm, ENGLISH] for mm in sizes]) == [say_both(mm, ENGLISH) for mm in sizes]
    for units in ("in", "mm"):
        written = [write_length(mm, ENGLISH, units) for mm in sizes]
        assert theirs("write_length", [[mm, ENGLISH, units] for mm in sizes]) == written
        spans = [(low, low + 500.0, ENGLISH, units) for low in sizes]
        assert theirs("say_span", [list(span) for span in spans]) == [say_span(*span) for span in spans]
    scales = [(scale, ENGLISH, "in") for scale in INCH_SCALES] + [(scale, ENGLISH, "mm") for scale in METRIC_SCALES]
    assert theirs("scale_words", [list(scale) for scale in scales]) == [scale_words(*scale) for scale in scales]
    assert theirs("typeset", [[words] for words in SET]) == [typeset(words) for words in SET]
