"""Building the site: into a fresh folder first, which then takes the old one's place."""

from pathlib import Path
from tempfile import TemporaryDirectory

from mkdocs.commands.build import build as mkdocs_build
from mkdocs.config.defaults import MkDocsConfig

from configurator.kernel.message import message
from configurator.kernel.tongue import wording
from configurator.site.answers import Answers
from configurator.site.house import House, Terms, open_houses
from configurator.site.mkdocs.ahead import work_ahead
from configurator.site.mkdocs.warned import warnings_as_problems
from configurator.site.mkdocs.whole_site import WholeSitePlugin

MARKER = Path("assets") / "site.css"
STOOD_IN = wording("{folder} is the folder you are in, or one around it; name another folder")
FOREIGN = wording("{folder} is not empty and was not built by astragal; name another folder or empty it first")


class NotASite(OSError):
    """OUT cannot become a site: it holds what no earlier build has put there, or whoever builds stands in it."""


def refuse_foreign(out: Path, house: House) -> None:
    """Raise :class:`NotASite` unless ``out`` is absent, empty or an earlier build, and can be replaced whole."""
    folder: Terms = {"folder": [str(out), "name"]}
    if Path.cwd().is_relative_to(out.resolve()):
        raise NotASite(house.phrase(message(STOOD_IN, folder)))
    if out.is_file() or (out.is_dir() and any(out.iterdir()) and not (out / MARKER).is_file()):
        raise NotASite(house.phrase(message(FOREIGN, folder)))


def site_config(content: Path, out: Path, house: House) -> MkDocsConfig:
    """Return MkDocs' configuration for a showroom's content."""
    config = MkDocsConfig()
    config.load_dict(
        {
            "site_name": house.catalog.showroom.name,
            "site_url": house.address,
            "docs_dir": str((content / "pages").resolve()),
            "site_dir": str(out.resolve()),
            "use_directory_urls": False,
            "theme": {"name": None, "custom_dir": str(house.templates[-1])},
            "plugins": [],
            "strict": True,
        }
    )
    errors, _ = config.validate()
    for name, error in errors:
        raise ValueError(f"{name}: {error}")
    config.plugins["astragal"] = WholeSitePlugin(house)
    return config


def swap(fresh: Path, out: Path, aside: Path) -> None:
    """Put ``fresh`` where ``out`` is, and ``out`` aside; undo it when that fails half way."""
    if out.exists():
        out.rename(aside)
    try:
        fresh.rename(out)
    except OSError:
        if aside.exists():
            aside.rename(out)
        raise


def build(content: Path, out: Path, answers: Answers | None = None) -> None:
    """Build the site of ``content`` into ``out``.

    The content is checked before anything is touched, and the last good site stays in place until
    the new one is whole. ``answers`` is what an earlier build has already worked out.

    :raises configurator.catalog.ContentProblems: with every problem of the content
    :raises NotASite: when ``out`` holds something else
    """
    house = open_houses(content, answers or Answers())
    refuse_foreign(out, house)
    if house.answers.empty:
        work_ahead(house)
    out.parent.mkdir(parents=True, exist_ok=True)
    with TemporaryDirectory(prefix=".astragal-", dir=out.parent) as folder:
        fresh = Path(folder) / "site"
        with warnings_as_problems(content / "pages", house):
            mkdocs_build(site_config(content, fresh, house))
        swap(fresh, out, Path(folder) / "before")
