"""What several screens share: documents made once, a form saved or shown again, what is new."""

from __future__ import annotations

from collections.abc import Callable, Hashable
from typing import Protocol, TypeVar

from diagnose.case.writing import Appended
from diagnose.errors import UsageError
from diagnose.output.documents.entries import entry_lines
from diagnose.serve.diagnoses import Known, Version
from diagnose.serve.exchange import Answer, Asked
from diagnose.serve.saving import MeanwhileError
from diagnose.serve.site import Refusal, Site
from knowledge.book import the_book

PRESSURES = ("psi", "bar", "kPa")  #: units that a field of a pressure offers
_MOST_DIGITS = 7  #: of the number of an entry
Made = TypeVar("Made")


class Save(Protocol):
    """Writes what a form says, as ``save`` and ``end`` of ``diagnose.serve.saving``."""

    def __call__(self, *, seen: Version, insist: bool) -> Appended:
        """Raise MeanwhileError, UsageError."""
        ...


ShowAgain = Callable[[Refusal], Answer]  #: shows a form once more with all that was put in


def kept(known: Known, name: Hashable, make: Callable[[], Made]) -> Made:
    """A document of a case, made once for each state of its file."""
    if name not in known.made:
        known.made[name] = make()
    made: Made = known.made[name]
    return made


def typed_in(asked: Asked) -> dict[str, str]:
    """What the form holds, to be shown in it again."""
    return {name: asked.text(name) for name in asked.form}


def first_saved(asked: Asked) -> int | None:
    """The number of the first entry that was saved just now; None where none was."""
    saved = asked.query.get("saved", "")
    return int(saved) if saved.isdecimal() and len(saved) <= _MOST_DIGITS else None


def saved_or_again(site: Site, asked: Asked, save: Save, again: ShowAgain) -> Appended | Answer:
    """Save a form; where that cannot be, the form once more with the reason."""
    seen, insist = Version.parse(asked.text("version")), bool(asked.text("insist"))
    try:
        return save(seen=seen, insist=insist)
    except MeanwhileError as other:
        return again(Refusal(meanwhile=_entered_meanwhile(site, asked, other), status=409))
    except UsageError as fault:
        return again(Refusal(fault.lines))


def _entered_meanwhile(site: Site, asked: Asked, other: MeanwhileError) -> list[str]:
    """What was entered in another place since the form was made, a line each."""
    with site.job(asked) as now:
        lines = entry_lines(now.case, the_book())
        said = [
            f"{e.says}{f', by {e.by}' if e.by else ''}" for e in lines if e.number in other.numbers
        ]
        return [*said, "The job was closed."] if other.closed else said
