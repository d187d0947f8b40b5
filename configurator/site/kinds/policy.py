"""What a page lets a browser do: run and show what lies beside it in the site, and nothing else."""

from markupsafe import Markup

# Browsers take 'self' for the disk, too, where a page is read from one. Pictures that are an address are the logo, the
# signs of verdicts and a drawing that is handed on.
MAY_COME_FROM = {
    "default-src": ["'self'"],
    "img-src": ["'self'", "data:"],
    "base-uri": ["'none'"],
    "form-action": ["'none'"],
}
RULES = ";".join(" ".join([what, *sources]) for what, sources in MAY_COME_FROM.items())
POLICY = Markup(f'<meta http-equiv="content-security-policy" content="{RULES}">')


def without_policy(html: str) -> str:
    """Return a page that lets others add to it, as MkDocs' server does while the content is being written."""
    return html.replace(POLICY, "", 1)
