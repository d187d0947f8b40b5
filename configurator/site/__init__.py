"""The site: which pages exist, what each is given, and how MkDocs writes them to a folder."""
