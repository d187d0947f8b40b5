"""One page of every kind that a site has, by what the kind is called."""

KINDS = {
    "home": "index.html",
    "coverings": "coverings/index.html",
    "a family": "coverings/cellular-shade.html",
    "doors": "doors/index.html",
    "a door": "doors/garden-pair.html",
    "a family on a door": "doors/garden-pair/cellular-shade.html",
    "measure": "measure.html",
    "guides": "guides/index.html",
    "a guide": "guides/handles.html",
    "the configurator": "try.html",
    "visits": "visits.html",
    "proposals": "proposals.html",
    "a page that is not there": "404.html",
    "imprint": "imprint.html",
    "privacy": "privacy.html",
}
