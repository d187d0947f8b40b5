"""Astragal: coverings for glazed doors, from YAML to geometry, drawings and a static site."""
