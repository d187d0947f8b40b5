"""Whatever lies in a content folder is content or is told: nothing hangs, fills the memory or leads outside."""

import os
from pathlib import Path

import pytest
from PIL import Image

from configurator.catalog import ContentProblems, load

SVG = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">\n{inner}\n</svg>\n'


def told(content: Path) -> list[str]:
    """Return what the check says of a folder."""
    try:
        load(content)
    except ContentProblems as found:
        return [str(problem) for problem in found.problems]
    return []


def page(content: Path, text: str | bytes) -> None:
    """Write a page into the content."""
    data = text if isinstance(text, bytes) else text.encode()
    (content / "pages" / "more.md").write_bytes(data)


@pytest.mark.parametrize("name", ["doors/pipe.yaml", "pages/pipe.md", "words/es.po", "showroom.yaml"])
def test_a_pipe_is_told_and_nobody_waits_for_it(content: Path, name: str) -> None:
    (content / name).unlink(missing_ok=True)
    (content / name).parent.mkdir(exist_ok=True)
    os.mkfifo(content / name)
    assert f"content/{name}:1:1: this is no file that can be read; put a file of text here" in told(content)


@pytest.mark.parametrize("name", ["doors/far.yaml", "pages/far.md", "pictures/far.png", "pages/far.txt"])
def test_no_link_leads_out_of_the_folder(content: Path, tmp_path: Path, name: str) -> None:
    (tmp_path / "secret").write_text("mine")
    (content / name).parent.mkdir(exist_ok=True)
    (content / name).symlink_to(tmp_path / "secret")
    assert f"content/{name}:1:1: this leads out of the content folder; put the file itself here" in told(content)


@pytest.mark.parametrize("logo", ["../logo.png", "/etc/hostname"])
def test_a_logo_lies_within_the_folder(content: Path, tmp_path: Path, logo: str) -> None:
    Image.new("RGB", (9, 9)).save(tmp_path / "logo.png")
    room = content / "showroom.yaml"
    room.write_text(room.read_text() + f"  logo: {logo}\n")
    (report,) = told(content)
    assert f"theme.logo is '{logo}', which lies outside the content folder" in report


@pytest.mark.parametrize(
    ("name", "report"),
    [
        ("doors/front.YAML", "doors/front.YAML:1:1: the file is not read; name it front.yaml"),
        ("doors/front.yaml.txt", "doors/front.yaml.txt:1:1: the file is not read; name it front.yaml"),
        ("pages/visit.md.txt", "pages/visit.md.txt:1:1: the file is not read; name it visit.md"),
        ("doors/old/front.yaml", "doors/old/front.yaml:1:1: the file is not read; put it into content/doors"),
        ("dors/front.yaml", "dors: the folder is not read; did you mean 'doors'?"),
        ("pictures/shop.heic", "pictures/shop.heic:1:1: the file is not read; a file that ends in "),
    ],
)
def test_a_file_that_nobody_reads_is_named_with_what_was_meant(content: Path, name: str, report: str) -> None:
    (content / name).parent.mkdir(parents=True, exist_ok=True)
    (content / name).write_text("name: Front\n")
    (found,) = told(content)
    assert found.startswith(f"content/{report}")


def test_files_that_are_no_slips_may_lie_beside_the_content(content: Path) -> None:
    for name in ("notes.txt", "doors/README", "doors/.front.yaml.swp", "pages/leaflet.pdf"):
        (content / name).write_text("of our own")
    assert told(content) == []


@pytest.mark.parametrize(
    ("size", "mode"), [((30_000, 30_000), "1"), ((1, 60_000), "L"), ((60_000, 1), "L"), ((12_001, 900), "L")]
)
def test_a_picture_out_of_all_size_is_told_with_its_own(content: Path, size: tuple[int, int], mode: str) -> None:
    (content / "pictures").mkdir()
    Image.MAX_IMAGE_PIXELS, kept = None, Image.MAX_IMAGE_PIXELS
    Image.new(mode, size).save(content / "pictures" / "shop.png")
    Image.MAX_IMAGE_PIXELS = kept
    (report,) = told(content)
    assert report.startswith("content/pictures/shop.png: ")
    assert f"{size[0]} x {size[1]}" in report or "no picture that can be read" in report


