"""Coordinates as the path data of SVG, as fine as a drawing's scale can show."""

from itertools import pairwise

from configurator.kernel.shapes import Mark

# Of a drawing enlarged to less than this scale, hundredths of a millimeter show.
FINE_SCALE = 8.0


def brief(value: float, decimals: int) -> str:
    """Return a number without needless zeros."""
    written = f"{value:.{decimals}f}".rstrip("0").rstrip(".") if decimals else f"{value:.0f}"
    return "0" if written in ("-0", "") else written.replace("0.", ".", 1) if written.startswith("0.") else written


def decimals_at(scale: float) -> int:
    """Return how many decimals of a millimeter a scale can show."""
    return 2 if scale < FINE_SCALE else 1


class Pen:
    """Writes coordinates with as many decimals as the drawing's scale can show."""

    def __init__(self, scale: float) -> None:
        self.decimals = decimals_at(scale)
        # The size of letters that need not be said.
        self.letters = ""

    def lift(self) -> None:
        """Begin a new path."""

    def number(self, value: float) -> str:
        """Return a coordinate without needless zeros."""
        written = f"{value:.{self.decimals}f}".rstrip("0").rstrip(".")
        return "0" if written == "-0" else written

    def path(self, mark: Mark) -> str:
        """Return the path data of a shape."""
        points = mark["points"]
        if mark["shape"] == "circle":
            return self._circle(points)
        if mark["shape"] == "bars":
            return self._axis(points)
        number = self.number
        written = [f"M{number(points[0])} {number(points[1])}"]
        for i in range(2, len(points), 2):
            same_x = number(points[i]) == number(points[i - 2])
            same_y = number(points[i + 1]) == number(points[i - 1])
            if same_x and same_y:
                continue
            if same_y:
                written.append(f"H{number(points[i])}")
            elif same_x:
                written.append(f"V{number(points[i + 1])}")
            else:
                written.append(f"L{number(points[i])} {number(points[i + 1])}")
        return "".join(written) + ("z" if mark["shape"] == "polygon" else "")

    def _axis(self, points: list[float]) -> str:
        x0, y0, x1, y1 = (brief(value, 1) for value in points[:4])
        return f"M{x0} {y0}" + (f"V{y1}" if x0 == x1 else f"H{x1}")

    def _circle(self, points: list[float]) -> str:
        radius = self.number(points[2])
        across = self.number(2 * points[2])
        start = f"M{self.number(points[0] - points[2])} {self.number(points[1])}"
        return f"{start}a{radius} {radius} 0 1 0 {across} 0a{radius} {radius} 0 1 0-{across} 0z"


class StepPen(Pen):
    """Writes whole numbers, in steps from point to point: nothing is shorter."""

    def __init__(self, scale: float) -> None:
        super().__init__(scale)
        self.decimals = 0
        self.lift()

    def lift(self) -> None:
        """Begin a new path: its first step starts at the origin."""
        self.x, self.y = 0, 0

    def away(self, corner: tuple[int, int]) -> int:
        """Return how far the pen goes to a corner, along the axes."""
        return abs(corner[0] - self.x) + abs(corner[1] - self.y)

    def number(self, value: float) -> str:
        """Return a coordinate without needless zeros."""
        return str(round(value)) if self.decimals == 0 else super().number(value)

    def path(self, mark: Mark) -> str:
        """Return the path data of a shape, in steps from point to point where they are whole."""
        if self.decimals or mark["shape"] == "bars":
            return super().path(mark)
        if mark["shape"] == "circle":
            self.x, self.y = round(mark["points"][0] - mark["points"][2]), round(mark["points"][1])
            return super().path(mark)
        whole = [round(value) for value in mark["points"]]
        corners = list(zip(whole[::2], whole[1::2], strict=True))
        if mark["shape"] == "line" and self.away(corners[-1]) < self.away(corners[0]):
            corners.reverse()
        start = f"m{pair(corners[0][0] - self.x, corners[0][1] - self.y)}"
        closed = mark["shape"] == "polygon"
        self.x, self.y = corners[0] if closed else corners[-1]
        return start + written(corners) + ("z" if closed else "")


def pair(x: int, y: int) -> str:
    """Return two numbers, a space between them where no minus parts them."""
    return f"{x}{y}" if y < 0 else f"{x} {y}"


def written(corners: list[tuple[int, int]]) -> str:
    """Return the way along corners as path data; a letter that repeats and a space before a minus are left out."""
    text: list[str] = []
    last = ""
    for (x0, y0), (x, y) in pairwise(corners):
        if x == x0 and y == y0:
            continue
        if y == y0:
            letter, numbers = "h", str(x - x0)
        elif x == x0:
            letter, numbers = "v", str(y - y0)
        else:
            letter, numbers = "l", pair(x - x0, y - y0)
        if letter != last:
            text.append(letter)
        elif not numbers.startswith("-"):
            text.append(" ")
        text.append(numbers)
        last = letter
    return "".join(text)
