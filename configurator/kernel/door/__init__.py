"""The door itself: its leaf, glass, hardware and the opening it stands in."""
