"""Money and rates in words, and the workings of prices with them put in."""

from configurator.kernel.message import message
from configurator.kernel.prices.price_shapes import Money, PriceLine
from configurator.kernel.say import whole
from configurator.kernel.shapes import Message

# Whole units of a currency.
START_STEP = 10


def is_in_money(shown: str) -> bool:
    """Return whether visitors of a site that shows prices so see amounts of money."""
    return shown in ["from", "full"]


def plain_money(amount: float, money: Money) -> str:
    """Return an amount in digits with a decimal point, such as ``1234.50``, as tables and files take it."""
    size = abs(amount)
    scale = 10 ** money["digits"]
    minor = size % scale
    text = whole((size - minor) / scale)
    if money["digits"] > 0:
        tail = whole(minor)
        while len(tail) < money["digits"]:
            tail = "0" + tail
        text = text + "." + tail
    return "-" + text if amount < 0 else text


def say_money(amount: float, money: Money) -> str:
    """Return an amount as it is written in a language, such as ``$1,234.50``."""
    parts = plain_money(abs(amount), money).split(".")
    left = parts[0]
    text = ""
    while len(left) > 3:
        text = money["group"] + left[len(left) - 3 :] + text
        left = left[: len(left) - 3]
    text = left + text
    if len(parts) > 1:
        text = text + money["decimal"] + parts[1]
    text = money["pattern"].replace("{amount}", text)
    return "-" + text if amount < 0 else text


def say_start(amount: float, money: Money) -> str:
    """Return from which price on something is had, such as ``$190``: an amount down to the next whole ten of the
    currency, or as it is where it is less than ten. Never more than the amount; the step is common practice, no source.
    """
    scale = 10 ** money["digits"]
    if amount < START_STEP * scale:
        return say_money(amount, money)
    start = amount - amount % (START_STEP * scale)
    return say_money(start / scale, {**money, "digits": 0.0})


def say_hundredths(rate: float, money: Money) -> str:
    """Return hundredths of a per cent as a share, such as ``8.25%``."""
    minor = rate % 100
    text = whole((rate - minor) / 100)
    if minor > 0:
        tail = whole(minor) if minor >= 10 else "0" + whole(minor)
        text = text + money["decimal"] + (tail[:1] if tail.endswith("0") else tail)
    return money["percent"].replace("{share}", text)


def money_term(amount: float, money: Money) -> list[float | str]:
    """Return an amount as a term of a message."""
    return [say_money(amount, money), "name"]


def money_cell(amount: float, money: Money) -> Message:
    """Return an amount as a message of its own."""
    return message("{amount}", {"amount": money_term(amount, money)})


def told_terms(terms: dict[str, list[float | str]], money: Money) -> dict[str, list[float | str]]:
    """Return terms with money and rates as they are written."""
    found: dict[str, list[float | str]] = {}
    for name, term in terms.items():
        if term[1] == "money":
            found[name] = money_term(float(term[0]), money)
        elif term[1] == "rate":
            found[name] = [say_hundredths(float(term[0]), money), "name"]
        else:
            found[name] = term
    return found


def price_rule(line: PriceLine, money: Money) -> Message:
    """Return the rule of a price's working."""
    how = line["working"]
    return message(how["rule"], told_terms(how["terms"], money))


def price_sum(line: PriceLine, money: Money) -> Message:
    """Return a price's working with the numbers put in, and the result; that alone where nothing is reckoned."""
    how = line["working"]
    if " " not in how["template"]:
        return money_cell(line["amount"], money)
    terms = told_terms(how["terms"], money)
    terms["result"] = money_term(line["amount"], money)
    # The mark of a rounded value stands in place of the equals sign.
    return message(how["template"] + (" ≈ {result}" if line["rounded"] else " = {result}"), terms)
