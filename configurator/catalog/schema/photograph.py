"""A photograph, wherever content shows one: of the showroom, a family, an option or a door."""

from typing import Annotated

from configurator.catalog.fields import Like
from configurator.catalog.schema.base import Constant, Line, Section
from configurator.kernel.tongue import wording

SHARE = r"(100|\d{1,2})%"


class Photograph(Section):
    """A photograph of the content's ``pictures``: what it shows, for those who cannot see it; where its subject is, in
    shares of its width and height, so that it stays in sight however the picture is cut; and who took it."""

    file: Constant
    alt: Line
    focus: Annotated[str, Like(f"{SHARE} {SHARE}", wording("a place in the picture"), "40% 60%")] = "50% 50%"
    credit: Line = ""

    @property
    def middle(self) -> tuple[float, float]:
        """Where the subject is, as shares of the width and the height."""
        across, down = (int(share.removesuffix("%")) / 100 for share in self.focus.split())
        return across, down
