"""A fix in words."""

from configurator.kernel.message import message
from configurator.kernel.remedy.change import HANDLE_GAP
from configurator.kernel.resolve import find_option
from configurator.kernel.shapes import Change, Family, Message
from configurator.kernel.tongue import wording

BETWEEN_STATE = "caution"
FIX_SENTENCES: dict[str, dict[str, str]] = {
    "pick": {
        "clears": wording("Change {choice} to {option}: it clears."),
        "guide by hand": wording("Change {choice} to {option}: it is then guided by hand."),
        "caution": wording("Change {choice} to {option}: a caution remains."),
    },
    "pair": {
        "clears": wording("Change {choice} to {option} and {second_choice} to {second_option}: it clears."),
        "guide by hand": (
            wording("Change {choice} to {option} and {second_choice} to {second_option}: it is then guided by hand.")
        ),
        "caution": wording("Change {choice} to {option} and {second_choice} to {second_option}: a caution remains."),
    },
    "width_wanted": {
        "clears": wording("Order it {length} wide: it clears."),
        "guide by hand": wording("Order it {length} wide: it is then guided by hand."),
        "caution": wording("Order it {length} wide: a caution remains."),
    },
    "spacer_wanted": {
        "clears": wording("Put spacers of {length} behind its fixings: it clears."),
        "guide by hand": wording("Put spacers of {length} behind its fixings: it is then guided by hand."),
        "caution": wording("Put spacers of {length} behind its fixings: a caution remains."),
    },
    HANDLE_GAP: {
        "clears": wording("Fit a handle that leaves {length} free behind its grip: it clears."),
        "guide by hand": wording("Fit a handle that leaves {length} free behind its grip: it is then guided by hand."),
        "caution": wording("Fit a handle that leaves {length} free behind its grip: a caution remains."),
    },
}
COST_SENTENCES = [
    wording("Visible glass when open: {after} instead of {before}."),
    wording("Height of the stack: {after} instead of {before}."),
    wording("Greatest projection: {after} instead of {before}."),
]
COST_UNITS = ["share", "mm", "mm"]
# Less than this is no change to a reader: a tenth of a per cent of the glass, or a tenth of a millimeter.
COST_LEAST = [0.0005, 0.05, 0.05]


def pick_terms(family: Family, picks: dict[str, str]) -> dict[str, list[float | str]]:
    """Return the names of one choice and its option, or of two."""
    terms: dict[str, list[float | str]] = {}
    for choice in family["choices"]:
        if choice["id"] in picks:
            before = "second_" if "choice" in terms else ""
            terms[before + "choice"] = [choice["name"], "name"]
            terms[before + "option"] = [find_option(choice, picks[choice["id"]])["name"], "name"]
    return terms


def fix_message(family: Family, change: Change, state: str) -> Message:
    """Return the sentence that tells a change and what it reaches."""
    for name, value in change["numbers"].items():
        sentences = FIX_SENTENCES[name]
        return message(sentences.get(state, sentences[BETWEEN_STATE]), {"length": [value, "mm"]})
    terms = pick_terms(family, change["picks"])
    sentences = FIX_SENTENCES["pair" if "second_choice" in terms else "pick"]
    return message(sentences.get(state, sentences[BETWEEN_STATE]), terms)


def cost_messages(before: list[float], after: list[float]) -> list[Message]:
    """Return a sentence for each of visible glass, stack and projection that changes."""
    found: list[Message] = []
    for i in range(len(COST_SENTENCES)):
        if abs(after[i] - before[i]) >= COST_LEAST[i]:
            unit = COST_UNITS[i]
            found.append(message(COST_SENTENCES[i], {"before": [before[i], unit], "after": [after[i], unit]}))
    return found
