"""What a family is like that no geometry tells, in words: its price beside the others', its care, and animals.

A family's ``price_level`` is its place in the table, ``cleaning`` and ``animals`` are keys of theirs; what nobody has
said is 0 or nothing.
"""

from configurator.kernel.shapes import Family
from configurator.kernel.tongue import Words, in_words, wording

PRICE_WORDS: list[str] = [
    "",
    wording("low (1 of 4)"),
    wording("moderate (2 of 4)"),
    wording("high (3 of 4)"),
    wording("highest (4 of 4)"),
]
CLEANING_WORDS: dict[str, str] = {
    "wiped": wording("wiped with a damp cloth"),
    "dusted": wording("dusted with a soft brush"),
    "washed": wording("taken down and washed"),
    "specialist": wording("cleaned by a specialist"),
}
ANIMAL_WORDS: dict[str, str] = {
    "stands up": wording("stands up to a cat or dog that pushes through"),
    "gives way": wording("gives way to a cat or dog that pushes through, and falls back into place"),
    "tears": wording("tears or bends where a cat or dog pushes through"),
}


def price_words(family: Family, words: Words) -> str:
    """Return a family's price beside the others', in words; nothing where nobody has said."""
    return in_words(PRICE_WORDS[int(family["price_level"])], words)
