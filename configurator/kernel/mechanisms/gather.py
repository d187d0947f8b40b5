"""The numbers of cloth: how it is woven and sewn, and how it is gathered."""

from configurator.kernel.tongue import wording

CLOTH_TAKES: dict[str, list[str | float | None]] = {
    "bolt_width": ["size", 1371.6, wording("usable width of the cloth on the bolt, between its selvedges")],
    "pattern_repeat": ["length", 0.0, wording("repeat of the pattern along the cloth; 0 for plain cloth")],
    "railroads": ["switch", 0.0, wording("1 when the cloth may be run sideways, its bolt width upright")],
    "side_hem": ["length", 0.0, wording("cloth turned in at each side")],
    "heading": ["length", 0.0, wording("cloth above the finished height: its heading, or what holds it to the head")],
    "hem": ["length", 0.0, wording("cloth below the finished height: its hem, or the pocket of a bar")],
}

LINING_TAKES: dict[str, list[str | float | None]] = {
    "lined": ["switch", 0.0, wording("1 when it has a lining, cut as wide and as high as the cloth")],
    "lining_bolt": ["size", 1371.6, wording("usable width of the lining on the bolt")],
    "lining_mass": ["mass", 0.15, wording("mass of the lining as it lies flat, kg/m2")],
}

GATHER_TAKES: dict[str, list[str | float | None]] = {
    **CLOTH_TAKES,
    **LINING_TAKES,
    "fullness": ["count", 0.0, wording("width of cloth for each width of panel; 0 where nothing is gathered")],
    "side_hem": ["length", 75.0, CLOTH_TAKES["side_hem"][2]],
    "heading": ["length", 125.0, CLOTH_TAKES["heading"][2]],
    "hem": ["length", 125.0, CLOTH_TAKES["hem"][2]],
}
