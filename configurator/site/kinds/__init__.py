"""The kinds of page: each file prepares what one template is given."""
