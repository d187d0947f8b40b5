"""The files beside the pages: style, scripts, icons, link previews and photographs."""

from functools import partial
from hashlib import sha256

from configurator.browser import catalog_js, configurator_scripts, late_js, prices_js
from configurator.browser.small_script import small_script
from configurator.drawing.icon import icon_png
from configurator.drawing.look_rules import look_rules
from configurator.site.drawings.cards import cards
from configurator.site.drawings.every_look import every_look
from configurator.site.drawings.rooms import first_room_files, hero_focus, room_files
from configurator.site.drawings.shown_photos import photo_files
from configurator.site.face.themes import SHARED, style_sheet
from configurator.site.face.webfonts import FEATURES, WebFont, characters, font_rules, web_fonts
from configurator.site.house import House
from configurator.site.mkdocs.asset_names import full_file
from configurator.site.mkdocs.examples import example_js
from configurator.site.mkdocs.slim import slim_css

Files = dict[str, str | bytes]
# The scripts of pages that are read; each is of one or several files, since a page that shows what a device keeps needs
# one that keeps it.
STATIC_SCRIPTS = {
    "page.js": ("page.js",),
    "kept.js": ("kept.js",),
    "mine.js": ("kept.js", "mine.js"),
    "sieve.js": ("sieve.js",),
}
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
        **first_room_files(house),
        **room_files(house),
        **cards(house),
    }


def own_cards(house: House) -> Files:
    """Return the link previews that are not those of the first language, and have the house know them."""
    shared = cards(house.first)
    files: Files = {url: card for url, card in cards(house).items() if card != shared[url]}
    house.own_cards = set(files)
    return files


def joined(folder: str, names: tuple[str, ...]) -> str:
    """Return what all themes share of style or of scripts as one."""
    return "".join((SHARED / folder / name).read_text(encoding="utf-8") for name in names)


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
        **{f"assets/{name}": small_script(joined("scripts", files)) for name, files in STATIC_SCRIPTS.items()},
        "assets/site.css": slim_css(site_style(house)),
        **{f"assets/{name}": slim_css(joined("css", sheets)) for name, sheets in PAGE_STYLES.items()},
    }


def keeping() -> Files:
    """Return the scripts of a site that is kept on its readers' devices, which one within another site is not."""
    device = small_script(joined("scripts", ("device.js",)))
    full = full_file("device.js", device)
    page = joined("scripts", ("page.js", "keeps.js")).replace('"device.js"', f'"{full}"')
    return {"assets/page.js": small_script(page), "assets/device.js": device}


def scripts(house: House) -> Files:
    """Return the scripts, which speak a language; the catalog's has the others' full names."""
    own = page_scripts(house)
    made = {**own, PRICE_SCRIPT: prices_js(house.catalog) + own.get(PRICE_SCRIPT, "")}
    late = {name: full_file(name, text) for name, text in made.items()}
    return {
        **{f"assets/{name}": text for name, text in made.items()},
        "assets/catalog.js": catalog_js(house.catalog) + late_js(late),
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
