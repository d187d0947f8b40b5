"""A link that notes nothing of what comes of it opens as any other, and tells of no change."""

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import decode, fresh_state
from configurator.browser.link.encode_unasked import encode_unasked
from configurator.browser.link.state import fresh_configuration
from configurator.catalog import Catalog


def test_a_link_that_notes_nothing_gives_back_what_went_in(catalog: Catalog) -> None:
    stock = page_catalog(catalog)
    state = fresh_state(stock)
    state["step"] = "details"
    state["household"]["outside_distance"] = 2743.2
    door = {**catalog.doors["garden-pair"], "glass_width": 504.825}
    state["configurations"] = [
        {**fresh_configuration(stock, "garden-pair", family), "door": door, "measured": ["glass_width"]}  # type: ignore[typeddict-item]
        for family in ("cellular-shade", "roller-shade")
    ]
    opened = decode(encode_unasked(state, stock), stock)
    assert opened["state"] == state
    assert (opened["problems"], opened["changes"], opened["noted"]) == ([], [], ["", ""])
