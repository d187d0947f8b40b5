"""One family on one door: drawings open and closed, every figure with its working, cautions and sources."""

from typing import TypedDict

from configurator.drawing.page_svg import sized
from configurator.kernel.guidance import binding_cautions, general_cautions
from configurator.kernel.message import is_said, message, say_rule, silence
from configurator.kernel.say import say_value
from configurator.kernel.shapes import Answer, Caution, Door, Family, Figure, Verdict
from configurator.kernel.tongue import wording
from configurator.kernel.whereabouts import place_words
from configurator.site.drawings.pictures import sheet_svgs
from configurator.site.house import House
from configurator.site.kinds.compare import fitted_url
from configurator.site.kinds.facts import FACT_NAMES
from configurator.site.kinds.figure_rules import tells_a_door
from configurator.site.kinds.full_price import FullPrice, full_price, price_start

# The figures that most people ask for first, in plain words; the size is the fifth.
KEY = {
    "visible_glass_open": wording("Glass left clear, open"),
    "light_closed": wording("Light let in, closed"),
    "stack_height": wording("Height it takes up, open"),
    "projection_most": wording("Stands into the room, at most"),
}


class KeyFigure(TypedDict):
    """One of the few figures that settle it, in plain words; ``more`` goes with it, or is nothing."""

    name: str
    text: str
    more: str


class FigureLine(TypedDict):
    """A figure, and its rule in words where that tells of this door; else the covering's own page tells it."""

    figure: Figure
    rule: str


class SheetPlate(TypedDict):
    """A drawing sheet, as wide as it is on paper, and what it shows, in words."""

    svg: str
    words: str


class FittedOption(TypedDict):
    """An option, whether it is the one drawn, and why the door rules it out, or nothing."""

    name: str
    chosen: bool
    why: str


class FittedChoice(TypedDict):
    """A choice with its options on this door."""

    name: str
    options: list[FittedOption]


class FixTold(TypedDict):
    """A change that mends something, and what it costs, in words; no costs, no words."""

    text: str
    costs: str


class Neighbour(TypedDict):
    """The page before or after this one."""

    name: str
    url: str


class Neighbours(TypedDict):
    """The pages on both sides; none at an end."""

    before: Neighbour | None
    after: Neighbour | None


class FittedPage(Neighbours):
    """What the page of a family, known by its id, on a door shows; a refusal and no figures where it does not fit."""

    family: str
    family_name: str
    door_name: str
    refusal: str
    passing: Verdict | None
    key: list[KeyFigure]
    price: FullPrice | None
    plates: list[SheetPlate]
    figures: list[FigureLine]
    open_questions: list[Verdict]
    settled: list[Verdict]
    fixes: dict[str, list[FixTold]]
    cautions: list[Caution]
    guidance: list[Caution]
    chosen: list[str]
    choices: list[FittedChoice]
    family_source: str
    door_source: str
    try_url: str


def key_figures(house: House, answer: Answer) -> list[KeyFigure]:
    """Return the five figures that settle it: what it leaves, lets in, needs and reaches, and its size."""
    figures = answer["figures"]

    def said(ident: str) -> str:
        return say_value(figures[ident]["value"], figures[ident]["unit"], house.words, house.units)

    high = house.phrase(message("wide, {height} high", {"height": [said("order_height"), "text"]}))
    told: list[KeyFigure] = [
        {"name": house.named(name), "text": said(ident), "more": ""} for ident, name in KEY.items()
    ]
    return [*told, {"name": house.named(wording("Made to this size")), "text": said("order_width"), "more": high}]


def price_figure(house: House, door: Door, family: Family) -> list[KeyFigure]:
    """Return from which price on it is had, beside the figures; nothing where that is not shown or known."""
    start = price_start(house, door, family)
    return [{"name": house.named(FACT_NAMES["price"]), "text": start, "more": ""}] if start else []


def figure_lines(house: House, answer: Answer) -> list[FigureLine]:
    """Return all figures, each with its rule where that is this door's own."""
    return [
        {"figure": figure, "rule": say_rule(figure, house.words, house.units) if tells_a_door(figure) else ""}
        for figure in answer["figures"].values()
    ]


