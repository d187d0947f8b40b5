"""Style sheets without their comments and white space say the same to a browser."""

import re

import pytest
from playwright.sync_api import Browser

from configurator.catalog import Catalog
from configurator.places import THEMES
from configurator.site.face.themes import SHARED, style_sheet
from configurator.site.mkdocs.slim import slim_css

RULES = """text => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(text);
  return [...sheet.cssRules].map(rule => rule.cssText);
}"""
ODD = """
/* Don't read "this". */ a :hover , b > c + d ~ e , f:not( .g, h ) { color : red ; ; content : " x ; y /* z */ \\" } " ;
  background: url( data:image/svg+xml;base64,A/*B ) , url("c , d.svg") ; width : calc( 1px + ( 2px - 3px ) ) }
@media ( min-width: 3px ) and (max-width : 9px) , print { i { --room : 1px   2px ; margin : 0 auto !important ; } }
@supports ( display : grid ) { j::before { content : '/* kept */' } }
k{}
"""


def rules(browser: Browser, sheet: str) -> list[str]:
    """Return the rules that a browser reads in a style sheet, in its own spelling but for white space."""
    page = browser.new_page()
    found = page.evaluate(RULES, sheet)
    page.close()
    return [re.sub(r"\s+", " ", re.sub(r"(?<=[,(:])\s+|\s+(?=\))", "", rule)) for rule in found]


def sheets(catalog: Catalog) -> list[str]:
    """Return every style sheet of the site, in each theme."""
    names = [folder.name for folder in THEMES.iterdir() if (folder / "theme.css").exists()]
    own = [style_sheet(catalog.showroom.theme.model_copy(update={"name": name})) for name in names]
    return [*own, (SHARED / "css" / "try.css").read_text(encoding="utf-8")]


def test_every_sheet_keeps_its_rules(browser: Browser, catalog: Catalog) -> None:
    for sheet in sheets(catalog):
        slim = slim_css(sheet)
        assert "/*" not in slim
        assert rules(browser, slim) == rules(browser, sheet)


def test_what_is_asked_of_all_that_a_page_holds_hangs_on_no_attribute(catalog: Catalog) -> None:
    # With an attribute or :not() in a :has() a browser works out the root's style anew with whatever comes anywhere.
    for sheet in sheets(catalog):
        asked = re.findall(r":has\(((?:[^()]|\([^()]*\))*)\)", sheet)
        assert asked
        assert [one for one in asked if "[" in one or ":not(" in one] == []


def test_odd_spellings_keep_their_meaning(browser: Browser) -> None:
    assert rules(browser, slim_css(ODD)) == rules(browser, ODD)
    assert len(rules(browser, ODD)) == 4


@pytest.mark.parametrize(
    ("sheet", "slim"),
    {
        "a { color : red ; }\n\n b , c { }": "a{color :red}b,c{}\n",
        "/* why */ a { content : ' /* x */ ' ; }": "a{content :' /* x */ '}\n",
        "@media ( min-width : 1px ) { a > b { top : 0 } }": "@media (min-width :1px){a > b{top :0}}\n",
    }.items(),
)
def test_what_is_needless_goes(sheet: str, slim: str) -> None:
    assert slim_css(sheet) == slim
