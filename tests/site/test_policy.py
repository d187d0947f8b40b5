"""No page brings a script or a style but the site's own files, and each says so to the browser."""

import json
import re
from pathlib import Path

import pytest
from lxml.etree import _Element

from tests.site.pages import pages, parsed

POLICY = "default-src 'self';img-src 'self' data:;font-src data:;base-uri 'none';form-action 'none'"
# What a browser reads as data and never runs.
DATA_TYPES = ("application/ld+json", "application/json")
ADDRESSES = ("href", "src", "action", "formaction", "data")


def own_live_parts(root: _Element) -> list[str]:
    """Return what in a page would run or look by itself: scripts and styles in it, handlers, addresses that run."""
    found = ["style" for _ in root.xpath("//style | //*[@style]")]
    found += ["script" for one in root.xpath("//script[not(@src)]") if one.get("type") not in DATA_TYPES]
    found += [str(name) for name in root.xpath("//@*[starts-with(name(), 'on')]")]
    for name in ADDRESSES:
        addresses = root.xpath(f"//@{name}")
        found += [str(address) for address in addresses if str(address).strip().lower().startswith("javascript:")]
    return found + [str(one) for one in root.xpath("//link[@rel='stylesheet']/@href") if str(one).startswith("data:")]


@pytest.mark.parametrize("theme", ["demo", "other_theme"])
def test_every_page_has_the_policy_before_all_that_it_rules(request: pytest.FixtureRequest, theme: str) -> None:
    for page in pages(request.getfixturevalue(theme)):
        charset, policy = parsed(page)[0].xpath("/html/head/*")[:2]
        assert charset.get("charset") == "utf-8", page
        assert (policy.get("http-equiv"), policy.get("content")) == ("content-security-policy", POLICY), page


@pytest.mark.parametrize("theme", ["demo", "other_theme"])
def test_no_page_runs_or_looks_but_by_the_site_s_files(request: pytest.FixtureRequest, theme: str) -> None:
    found = {page: own_live_parts(parsed(page)[0]) for page in pages(request.getfixturevalue(theme))}
    assert {page: parts for page, parts in found.items() if parts} == {}


def test_the_page_that_a_device_shows_without_a_signal_has_it_too(demo: Path) -> None:
    worker = (demo / "sw.js").read_text(encoding="utf-8")
    assert json.dumps(POLICY)[1:-1] in worker
    assert re.search(r"""charset="utf-8">'\+\w+\.policy\+""", worker)


def test_what_runs_or_looks_by_itself_is_found(tmp_path: Path) -> None:
    page = tmp_path / "page.html"
    page.write_text(
        "<!doctype html><title>x</title><link rel=stylesheet href='data:text/css,p{}'><style>p{}</style>"
        "<p style='color:red' onclick='x()'><a href=' javascript:x()'>x</a><script>x()</script>"
        '<script type="application/json">{}</script><script src="x.js"></script>'
    )
    expected = ["style", "style", "script", "x()", " javascript:x()", "data:text/css,p{}"]
    assert own_live_parts(parsed(page)[0]) == expected
