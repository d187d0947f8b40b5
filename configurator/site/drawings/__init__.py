"""The drawings of the pages, and what is drawn on cards."""
