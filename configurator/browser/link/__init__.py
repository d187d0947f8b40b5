"""The link that carries configurations in an address's fragment: versioned, readable, short.

    1/in/garden-pair;glass_width=22.625in:cellular-shade;lift=motor@0.35/3k9xq2f7

Version, units (and who lives there, where that differs), then one part for each door: the door
with what differs from its preset, and after each colon a covering with the choices that differ
and its position, then the check. Numbers are millimetres, or inches with ``in``; they survive
exactly. Written in the portable dialect: it runs in the browser.
"""

from configurator.browser.link.decode import decode
from configurator.browser.link.encode import encode
from configurator.browser.link.state import fresh_state

__all__ = ["decode", "encode", "fresh_state"]
