"""Showing a folder in a browser on this machine, and to nobody else."""

import os
import sys
import webbrowser
from contextlib import suppress
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from socket import socket

import click

from configurator.kernel.message import message
from configurator.spoken import told

HOST = "127.0.0.1"


class QuietHandler(SimpleHTTPRequestHandler):
    """Serves files without a line for each request."""

    protocol_version = "HTTP/1.1"
    # A body goes out at once, though the browser has not yet acknowledged the head: it takes 40 ms to.
    disable_nagle_algorithm = True

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002 - the base class names it so
        """Say nothing."""


class QuietServer(ThreadingHTTPServer):
    """Says nothing of a browser that hangs up before it has its answer, as browsers do."""

    def handle_error(self, request: socket | tuple[bytes, socket], client_address: object) -> None:
        """Tell what went wrong with a request."""
        if not isinstance(sys.exception(), ConnectionError):
            super().handle_error(request, client_address)


def folder_server(folder: Path, port: int) -> ThreadingHTTPServer:
    """Return a server for a folder, not yet running; port 0 takes any free one.

    :raises OSError: when the port is taken
    """
    return QuietServer((HOST, port), partial(QuietHandler, directory=str(folder)))


def address_of(server: ThreadingHTTPServer) -> str:
    """Return the address at which the server answers."""
    return f"http://{HOST}:{server.server_address[1]}/"


def open_browser(address: str) -> None:
    """Open the browser of the desktop, where there is a desktop."""
    if sys.platform == "darwin" or os.environ.get("DISPLAY") or os.environ.get("WAYLAND_DISPLAY"):
        webbrowser.open(address)


def show(server: ThreadingHTTPServer) -> None:
    """Serve and open the browser on it, until interrupted."""
    click.echo(told(message("Serving it at {address} - Ctrl-C ends it.", {"address": [address_of(server), "name"]})))
    open_browser(address_of(server))
    with server, suppress(KeyboardInterrupt):
        server.serve_forever()
