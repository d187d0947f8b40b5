"""Plain words and how a page sets them (``~`` stands for a space that does not break), for Python and the browser."""

SET = {
    "": "",
    "the leaf's edge, both leaves' width": "the leaf’s edge, both leaves’ width",
    "a 'quoted' word": "a 'quoted' word",
    "6'8\" and 6' 8": "6’8\" and 6' 8",
    "o'clock's café's": "o’clock’s café’s",
    "≈ 22 1/2 in of 885 × 2005 mm": "≈~22~1/2~in of 885 ×~2005~mm",
    "63.4 % and 2 kg": "63.4~% and 2~kg",
    "22 inches, 3 mmm, 4 in2, 5 in.": "22 inches, 3 mmm, 4 in2, 5~in.",
    "one in ten": "one in ten",
    "A 1/2 B 1 / 2": "A 1/2 B 1 / 2",
    "7 12/16, 7 1/x, 7 a1/2": "7~12/16, 7 1/x, 7 a1/2",
    "  two  spaces × x ": "  two  spaces × x ",
}
