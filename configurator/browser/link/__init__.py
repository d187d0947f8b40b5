"""The link that carries configurations in an address's fragment: versioned, readable, short.

    2/in/garden-pair;glass_width=22.625in:cellular-shade;fabric=snow;lift=motor@0.35@w25in,h68in,s4in,clears/3k9xq

Version, units (and who lives there, where that differs), then one part for each door: the door with every
measurement that was made, and after each colon a covering with all its picks, after ``@`` its position and after
another what came of it (:mod:`configurator.browser.link.outcome`); at the end the check of the text. Numbers are
millimeters, or inches with ``in``; they survive exactly. What came of it is asked anew when the link is opened, and
where it differs both are told. Written in the portable dialect: it runs in the browser.

A link of version 1 spells only the picks that are not the first, says nothing of what came of it, and has three more
letters after its check. They stood for all the numbers behind it by name, and so would differ for every link as soon
as there is one number more, whether that changes anything or not. As nothing of them can be compared by itself, they
are read over.
"""

from configurator.browser.link.decode import decode
from configurator.browser.link.encode import encode
from configurator.browser.link.state import fresh_state

__all__ = ["decode", "encode", "fresh_state"]
