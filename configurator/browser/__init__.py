"""The kernel as JavaScript, the catalog as JSON and the links that carry a configuration."""

from configurator.browser.catalog_json import catalog_json
from configurator.browser.declarations import kernel_declarations
from configurator.browser.script import catalog_js, configurator_scripts, late_js, prices_js
from configurator.browser.translate import kernel_js

__all__ = [
    "catalog_js",
    "catalog_json",
    "configurator_scripts",
    "kernel_declarations",
    "kernel_js",
    "late_js",
    "prices_js",
]
