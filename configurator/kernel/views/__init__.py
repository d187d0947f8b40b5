"""Elevation, section and plan: projections of the pieces into marks on paper."""
