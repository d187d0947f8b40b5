"""Where in a painted room a drawing's door stands."""

from configurator.drawing.png import Sheet
from configurator.drawing.rgb import rgb
from configurator.drawing.room_size import Points, RoomSize
from configurator.kernel.shapes import Drawing

# The door stands on the floor, no higher and no wider than this, px, and clear of the plant.
DOOR_HIGH, DOOR_WIDE = 770, 1080
DOOR_MIDDLE, DOOR_RIGHT = 1190, 1640
# The room's own colors of what the style sheet names.
COLORS = {
    "sky": "#f6dfb9",
    "hill": "#c8c28f",
    "lawn": "#b4bd7c",
    "stone": "#e9d4b0",
    "tree": "#8fa366",
    "trunk": "#7d6246",
    "wall": "#efe4d2",
    "ground": "#f6ecdb",
    "leaf": "#fbf5ea",
    "louver": "#f6ecda",
    "cloth": "#ecdcbf",
    "metal": "#9b8455",
    "ink": "#a58f70",
    "ink-soft": "#cbb797",
    "glow": "#fff4d6",
    "dusk": "#4f3216",
    "gleam": "#fff8e6",
}


class RoomPlace:
    """A drawing's window in the room: ``pixels`` to a millimeter, its size and upper left corner in px."""

    def __init__(self, drawing: Drawing, room: RoomSize) -> None:
        self.drawing = drawing
        self.room = room
        most = min(DOOR_HIGH / drawing["height"], DOOR_WIDE / drawing["width"]) * room.share
        wide = round(drawing["width"] * most)
        self.pixels = wide / drawing["width"]
        self.size = (wide, round(drawing["height"] * self.pixels))
        self.middle = min(room.px(DOOR_MIDDLE), room.px(DOOR_RIGHT) - self.size[0] // 2)
        self.corner = (self.middle - self.size[0] // 2, room.floor - self.size[1])

    @property
    def box(self) -> tuple[int, int, int, int]:
        """The window's edges in the room."""
        left, top = self.corner
        return left, top, left + self.size[0], top + self.size[1]

    @property
    def fine_size(self) -> tuple[int, int]:
        """The window's size where it is painted finer, px."""
        return self.size[0] * self.room.finer, self.size[1] * self.room.finer

    def points(self, flat: list[float]) -> Points:
        """Return flat model coordinates as px of the window."""
        x, y = self.drawing["x"], self.drawing["y"]
        return [((flat[at] - x) * self.pixels, (flat[at + 1] - y) * self.pixels) for at in range(0, len(flat), 2)]

    def fine_points(self, flat: list[float]) -> Points:
        """Return flat model coordinates as px of the window where it is painted finer."""
        return [(x * self.room.finer, y * self.room.finer) for x, y in self.points(flat)]

    def sheet(self, finer: int = 1) -> Sheet:
        """Return a sheet so many times as large as the window, in the room's colors, on the sky."""
        sheet = Sheet(self.drawing, self.size[0], rgb(COLORS["sky"]), finer)
        own = {name: color for name, color in COLORS.items() if name not in sheet.textures}
        sheet.palette = {**sheet.palette, **own}
        return sheet
