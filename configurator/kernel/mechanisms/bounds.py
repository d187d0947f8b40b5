"""How large a mechanism's numbers may be to each other; content is checked against these.

A row reads: the first number is at most so many times the second. Rows about a number that a mechanism does not take
are for others.
"""

# More like parts in a row than this no drawing shows and no workroom makes (common practice, no source).
UNITS_MOST = 400.0
# Of a width, what its two ends may take up between them is all; each end has half.
EACH_END = 0.5
# What two side hems leave of a bolt is at least half (common practice, no source).
EACH_HEM = 0.25

BOUNDS: list[list[str | float]] = [
    ["width_least", 1.0, "width_most"],
    ["overlap_least", 1.0, "overlap_side"],
    # A part that is pushed together, or lies with others in a stack, grows no higher.
    ["closed_thickness", 1.0, "pitch"],
    ["fold_thickness", 1.0, "fold_drop"],
    ["layer_thickness", 1.0, "fold_height"],
    ["slat_thickness", 1.0, "slat_pitch"],
    ["vane_thickness", 1.0, "vane_pitch"],
    ["vane_thickness", 1.0, "unit_pitch"],
    ["panel_thickness", 1.0, "layer_depth"],
    # Blades and bands that are further apart than they are wide never close.
    ["slat_pitch", 1.0, "slat_width"],
    ["louver_pitch", 1.0, "louver_width"],
    ["vane_pitch", 1.0, "vane_width"],
    ["band_clear", 1.0, "band_solid"],
    ["louver_thickness", 1.0, "louver_width"],
    # What the ends take is taken twice.
    ["bracket_inset", EACH_END, "width_least"],
    ["bracket_gap", EACH_END, "width_least"],
    ["end_cap", EACH_END, "width_least"],
    ["rod_holder", EACH_END, "width_least"],
    ["panel_stile", EACH_END, "width_least"],
    ["frame_width", EACH_END, "width_least"],
    ["side_hem", EACH_HEM, "bolt_width"],
    ["side_hem", EACH_HEM, "lining_bolt"],
    # Parts in a row are not without number.
    ["height_most", UNITS_MOST, "pitch"],
    ["height_most", UNITS_MOST, "fold_drop"],
    ["height_most", UNITS_MOST, "fold_height"],
    ["height_most", UNITS_MOST, "slat_pitch"],
    ["height_most", UNITS_MOST, "louver_pitch"],
    ["height_most", UNITS_MOST, "vane_pitch"],
    ["height_most", UNITS_MOST, "band_solid"],
    ["height_most", UNITS_MOST, "screw_spacing"],
    ["width_most", UNITS_MOST, "unit_pitch"],
    ["width_most", UNITS_MOST, "bracket_spacing"],
    ["width_most", UNITS_MOST, "screw_spacing"],
]


def is_over(row: list[str | float], numbers: dict[str, float]) -> bool:
    """Return whether a mechanism's numbers have both of a row's and do not keep it."""
    name = str(row[0])
    other = str(row[2])
    return name in numbers and other in numbers and numbers[name] > float(row[1]) * numbers[other] + 1e-9
