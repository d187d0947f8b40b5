"""What would mend it: changes that are made and asked again, never guessed.

A page takes them in steps that block no frame: :func:`configurator.kernel.remedy.plight.plight_of` once, a step of
:func:`configurator.kernel.remedy.plight.tried` for each of ``single_changes`` and, where ``unmended`` names anything,
for each of ``pair_changes``; ``best_fixes`` may be asked after any of them. ``fixes`` does it all in one call.
"""
