"""The face of the site: themes, colors, words as a page sets them, the showroom's own pictures."""
