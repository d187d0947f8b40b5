"""The files beside the pages: style, scripts, icons, link previews and photographs."""

from functools import partial
from hashlib import sha256

from configurator.browser import catalog_js, configurator_scripts, prices_js
from configurator.browser.squeeze import squeezed
from configurator.drawing.icon import icon_png
from configurator.drawing.look_rules import look_rules
from configurator.site.drawings.cards import cards
from configurator.site.drawings.every_look import every_look
from configurator.site.drawings.rooms import first_room, hero_focus, room_files
from configurator.site.drawings.shown_photos import photo_files
from configurator.site.face.themes import SHARED, style_sheet
from configurator.site.face.webfonts import FEATURES, WebFont, characters, font_rules, web_fonts
from configurator.site.house import House
from configurator.site.mkdocs.examples import example_js
from configurator.site.mkdocs.slim import slim_css

Files = dict[str, str | bytes]
STATIC_SCRIPTS = [SHARED / "scripts" / name for name in ("page.js", "kept.js", "mine.js", "sieve.js")]
# The style of pages that are worked with, and of the papers that they print.
PAGE_STYLES = {"try.css": ("try.css", "paper.css"), "visits.css": ("visits.css",), "proposals.css": ("proposals.css",)}
# The script that tells prices; what they are worked out from goes before it, so that both come when they are wanted.
PRICE_SCRIPT = "astragal-price.js"
ICON_SIDES = (48, 180, 512)


def asset_files(house: House) -> Files:
    """Return every asset of a language by its address; what holds no words is the first language's alone."""
    if house is not house.first:
        return {**scripts(house), **own_cards(house)}
    return {
        **wordless(house),
        **scripts(house),
        **icons(house),
        **examples(house),
        **photo_files(house),
        **first_room(house),
        **room_files(house),
        **cards(house),
    }


def own_cards(house: House) -> Files:
    """Return the link previews that are not those of the first language, and have the house know them."""
    shared = cards(house.first)
    files: Files = {url: card for url, card in cards(house).items() if card != shared[url]}
    house.own_cards = set(files)
    return files


def joined_styles(sheets: tuple[str, ...]) -> str:
    """Return style sheets as one."""
    return "".join((SHARED / "css" / name).read_text(encoding="utf-8") for name in sheets)


def letters_of(house: House) -> str:
    """Return the characters that a site uses in any of its languages."""
    said = [repr(tongue.catalog) for tongue in house.tongues]
    return characters([*said, *(page.read_text(encoding="utf-8") for page in house.catalog.pages)])


def own_fonts(house: House) -> list[tuple[WebFont, bytes]]:
    """Return the fonts that a site's pages need, each as WOFF2 with the site's letters."""
    letters = letters_of(house)
    return [(font, lettered(house, font, letters)) for font in web_fonts(house.showroom.theme.typefaces)]


def lettered(house: House, font: WebFont, letters: str) -> bytes:
    """Return a font as WOFF2 with some letters."""
    whole = font.content()

    def made() -> bytes:
        # Imported here, as hardly any build makes a font anew.
        from configurator.site.face.subset import subset

        return subset(whole, letters, font.family, FEATURES)

    return house.once(made, "font", font.family, letters, sha256(whole).hexdigest())


def site_style(house: House) -> str:
    """Return the style of every page: fonts, the theme's, that of each look, and what of the first picture stays in
    view."""
    focus = f".hero>img{{object-position:{hero_focus(house)}}}\n"
    fonts = font_rules(own_fonts(house))
    return fonts + style_sheet(house.showroom.theme) + look_rules(every_look(house)) + focus


def wordless(house: House) -> Files:
    """Return style sheets, and the scripts of static pages, which say only what pages give them to say."""
    return {
        **{f"assets/{path.name}": squeezed(path.read_text(encoding="utf-8")) for path in STATIC_SCRIPTS},
        "assets/site.css": slim_css(site_style(house)),
        **{f"assets/{name}": slim_css(joined_styles(sheets)) for name, sheets in PAGE_STYLES.items()},
    }


def keeping() -> Files:
    """Return the scripts of a site that is kept on its readers' devices, which one within another site is not."""
    page, keeps, device = [
        (SHARED / "scripts" / name).read_text(encoding="utf-8") for name in ("page.js", "keeps.js", "device.js")
    ]
    return {"assets/page.js": squeezed(page + keeps), "assets/device.js": squeezed(device)}


def scripts(house: House) -> Files:
    """Return the scripts, which speak a language."""
    made = page_scripts(house)
    return {
        **{f"assets/{name}": script for name, script in made.items()},
        f"assets/{PRICE_SCRIPT}": prices_js(house.catalog) + made.get(PRICE_SCRIPT, ""),
        "assets/catalog.js": catalog_js(house.catalog),
    }


def page_scripts(house: House) -> dict[str, str]:
    """Return the configurator's scripts by file name."""
    scripts = SHARED / "js"
    stamps = [[path.name, path.read_text(encoding="utf-8")] for path in sorted(scripts.glob("*.js"))]
    return house.once(partial(configurator_scripts, scripts, house.words), "scripts", stamps)


def examples(house: House) -> Files:
    """Return the example visits, each a script."""
    visits = house.catalog.visits
    return {
        f"assets/example-{name}.js": house.once(partial(example_js, one), "example", one)
        for name, one in visits.items()
    }


def icons(house: House) -> Files:
    """Return the icons, from the logo where that is a bitmap."""
    colors = house.showroom.theme.colors
    four = (colors.paper, colors.ink, colors.warm, colors.cool)
    return {f"assets/icon-{side}.png": icon_png(side, house.logo, four) for side in ICON_SIDES}
