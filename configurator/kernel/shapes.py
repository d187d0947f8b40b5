"""The shapes of the data that the kernel takes and gives.

Space: x runs to the right from the active leaf's left edge as seen from the room, y up
from the finished floor, z out of the leaf's room-side face into the room. Lengths are
millimeters, angles degrees, shares 0 to 1. All of it is plain JSON.
"""

from collections.abc import Callable
from typing import TypedDict

from configurator.kernel.tape.around_fields import SurroundMeasures
from configurator.kernel.tape.glass_fields import GlassMeasures
from configurator.kernel.tape.handle_fields import HandlePlace
from configurator.kernel.tape.leaf_fields import LeafMeasures


class Message(TypedDict):
    """One whole English sentence with named ``{terms}``, to be said in any language and units; silent when empty.

    A term is ``[value, unit]``: a number with a unit as in :class:`Quantity`, a share told in whole ``percent``, a
    ``kind`` of piece, ``text``, English words that are said in the language too, or a ``name`` that is said as it is:
    content's own, which is in the language already, or what somebody wrote.
    """

    text: str
    terms: dict[str, list[float | str]]


class Optics(TypedDict):
    """What comes through a piece: shares, 0 to 1, of the view, of the light and of the sun's heat."""

    view: float
    light: float
    solar: float


class Box(TypedDict):
    """A plain rectangle in x and y; all zero where there is none."""

    x0: float
    x1: float
    y0: float
    y1: float


class Solid(Box):
    """A box in space."""

    z0: float
    z1: float


class Piece(Solid):
    """A box in the leaf's space, with its kind and its optics.

    ``part`` is ``door``, ``handle``, ``covering`` or ``fixing``. ``outline`` is the true cut where it
    is not the box itself: points ``[a, b]`` in (z, y) for ``axis`` ``x`` (a vertical
    section shows it), in (x, z) for ``axis`` ``y`` (a plan shows it). ``count`` tells how
    many equal units, close against each other along y (axis x) or x (axis y), fill the
    box; the outline is then that of the lowest or leftmost unit and repeats at ``pitch``.
    """

    part: str
    kind: str
    optics: Optics
    axis: str
    outline: list[list[float]]
    count: int
    pitch: float


class Handle(TypedDict):
    """A preset of door hardware, measured from its axis (the spindle or knob center).

    ``kind`` is ``lever``, ``knob`` or ``pull``. A lever's ``grip_length`` runs from the axis
    to its tip towards the hinges; a knob's is its radius; a pull's is half its width.
    ``grip_height`` is the grip's vertical size. ``gap`` is the free depth between the leaf's
    face and the back of the grip; ``projection`` reaches to the front of the grip.
    The plate or rose is centered ``plate_below`` under the axis. ``neck`` is the diameter of
    the spindle neck (for a pull: the height of each post). ``turn_*`` describe a thumb-turn
    or deadbolt above the axis; ``turn_above`` 0 means none.
    """

    id: str
    name: str
    kind: str
    grip_length: float
    grip_height: float
    gap: float
    projection: float
    plate_width: float
    plate_height: float
    plate_thickness: float
    plate_below: float
    neck: float
    turn_above: float
    turn_width: float
    turn_height: float
    turn_projection: float


class Door(GlassMeasures, LeafMeasures, HandlePlace, SurroundMeasures):
    """A glazed leaf, a pair, or a leaf with sidelights, with all that a site visit measures.

    ``layout`` is ``single``, ``pair``, ``fixed-pair`` (one leaf fixed) or ``sidelights``.
    ``swing`` is ``in`` or ``out``; ``hinge_side`` is that of the active leaf seen from the
    room. The leaf's own size is the sum of glass, beads, stiles and rails. Stiles and rails
    are measured from the leaf's edge to the outside of the glazing bead. ``bead_projection``
    is 0 for flush beads. ``glass_recess`` is from the leaf's face back to the glass.
    ``muntin_columns`` and ``muntin_rows`` count lites. ``hinge_pin_out`` is the pin's distance
    in front of the face on the side to which the leaf opens. ``wall_gap`` is from the leaf's
    hinge edge to the side wall. ``reveal`` is how far the leaf's room face lies behind the
    wall's. ``stop_lap`` is how far a stop laps the room face (out-swing; 0 in-swing).
    ``glass_light``, ``glass_solar`` and ``glass_u`` are the glazing's own light and solar
    transmittance (0 to 1) and U-value (W/m2K). Its numbers stand with the table that they are taken by.
    """

    id: str
    name: str
    layout: str
    swing: str
    hinge_side: str
    hinge_heights: list[float]
    passive_handle: bool
    handle: Handle


