"""The schemas of the content's files: one model a file, in the manner in which people write them."""
