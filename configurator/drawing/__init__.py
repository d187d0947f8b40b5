"""Marks as pictures: SVG for pages and files, PNG where a bitmap is wanted."""