class Household(TypedDict):
    """Who lives behind the door and who looks in: lengths in mm.

    ``outside_level`` is the observer's ground against the finished floor (negative: lower).
    """

    shoulder_height: float
    person_height: float
    person_distance: float
    outside_eye: float
    outside_distance: float
    outside_level: float


class Cassette(TypedDict):
    """One cassette size: the largest roll it takes (diameter) and its own box."""

    name: str
    roll: float
    height: float
    depth: float


class Look(TypedDict):
    """What a covering is made of, as the eye has it.

    Colors are ``#rrggbb``: its own, that of a ``line`` drawn on it, and that of the ``rim`` of a thin part, its own as
    dark as shows on white. Without a ``color`` it is drawn in the theme's. ``weave`` is a name of ``WEAVES``,
    ``luster`` of ``LUSTERS``.
    """

    color: str
    line: str
    rim: str
    weave: str
    luster: str


class Option(TypedDict):
    """One thing a client may pick; ``numbers`` sets any of the family's numbers anew, ``look`` any part of its look."""

    id: str
    name: str
    retired: bool
    numbers: dict[str, float]
    look: dict[str, str]


class Choice(TypedDict):
    """What the client may pick within a family; the first option is the preset."""

    id: str
    name: str
    options: list[Option]


class Family(TypedDict):
    """One kind of covering that a showroom offers.

    ``price_level`` is 1 (lowest) to 4, ``cleaning`` and ``animals`` as in ``fact_words.py``; unknown are 0 and "".
    """

    id: str
    name: str
    mechanism: str
    retired: bool
    price_level: float
    cleaning: str
    animals: str
    numbers: dict[str, float]
    look: Look
    cassettes: list[Cassette]
    choices: list[Choice]


class Position(TypedDict):
    """Where the moving parts stand. ``lower`` and ``upper`` run from 0 (up, or open) to 1
    (down, or closed); ``tilt`` is in degrees, 0 with the louvers or vanes edge-on to the view.
    With ``coarse`` a mechanism gives the boxes that bound its runs instead of every louver,
    slat or band: enough, and much quicker, for questions over the whole travel.
    """

    lower: float
    upper: float
    tilt: float
    coarse: bool


class LegWords(TypedDict):
    """A leg in plain words: the moving part's name, its two ends, and a sentence for what lies between.

    ``between`` may name ``{share}`` of the way or the ``{tilt}``; ``level`` is said where a tilt stands at 0.
    """

    part: str
    start: str
    end: str
    between: str
    level: str


class Leg(TypedDict):
    """One stretch of the travel: what moves (``lower``, ``upper`` or ``tilt``) between two positions.

    ``way`` is ``down``, ``aside`` or ``turn``. ``held`` names the kinds of piece that a hand takes hold of;
    ``halves`` is 2 where as much draws to either side. ``alone`` where it can be travelled only with the other
    parts as they stand at its start. ``peaks`` are the shares of the leg, beside its ends, at which a part
    that turns reaches furthest.
    """

    moves: str
    way: str
    start: Position
    end: Position
    words: LegWords
    held: list[str]
    halves: int
    alone: bool
    peaks: list[float]


class Scene(TypedDict):
    """Everything in view: the door's pieces, the covering's, its legs, its look, and the span of each leaf along x."""

    door: list[Piece]
    covering: list[Piece]
    leaf_x: list[list[float]]
    legs: list[Leg]
    look: Look


