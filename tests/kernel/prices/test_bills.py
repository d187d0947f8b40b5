"""What pieces come to together, worked by hand, and what must hold of any bill."""

from hypothesis import given
from hypothesis import strategies as st

from configurator.kernel.prices.bills import bill_of
from configurator.kernel.prices.price_shapes import Bill, PriceTerms
from tests.kernel.prices.price_samples import offered, priced_piece, terms, worked_amount

MOTOR = {"lift": "motor"}
CORDLESS = {"lift": "cordless"}


def amounts(bill: Bill) -> dict[str, float]:
    """Return the amounts of a bill's lines by id."""
    return {line["id"]: line["amount"] for line in bill["lines"]}


def full_terms(to: float = 1.0, at: str = "line") -> PriceTerms:
    """Return terms with all that a bill may have."""
    return {
        **terms(to, at),
        "discount": 1000.0,
        "extras": [{"id": "remote", "name": "Remote", "each": 4400.0, "serves": 2.0, "picks": {"lift": ["motor"]}}],
        "fitting": 3800.0,
        "fitting_least": 9500.0,
        "travel": 2500.0,
        "tax": 625.0,
        "tax_name": "Tax",
        "taxed": ["coverings", "fitting"],
        "deposit": 5000.0,
    }


def test_a_bill_worked_by_hand() -> None:
    # $193.00 + $429.00 + $193.05 = $815.05; three pieces with a motor take two remotes, $88.00; a tenth of $903.05 is
    # $90.305, halves up $90.31; fitting 3 x $38.00 = $114.00; travel $25.00; 6.25 % of $812.74 + $114.00 = $57.92125.
    pieces = [priced_piece(19300.0, MOTOR), priced_piece(42900.0, MOTOR), priced_piece(19305.0, MOTOR)]
    bill = bill_of([offered(pieces[:2]), offered(pieces[2:])], full_terms())
    assert amounts(bill) == {
        "coverings": 81505,
        "remote": 8800,
        "discount": -9031,
        "fitting": 11400,
        "travel": 2500,
        "tax": 5792,
    }
    assert bill["total"] == 100966
    assert bill["deposit"]["amount"] == 50483


def test_what_nobody_asked_for_is_not_on_the_bill() -> None:
    bill = bill_of([offered([priced_piece(19300.0, CORDLESS)])], terms())
    assert amounts(bill) == {"coverings": 19300}
    assert bill["total"] == 19300


def test_a_piece_alone_pays_the_least_fitting_and_no_remote_without_a_motor() -> None:
    told = amounts(bill_of([offered([priced_piece(19300.0, CORDLESS)])], full_terms()))
    assert told["fitting"] == 9500
    assert "remote" not in told


def test_a_total_is_rounded_by_a_line_of_its_own() -> None:
    # $100.02 to the nearest five cents is $100.00, $100.03 is $100.05.
    for cents, rounding in ((10002.0, -2), (10003.0, 2), (10005.0, None)):
        bill = bill_of([offered([priced_piece(cents, CORDLESS)])], terms(5.0, "total"))
        assert amounts(bill).get("rounding") == rounding
        assert bill["total"] % 5 == 0


@given(
    st.lists(st.tuples(st.integers(0, 900_000), st.booleans()), min_size=1, max_size=8),
    st.sampled_from(["line", "total"]),
    st.sampled_from([1.0, 5.0, 100.0]),
)
def test_lines_sum_up_to_the_total_and_each_evaluates(pieces: list[tuple[int, bool]], at: str, to: float) -> None:
    given_terms = full_terms(to, at)
    step = to if at == "line" else 1.0
    prices = [priced_piece(float(cents), MOTOR if motor else CORDLESS) for cents, motor in pieces]
    bill = bill_of([offered(prices), offered(prices[:1])], given_terms)
    assert sum(line["amount"] for line in bill["lines"]) == bill["total"]
    for line in [*bill["lines"], bill["deposit"]]:
        assert abs(worked_amount(line) - int(line["amount"])) * 2 <= step, line["id"]
        if not line["rounded"]:
            assert worked_amount(line) == line["amount"], line["id"]
