"""How many coverings a sieve has left, told in each language's forms."""

from dataclasses import replace

from configurator.catalog import Catalog
from configurator.kernel.tongue import ENGLISH, FORMS, Words
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.house import House
from configurator.site.kinds.coverings_page import counted_coverings
from configurator.tongues.speech import locale_of, plural_places

NONE = "No covering has all of that. Take one wish back, or search with fewer or other words."
POLISH: Words = {
    **ENGLISH,
    "language": "pl",
    "said": {
        FORMS.join(["{count} covering", "{count} coverings"]): FORMS.join(
            ["{count} zasłona", "{count} zasłony", "{count} zasłon"]
        ),
        NONE: "Żadna.",
    },
    "plural": plural_places(locale_of("pl")),
}


def test_each_number_has_the_form_of_the_language(catalog: Catalog) -> None:
    told = counted_coverings(House(replace(catalog, words=POLISH), CONTENT, Answers()))
    assert told[:6] == ["Żadna.", "1 zasłona", "2 zasłony", "3 zasłony", "4 zasłony", "5 zasłon"]
    assert len(told) == len(catalog.families) + 1


def test_english_tells_one_from_many(catalog: Catalog) -> None:
    told = counted_coverings(House(catalog, CONTENT, Answers()))
    assert told[:3] == [
        NONE,
        "1 covering",
        "2 coverings",
    ]