class Limit(TypedDict):
    """What held one side of the covering (``hinge``, ``latch``, ``top``, ``bottom``) and where."""

    side: str
    by: str
    overlap: float


class Size(TypedDict):
    """How a covering sits: its ordered outline, its mounting plane and what limited it.

    ``refusal`` is silent, or says in plain words why the family cannot go on the door.
    ``z0`` is the plane the covering is fixed to: the leaf's face plus ``spacer``, or the wall.
    """

    refusal: Message
    mount: str
    x0: float
    x1: float
    y0: float
    y1: float
    z0: float
    spacer: float
    exact_spacer: float
    exact_width: float
    exact_height: float
    limits: list[Limit]
    cutout: Box
    cassette: Cassette


class Foothold(TypedDict):
    """A place at which a mechanism wants to be fixed, and how far it may be slid to find wood.

    ``kind`` is that of the fixing, ``held`` of what it holds. Its screws, ``screws`` of them, lie evenly over the
    ``spread`` ``[along x, along y]`` about a middle that is wanted at ``x``, ``y`` and may stand anywhere within
    ``across`` and ``up``. ``width`` and ``height`` are the fixing's own.
    """

    kind: str
    held: str
    x: float
    y: float
    across: list[float]
    up: list[float]
    screws: int
    spread: list[float]
    width: float
    height: float


class Fixing(TypedDict):
    """A bracket, holder, catch or screw in its place, on a leaf hung on the left.

    ``piece`` (``part`` ``fixing``) is its box, ``plane`` what it is fixed to: ``leaf``, ``casing``, ``wall`` or
    ``ceiling``. ``spots`` are its screws' ``[x, y]`` (``[x, z]`` in a ceiling). ``spacer`` is what lies behind it,
    ``thread`` what of each screw is in the wood, ``screw`` the length of each: plate, spacer and thread.
    """

    piece: Piece
    plane: str
    spots: list[list[float]]
    spacer: float
    thread: float
    screw: float


class Fit(TypedDict):
    """A covering, chosen and hung on a door whose active leaf hangs on the left; made once, by ``hung``.

    ``numbers`` are the family's with the picks folded in. ``handle`` holds the hardware of the leaf that it
    hangs on: none on a leaf without. ``standing`` is its size on the leaf before its handle was looked at.
    ``fixings`` are where it is screwed down, its hold-downs last; none before its size is found.
    """

    door: Door
    family: Family
    choices: dict[str, str]
    numbers: dict[str, float]
    handle: list[Piece]
    size: Size
    standing: Size
    legs: list[Leg]
    fixings: list[Fixing]


class Sample(TypedDict):
    """One place of the travel: which leg, how far along it, and the pieces there (coarse)."""

    leg: int
    at: float
    pieces: list[Piece]


class Shares(TypedDict):
    """Shares of the glass area, 0 to 1: uncovered glass, view and light; ``area`` in mm2."""

    visible: float
    view: float
    light: float
    area: float


class Meeting(TypedDict):
    """The tightest place: the air there (negative: in the way), where on which leg, between what."""

    air: float
    leg: int
    at: float
    piece: Piece
    part: Piece


class Working(TypedDict):
    """How a figure came about: the rule in words, a template with ``{terms}`` and the terms, as in :class:`Message`."""

    rule: str
    template: str
    terms: dict[str, list[float | str]]


class Measured(TypedDict):
    """A length in mm with its working."""

    value: float
    how: Working


class Cloth(TypedDict):
    """Cloth that the workroom cuts for one leaf: ``panels`` alike, each ``width`` by ``length`` as it lies flat.

    ``key`` is ``cloth`` or ``lining``. Hems, heading and returns are in both lengths. ``fullness`` is how much flat
    width goes into each finished one, ``hem`` what is turned in at each side. ``leads`` is 1 where the whole widths
    start at the leading edge, 0 where they stand in the middle. ``bolt`` is the cloth's width, ``repeat`` its
    pattern's along it (0: plain); ``railroads`` is 1 where it may be run sideways. ``mass`` is that of flat cloth,
    kg/m2.
    """

    key: str
    panels: float
    width: Measured
    length: Measured
    fullness: float
    hem: float
    leads: float
    bolt: float
    repeat: float
    railroads: float
    mass: float


