"""The style sheet and the script of all screens."""

from __future__ import annotations

from functools import cache
from importlib.resources import files

from diagnose.serve.exchange import Answer, Asked, NotHereError
from diagnose.serve.site import Site

KINDS = {
    "style.css": "text/css; charset=utf-8",
    "comfort.js": "text/javascript; charset=utf-8",
    "mark.svg": "image/svg+xml",
}


@cache
def _content(name: str) -> bytes:
    return files("diagnose.serve").joinpath("static", name).read_bytes()


def show(site: Site, asked: Asked) -> Answer:
    """One file of the server's own. Raises NotHereError for any other name."""
    name = asked.parts["file"]
    if name not in KINDS:
        raise NotHereError("There is no such page.")
    return Answer(_content(name), KINDS[name], kept=True)


def show_mark(site: Site, asked: Asked) -> Answer:
    """The mark that browsers ask for of a page that names none."""
    return Answer(_content("mark.svg"), KINDS["mark.svg"], kept=True)
