"""What search engines are told of a site with a public address: its map, always in one order, and where that is."""

from html import escape


def sitemap(address: str, urls: list[str]) -> str:
    """Return ``sitemap.xml`` for pages given from the site's root."""
    lines = "".join(f"<url><loc>{escape(address + url)}</loc></url>\n" for url in sorted(urls))
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        f'<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">\n{lines}</urlset>\n'
    )


def robots(address: str) -> str:
    """Return ``robots.txt``, which engines read where the address is that of a whole host."""
    lines = {"User-agent": "*", "Allow": "/", "Sitemap": f"{address}sitemap.xml"}
    return "".join(f"{name}: {value}\n" for name, value in lines.items())
