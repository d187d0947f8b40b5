"""What each verdict is called in words that fit what was asked; its state alone is for machines.

A new question names its words here; a state without any is called by its own name.
"""

VERDICT_WORDS: dict[str, dict[str, str]] = {
    "pass_through": {
        "clears": "clears",
        "guide by hand": "guide by hand",
        "caution": "little room",
        "blocked": "blocked",
    },
    "handle_works": {"clears": "works freely", "caution": "works, with little room", "blocked": "hindered"},
    "swing": {
        "clears": "opens freely",
        "guide by hand": "opens part of the way",
        "blocked": "does not open far enough",
    },
    "opens_covered": {"clears": "opens", "blocked": "open the covering first"},
    "reach": {"clears": "within reach", "caution": "not within everyone's reach", "blocked": "out of reach"},
    "child_safety": {"clears": "safe", "caution": "with care", "blocked": "unsafe"},
    "sight": {"clears": "hidden", "caution": "partly seen"},
    "pair": {"clears": "matches", "caution": "differs", "blocked": "cannot match"},
}


def verdict_word(key: str, state: str) -> str:
    """Return what a verdict with an id is called in a state."""
    return VERDICT_WORDS[key].get(state, state) if key in VERDICT_WORDS else state
