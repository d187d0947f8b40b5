"""The face of the site: themes, colours, words as a page sets them, the showroom's own pictures."""
