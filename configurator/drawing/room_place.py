"""Where in a painted room a drawing's door stands."""

from PIL import Image

from configurator.drawing.png import Sheet
from configurator.drawing.rgb import rgb
from configurator.drawing.room_setting import FLOOR
from configurator.kernel.shapes import Drawing

# The door stands on the floor, no higher and no wider than this, px, and clear of the plant.
DOOR_HIGH, DOOR_WIDE = 770, 1080
DOOR_MIDDLE, DOOR_RIGHT = 1190, 1640
# The door is painted this much larger and made small, so that its edges are smooth.
FINER = 2
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

    def __init__(self, drawing: Drawing) -> None:
        self.drawing = drawing
        self.pixels = min(DOOR_HIGH / drawing["height"], DOOR_WIDE / drawing["width"])
        self.size = (round(drawing["width"] * self.pixels), round(drawing["height"] * self.pixels))
        self.middle = min(DOOR_MIDDLE, DOOR_RIGHT - self.size[0] // 2)
        self.corner = (self.middle - self.size[0] // 2, FLOOR - self.size[1])

    @property
    def box(self) -> tuple[int, int, int, int]:
        """The window's edges in the room."""
        left, top = self.corner
        return left, top, left + self.size[0], top + self.size[1]

    def sheet(self, ground: Image.Image | None = None) -> Sheet:
        """Return a sheet as large as the window, in the room's colors, on a ground or on the sky."""
        sheet = Sheet(self.drawing, self.size[0], rgb(COLORS["sky"]), FINER)
        own = {name: color for name, color in COLORS.items() if name not in sheet.textures}
        sheet.palette = {**sheet.palette, **own}
        if ground:
            sheet.paint_on(ground.resize((sheet.across, sheet.down), Image.Resampling.NEAREST))
        return sheet
