"""The site on this machine while its content is being written: every change is there a second later."""

import socket
import sys
from functools import partial
from pathlib import Path
from tempfile import TemporaryDirectory

from mkdocs.livereload import LiveReloadServer

from configurator.catalog import ContentProblems, load
from configurator.kernel.message import message, say
from configurator.kernel.tongue import Words, in_words, wording
from configurator.places import THEMES
from configurator.site.answers import Answers
from configurator.site.house import Terms
from configurator.site.mkdocs.build import build


def tell(line: str) -> None:
    """Tell whoever runs the server."""
    print(line, file=sys.stderr, flush=True)


def free_port(host: str, port: int) -> int:
    """Return the port, or any free one for 0.

    :raises OSError: when the port is taken
    """
    with socket.create_server((host, port)) as probe:
        return int(probe.getsockname()[1])


def rebuild(content: Path, out: Path, answers: Answers, words: Words) -> None:
    """Build again; what is wrong with the content is told, and the last good site stays."""
    try:
        build(content, out, answers)
        tell(in_words(wording("Built."), words))
    except ContentProblems as found:
        for problem in found.problems:
            tell(str(problem))
        tell(in_words(wording("The last good site stays until this is put right."), words))


def serve(content: Path, host: str, port: int) -> None:
    """Build, serve and build again at every change of content or themes, until interrupted.

    :raises ContentProblems: when the content is unsound from the start
    :raises OSError: when the port is taken, before anything is built
    """
    port = free_port(host, port)
    words = load(content).words
    answers = Answers()
    with TemporaryDirectory(prefix="astragal-") as folder:
        out = Path(folder) / "site"
        build(content, out, answers)
        again = partial(rebuild, content, out, answers, words)
        server = LiveReloadServer(again, host, port, str(out), polling_interval=0.3)
        server.error_handler = lambda code: (out / "404.html").read_bytes() if code == 404 else None
        for watched in (content, THEMES):
            server.watch(str(watched))
        terms: Terms = {"content": [str(content), "name"], "address": [server.url, "name"]}
        tell(say(message("Serving {content} on {address}; Ctrl-C ends it.", terms), words, "mm"))
        try:
            server.serve()
        except KeyboardInterrupt:
            server.shutdown()
