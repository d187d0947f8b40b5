"""Firefox and WebKit come as Debian's packages; where there is no Debian, there is only Chromium to be tried."""

import sys

collect_ignore = ["test_engines.py"] if sys.platform == "darwin" else []
