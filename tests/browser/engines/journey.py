"""One way through the configurator, and what an engine shows at each stop of it."""

from dataclasses import dataclass
from typing import Any

from configurator.catalog import Catalog
from tests.browser.engines.engine import Engine
from tests.browser.trying import LOOKED, covering, fragment

READY = """typeof Astragal !== "undefined" && Boolean(Astragal.page?.sheetPages && Astragal.page.clientPages)
    && document.querySelector(".onward") !== null"""
# Every figure with its working, every verdict and sentence of the step, every shape on the paper, and the link.
# Grips are sized by the finger on the screen, and a screen's letters are each engine's own.
SHOWN = """(() => {
    const said = [...document.querySelectorAll(".now-line, .verdict, .caution, .panel p")];
    const shapes = [...document.querySelectorAll(".moving-sheet :is(path, polygon, polyline, text):not(.grip-heads)")];
    return {
        figures: [...document.querySelectorAll("[data-figure]")].map((one) => [one.dataset.figure, one.textContent]),
        sentences: said.filter((one) => one.checkVisibility()).map((one) => one.textContent.trim()),
        shapes: shapes.map((one) => [...["class", "d", "points"].map((id) => one.getAttribute(id)), one.textContent]),
        link: location.hash,
    };
})()"""
FIGURES_STAND = f"document.querySelector('[data-figure=order_width]') !== null && {LOOKED}"
CARDS = """[...document.querySelectorAll(".shelf-cards > li")].map((card) => [card.dataset.family, card.textContent])"""
MIDDLE = """(() => {{
    const node = document.querySelector("{selector}");
    const box = (node.scrollIntoView({{ block: "nearest" }}), node.getBoundingClientRect());
    return [box.x + box.width / 2, box.y + box.height / 2];
}})()"""
GRIP = MIDDLE.format(selector=".hold[data-moves=lower] .grip")
# What an address tells is drawn in the frame after.
COUNT_FRAMES = """(() => {
    window.frames_passed = 0;
    const count = () => ++window.frames_passed < 3 && requestAnimationFrame(count);
    requestAnimationFrame(count);
})()"""
SLIDER = "document.getElementById('travel-lower')"
WIDTH = "document.getElementById('field-glass_width')"
FIELD = MIDDLE.format(selector="#field-glass_width")
PULL = 80


@dataclass(frozen=True)
class Stop:
    """A covering on a door, half way."""

    door: str
    family: str


STOPS = [
    Stop("garden-door", "cellular-shade"),
    Stop("metric-pair-rebated", "wood-blind"),
    Stop("tall-door", "soft-fold-shade"),
]


@dataclass(frozen=True)
class Journey:
    """An engine on its way over a site, whose address ends in a slash."""

    engine: Engine
    site: str
    catalog: Catalog

    def open(self, stop: Stop, step: str) -> None:
        """Open a step of the configurator on a covering, and wait until all of it stands."""
        shown = covering(self.catalog, stop.door, stop.family, at=(0.5, 0.0, 0.0))
        self.engine.open(self.site + fragment(self.catalog, shown, step=step))
        self.engine.wait(READY)

    def shown(self, stop: Stop) -> Any:
        """Return what the details of a covering tell and draw."""
        self.open(stop, "details")
        self.engine.wait(FIGURES_STAND)
        return self.engine.ask(SHOWN)

    def pressed(self, stop: Stop) -> Any:
        """Return what is shown once a key has lowered the covering three times."""
        self.open(stop, "details")
        self.engine.ask(f"{SLIDER}.focus()")
        before = int(self.engine.ask(f"{SLIDER}.value"))
        link = self.engine.ask("location.hash")
        for _ in range(3):
            self.engine.press("ArrowRight")
        self.engine.wait(f"Number({SLIDER}.value) === {before + 3} && location.hash !== {link!r}")
        self.engine.ask(COUNT_FRAMES)
        self.engine.wait("window.frames_passed === 3")
        self.engine.wait(FIGURES_STAND)
        return self.engine.ask(SHOWN)

    def typed(self, stop: Stop, text: str) -> Any:
        """Return the link once a glass width has been typed key by key."""
        self.open(stop, "door")
        link = self.engine.ask("location.hash")
        spot = self.engine.ask(FIELD)
        self.engine.draw("mouse", spot, spot)
        self.engine.wait(f"document.activeElement === {WIDTH}")
        for key in text:
            self.engine.press(key)
        self.engine.wait(f"{WIDTH}.value === {text!r}")
        self.engine.press("Enter")
        self.engine.wait(f"location.hash !== {link!r}")
        return self.engine.ask("location.hash")

    def ranked(self, stop: Stop) -> Any:
        """Return the shelf's coverings with what each tells, in their order."""
        self.open(stop, "coverings")
        self.engine.wait("document.querySelector('.shelf-card .moving path') !== null")
        return self.engine.ask(CARDS)

    def drawn(self, kind: str, down: float) -> float:
        """Return at how many hundredths of its way the covering that is shown stands after a pull at its grip."""
        x, y = self.engine.ask(GRIP)
        before = self.engine.ask(f"{SLIDER}.value")
        self.engine.draw(kind, (x, y), (x, y + down))
        self.engine.wait(f"{SLIDER}.value !== {before!r} && document.querySelector('svg.dragging') === null")
        return float(self.engine.ask(f"{SLIDER}.value"))