class Bar(TypedDict):
    """What is cut to a ``length`` for one leaf, ``count`` of it alike: a rod, tube, track or rail.

    ``mass`` is that of its length, kg/m.
    """

    key: str
    count: float
    length: Measured
    mass: float


class Cuts(TypedDict):
    """All that is cut for a covering on one leaf."""

    cloths: list[Cloth]
    bars: list[Bar]


class Outer(Solid):
    """The box that bounds all pieces of one kind over the travel, in the leaf's space."""

    kind: str


class Touch(TypedDict):
    """The angle at which a turning leaf first meets something: no kind for never.

    ``kind`` is what turns, ``met`` what it meets. ``way`` names the face that a corner comes upon, as in
    ``TURN_TEMPLATES``. From the pin, ``along`` and ``out`` are what turns, ``across`` and ``ahead`` what it meets.
    """

    angle: float
    kind: str
    met: str
    way: str
    along: float
    out: float
    across: float
    ahead: float


class Turn(TypedDict):
    """What stops an in-swing leaf by itself, and what its covering meets: on the leaf, or open on the wall before it.

    Neither is looked for further than half a turn, nor at all for a leaf that swings out.
    """

    own: Touch
    covering: Touch


class Travel(TypedDict):
    """A fit over its whole travel: what all questions share, worked out once.

    ``samples`` holds every step and every place where something comes level with something, open first.
    ``handle`` is where it comes nearest to the handle, ``outline`` its reach, kind by kind of piece, and ``turn`` how
    far the leaf turns.
    ``raised`` and ``down`` are the covering open and closed in full detail, ``half`` half-way (coarse). ``leaves``
    holds the fit itself and, where a second leaf is dressed too, that leaf's own; ``cuts`` what is cut for each of them
    that can be hung. What is only ``tried`` is told without where on its way a verdict holds, which takes a search.
    """

    fit: Fit
    samples: list[Sample]
    handle: Meeting
    outline: list[Outer]
    turn: Turn
    raised: list[Piece]
    half: list[Piece]
    down: list[Piece]
    leaves: list[Fit]
    cuts: list[Cuts]
    tried: bool


class Quantity(TypedDict):
    """A value with its unit: ``mm``, ``mm2``, ``share``, ``deg``, ``count``, ``kg``, or ``run``.

    ``run`` is a length of cloth in mm, told in yards or meters; a term of a working may be ``kg/mm2`` or ``kg/mm``.
    """

    value: float
    unit: str


class Figure(TypedDict):
    """A number with its unit as in :class:`Quantity`, its plain name and its working."""

    id: str
    name: str
    value: float
    unit: str
    working: Working


class Verdict(TypedDict):
    """``clears``, ``guide by hand`` or ``blocked``, between which positions, and why.

    Where a hand guides nothing (reach, children, sight, the pair, what is fixed) ``caution`` stands between the two.
    ``says`` is the state in words that fit what was asked, such as ``within reach`` or ``unsafe``.
    ``start`` and ``end`` are positions on the leg named by ``moves``, which is empty where the verdict
    holds wherever the covering stands.
    """

    id: str
    name: str
    state: str
    says: Message
    moves: str
    start: float
    end: float
    why: Message


class Caution(TypedDict):
    """A safety or code note, with the published rule it names (or ``common practice``).

    ``general`` is true of guidance that goes for nearly every covering on nearly every door; pages fold it away. What
    may be a danger with this very covering on this very door never is: cords, the way out, weight, heat.
    """

    id: str
    text: Message
    source: str
    general: bool


class Reply(TypedDict):
    """The figures, verdicts and cautions of one question, in the order in which they are read."""

    figures: list[Figure]
    verdicts: list[Verdict]
    cautions: list[Caution]


