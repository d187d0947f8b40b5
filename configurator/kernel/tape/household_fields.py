"""The people: what a tape takes of those who live behind the door and those who look in."""

from configurator.kernel.tape.field import Field, Group
from configurator.kernel.tongue import wording

HOUSEHOLD_FIELDS: list[Field] = [
    {
        "id": "household.shoulder_height",
        "path": "household.shoulder_height",
        "unit": "length",
        "limits": [600.0, 2000.0],
        "usual": [1100.0, 1600.0],
        "what": wording("a shoulder height"),
        "name": wording("Shoulder height"),
        "how": wording("Of whoever works the covering most."),
        "drawn": ["elevation", "up", "floor", "middle", "middle"],
    },
    {
        "id": "household.person_height",
        "path": "household.person_height",
        "unit": "length",
        "limits": [600.0, 2300.0],
        "usual": [1400.0, 2000.0],
        "what": wording("a person's height"),
        "name": wording("Height of the person inside"),
        "how": wording("Whom the covering should hide."),
    },
    {
        "id": "household.person_distance",
        "path": "household.person_distance",
        "unit": "length",
        "limits": [0.0, 20000.0],
        "usual": [300.0, 5000.0],
        "what": wording("a distance"),
        "name": wording("Their distance from the glass"),
        "how": wording("How far back in the room they usually stand."),
    },
    {
        "id": "household.outside_eye",
        "path": "household.outside_eye",
        "unit": "length",
        "limits": [600.0, 2300.0],
        "usual": [1300.0, 1850.0],
        "what": wording("an eye height"),
        "name": wording("Eye height outside"),
        "how": wording("Of whoever might look in."),
    },
    {
        "id": "household.outside_distance",
        "path": "household.outside_distance",
        "unit": "length",
        "limits": [100.0, 100000.0],
        "usual": [500.0, 50000.0],
        "what": wording("a distance"),
        "name": wording("Their distance from the glass"),
        "how": wording("On the terrace, or across the street."),
    },
    {
        "id": "household.outside_level",
        "path": "household.outside_level",
        "unit": "length",
        "limits": [-20000.0, 20000.0],
        "usual": [-3000.0, 1000.0],
        "what": wording("a level"),
        "name": wording("Ground outside"),
        "how": wording("Against your floor. Write a minus where it lies lower."),
    },
]
HOUSEHOLD_GROUP: Group = {
    "id": "household",
    "name": wording("The people"),
    "fields": HOUSEHOLD_FIELDS,
}
