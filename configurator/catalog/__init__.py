"""The catalog: a content folder of YAML read, checked and handed on in the kernel's shapes."""

from configurator.catalog.load import Catalog, Reading, Wanted, load
from configurator.catalog.problem import ContentProblems, Problem

__all__ = ["Catalog", "ContentProblems", "Problem", "Reading", "Wanted", "load"]
