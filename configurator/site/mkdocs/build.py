"""Building the site: into a fresh folder first, which then takes the old one's place."""

import gc
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from pathlib import Path

from mkdocs.commands.build import build as mkdocs_build
from mkdocs.config.defaults import MkDocsConfig

from configurator.cache.by_content import ByContent
from configurator.catalog.clauses import Refusal
from configurator.kernel.message import message, plain
from configurator.places import MANIFEST
from configurator.site.answers import Answers
from configurator.site.house import House, open_houses
from configurator.site.mkdocs.ahead import Watch, unwatched, work_ahead
from configurator.site.mkdocs.kept_answers import keep_answers, known_answers
from configurator.site.mkdocs.last_site import LastSite
from configurator.site.mkdocs.manifest import carry_over, write_manifest
from configurator.site.mkdocs.static_files import add_static
from configurator.site.mkdocs.swap import FRESH, swap, tidy, workshop
from configurator.site.mkdocs.unchanged import remember_site
from configurator.site.mkdocs.warned import warnings_as_problems
from configurator.site.mkdocs.whole_site import WholeSitePlugin

# Earlier builds have left no list, but this.
MARKERS = (MANIFEST, Path("assets") / "site.css")


class NotASite(Refusal):
    """OUT cannot become a site: it holds what no earlier build has put there, or whoever builds stands in it."""


def refuse_foreign(out: Path) -> None:
    """Raise :class:`NotASite` unless ``out`` is absent, empty or an earlier build, and can be replaced whole."""
    if Path.cwd().is_relative_to(out.resolve()):
        around = message("{folder} is the folder you are in, or one around it", {"folder": [str(out), "name"]})
        raise NotASite(around, plain("name another folder"))
    is_built = any((out / marker).is_file() for marker in MARKERS)
    if out.is_file() or (out.is_dir() and any(out.iterdir()) and not is_built):
        foreign = message("{folder} is not empty and was not built by astragal", {"folder": [str(out), "name"]})
        raise NotASite(foreign, plain("name another folder or empty it first"))


def site_config(content: Path, fresh: Path, house: House, last: Path) -> MkDocsConfig:
    """Return MkDocs' configuration for a showroom's content, whose site is built into ``fresh`` to stand where the last
    one does."""
    config = MkDocsConfig()
    config.load_dict(
        {
            "site_name": house.catalog.showroom.name,
            "site_url": house.address,
            "docs_dir": str((content / "pages").resolve()),
            "site_dir": str(fresh.resolve()),
            "use_directory_urls": False,
            "theme": {"name": None, "custom_dir": str(house.templates[-1])},
            "plugins": [],
            "strict": True,
        }
    )
    errors, _ = config.validate()
    for name, error in errors:
        raise ValueError(f"{name}: {error}")
    config.plugins["astragal"] = WholeSitePlugin(house, LastSite(last, fresh))
    return config


def build(content: Path, out: Path, answers: Answers | None = None) -> None:
    """Build the site of ``content`` into ``out``.

    The content is checked before anything is touched, and the last good site stays in place until
    the new one is whole. What others have put into ``out`` stays. ``answers`` is what an earlier build has already
    worked out.

    :raises: what :func:`site_beside` raises
    """
    with site_beside(out, content, answers or Answers()) as folder:
        # Where a link leads, the site really lies.
        swap(folder, out.resolve())


def build_remembering(memory: ByContent, out: Path, watch: Watch = unwatched) -> None:
    """Build the site of a content folder into ``out`` from what is remembered, and remember what is new.

    :raises: what :func:`site_beside` raises
    """
    with site_remembering(memory, out, watch) as folder:
        swap(folder, out.resolve())
    remember_site(memory, out)


@contextmanager
def site_remembering(memory: ByContent, out: Path, watch: Watch = unwatched) -> Iterator[Path]:
    """Do what :func:`site_beside` does from what is remembered, and remember what is new."""
    answers = known_answers(memory.folder)
    # Kept while the old site is cleared away, which is as long.
    with ThreadPoolExecutor() as beside, site_beside(out, memory.folder, answers, watch) as folder:
        kept = beside.submit(keep_answers, answers, memory.folder)
        yield folder
    kept.result()


@contextmanager
def site_beside(out: Path, content: Path, answers: Answers, watch: Watch = unwatched) -> Iterator[Path]:
    """Build what is to take the place of ``out`` in a workshop beside it, with what others have put there.

    :raises configurator.catalog.ContentProblems: with every problem of the content
    :raises NotASite: when ``out`` holds something else
    :raises configurator.site.mkdocs.manifest.Foreign: when something in ``out`` is in the way
    """
    with cycles_left():
        house = open_houses(content, answers)
        refuse_foreign(out)
        out = out.resolve()
        tidy(out)
        if house.answers.empty:
            work_ahead(house, watch)
        out.parent.mkdir(parents=True, exist_ok=True)
        with workshop(out) as folder:
            fresh = folder / FRESH
            with warnings_as_problems(content / "pages", house.words):
                mkdocs_build(site_config(content, fresh, house, out))
            add_static(content, fresh)
            write_manifest(fresh)
            carry_over(out, fresh)
            yield folder


@contextmanager
def cycles_left() -> Iterator[None]:
    """Leave cycles of objects where they are meanwhile: all that a build holds would be looked through for them again
    and again, a tenth of this process's time."""
    looked_for = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if looked_for:
            gc.enable()