def plates(house: House, door: Door, family: Family, answer: Answer) -> list[SheetPlate]:
    """Return the sheets, each with its words: open and closed, or one where nothing moves."""
    places = [answer["open"], answer["closed"]]
    if answer["open"] == answer["closed"]:
        places = [answer["closed"]]
    return [
        {
            "svg": sized(svg, f"{width:.1f}mm"),
            "words": f"{house.on_door(door, family)}: {place_words(answer['legs'], place, house.words)}.",
        }
        for (svg, width), place in zip(sheet_svgs(house, door, family, places), places, strict=True)
    ]


def choices(house: House, door: Door, family: Family, answer: Answer) -> list[FittedChoice]:
    """Return the choices with what is drawn here, and what the door rules out and why."""
    reasons = house.ruled_out(door, family)
    return [
        {
            "name": choice["name"],
            "options": [
                {
                    "name": option["name"],
                    "chosen": answer["choices"][choice["id"]] == option["id"],
                    "why": house.say(reasons.get(choice["id"], {}).get(option["id"], silence())),
                }
                for option in choice["options"]
                if not option["retired"]
            ],
        }
        for choice in family["choices"]
    ]


def fixes_told(house: House, door: Door, family: Family) -> dict[str, list[FixTold]]:
    """Return what mends each verdict that does not clear, in words: by the verdict's id, the best fix first."""
    told: dict[str, list[FixTold]] = {}
    for fix in house.fixes(door, family):
        words: FixTold = {"text": house.say(fix["says"]), "costs": " ".join(house.say(cost) for cost in fix["costs"])}
        told.setdefault(fix["verdict"], []).append(words)
    return told


def chosen(family: Family, answer: Answer) -> list[str]:
    """Return the choices that the figures are for, each under its name."""
    return [
        f"{choice['name']}: {option['name']}"
        for choice in family["choices"]
        for option in choice["options"]
        if option["id"] == answer["choices"][choice["id"]]
    ]


def neighbor(house: House, door: Door, at: int) -> Neighbour | None:
    """Return the page of the covering at a place of the list, where there is one."""
    if not 0 <= at < len(house.families):
        return None
    return {"name": house.families[at]["name"], "url": fitted_url(door, house.families[at])}


def neighbors(house: House, door: Door, family: Family) -> Neighbours:
    """Return the pages before and after this one among the coverings on the door."""
    place = house.families.index(family)
    return {"before": neighbor(house, door, place - 1), "after": neighbor(house, door, place + 1)}


def fitted(house: House, door: Door, family: Family) -> FittedPage:
    """Return what the page of a family on a door shows."""
    answer = house.answer(door, family)
    sound = not is_said(answer["refusal"])
    notes = house.catalog.family_notes[family["id"]]
    others = [verdict for name, verdict in answer["verdicts"].items() if name != "pass_through"]
    return {
        "family": family["id"],
        "family_name": family["name"],
        "door_name": door["name"],
        "refusal": house.say(answer["refusal"]),
        "passing": answer["verdicts"].get("pass_through"),
        "key": [*key_figures(house, answer), *price_figure(house, door, family)] if sound else [],
        "price": full_price(house, door, family) if sound else None,
        "plates": plates(house, door, family, answer) if sound else [],
        "figures": figure_lines(house, answer),
        "open_questions": [verdict for verdict in others if verdict["state"] != "clears"],
        "settled": [verdict for verdict in others if verdict["state"] == "clears"],
        "fixes": fixes_told(house, door, family),
        "cautions": binding_cautions(answer["cautions"]),
        "guidance": general_cautions(answer["cautions"]),
        "chosen": chosen(family, answer),
        "choices": choices(house, door, family, answer),
        "family_source": house.source(notes.source),
        "door_source": house.source(house.catalog.door_notes[door["id"]].source),
        "try_url": house.try_url(door, family),
        **neighbors(house, door, family),
    }
