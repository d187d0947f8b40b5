"""A drawing (SVG) that may stand in a page: lines, shapes and words, and nothing that runs or fetches anything.

What else a file holds is refused where it stands rather than taken out: whoever drew it knows better what it was for.
"""

import re
from pathlib import Path
from xml.parsers.expat import ExpatError, ParserCreate

from configurator.catalog.clauses import Clauses
from configurator.catalog.files import shown
from configurator.catalog.located import ContentFile, read_text
from configurator.catalog.problem import Problem
from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Message

SVG = "http://www.w3.org/2000/svg"
# Elements of SVG 2 that draw or group; none of them runs a script or loads another file by itself.
DRAWS = {
    *("svg", "g", "defs", "symbol", "use", "title", "desc"),
    *("path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text", "tspan"),
    *("linearGradient", "radialGradient", "stop", "clipPath", "mask", "pattern", "marker"),
}
# What points out of the drawing, in an attribute that paints.
POINTS_OUT = re.compile(r"url\(\s*['\"]?\s*(?!['\"\s#])|@import|\\", re.IGNORECASE)
LARGEST = 1_000_000
OUT = plain("take it out")
UNSOUND = (plain("the drawing is no sound SVG here"), plain("save it again as plain SVG"))


def note_drawing(path: Path, problems: list[Problem]) -> None:
    """Note the first thing in a drawing that may not stand there, at its line and column."""
    if path.stat().st_size > LARGEST:
        large = message("the drawing is larger than {most} kB", {"most": [LARGEST // 1000, "count"]})
        problems.append(Problem(shown(path), 1, 1, (large, plain("take out what is not seen"))))
        return
    file = ContentFile(shown(path))
    text = read_text(path, file)
    problems += file.problems
    reader = DrawingReader()
    if text is not None and not reader.reads(text.encode()):
        problems.append(Problem(shown(path), *reader.spot, reader.fault))


class DrawingReader:
    """One run over a drawing, up to the first fault."""

    def __init__(self) -> None:
        self.fault: Clauses = ()
        self.spot = (1, 1)
        self.parser = ParserCreate(namespace_separator=" ")
        self.parser.StartElementHandler = self.element
        self.parser.StartDoctypeDeclHandler = self.doctype
        self.parser.ProcessingInstructionHandler = self.instruction

    def reads(self, data: bytes) -> bool:
        """Return whether a drawing holds nothing but what draws; if not, ``fault`` and ``spot`` tell the first slip."""
        try:
            self.parser.Parse(data, True)
        except ExpatError as slip:
            if not self.fault:
                self.fault, self.spot = UNSOUND, (slip.lineno, slip.offset + 1)
        return not self.fault

    def refuse(self, what: Message) -> None:
        """Note the first fault, where the parser stands."""
        if not self.fault:
            self.fault = (what, OUT)
            self.spot = (self.parser.CurrentLineNumber, self.parser.CurrentColumnNumber + 1)

    def doctype(self, *given: object) -> None:
        """Refuse a document type, which may define what it likes."""
        self.refuse(plain("a document type stands here"))

    def instruction(self, *given: object) -> None:
        """Refuse an instruction, such as one that names a style sheet."""
        self.refuse(plain("an instruction stands here"))

    def element(self, name: str, attributes: dict[str, str]) -> None:
        """Refuse what does not draw, and what an element says beside how it is drawn."""
        space, _, local = name.rpartition(" ")
        if space != SVG or local not in DRAWS:
            self.refuse(message("<{element}> does not draw", {"element": [local, "name"]}))
        for key, value in attributes.items():
            attribute = key.rpartition(" ")[2]
            if attribute.lower().startswith("on"):
                self.refuse(message("'{attribute}' runs a script", {"attribute": [attribute, "name"]}))
            elif POINTS_OUT.search(value) or (attribute == "href" and not value.startswith("#")):
                out = message("'{attribute}' points out of the drawing", {"attribute": [attribute, "name"]})
                self.refuse(out)
