"""Geometry and physics of coverings on glazed doors, in the portable dialect.

Everything below this package is pure functions on numbers, strings, lists and
string-keyed dicts, so that the same files run in Python and, translated, in a browser.
Lengths are millimeters, angles degrees, shares 0 to 1.
"""
