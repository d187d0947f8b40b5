"""The shapes of what a link carries and of what it is read against."""

from typing import TypedDict

from configurator.kernel.shapes import Door, Family, Handle, Household, Message, Position


class Configuration(TypedDict):
    """One covering on one door: the door with its corrections, the family's id, the picks, the position.

    ``wishes`` are the numbers set by hand (:data:`configurator.kernel.mount.wishes.WISHES`), in mm.

    ``measured`` names what was measured on the door (``glass_width``, ``handle.gap``, ``swing``), whether or not it is
    what the preset has: a link spells it out. What differs from the preset is spelled out in any case.
    """

    door: Door
    family: str
    choices: dict[str, str]
    place: Position
    measured: list[str]
    wishes: dict[str, float]


class State(TypedDict):
    """Everything that the address holds: ``units`` is ``in`` or ``mm``, ``active`` counts from 0.

    ``step`` is the page's that is shown, of those in :mod:`configurator.browser.link.state`; ``needs`` are what the
    client wants (:data:`configurator.kernel.needs.ids.NEED_IDS`). ``configurations`` are one to four, the one that is
    worked on among them.
    """

    units: str
    active: int
    step: str
    needs: list[str]
    household: Household
    configurations: list[Configuration]


class Stock(TypedDict):
    """The part of the catalog that a link refers to; ``units`` and ``household`` are the showroom's.

    ``opening`` is the door and the family that the page opens with, by their ids. ``formerly`` gives today's id by
    what had another: ``door/<id>``, ``handle/<id>``, ``family/<id>``, ``choice/<family>/<id>`` and
    ``option/<family>/<choice>/<id>``.
    """

    units: str
    household: Household
    doors: dict[str, Door]
    handles: dict[str, Handle]
    families: dict[str, Family]
    opening: list[str]
    formerly: dict[str, str]


class Difference(TypedDict):
    """A figure or a verdict, by its id and its plain name, that is no longer what it was when the link was made.

    ``configuration`` counts from 0.
    """

    configuration: int
    id: str
    name: str
    then: Message
    now: Message


class Opened(TypedDict):
    """What a link opens to: always a state to show, what is wrong with it, and what came of it then.

    ``noted`` holds for each configuration what the link says came of it, or nothing; ``changes`` where that differs
    from today's answer.
    """

    state: State
    problems: list[Message]
    noted: list[str]
    changes: list[Difference]
