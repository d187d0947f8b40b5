"""The shapes of a visit: what was measured in a house, what was proposed, and what was decided.

All of it is plain JSON, as it stands in a ``*.visit.json`` file. Days are ISO 8601 (``2025-03-12``) or empty, ids are
unique where they stand, and whatever else a file holds is kept as it is. What each entry holds stands once more, for
whoever reads a file, in :mod:`configurator.kernel.visit.visit_parts`.
"""

from typing import NotRequired, TypedDict

from configurator.kernel.shapes import Door, Family, Fit, Handle, Household, Message, Position

# The version of the file that this code writes; it reads every one up to it.
VISIT_VERSION = 1


class Reading(TypedDict):
    """One measure as it was taken.

    ``field`` is the id of the tape's field, or of one that only a visit takes
    (:mod:`configurator.kernel.visit.visit_fields`). ``spot`` says where along it: ``top``, ``middle``, ``bottom`` for
    widths, ``left``, ``center``, ``right`` for heights, ``falling`` and ``rising`` for the diagonals (from the upper
    left, from the lower left), or nothing where one is taken. ``typed`` is what was written, ``mm`` what that is in
    millimeters; a number of things as it is. ``how`` is ``measured``, ``assumed`` or ``preset``; ``who`` and ``on`` who
    took it on which day. Of a spot that was measured again the older readings stay; the newest counts.
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

    ``id`` is ``active``, ``other``, ``left-sidelight`` or ``right-sidelight``, seen from the room. ``words`` are what
    it is in words of the door's table (``layout``, ``swing``, ``hinge_side``), and ``handle`` the id of its preset;
    without one the active leaf has the handle of the opening's preset, any other none. What is around the whole opening
    (ceiling, casing, reveal, astragal) and who lives behind it (``household.…``) is read from the active leaf; a side
    wall from each leaf's own hinge side. Whatever a leaf does not tell is as the active one has it.
    """

    id: str
    words: dict[str, str]
    handle: str
    note: str
    readings: list[Reading]


class Proposal(TypedDict):
    """A covering that is proposed for an opening: family, picks, what is set by hand, where it stands, what is said.

    ``leaves`` are the ids of those that it dresses; empty, it goes on the active leaf and on the other one of a pair,
    or over the whole opening. ``price`` is what was named for it, as digits with a point, or nothing; ``remarks`` are
    the client's.
    """

    id: str
    family: str
    choices: dict[str, str]
    wishes: dict[str, float]
    leaves: list[str]
    place: Position
    note: str
    price: str
    liked: bool
    remarks: str


class FrozenFigure(TypedDict):
    """A figure as it was: its plain name, its value and its unit."""

    name: str
    value: float
    unit: str


class AgreedPart(TypedDict):
    """What was agreed for one leaf: its door with every number of that day, and what came of it.

    ``figures`` and the states of ``verdicts`` are by id; both are empty where it could not be hung. ``control`` is the
    side on which it is worked, as that of an opening is; empty where it is worked on none.
    """

    leaf: str
    door: Door
    figures: dict[str, FrozenFigure]
    verdicts: dict[str, str]
    control: NotRequired[str]


class Agreed(TypedDict):
    """What was agreed, frozen: inputs, resolved numbers and figures of that day.

    ``covering`` is the family with its numbers folded from the picks, and of each choice the option that was picked: it
    can be hung as it was when nobody offers it any more. ``catalog`` is the version of the catalog that all came of.
    """

    proposal: str
    on: str
    price: str
    covering: Family
    choices: dict[str, str]
    wishes: dict[str, float]
    place: Position
    household: Household
    parts: list[AgreedPart]
    catalog: str


class Opening(TypedDict):
    """One opening: the room, what it is, its leaves, what is proposed for it and what was agreed, newest last.

    ``preset`` is the door of the catalog that stands for what nobody measured; ``socket`` says where there is one.
    ``control`` is the side on which the coverings are worked, ``left`` or ``right`` seen from the room, where somebody
    has said it; else :mod:`configurator.kernel.visit.control_side` has it by a rule.
    """

    id: str
    room: str
    note: str
    socket: str
    preset: str
    leaves: list[Leaf]
    proposals: list[Proposal]
    agreed: list[Agreed]
    control: NotRequired[str]


class Revision(TypedDict):
    """What was changed when, in words, newest last."""

    on: str
    who: str
    what: str


class Visit(TypedDict):
    """A house, its doors and what hangs on them. ``units`` is ``in`` or ``mm``."""

    version: int
    id: str
    client: str
    place: str
    on: str
    units: str
    note: str
    household: Household
    openings: list[Opening]
    revisions: list[Revision]


class VisitStock(TypedDict):
    """The part of the catalog that a visit refers to, as :class:`configurator.browser.link.shapes.Stock` has it."""

    household: Household
    doors: dict[str, Door]
    handles: dict[str, Handle]
    families: dict[str, Family]
    opening: list[str]
    formerly: dict[str, str]


class Used(TypedDict):
    """The number of a field that is worked with, and the readings of which it comes, the newest of each spot.

    ``how`` is theirs; ``rule`` says in words how it came about.
    """

    field: str
    mm: float
    how: str
    taken: list[Reading]
    rule: Message


class HungLeaf(TypedDict):
    """A covering on one leaf of an opening, or over the whole of it (then ``leaf`` is ``active``)."""

    leaf: str
    fit: Fit


class Stamp(TypedDict):
    """When something is agreed, and the version of the catalog of that day."""

    on: str
    catalog: str


class Moved(TypedDict):
    """One thing that is no longer as it was agreed: by its id and its plain name, what was and what is.

    ``kind`` is ``covering`` (what it is called, or that nobody offers it), ``number`` (of the covering, as the catalog
    has it), ``proposed`` (another covering, or another pick), ``price``, ``measured`` (at the leaf) or ``outcome`` (a
    figure, a verdict, or that it cannot be hung).
    """

    kind: str
    leaf: str
    id: str
    name: str
    then: Message
    now: Message


class VisitDifference(TypedDict):
    """What two copies of a visit have otherwise: where (``opening`` and ``leaf`` by their ids, or empty), and how."""

    opening: str
    leaf: str
    at: str
    mine: str
    theirs: str


class MergedVisit(TypedDict):
    """Two copies of a visit in one, and what they had otherwise."""

    visit: Visit
    differences: list[VisitDifference]


class VisitSlip(TypedDict):
    """What is wrong with an entry of a file: where it stands (``openings.0.leaves.1.id``), and what is wrong."""

    at: str
    says: Message


class ReadVisit(TypedDict):
    """A visit that was read, and what is wrong with it; with any slip, nothing of it is worked with."""

    visit: Visit
    slips: list[VisitSlip]


class Finding(TypedDict):
    """What is wrong with what was measured: on which leaf, at which field, by how much, and what to measure again.

    ``grave`` where the readings cannot all be right, rather than being unusual or of a leaf that is out of true.
    """

    leaf: str
    field: str
    says: Message
    again: Message
    grave: bool