class Answer(TypedDict):
    """Everything the kernel tells of one family with its choices on one door."""

    door: str
    family: str
    choices: dict[str, str]
    refusal: Message
    size: Size
    figures: dict[str, Figure]
    verdicts: dict[str, Verdict]
    cautions: list[Caution]
    legs: list[Leg]
    open: Position
    closed: Position


class Asking(TypedDict):
    """An answer on its way, question by question.

    ``travel`` is empty until it has been worked out, and stays so where the covering cannot go on its door; ``bare`` is
    what stops the leaf without it, where that is known before, and ``tried`` that of its travel. ``asked`` is how many
    questions have been asked, ``told_by`` which of them, counted from 0, told each verdict.
    """

    fit: Fit
    household: Household
    bare: list[Touch]
    tried: bool
    travel: list[Travel]
    asked: int
    told_by: dict[str, int]
    answer: Answer


class Change(TypedDict):
    """What may be changed to mend something: picks (option by choice), and numbers set by hand, in mm.

    The numbers are ``width_wanted``, ``spacer_wanted`` and ``handle_gap``, the free depth behind another handle's grip.
    """

    picks: dict[str, str]
    numbers: dict[str, float]


class Trial(TypedDict):
    """A change that was made, and what was told of it: all but where on its way a verdict holds, or no more than shows
    that it mends nothing.
    """

    change: Change
    answer: Answer


class Fix(TypedDict):
    """A change that was made and asked again, and that mends a verdict without making another one worse.

    ``verdict`` is what it mends (``refusal``: that the covering could not go on the door at all) and ``state`` what
    that verdict then is; for a refusal the worst of all verdicts. ``says`` tells the change; ``glass`` (share of the
    glass that stays visible when open), ``stack`` and ``projection`` (mm) are what it gives, or costs where negative
    for the glass and positive for the others; ``costs`` tells each of them that changes.
    """

    verdict: str
    change: Change
    says: Message
    state: str
    glass: float
    stack: float
    projection: float
    costs: list[Message]


class Plight(TypedDict):
    """A fit with what was told of it for a household, and the ids of what does not clear.

    ``travel`` holds the fit over its travel; it is empty where the covering cannot go on its door.
    """

    fit: Fit
    household: Household
    travel: list[Travel]
    answer: Answer
    troubles: list[str]


class Search(TypedDict):
    """A search for fixes, as far as it has come.

    ``asking`` is what is being asked: the ``first`` is the fit itself, of which the ``plight`` is told (none before),
    then one change after the other. Of a change the ``questions`` are asked in their order here: the first ``telling``
    are those that told of a trouble. So many of the ``changes`` have ``begun``; those asked are the ``trials``.
    ``found`` is how many kinds of change have been looked for (picks, numbers set by hand, pairs), ``done`` whether all
    has been tried.
    """

    first: Asking
    asking: Asking
    plight: list[Plight]
    questions: list[Callable[[Travel, Household], Reply]]
    telling: int
    changes: list[Change]
    begun: int
    trials: list[Trial]
    found: int
    done: bool


class Mark(TypedDict):
    """A shape on the paper, in true millimeters, x to the right and y **down**.

    ``shape`` is ``line``, ``polyline``, ``polygon``, ``circle``, ``bars`` or ``text``; ``points`` is flat
    (``[x, y, x, y, …]``; a circle's ``[cx, cy, r]``; a text's anchor and letter size ``[x, y, size]``; equal bars along
    an axis ``[x0, y0, x1, y1, across, thick, pitch]``). ``role`` holds
    the classes a style sheet goes by. ``fade`` is 0 to 1: how much of the view a fill hides.
    ``text``, ``anchor`` (``start``, ``middle``, ``end``) and ``turn`` (degrees) are for texts.
    """

    shape: str
    role: str
    points: list[float]
    fade: float
    text: str
    anchor: str
    turn: float


class Drawing(TypedDict):
    """A finished view: its words, its window in true millimeters, its marks, and the look of the covering on it."""

    id: str
    title: str
    desc: str
    x: float
    y: float
    width: float
    height: float
    marks: list[Mark]
    look: Look
