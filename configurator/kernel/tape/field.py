"""One number that a tape takes, and the groups in which it is taken."""

from typing import NotRequired, TypedDict


class Field(TypedDict):
    """One number of a door, a handle (``handle.…``) or a household (``household.…``), known by ``id``.

    ``unit`` is ``length`` (mm), ``count``, ``share`` or ``u-value`` (W/m2K). It can lie between the two ``limits`` at
    all, and mostly lies between the two that are ``usual``; where those are missing, no form asks for it, and it has
    neither ``name`` nor ``how``: how to take it, in sentences of its own. ``name`` is plain, ``trade`` the word of the
    trade where that has another. What ``decides`` is asked first. A door has it always, or ``when`` it is one
    of :func:`configurator.kernel.tape.table.door_parts`; then it is 0 without, and ``when_new`` with that part.

    ``drawn`` says where its dimension stands, in words of :mod:`configurator.kernel.views.focus`: the view; to which
    side it runs from where; the level of its line; and that of the thing itself.

    Only content reads the rest, and the page goes without: ``path`` in its YAML file, steps between dots; ``assumed``,
    one number where nobody measures it; and ``what`` a slip calls it.
    """

    id: str
    unit: str
    limits: list[float]
    usual: NotRequired[list[float]]
    name: NotRequired[str]
    trade: NotRequired[str]
    decides: NotRequired[bool]
    how: NotRequired[str]
    when: NotRequired[str]
    when_new: NotRequired[float]
    drawn: NotRequired[list[str]]
    path: NotRequired[str]
    assumed: NotRequired[list[float]]
    what: NotRequired[str]


class Group(TypedDict):
    """The fields that are taken in one place."""

    id: str
    name: str
    fields: list[Field]


class Word(TypedDict):
    """What a door is, one of a few words: its name, and each word with what it is called."""

    name: str
    options: dict[str, str]
