"""What a page lets a browser do: run and show what lies beside it in the site, and nothing else."""

from markupsafe import Markup

# Browsers take 'self' for the disk, too, where a page is read from one. Pictures that are an address are the logo, the
# signs of verdicts and a drawing that is handed on; fonts come within the style sheet.
MAY_COME_FROM = {
    "default-src": ["'self'"],
    "img-src": ["'self'", "data:"],
    "font-src": ["data:"],
    "base-uri": ["'none'"],
    "form-action": ["'none'"],
}


def policy_tag(may_come_from: dict[str, list[str]]) -> Markup:
    """Return the tag that tells a browser where each kind of thing may come from."""
    rules = ";".join(" ".join([what, *sources]) for what, sources in may_come_from.items())
    return Markup(f'<meta http-equiv="content-security-policy" content="{rules}">')


POLICY = policy_tag(MAY_COME_FROM)


def without_policy(html: str) -> str:
    """Return a page that lets others add to it, as MkDocs' server does while the content is being written."""
    return html.replace(POLICY, "", 1)
