"""A visit: a house with its doors, what was proposed for each and what was agreed."""
