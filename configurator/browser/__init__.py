"""The kernel as JavaScript, the catalog as JSON and the links that carry a configuration."""

from configurator.browser.translate import kernel_js

__all__ = ["kernel_js"]
