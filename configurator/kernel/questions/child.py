"""Is a child safe? What cords and loops the chosen lift leaves."""

from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Caution, Figure, Household, Message, Reply, Travel, Verdict
from configurator.kernel.telling import caution, figure, length, reply, verdict, working
from configurator.kernel.tongue import wording

# 87 FR 73144: an accessible operating cord longer than 8 in is held hazardous.
CORD_MOST = 203.2
CORD_TERMS: dict[str, list[float | str]] = {"most": [CORD_MOST, "mm"]}
CHILD_RULE = wording("87 FR 73144 (16 CFR part 1260, 28 Nov 2022; a court later set the rule aside: from memory)")


def cord_figure(key: str, name: str, long: float) -> Figure:
    """Return the length of a cord or loop, as the chosen lift has it."""
    return figure(
        key,
        name,
        length(long),
        working(
            "as the chosen lift has it; an accessible cord longer than {most} is held hazardous",
            "{length}, against {most}",
            {"length": [long, "mm"], "most": [CORD_MOST, "mm"]},
        ),
    )


def child_why(numbers: dict[str, float]) -> Message:
    """Return in words which cord or loop is left."""
    if numbers["loop_length"] > 0 and numbers["loop_retained"] > 0:
        return plain("A loop is left. It is safe only while its tension device stays fixed to the door or wall.")
    if numbers["loop_length"] > 0:
        return plain("A free loop is left, in which a child can be caught.")
    if numbers["cord_length"] > CORD_MOST:
        return message("A free cord longer than {most} is left, in which a child can be caught.", CORD_TERMS)
    return message("A free cord of {most} or less is left.", CORD_TERMS)


def child_verdict(numbers: dict[str, float]) -> Verdict:
    """Return ``clears`` where no cord or loop is left, ``blocked`` where a free one can catch a child."""
    name = wording("child safety")
    if numbers["cord_length"] == 0 and numbers["loop_length"] == 0:
        return verdict("child_safety", name, "clears", plain("No cord and no loop is left within reach."))
    free_loop = numbers["loop_length"] > 0 and numbers["loop_retained"] == 0
    state = "blocked" if free_loop or numbers["cord_length"] > CORD_MOST else "caution"
    return verdict("child_safety", name, state, child_why(numbers))


def child_caution() -> Caution:
    """Return the caution that goes with any cord or loop."""
    text = wording(
        "Children of 8 years and younger have been strangled by cords and loops such as this covering has. Choose a "
        "cordless lift where children live or visit; fit and keep every safety device. Local law decides."
    )
    return caution("child_safety", text, CHILD_RULE)


def child_question(travel: Travel, household: Household) -> Reply:
    """Answer which cords and loops the chosen lift leaves, and what goes with them."""
    numbers = travel["fit"]["numbers"]
    figures: list[Figure] = []
    cautions: list[Caution] = []
    if numbers["cord_length"] > 0:
        figures.append(cord_figure("cord_length", wording("longest free cord"), numbers["cord_length"]))
    if numbers["loop_length"] > 0:
        figures.append(cord_figure("loop_length", wording("height of the loop"), numbers["loop_length"]))
    if len(figures) > 0:
        cautions.append(child_caution())
    return reply(figures, [child_verdict(numbers)], cautions)
