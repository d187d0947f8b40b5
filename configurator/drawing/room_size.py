"""How large a room is painted: every length of it is said in px of the whole one."""

from typing import NamedTuple

WIDTH, HEIGHT, FLOOR = 1800, 1080, 890
Points = list[tuple[float, float]]


class RoomSize(NamedTuple):
    """A room's picture that measures a ``share`` of the whole one each way.

    Its door is painted so many times ``finer`` and made small, so that its edges are smooth.
    """

    share: float
    finer: int

    def px(self, length: float) -> int:
        """Return a length of the whole room in px of this picture; what is there at all takes one."""
        return max(1, round(length * self.share))

    def points(self, shape: Points) -> Points:
        """Return points of the whole room in px of this picture."""
        return [(x * self.share, y * self.share) for x, y in shape]

    @property
    def across_down(self) -> tuple[int, int]:
        """The picture's width and height, px."""
        return self.px(WIDTH), self.px(HEIGHT)

    @property
    def floor(self) -> int:
        """How far down the wall meets the floor, px."""
        return self.px(FLOOR)


# As the first page opens with it, and as large as a link preview shows it.
WHOLE, SMALL = RoomSize(1.0, 2), RoomSize(2 / 3, 3)
