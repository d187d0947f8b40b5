"""The JSON Schema of a visit's file, made of the table by which files are read."""

import json
from pathlib import Path
from typing import Any

from configurator.kernel.visit.visit_parts import (
    LIST_MOST,
    NUMBER_MOST,
    TEXT_MOST,
    VISIT_PARTS,
    is_needed,
    limits_within,
    part_kinds,
)
from configurator.kernel.visit.visit_shapes import VISIT_VERSION

FILE = Path(__file__).parent / "kernel" / "visit" / "visit.schema.json"
DIALECT = "https://json-schema.org/draft/2020-12/schema"
PLAIN: dict[str, dict[str, Any]] = {
    "text": {"type": "string", "maxLength": TEXT_MOST},
    "number": {"type": "number", "minimum": -NUMBER_MOST, "maximum": NUMBER_MOST},
    "whole": {"type": "integer", "minimum": -NUMBER_MOST, "maximum": NUMBER_MOST},
    "flag": {"type": "boolean"},
    "texts": {"type": "object", "additionalProperties": {"type": "string", "maxLength": TEXT_MOST}},
    "numbers": {"type": "object", "additionalProperties": {"type": "number"}},
}


def kind_schema(kind: str) -> dict[str, Any]:
    """Return the schema of a kind of value."""
    if kind in PLAIN:
        return PLAIN[kind]
    word, _, of = kind.partition(":")
    inner = PLAIN.get(of, {"$ref": f"#/$defs/{of}"})
    if word == "list":
        return {"type": "array", "maxItems": LIST_MOST, "items": inner}
    return {"type": "object", "additionalProperties": inner} if word == "entries" else inner


def within(part: str, name: str, kind: str) -> dict[str, Any]:
    """Return the schema of what an entry holds under a name, with its limits."""
    schema = kind_schema(kind)
    if name == "wishes":
        limits = limits_within("wishes").items()
        return schema | {"properties": {wish: bounded(PLAIN["number"], span) for wish, span in limits}}
    return bounded(schema, limits_within(part)[name]) if name in limits_within(part) else schema


def bounded(schema: dict[str, Any], span: list[float]) -> dict[str, Any]:
    """Return the schema of a number between two limits."""
    return schema | {"minimum": span[0], "maximum": span[1]}


def part_schema(part: str) -> dict[str, Any]:
    """Return the schema of an entry; what it does not name may be there."""
    kinds = part_kinds(part)
    return {
        "type": "object",
        "required": [name for name in kinds if is_needed(part, name)],
        "properties": {name: within(part, name, kind) for name, kind in kinds.items()},
    }


def visit_schema() -> dict[str, Any]:
    """Return the schema of a whole file."""
    whole = part_schema("Visit")
    whole["properties"]["version"] = {"type": "integer", "minimum": 1, "maximum": VISIT_VERSION}
    whole["properties"]["units"] = {"enum": ["in", "mm"]}
    others = [*(part for part in VISIT_PARTS if part != "Visit"), "Door", "Handle", "Household"]
    defs = {part: part_schema(part) for part in others}
    return {"$schema": DIALECT, "title": "visit", **whole, "$defs": defs}


def schema_text() -> str:
    """Return that schema as the text of its file."""
    return json.dumps(visit_schema(), indent=2) + "\n"


if __name__ == "__main__":
    FILE.write_text(schema_text(), encoding="utf-8")
