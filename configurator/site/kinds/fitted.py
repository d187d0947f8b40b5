"""One family on one door: drawings open and closed, every figure with its working, cautions and sources."""

from configurator.kernel.message import is_said, silence
from configurator.kernel.shapes import Answer, Door, Family
from configurator.kernel.whereabouts import place_words
from configurator.site.compare import fitted_url
from configurator.site.house import House
from configurator.site.pictures import sheet_svgs
from configurator.site.sitepage import Given

KEY = ("visible_glass_open", "light_closed", "stack_height", "projection_most", "order_width", "order_height")


def plates(house: House, door: Door, family: Family, answer: Answer) -> list[Given]:
    """Return the sheets, each with its words: open and closed, or one where nothing moves."""
    places = [answer["open"], answer["closed"]]
    if answer["open"] == answer["closed"]:
        places = [answer["closed"]]
    return [
        {
            "svg": svg,
            "width": f"{width:.1f}",
            "words": f"{family['name']} on {house.door_name(door)}: {place_words(answer['legs'], place)}.",
        }
        for (svg, width), place in zip(sheet_svgs(house, door, family, places), places, strict=True)
    ]


def choices(house: House, door: Door, family: Family, answer: Answer) -> list[Given]:
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


def chosen(family: Family, answer: Answer) -> list[str]:
    """Return the choices that the figures are for, each under its name."""
    return [
        f"{choice['name']}: {option['name']}"
        for choice in family["choices"]
        for option in choice["options"]
        if option["id"] == answer["choices"][choice["id"]]
    ]


def neighbours(house: House, door: Door, family: Family) -> Given:
    """Return the pages before and after this one among the coverings on the door."""
    place = house.families.index(family)
    near = {"before": place - 1, "after": place + 1}
    return {
        name: {"name": house.families[at]["name"], "url": fitted_url(door, house.families[at])}
        if 0 <= at < len(house.families)
        else None
        for name, at in near.items()
    }


def fitted(house: House, door: Door, family: Family) -> Given:
    """Return what the page of a family on a door shows."""
    answer = house.answer(door, family)
    sound = not is_said(answer["refusal"])
    notes = house.catalog.family_notes[family["id"]]
    return {
        "family_name": family["name"],
        "door_name": house.door_name(door),
        "refusal": house.say(answer["refusal"]),
        "passing": answer["verdicts"].get("pass_through"),
        "key": [answer["figures"][name] for name in KEY] if sound else [],
        "plates": plates(house, door, family, answer) if sound else [],
        "figures": list(answer["figures"].values()),
        "verdicts": [verdict for name, verdict in answer["verdicts"].items() if name != "pass_through"],
        "cautions": answer["cautions"],
        "chosen": chosen(family, answer),
        "choices": choices(house, door, family, answer),
        "family_source": str(notes.source),
        "door_source": str(house.catalog.door_notes[door["id"]].source),
        "try_url": house.try_url(door, family),
        **neighbours(house, door, family),
    }
