"""What there is to translate, and the catalogs that translators fill."""
