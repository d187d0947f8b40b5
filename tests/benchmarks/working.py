"""How much the processor works for a page: its own time, which what else the machine does hardly changes."""

from collections.abc import Callable

from playwright.sync_api import Page

# Waits until nothing else is to be done, so often that what is put off until then is done too.
QUIET = """(times) => new Promise((done) => {
    const on = (left) => (left > 0 ? requestIdleCallback(() => on(left - 1)) : done());
    on(times);
})"""
QUIET_TIMES = 60


def quiet(page: Page) -> None:
    """Wait until a page has nothing left to do."""
    page.evaluate(QUIET, QUIET_TIMES)


def work(page: Page, action: Callable[[], None]) -> float:
    """Return the processor time in ms that a page's tasks take for an action and all that follows from it."""
    quiet(page)
    session = page.context.new_cdp_session(page)
    session.send("Performance.enable", {"timeDomain": "threadTicks"})

    def spent() -> float:
        metrics = session.send("Performance.getMetrics")["metrics"]
        return float(next(metric["value"] for metric in metrics if metric["name"] == "TaskDuration"))

    before = spent()
    action()
    quiet(page)
    after = spent()
    session.detach()
    return (after - before) * 1000
