"""Pages for what went wrong: one clear line, what to do next, never a trace."""

from __future__ import annotations

from html import escape
from pathlib import Path

from diagnose.errors import CannotWriteError, NoCaseError, UserError, clean
from diagnose.serve.exchange import Answer, Asked, NotHereError, RefusedError
from diagnose.serve.site import screen, without_folder

_PAGE = (
    '<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8">'
    '<meta name="viewport" content="width=device-width, initial-scale=1">'
    '<title>{title}</title><link rel="stylesheet" href="/static/style.css"></head>'
    '<body><main id="main"><h1>{title}</h1><p>{says}</p>'
    '<p><a class="button" href="/">To the jobs</a></p></main></body></html>'
)
_TITLES = {
    400: "Not understood",
    403: "Not let in",
    404: "Not here",
    408: "Too slow",
    413: "Too large",
}
_OURS = (
    "A fault of the program itself. What was saved before is kept. Please report it, with what "
    "you did before."
)
#: fields of a form that are its keys, not what the person put in
OWN = ("token", "once", "version", "insist")


def plain_page(status: int, says: str) -> Answer:
    """A page that needs no template."""
    title = escape(_TITLES.get(status, "Not done"))
    return Answer(_PAGE.format(title=title, says=escape(clean(says))), status=status)


def answer_to(error: Exception, asked: Asked, root: Path) -> Answer:
    """The page for an error that a screen raised; ``root``: of the folder, which is not shown."""
    match error:
        case NotHereError():
            return plain_page(404, str(error))
        case RefusedError():
            return plain_page(403, str(error))
        case NoCaseError():
            return screen("fault.html", asked, status=404, lines=without_folder(error.faults, root))
        case CannotWriteError():
            return screen("fault.html", asked, status=409, lines=without_folder(error.lines, root))
        case UserError():
            return screen("fault.html", asked, status=400, lines=without_folder(error.lines, root))
    return plain_page(500, _OURS)


def again(asked: Asked) -> Answer:
    """The form once more, with all that was put in, where its key no longer holds."""
    kept = [(n, v) for n, values in asked.form.items() if n not in OWN for v in values]
    return screen(
        "again.html",
        asked,
        status=409,
        kept=kept,
        version=asked.text("version"),
        photo=bool(asked.uploads),
    )
