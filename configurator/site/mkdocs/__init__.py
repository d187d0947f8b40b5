"""The site by way of MkDocs: the plugin, the build, the server, and the files beside the pages."""