@pytest.mark.parametrize(
    ("name", "pixels", "report"),
    [
        (
            "long.png",
            (9_000, 300),
            (
                "5:15: photo.file is 'long.png', which cannot be shown; the picture is 9000 x 300 pixels; at most "
                "12000 a side, and at most 20 times as long as wide, are expected"
            ),
        ),
        (
            "spoiled.jpg",
            None,
            (
                "5:15: photo.file is 'spoiled.jpg', which cannot be shown; no picture that can be read; a whole JPEG, "
                "PNG or WebP file is expected"
            ),
        ),
        (
            "camera.heic",
            None,
            (
                "5:15: photo.file is 'camera.heic', which is no photograph; a file that ends in .png, .jpg, .jpeg or "
                ".webp is expected"
            ),
        ),
        (
            ".shop.jpg",
            (40, 30),
            "5:15: photo.file is '.shop.jpg', but there is no such photograph in pictures; none is known here",
        ),
    ],
)
def test_a_photograph_that_cannot_be_shown_is_told_once_where_it_is_named(
    content: Path, name: str, pixels: tuple[int, int] | None, report: str
) -> None:
    (content / "pictures").mkdir()
    picture = content / "pictures" / name
    if pixels:
        Image.new("L", pixels).save(picture)
    else:
        picture.write_bytes(b"no picture")
    path = content / "families" / "cells.yaml"
    named = f"mechanism: accordion\nphoto: {{file: {name}, alt: Cells}}\n"
    path.write_text(path.read_text().replace("mechanism: accordion\n", named))
    assert told(content) == [f"content/families/cells.yaml:{report}"]


@pytest.mark.parametrize("ending", ["png", "jpg", "webp"])
def test_a_picture_that_is_cut_short_is_told(content: Path, ending: str) -> None:
    (content / "pictures").mkdir()
    path = content / "pictures" / f"shop.{ending}"
    Image.effect_noise((300, 200), 60).save(path)
    path.write_bytes(path.read_bytes()[:2000])
    assert told(content) == [
        f"content/{path.relative_to(content)}: no picture that can be read; a whole JPEG, PNG or WebP file is expected"
    ]


@pytest.mark.parametrize(
    ("inner", "report"),
    [
        ("<script>alert(1)</script>", "2:1: <script> does not draw; take it out"),
        ("<style>path{}</style>", "2:1: <style> does not draw; take it out"),
        ('<path d="M0 0" onclick="x()"/>', "2:1: 'onclick' runs a script; take it out"),
        ('<use href="https://far.example/a.svg#b"/>', "2:1: 'href' points out of the drawing; take it out"),
        ('<rect fill="url(https://far.example/a#b)"/>', "2:1: 'fill' points out of the drawing; take it out"),
        ("<rect style=\"fill: url('//far.example/a')\"/>", "2:1: 'style' points out of the drawing; take it out"),
        ('<a href="#b"><path d="M0 0"/></a>', "2:1: <a> does not draw; take it out"),
        ("<foreignObject/>", "2:1: <foreignObject> does not draw; take it out"),
        ('<?xml-stylesheet href="a.css"?>', "2:1: an instruction stands here; take it out"),
        ("<path", "3:1: the drawing is no sound SVG here; save it again as plain SVG"),
    ],
)
def test_a_drawing_holds_nothing_but_what_draws(content: Path, inner: str, report: str) -> None:
    (content / "pictures").mkdir()
    (content / "pictures" / "logo.svg").write_text(SVG.format(inner=inner))
    assert told(content) == [f"content/pictures/logo.svg:{report}"]


def test_a_drawing_that_refers_to_itself_is_sound(content: Path) -> None:
    inner = '<defs><g id="a"><path d="M0 0"/></g></defs><use href="#a" fill="url(#b)" style="stroke: url(\'#c\')"/>'
    (content / "pictures").mkdir()
    (content / "pictures" / "logo.svg").write_text(SVG.format(inner=inner))
    assert told(content) == []


