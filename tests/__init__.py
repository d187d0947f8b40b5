"""The same rooms again, as tests; ``python -m tests`` runs everything that must hold."""
