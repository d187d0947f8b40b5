"""Shapes in plan that turn about a pin, by shapely: until they meet something, and how far they reach."""

import math
from typing import Any

from shapely import affinity

COARSE_STEP = 0.25
FINE_STEP = 0.02
TOLERANCE = 0.1
GRID = 1e-6


def turned_until(shape: Any, pin: tuple[float, float], obstacle: Any) -> float:
    """Return the angle at which a shape that turns about the pin first stands in the obstacle, or 180."""

    def meets(angle: float) -> bool:
        turned = affinity.rotate(shape, angle, origin=pin)
        # On a grid far finer than the tolerance shapely never gives up on sides that all but touch.
        return bool(turned.intersects(obstacle)) and bool(turned.intersection(obstacle, grid_size=GRID).area > 1e-7)

    for step in range(int(180 / COARSE_STEP) + 1):
        if meets(step * COARSE_STEP):
            angle = max(0.0, (step - 1) * COARSE_STEP)
            while not meets(angle):
                angle += FINE_STEP
            return angle
    return 180.0


def farthest(shape: Any, pin: float) -> float:
    """Return the distance of a polygon's farthest corner from the pin."""
    return max(math.hypot(x, z - pin) for x, z in shape.exterior.coords)
