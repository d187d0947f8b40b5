"""What each verdict is called in words that fit what was asked; its state alone is for machines.

A new question names its words here; a state without any is called by its own name.
"""

from configurator.kernel.tongue import wording

VERDICT_WORDS: dict[str, dict[str, str]] = {
    "pass_through": {
        "clears": wording("clears"),
        "guide by hand": wording("guide by hand"),
        "caution": wording("little room"),
        "blocked": wording("blocked"),
    },
    "handle_works": {
        "clears": wording("works freely"),
        "caution": wording("works, with little room"),
        "blocked": wording("hindered"),
    },
    "swing": {
        "clears": wording("opens freely"),
        "guide by hand": wording("opens part of the way"),
        "blocked": wording("does not open far enough"),
    },
    "opens_covered": {"clears": wording("opens"), "blocked": wording("open the covering first")},
    "reach": {
        "clears": wording("within reach"),
        "caution": wording("not within everyone's reach"),
        "blocked": wording("out of reach"),
    },
    "child_safety": {"clears": wording("safe"), "caution": wording("with care"), "blocked": wording("unsafe")},
    "sight": {"clears": wording("hidden"), "caution": wording("partly seen")},
    "pair": {"clears": wording("matches"), "caution": wording("differs"), "blocked": wording("cannot match")},
}


def verdict_word(key: str, state: str) -> str:
    """Return what a verdict with an id is called in a state."""
    return VERDICT_WORDS[key].get(state, state) if key in VERDICT_WORDS else state
