"""How a finding is put together, and what is read from a leaf's used numbers to find it."""

from configurator.kernel.shapes import Message
from configurator.kernel.visit.visit_shapes import Finding, Used


def finding(leaf: str, field: str, says: Message, again: Message) -> Finding:
    """Return what a consultant should know of a leaf that is as it was read, but out of true or unusual."""
    return {"leaf": leaf, "field": field, "says": says, "again": again, "grave": False}


def slip_found(leaf: str, field: str, says: Message, again: Message) -> Finding:
    """Return what readings cannot all be right about."""
    return {"leaf": leaf, "field": field, "says": says, "again": again, "grave": True}


def are_read(used: dict[str, Used], fields: list[str]) -> bool:
    """Return whether there are readings of all these fields."""
    return len([field for field in fields if field not in used]) == 0


def read_mm(used: dict[str, Used], field: str) -> float:
    """Return the used number of a field that has been read."""
    return used[field]["mm"]
