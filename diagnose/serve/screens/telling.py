"""A new job: the story in the person's own words, what was understood of it, then the case file."""

from __future__ import annotations

from dataclasses import replace

from diagnose.diagnosis import Diagnosis
from diagnose.entry.telling import Account, foreseen, understand, write
from diagnose.errors import CannotWriteError, UsageError, UserError
from diagnose.output.documents.alarms import AlarmNotice, few_alarm_notices
from diagnose.output.documents.tell import account_document
from diagnose.serve.exchange import Answer, Asked, go
from diagnose.serve.site import Site, screen
from knowledge.book import the_book
from knowledge.model import Severity

MOST_ATTEMPTS = 5  #: file names tried where others begin jobs at the same time


def show(site: Site, asked: Asked) -> Answer:
    """Ask what the engine is and what it does."""
    return screen("new.html", asked, story="", by="")


def save(site: Site, asked: Asked) -> Answer:
    """Show what was understood; once the person agrees, begin the case file with it."""
    story, by = asked.text("story"), asked.text("by")
    more = asked.text("more")
    if more:
        story = f"{story}\n{more}"
    if not any(c.isalnum() for c in story):
        fault = "Say in a few words what the engine is and what it does."
        return screen("new.html", asked, status=400, story=story, by=by, faults=(fault,))
    try:
        account = understand(site.folder.new_path(story), story, the_book())
    except UsageError as fault:
        return screen("new.html", asked, status=400, story=story, by=by, faults=(str(fault),))
    if asked.text("agreed") and not more:
        return _begin(site, _without_struck(account, asked), by)
    document = account_document(account, the_book())
    return screen(
        "understood.html",
        asked,
        story=story,
        by=by,
        account=document,
        struck=_struck(asked),
        alarms=_stops(account),
        back=("/new", "New job"),
    )


def _stops(account: Account) -> tuple[AlarmNotice, ...]:
    """What the words alone say of stopping, before anything is agreed to or saved."""
    try:
        case = foreseen(account, the_book())
    except UserError:
        return ()
    every = few_alarm_notices(Diagnosis(the_book(), case))
    return tuple(a for a in every if a.severity is not Severity.CARE)


def _struck(asked: Asked) -> frozenset[str]:
    """Facts the person struck before, by their words, which stay while more is added."""
    if not asked.text("shown"):
        return frozenset()
    return frozenset(asked.every("fact")) - frozenset(asked.every("keep"))


def _without_struck(account: Account, asked: Asked) -> Account:
    """The account without the facts whose mark was taken away."""
    kept = frozenset(asked.every("keep"))
    document = account_document(account, the_book())
    struck = frozenset(f.number - 1 for f in document.understood if f.says not in kept)
    return replace(account, struck=struck)


def _begin(site: Site, account: Account, by: str) -> Answer:
    """Write the case file under a name that is free; then the interview."""
    for _ in range(MOST_ATTEMPTS):
        try:
            write(account, the_book(), by)
        except CannotWriteError:
            if not account.path.exists():
                raise
            account = replace(account, path=site.folder.new_path(account.text))
        else:
            return go("job", account.path.name, "ask")
    raise CannotWriteError("not saved: others keep taking the name; try again")
