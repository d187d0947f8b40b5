"""Everything the kernel tells of one family with its choices on one door."""

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.mount.mounted import mounted
from configurator.kernel.mount.on_leaf import part_heights
from configurator.kernel.questions.cloth import cloth_figures
from configurator.kernel.questions.glass import glass_figures, glass_shares
from configurator.kernel.questions.light_gap import light_gap_figures
from configurator.kernel.questions.living import living_replies
from configurator.kernel.questions.louvers import louver_figures
from configurator.kernel.questions.order import order_figures
from configurator.kernel.questions.passing import pass_reply
from configurator.kernel.questions.projection import projection_figures
from configurator.kernel.questions.reply import Reply, reply
from configurator.kernel.questions.stack import stack_figures
from configurator.kernel.resolve import full_choices, resolve, same_build
from configurator.kernel.sampling import FINE_STEPS, covering_pieces, travel_samples
from configurator.kernel.scene import size_of
from configurator.kernel.shapes import Answer, Cassette, Caution, Door, Family, Figure, Household, Size, Verdict
from configurator.kernel.travel import closed_position, legs, open_position


def replies(
    door: Door,
    mechanism: str,
    numbers: dict[str, float],
    cassettes: list[Cassette],
    size: Size,
    household: Household,
) -> list[Reply]:
    """Return the reply of every question, in the order in which they are read."""
    handle = handle_pieces(door)
    raised = covering_pieces(mechanism, numbers, size, open_position(numbers))
    down = covering_pieces(mechanism, numbers, size, closed_position(numbers))
    samples = travel_samples(mechanism, numbers, size, part_heights(handle), FINE_STEPS)
    whole = size["mount"] == "over-opening"
    plain: list[Figure] = []
    plain.extend(order_figures(door, numbers, size))
    plain.extend(stack_figures(door, numbers, size, raised))
    raised_shares = glass_shares(door, whole, raised)
    down_shares = glass_shares(door, whole, down)
    plain.extend(glass_figures(raised_shares, down_shares))
    plain.extend(projection_figures(raised, down, samples))
    plain.extend(light_gap_figures(door, numbers, size))
    plain.extend(cloth_figures(numbers, size))
    plain.extend(louver_figures(door, mechanism, numbers, size, raised_shares, down_shares))
    answers = [reply(plain, [], []), pass_reply(mechanism, numbers, size, samples, handle)]
    answers.extend(living_replies(door, mechanism, numbers, cassettes, size, household, samples, down))
    return answers


def ask(door: Door, family: Family, choices: dict[str, str], household: Household) -> Answer:
    """Return the answer: size, figures, verdicts and cautions, or the plain reason why it cannot be."""
    numbers = resolve(family, choices)
    mechanism = family["mechanism"]
    size = mounted(door, mechanism, numbers, family["cassettes"], handle_pieces(door))
    figures: dict[str, Figure] = {}
    verdicts: dict[str, Verdict] = {}
    cautions: list[Caution] = []
    if size["refusal"] == "":
        for part in replies(door, mechanism, numbers, family["cassettes"], size, household):
            for figure in part["figures"]:
                figures[figure["id"]] = figure
            for verdict in part["verdicts"]:
                verdicts[verdict["id"]] = verdict
            cautions.extend(part["cautions"])
    return {
        "door": door["id"],
        "family": family["id"],
        "choices": full_choices(family, choices),
        "refusal": size["refusal"],
        "size": size,
        "figures": figures,
        "verdicts": verdicts,
        "cautions": cautions,
        "draws_aside": numbers["draws_aside"] > 0,
        "legs": legs(numbers),
        "open": open_position(numbers),
        "closed": closed_position(numbers),
    }


def with_option(choices: dict[str, str], choice: str, option: str) -> dict[str, str]:
    """Return the choices with one of them picked anew."""
    picked: dict[str, str] = {}
    for name, value in choices.items():
        picked[name] = value
    picked[choice] = option
    return picked


def ruled_out(door: Door, family: Family, choices: dict[str, str]) -> dict[str, dict[str, str]]:
    """Return, by choice and option, the plain reason why the door rules an option out; the others are absent."""
    numbers = resolve(family, choices)
    refusal = size_of(door, family, choices)["refusal"]
    reasons: dict[str, dict[str, str]] = {}
    for choice in family["choices"]:
        found: dict[str, str] = {}
        for option in choice["options"]:
            picked = with_option(choices, choice["id"], option["id"])
            reason = refusal
            if not same_build(numbers, resolve(family, picked)):
                reason = size_of(door, family, picked)["refusal"]
            if reason != "":
                found[option["id"]] = reason
        reasons[choice["id"]] = found
    return reasons
