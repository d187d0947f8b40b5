"""The shapes of what a link carries and of what it is read against."""

from typing import TypedDict

from configurator.kernel.shapes import Door, Family, Handle, Household, Position


class Configuration(TypedDict):
    """One covering on one door: the door with its corrections, the family's id, the picks, the position."""

    door: Door
    family: str
    choices: dict[str, str]
    place: Position


class State(TypedDict):
    """Everything that the address holds: ``units`` is ``in`` or ``mm``, ``active`` counts from 0.

    ``configurations`` are one to four, the one that is worked on among them.
    """

    units: str
    active: int
    household: Household
    configurations: list[Configuration]


class Stock(TypedDict):
    """The part of the catalog that a link refers to; ``units`` and ``household`` are the showroom's.

    ``opening`` is the door and the family that the page opens with, by their ids.
    """

    units: str
    household: Household
    doors: dict[str, Door]
    handles: dict[str, Handle]
    families: dict[str, Family]
    opening: list[str]


class Opened(TypedDict):
    """What a link opens to: always a state to show, and what is wrong in plain words, or nothing."""

    state: State
    problem: str
