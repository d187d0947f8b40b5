"""The needs by their ids, which links carry: one that was given stays with its need for ever."""

NEED_IDS = [
    "view",
    "light",
    "day",
    "night",
    "dark",
    "cool",
    "warm",
    "handle",
    "flat",
    "bending",
    "children",
    "animals",
    "cleaning",
    "price",
]