def test_a_drawing_that_grows_without_end_is_refused_at_its_first_line(content: Path) -> None:
    bomb = '<!DOCTYPE svg [<!ENTITY a "&b;&b;"><!ENTITY b "ha">]>' + SVG.format(inner="&a;")
    (content / "pages" / "in-a-guide.svg").write_text(bomb)
    assert told(content) == ["content/pages/in-a-guide.svg:1:15: a document type stands here; take it out"]


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("Hello.\n\n<script>alert(1)</script>\n", "3:1: <script> has no place in a guide"),
        ("Hello <b onclick='x()'>you</b>.\n", "1:7: 'onclick' runs a script"),
        ("See [here](javascript:alert(1)).\n", "1:10: the link has an address that runs"),
        ("See [here](&#106;avascript:alert(1)).\n", "1:10: the link has an address that runs"),
        ("See [here][1].\n\n[1]: JavaScript:alert(1)\n", "3:1: the link has an address that runs"),
        ("<a href='java\tscript:x()'>x</a>\n", "1:1: 'href' has an address that runs"),
        ("# Head {: onmouseover='x()' }\n", "1:11: 'onmouseover' runs a script"),
        ("A <b style='color: red'>word</b>.\n", "1:3: 'style' does nothing: only the site's style sheet"),
        ("A word.\n{: style='color: red' }\n", "2:4: 'style' does nothing: only the site's style sheet"),
        ("<iframe src='https://far.example'></iframe>\n", "1:1: <iframe> has no place in a guide"),
    ],
)
def test_a_guide_does_nothing_by_itself(content: Path, text: str, place: str) -> None:
    page(content, text)
    assert [report.startswith(f"content/pages/more.md:{place}") for report in told(content)] == [True]


def test_a_guide_may_show_markup_as_code(content: Path) -> None:
    page(content, "So: `<script>`.\n\n```\n<script>alert(1)</script>\n```\n\nA <kbd>key</kbd>, 1 < 2, [on](#on).\n")
    assert told(content) == []


@pytest.mark.parametrize(
    ("text", "report"),
    [
        (b"Caf\xe9.\n", "1:4: the file is not in UTF-8; save it as UTF-8"),
        (b"One\x00two.\n", "1:4: an unprintable sign stands here; take it out"),
        (b"---\ntitle: [a\n---\nText.\n", "2:8: a list in [ ] is not closed, or lacks a comma"),
        (b"---\na: &a [x]\nb: [*a, *a]\n---\n", "2:4: anchors and aliases (& and *) are not used here"),
        (b"```drawing\ndoor: " + b"[" * 5000 + b"\n```\n", "1:1: "),
        (b"```drawing\ndoor: &a x\nfamily: *a\nview: plan\nat: open\n```\n", "1:1: anchors and aliases"),
        (
            b"Text.\n\n```drawing\ndoor: none\nfamily: cells\nview: plan\nat: open\n```\n",
            "3:1: there is no door 'none'",
        ),
    ],
)
def test_a_guide_that_cannot_be_read_is_told_at_its_place(content: Path, text: bytes, report: str) -> None:
    page(content, text)
    reports = told(content)
    assert reports
    assert reports[0].startswith(f"content/pages/more.md:{report}")


def test_a_file_larger_than_any_content_is_not_read(content: Path) -> None:
    (content / "doors" / "garden-pair.yaml").write_text("# " + "x" * 5_000_000)
    assert told(content) == [
        "content/doors/garden-pair.yaml:1:1: the file is larger than 4 MB; nothing in the content is"
    ]


@pytest.mark.parametrize(
    ("name", "report"),
    [
        ("doors", "doors: you may not read this folder; allow yourself to read and search it"),
        ("pages/leaflet.pdf", "pages/leaflet.pdf:1:1: you may not read this file; allow yourself to read it"),
        (
            "static/.well-known/proof",
            "static/.well-known/proof:1:1: you may not read this file; allow yourself to read it",
        ),
    ],
)
def test_what_may_not_be_read_is_told_before_a_build_meets_it(
    content: Path, monkeypatch: pytest.MonkeyPatch, name: str, report: str
) -> None:
    locked = content / name
    if not locked.exists():
        locked.parent.mkdir(parents=True, exist_ok=True)
        locked.write_text("ours")
    may = os.access
    # Whoever runs the tests may read everything where that is the system's own user.
    monkeypatch.setattr(os, "access", lambda path, mode: path != locked and may(path, mode))
    assert told(content) == [f"content/{report}"]


def test_hidden_things_that_nobody_carries_may_be_locked(content: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (content / "doors" / ".front.swp").write_text("ours")
    monkeypatch.setattr(os, "access", lambda path, mode: not Path(path).name.startswith("."))
    assert told(content) == []
