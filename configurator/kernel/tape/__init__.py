"""What a tape takes of a door, its handle and its household: one table for content, links, pages and drawings."""
