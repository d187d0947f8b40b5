"""What a tape may take at all, beside this in ``bounds.txt``: kept links and visits hold it, so no bound moves unseen.

A bound that narrows shuts out what somebody has measured; one that widens is written there too.
"""

from pathlib import Path

from configurator.kernel.tape.field import Field
from configurator.kernel.tape.leaf_fields import HINGE_LIMITS
from configurator.kernel.tape.table import TAPE_GROUPS
from configurator.kernel.visit.visit_fields import VISIT_FIELDS


def told(field: Field) -> str:
    """Return a field's line: its limits, what is usual and what is assumed, mm, counts or shares."""
    spans = {"usual": field.get("usual", []), "assumed": field.get("assumed", [])}
    span = " to ".join(f"{one:g}" for one in field["limits"])
    others = [f"{word} {' to '.join(f'{one:g}' for one in values)}" for word, values in spans.items() if values]
    return ", ".join([f"{field['id']}: {span}", *others])


def test_every_bound_is_what_it_was() -> None:
    fields = [field for group in TAPE_GROUPS for field in group["fields"]]
    hinges: Field = {"id": "hinge_heights", "unit": "length", "limits": HINGE_LIMITS}
    kept = (Path(__file__).parent / "bounds.txt").read_text(encoding="utf-8").splitlines()
    assert [told(field) for field in [*fields, hinges, *VISIT_FIELDS]] == kept
