"""Papers on their way out: the blocks of the kernel as PDF, as a page for a browser's print, as a table and as data."""
