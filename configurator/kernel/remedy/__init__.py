"""What would mend it: changes that are made and asked again, never guessed.

A page takes them in steps that block no frame: :func:`configurator.kernel.remedy.search.search_for` once, given
what has been asked of the covering already, then
:func:`configurator.kernel.remedy.search.search_on` as often as a frame has time for it, until the search is ``done``;
:func:`configurator.kernel.remedy.fixes.fixes_found` may be asked after any step, and tells something new when another
trial has ended. :func:`configurator.kernel.remedy.fixes.fixes` does it all in one call.
"""
