"""A look as a file gives it, with the lines that show on its color."""

from configurator.catalog.contrast import WHITE, nearest_on, nearest_passing, read_color, say_color
from configurator.catalog.schema.family import LookFile
from configurator.kernel.looks import no_look
from configurator.kernel.shapes import Look

# WCAG 2.2, 1.4.11: what must be seen to understand a graphic, against what is next to it.
LINE_RATIO = 3.0


def lines_of(color: str) -> dict[str, str]:
    """Return the color nearest to ``#rrggbb`` that shows on it, and the nearest that shows on white."""
    ground = read_color(color)
    line = nearest_on(ground, LINE_RATIO)
    return {"line": say_color(line), "rim": say_color(nearest_passing(ground, (WHITE,), LINE_RATIO))}


def kernel_look(file: LookFile) -> dict[str, str]:
    """Return the parts of a look that a file gives."""
    look = {name: value for name in ("color", "weave", "luster") if (value := getattr(file, name))}
    return look | lines_of(file.color) if file.color else look


def whole_look(file: LookFile) -> Look:
    """Return a family's look, the theme's where the file gives no color."""
    look, blank = kernel_look(file), no_look()
    return {
        "color": file.color,
        "line": look.get("line", blank["line"]),
        "rim": look.get("rim", blank["rim"]),
        "weave": file.weave or blank["weave"],
        "luster": file.luster or blank["luster"],
    }
