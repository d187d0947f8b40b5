"""An opening of a visit as a link of configurations: its door as it was measured, with some of what is proposed."""

from configurator.browser.link.decode import CONFIGURATIONS_MOST
from configurator.browser.link.encode_unasked import encode_unasked
from configurator.browser.link.shapes import Configuration, Stock
from configurator.browser.link.state import FRESH_STEP, LINKED_STEP, fresh_configuration
from configurator.kernel.visit.hung_leaves import family_today, is_offered, picks_today
from configurator.kernel.visit.leaf_doors import leaf_called, leaf_door, opening_household
from configurator.kernel.visit.used import used_numbers
from configurator.kernel.visit.visit_shapes import Opening, Proposal, Visit


def opening_link(visit: Visit, opening: Opening, proposals: list[Proposal], stock: Stock) -> str:
    """Return the link, without the ``#``; where no proposal is offered, it opens with all coverings on the door."""
    door = leaf_door(opening, "active", stock)
    used = used_numbers(leaf_called(opening, "active"))
    measured = [name for name in used if not name.startswith("household.")]
    configurations: list[Configuration] = []
    for proposal in proposals:
        if is_offered(proposal, stock) and len(configurations) < CONFIGURATIONS_MOST:
            family = stock["families"][family_today(proposal["family"], stock)]
            configurations.append(
                {
                    "door": door,
                    "measured": measured,
                    "family": family["id"],
                    "choices": picks_today(family, proposal["choices"], stock),
                    "wishes": proposal["wishes"],
                    "place": proposal["place"],
                }
            )
    step = LINKED_STEP
    if len(configurations) == 0:
        step = FRESH_STEP
        fresh = fresh_configuration(stock, door["id"], stock["opening"][1])
        configurations.append({**fresh, "door": door, "measured": measured})
    return encode_unasked(
        {
            "units": visit["units"],
            "active": 0,
            "step": step,
            "needs": [],
            "household": opening_household(opening, visit["household"]),
            "configurations": configurations,
        },
        stock,
    )
