"""A showroom's own files that stand in the site as they are: hidden ones too, as hosts ask for them."""

import shutil
from pathlib import Path

from configurator.catalog.site_addresses import carried
from configurator.catalog.static import STATIC


def add_static(content: Path, site: Path) -> None:
    """Copy the files of a content's folder ``static`` into a site, each to the same address.

    None stands where the site has its own: that has been told as the content was read.
    """
    home = content / STATIC
    for file in carried(home):
        target = site / file.relative_to(home)
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(file, target)
