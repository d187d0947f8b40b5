"""Typography: how a page sets plain words."""

WORD_SIGNS = "0123456789_"
NO_BREAK = "\u00a0"
# Units that stay beside their number.
KEPT_UNITS = ["in", "mm", "cm", "ft", "kg", "%"]


def is_word_sign(sign: str) -> bool:
    """Return whether a sign is a letter, a digit or an underscore; an empty one is not."""
    return sign.lower() != sign.upper() or (sign != "" and sign in WORD_SIGNS)


def is_digit(sign: str) -> bool:
    """Return whether a sign is a digit; an empty one is not."""
    return sign >= "0" and sign <= "9" and len(sign) == 1


def begins_fraction(text: str) -> bool:
    """Return whether a text begins with a fraction such as ``1/2``."""
    slash = text.find("/")
    if slash < 1 or not is_digit(text[slash + 1 : slash + 2]):
        return False
    return len([sign for sign in text[:slash] if is_digit(sign)]) == slash


def begins_unit(text: str) -> bool:
    """Return whether a text begins with the name of a unit."""
    for unit in KEPT_UNITS:
        if text.startswith(unit) and not is_word_sign(text[len(unit) : len(unit) + 1]):
            return True
    return False


def unbroken(before: str, after: str) -> bool:
    """Return whether no line may end between two words: inside a measure."""
    last = before[len(before) - 1 :]
    if last == "≈":
        return True
    if last == "×":
        return is_digit(after[:1])
    return is_digit(last) and (begins_fraction(after) or begins_unit(after))


def curved(before: str, after: str) -> bool:
    """Return whether what stands between two texts is an apostrophe."""
    last = before[len(before) - 1 :]
    return (is_word_sign(last) and is_word_sign(after[:1])) or (last == "s" and after[:1] == " ")


def typeset(words: str) -> str:
    """Return plain words as a page sets them: curved apostrophes, and no line ending inside a measure."""
    parts = words.split("'")
    text = parts[0]
    for i in range(1, len(parts)):
        text = text + ("’" if curved(parts[i - 1], parts[i]) else "'") + parts[i]
    parts = text.split(" ")
    text = parts[0]
    for i in range(1, len(parts)):
        text = text + (NO_BREAK if unbroken(parts[i - 1], parts[i]) else " ") + parts[i]
    return text
