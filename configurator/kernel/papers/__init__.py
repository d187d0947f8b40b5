"""What papers hold: the order to the workroom, the installer's sheet, the measuring sheet, as blocks."""
