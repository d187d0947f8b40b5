"""A page as it is written."""

from configurator.drawing.page_patterns import page_patterns
from configurator.site.house import House
from configurator.site.kinds.frame import frame
from configurator.site.mkdocs.slim import slim
from configurator.site.site_page import SitePage


def painted(html: str) -> str:
    """Return a page with the patterns that its drawings are filled with."""
    return html.replace("</body>", f"{page_patterns(html)}</body>", 1)


def page_html(house: House, page: SitePage) -> str:
    """Return a page, as it was last written where nothing that it shows has changed."""
    key = house.page_key(page) if page.inputs else ""
    kept = house.answers.page(house.root + page.url, key) if key else None
    if kept is not None:
        return kept
    template = house.environment.get_template(page.template)
    html = slim(painted(template.render({**frame(house, page), **page.given()})))
    if key:
        house.answers.keep_page(house.root + page.url, key, html)
    return html
