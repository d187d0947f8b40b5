"""Where a covering sits: its size, its mounting plane and what limited it."""
