"""What gathered and pleated cloth shares: how much of it the workroom cuts."""

GATHER_TAKES: dict[str, list[str | float | None]] = {
    "fullness": ["count", 0.0, "width of cloth for each width of panel; 0 where nothing is gathered"],
    "bolt_width": ["size", 1372.0, "width of the cloth on the bolt"],
    "side_allowance": ["length", 150.0, "cloth for returns and side hems, added once to the gathered width"],
    "cut_allowance": ["length", 250.0, "cloth for casings, header and hem, added to the finished height"],
    "pattern_repeat": ["length", 0.0, "repeat of the pattern along the cloth; 0 for plain cloth"],
}
