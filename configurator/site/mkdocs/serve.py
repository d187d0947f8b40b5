"""The site on this machine while its content is being written: every change is there a second later."""

import socket
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory
from urllib.parse import urlsplit

from mkdocs.livereload import LiveReloadServer

from configurator.catalog import ContentProblems
from configurator.catalog.own_address import public_address
from configurator.catalog.site_addresses import WORKER
from configurator.kernel.message import message, say_phrase
from configurator.kernel.tongue import Words, in_words, wording
from configurator.places import THEMES
from configurator.site.answers import Answers
from configurator.site.kinds.policy import without_policy
from configurator.site.mkdocs.build import build
from configurator.site.mkdocs.kept_answers import keep_answers, known_answers
from configurator.site.mkdocs.worker import aside_js

# How many answers stay for each that the first build asked for: a day of edits takes no more memory than a few.
KEPT = 2


def say(words: str) -> None:
    """Tell whoever runs the server."""
    print(words, file=sys.stderr, flush=True)


def free_port(host: str, port: int) -> int:
    """Return the port, or any free one for 0.

    :raises OSError: when the port is taken
    """
    with socket.create_server((host, port)) as probe:
        return int(probe.getsockname()[1])


def build_unkept(content: Path, out: Path, answers: Answers) -> None:
    """Build a site that no browser keeps, as it is about to change, and to whose pages the server may add."""
    build(content, out, answers)
    for page in out.rglob("*.html"):
        page.write_text(without_policy(page.read_text(encoding="utf-8")), encoding="utf-8", newline="\n")
    (out / WORKER).write_text(aside_js(), encoding="utf-8")


@dataclass(frozen=True)
class Served:
    """The site in ``out`` that is built again at every change of ``content``, of which is told in ``words``."""

    content: Path
    out: Path
    answers: Answers
    words: Words

    def begin(self) -> int:
        """Build it, and return how many answers are kept from one change to the next.

        :raises ContentProblems: when the content is unsound from the start
        """
        build_unkept(self.content, self.out, self.answers)
        keep_answers(self.answers, self.content)
        return KEPT * self.answers.count

    def rebuild(self, most: int) -> None:
        """Build it again; what is wrong with the content is told, and the last good site stays."""
        try:
            build_unkept(self.content, self.out, self.answers)
            say(in_words(wording("Built."), self.words))
        except ContentProblems as found:
            for line in found.lines(self.words):
                say(line)
            say(in_words(wording("The last good site stays until this is put right."), self.words))
        self.answers.forget_all_but(most)


class Listening(LiveReloadServer):
    """A server that says where it is once whoever asks there is heard."""

    begun: Callable[[], None]

    def server_activate(self) -> None:
        """Listen, and say so."""
        super().server_activate()
        self.begun()


def serve(content: Path, host: str, port: int, words: Words) -> None:
    """Build, serve and build again at every change of content or themes, until interrupted; tell it in ``words``.

    :raises ContentProblems: when the content is unsound from the start
    :raises OSError: when the port is taken, before anything is built
    """
    port = free_port(host, port)
    # The page for addresses that lead nowhere names the site's path.
    path = urlsplit(public_address(content)).path or "/"
    answers = known_answers(content)
    with TemporaryDirectory(prefix="astragal-") as folder:
        out = Path(folder) / "site"
        served = Served(content, out, answers, words)
        most = served.begin()
        heard = Listening(lambda: served.rebuild(most), host, port, str(out), path, polling_interval=0.3)
        server: LiveReloadServer = heard
        server.error_handler = lambda code: (out / "404.html").read_bytes() if code == 404 else None
        for watched in (content, THEMES):
            server.watch(str(watched))
        named: dict[str, list[float | str]] = {"content": [str(content), "name"], "address": [server.url, "name"]}
        told = say_phrase(message("Serving {content} on {address}; Ctrl-C ends it.", named), words, "in")
        heard.begun = lambda: say(told)
        try:
            server.serve()
        except KeyboardInterrupt:
            server.shutdown()
        keep_answers(answers, content)
