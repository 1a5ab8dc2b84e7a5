"""The list of jobs, and the door for other machines."""

from __future__ import annotations

from diagnose.serve.exchange import KEY, Answer, Asked, go
from diagnose.serve.keys import CODE_LENGTH
from diagnose.serve.site import Site, screen
from knowledge.book import the_book

STATES = ("open", "closed")
MOST_SHOWN = 100


def show(site: Site, asked: Asked) -> Answer:
    """The jobs of the folder: open, closed or all, those that hold the words searched for."""
    words, state = asked.query.get("q", "")[:200], asked.query.get("show", "")
    state = state if state in STATES else ""
    lines = site.folder.lines(words, state)
    return screen(
        "jobs.html",
        asked,
        lines=lines[:MOST_SHOWN],
        more=max(0, len(lines) - MOST_SHOWN),
        words=words,
        state=state,
        folder=site.folder.root.name,
        says={id_: cause.says for id_, cause in the_book().causes.items()},
        back=None,
    )


def show_code(site: Site, asked: Asked) -> Answer:
    """Ask for the code that the terminal shows; one read by a camera is filled in already."""
    read = asked.query.get("code", "")
    code = read if read.isdecimal() and len(read) == CODE_LENGTH else ""
    return screen("code.html", asked, back=None, code=code)


def take_code(site: Site, asked: Asked) -> Answer:
    """Let a machine in whose code is right."""
    key = site.door.key_for(asked.text("code")) if site.door else ""
    if not key:
        fault = "That is not the code. The terminal shows the one that holds now."
        return screen("code.html", asked, status=403, back=None, code="", faults=(fault,))
    answer = go("")
    return Answer(to=answer.to, status=303, cookies={KEY: key})
