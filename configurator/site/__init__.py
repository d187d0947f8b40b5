"""The site: which pages exist, what each is given, and how MkDocs writes them to a folder."""

from configurator.site.mkdocs.build import NotASite, build
from configurator.site.mkdocs.serve import serve

__all__ = ["NotASite", "build", "serve"]
