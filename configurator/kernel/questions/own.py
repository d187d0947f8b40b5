"""What only its own kind of covering can tell, as its mechanism gives it."""

from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.shapes import Household, Reply, Travel
from configurator.kernel.telling import reply


def own_question(travel: Travel, household: Household) -> Reply:
    """Answer with the figures that the covering's mechanism states of itself."""
    fit = travel["fit"]
    return reply(MECHANISMS[fit["family"]["mechanism"]]["tells"](fit), [], [])
