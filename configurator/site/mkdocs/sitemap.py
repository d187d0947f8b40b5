"""The site map for search engines: only with a public address, and always in the same order."""

from html import escape


def sitemap(address: str, urls: list[str]) -> str:
    """Return ``sitemap.xml`` for pages given from the site's root."""
    lines = "".join(f"<url><loc>{escape(address + url)}</loc></url>\n" for url in sorted(urls))
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        f'<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n{lines}</urlset>\n'
    )
