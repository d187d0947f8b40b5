"""What each piece costs that hangs on a door: its size by the price book, and what its picks add."""

from configurator.kernel.message import is_said, message, plain
from configurator.kernel.mount.hung import dressed_leaves
from configurator.kernel.prices.charges import charge_line, charge_refusal, line_step, share_line
from configurator.kernel.prices.price_shapes import Charge, Price, PriceBook, PriceLine, PriceTerms
from configurator.kernel.shapes import Family, Fit, Message
from configurator.kernel.visit.visit_shapes import HungLeaf

NO_BOOK = plain("The showroom's price books have no price for it: it is asked for.")


def hung_pieces(fit: Fit) -> list[HungLeaf]:
    """Return every piece that hangs of a fit: one, or one for each leaf that is dressed."""
    hung: list[HungLeaf] = []
    for dressed in dressed_leaves(fit):
        hung.append({"leaf": "active" if len(hung) == 0 else "other", "fit": dressed})
    return hung


def blank_price(piece: HungLeaf) -> Price:
    """Return a piece's price before anything of it is known."""
    fit = piece["fit"]
    size = fit["size"]
    return {
        "family": fit["family"]["id"],
        "choices": fit["choices"],
        "leaf": piece["leaf"],
        "width": size["x1"] - size["x0"],
        "height": size["y1"] - size["y0"],
        "refusal": size["refusal"],
        "lines": [],
        "amount": 0.0,
    }


def piece_price(piece: HungLeaf, books: dict[str, PriceBook], terms: PriceTerms) -> Price:
    """Return what one piece costs in the size that it is ordered in, or why there is no price."""
    fit = piece["fit"]
    price = blank_price(piece)
    if is_said(price["refusal"]):
        return price
    if fit["family"]["id"] not in books:
        price["refusal"] = NO_BOOK
        return price
    book = books[fit["family"]["id"]]
    size = [price["width"], price["height"]]
    price["refusal"] = book_refusal(book, fit, size)
    if not is_said(price["refusal"]):
        price["lines"] = book_lines(book, fit, size, terms)
        price["amount"] = lines_sum(price["lines"])
    return price


def picked_charges(book: PriceBook, fit: Fit) -> dict[str, Charge]:
    """Return what the picks add, by choice, in the family's order."""
    found: dict[str, Charge] = {}
    for choice in fit["family"]["choices"]:
        if choice["id"] in book["additions"]:
            options = book["additions"][choice["id"]]
            option = fit["choices"][choice["id"]]
            if option in options:
                found[choice["id"]] = options[option]
    return found


def book_refusal(book: PriceBook, fit: Fit, size: list[float]) -> Message:
    """Return why a book has no price for a size ``[width, height]``; silent where it has one."""
    refusal = charge_refusal(book["size"], size)
    for charge in picked_charges(book, fit).values():
        if not is_said(refusal):
            refusal = charge_refusal(charge, size)
    return refusal


def book_lines(book: PriceBook, fit: Fit, size: list[float], terms: PriceTerms) -> list[PriceLine]:
    """Return the price by size, and what each pick adds to it."""
    first = charge_line(book["size"], "size", plain("Price by size"), size, terms)
    lines = [first]
    for choice, charge in picked_charges(book, fit).items():
        picked = pick_names(fit["family"], choice, fit["choices"][choice])
        name = message("{choice}: {option}", {"choice": [picked[0], "name"], "option": [picked[1], "name"]})
        if charge["how"] == "share":
            lines.append(share_line(charge["amount"], choice, name, first["amount"], line_step(terms)))
        else:
            lines.append(charge_line(charge, choice, name, size, terms))
    return lines


def pick_names(family: Family, choice_id: str, option_id: str) -> list[str]:
    """Return a pick by the names of its choice and its option; by their ids where the family has neither."""
    for choice in family["choices"]:
        for option in choice["options"]:
            if choice["id"] == choice_id and option["id"] == option_id:
                return [choice["name"], option["name"]]
    return [choice_id, option_id]


def lines_sum(lines: list[PriceLine]) -> float:
    """Return the sum of lines, in minor units."""
    amount = 0.0
    for line in lines:
        amount = amount + line["amount"]
    return amount
