"""The languages that the program speaks, as gettext catalogs, and how words to be translated are marked."""
