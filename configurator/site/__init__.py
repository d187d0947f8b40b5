"""The site: which pages exist, what each is given, and how MkDocs writes them to a folder."""

from configurator.site.build import NotASite, build
from configurator.site.serve import serve

__all__ = ["NotASite", "build", "serve"]
