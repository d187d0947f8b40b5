"""Make the scripts of the pages in our own language, so that the first build finds them beside the bytecode."""

from configurator.browser.script import configurator_scripts
from configurator.kernel.tongue import ENGLISH
from configurator.places import THEMES

configurator_scripts(THEMES / "shared" / "js", ENGLISH)
