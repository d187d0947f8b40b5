"""The shapes of a visit: what was measured in a house, what was proposed, and what was decided.

All of it is plain JSON, as it stands in a ``*.visit.json`` file. Dates are ISO 8601 days, ids are unique where they
stand, and whatever else a file holds is kept as it is.
"""

from typing import TypedDict

from configurator.kernel.shapes import Household, Position

# The version of the file that this code writes; it reads every one up to it.
VISIT_VERSION = 1


class Reading(TypedDict):
    """One measure as it was taken.

    ``field`` is the id of the tape's field. ``spot`` says where along it: ``top``, ``middle``, ``bottom`` for widths,
    ``left``, ``center``, ``right`` for heights, ``falling`` and ``rising`` for the diagonals (from the upper left, from
    the lower left), or nothing where one is taken. ``typed`` is what was written, ``mm`` what that is in millimeters.
    ``how`` is ``measured``, ``assumed`` or ``preset``; ``who`` and ``on`` who took it on which day.
    """

    field: str
    spot: str
    typed: str
    mm: float
    how: str
    who: str
    on: str


class Leaf(TypedDict):
    """A leaf or a sidelight of an opening, as it was measured on its own.

    ``id`` is ``active``, ``other``, ``left-sidelight`` or ``right-sidelight``; ``words`` are what it is in words of the
    door's table (``layout``, ``swing``, ``hinge_side``), ``handle`` the id of its preset.
    """

    id: str
    words: dict[str, str]
    handle: str
    readings: list[Reading]


class Proposal(TypedDict):
    """A covering that is proposed for an opening: family, picks, what is set by hand, where it stands, what is said.

    ``price`` is what was named for it, as a decimal number in words of digits, or nothing; ``remarks`` are the
    client's.
    """

    id: str
    family: str
    choices: dict[str, str]
    wishes: dict[str, float]
    place: Position
    note: str
    price: str
    liked: bool
    remarks: str


class Agreed(TypedDict):
    """What was agreed, frozen: the leaf's numbers, picks and figures of that day.

    ``numbers`` are the door's by field, ``figures`` the answer's by id, ``verdicts`` their states by id; ``catalog`` is
    the version of the catalog that they came of.
    """

    proposal: str
    on: str
    price: str
    family: str
    choices: dict[str, str]
    wishes: dict[str, float]
    numbers: dict[str, float]
    figures: dict[str, float]
    verdicts: dict[str, str]
    catalog: str


class Opening(TypedDict):
    """One opening: the room, what it is, its leaves, what is proposed for it and what was agreed.

    ``preset`` is the door of the catalog that stands for what nobody measured.
    """

    id: str
    room: str
    note: str
    preset: str
    leaves: list[Leaf]
    proposals: list[Proposal]
    agreed: list[Agreed]


class Revision(TypedDict):
    """What was changed when, in words, newest last."""

    on: str
    who: str
    what: str


class Visit(TypedDict):
    """A house, its doors and what hangs on them."""

    version: int
    id: str
    client: str
    place: str
    on: str
    units: str
    household: Household
    openings: list[Opening]
    revisions: list[Revision]
